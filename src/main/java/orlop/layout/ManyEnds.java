package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Component;
import orlop.drawing.Switching;
import orlop.drawing.TerminalRef;

/**
 * A component with more terminals than any symbol of its kind has (a switch of five ways): a box with its terminals in two
 * rows, so that none is taken for another.
 */
final class ManyEnds {
    private static final double PITCH_MM = 5;
    private static final double HALF_MM = 5;

    private ManyEnds() {}

    /** Of a changeover switch the common terminal, the last, stands alone below; of others the first alone above. */
    static Placed place(Component c, List<String> names) {
        boolean lastAlone = c.particulars() instanceof Switching.Changeover;
        int alone = lastAlone ? names.size() - 1 : 0;
        List<String> row = new ArrayList<>(names);
        row.remove(alone);
        double half = Math.ceil((row.size() - 1) / 2.0) * PITCH_MM;
        List<Port> ports = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            ports.add(port(c, row.get(i), -half + i * PITCH_MM, lastAlone));
        }
        ports.add(port(c, names.get(alone), 0, !lastAlone));
        double[] p = Placing.onSheet(-half - PITCH_MM / 2, -HALF_MM, c.place());
        double[] q = Placing.onSheet(half + PITCH_MM / 2, HALF_MM, c.place());
        Rect ink = new Rect(Math.min(p[0], q[0]), Math.min(p[1], q[1]), Math.max(p[0], q[0]), Math.max(p[1], q[1]));
        return new Placed(c, "", ink, ports, false, null);
    }

    private static Port port(Component c, String name, double x, boolean up) {
        double[] at = Placing.onSheet(x, up ? -HALF_MM : HALF_MM, c.place());
        Heading h = up ? Heading.UP : Heading.DOWN;
        Heading placed = h.placed(c.place().rotationDegree(), c.place().mirrored());
        return new Port(new TerminalRef(c.id(), name), at[0], at[1], placed);
    }
}
