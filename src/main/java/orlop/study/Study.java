package orlop.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import orlop.drawing.Drawing;

/**
 * Everything that is worked out from a drawing.
 *
 * @param drawing the drawing that was studied
 * @param byCondition results by condition id, in the order of the drawing; a drawing without conditions has one, {@code
 *     as-drawn}
 * @param governing each figure's worst over all conditions
 * @param gaps where overcurrent protection is missing or does not do, over all conditions
 * @param copper in the cables of which Orlop chose the area
 */
public record Study(
        Drawing drawing, Map<String, Results> byCondition, Results governing, List<Gap> gaps, Copper copper) {
    public Study {
        byCondition = Collections.unmodifiableMap(new LinkedHashMap<>(byCondition));
        gaps = List.copyOf(gaps);
    }

    /**
     * Studies a drawing in all its conditions.
     *
     * @param stale asked inside the loops; once true, the study is given up
     * @throws java.util.concurrent.CancellationException if {@code stale} said so
     */
    public static Study of(Drawing drawing, StudyOptions options, BooleanSupplier stale) {
        return new Studying(drawing, options, stale).run();
    }

    /** As {@link #of(Drawing, StudyOptions, BooleanSupplier)} with the usual options, never given up. */
    public static Study of(Drawing drawing) {
        return of(drawing, StudyOptions.DEFAULT, () -> false);
    }

    /**
     * The same results, as those of another drawing.
     *
     * @param d differs from the one that was studied on paper only: {@link orlop.drawing.OnPaper}
     */
    public Study withDrawing(Drawing d) {
        return new Study(d, byCondition, governing, gaps, copper);
    }

    /** The results of this condition; the governing ones for {@link Results#GOVERNING} or an unknown name. */
    public Results of(String condition) {
        Results r = byCondition.get(condition);
        return r == null ? governing : r;
    }
}
