package orlop.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All results of one operating condition, or of the governing one: each figure's worst over all conditions.
 *
 * @param condition id of the condition, or {@link #GOVERNING}
 * @param title the name that a person reads
 * @param converged whether every island has an operating point that meets Kirchhoff's law
 * @param residualA greatest sum of currents at any point, 0 if there is nothing to solve
 * @param points by id, in the order of the drawing
 * @param cables by tag, in the order of the drawing
 * @param components by tag, in the order of the drawing
 * @param remarks what was met and assumed
 */
public record Results(
        String condition,
        String title,
        boolean converged,
        double residualA,
        Map<String, PointResult> points,
        Map<String, CableResult> cables,
        Map<String, ComponentResult> components,
        List<Remark> remarks) {
    /** The name of the condition that gathers each figure's worst. */
    public static final String GOVERNING = "governing";

    public Results {
        points = kept(points);
        cables = kept(cables);
        components = kept(components);
        remarks = List.copyOf(remarks);
    }

    private static <T> Map<String, T> kept(Map<String, T> map) {
        return map instanceof Rows ? map : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
