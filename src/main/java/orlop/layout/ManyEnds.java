package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Component;
import orlop.drawing.Point;
import orlop.drawing.Switching;
import orlop.drawing.TerminalRef;

/**
 * A component with more terminals than any symbol of its kind has (a switch of five ways): its terminals in two rows, so that
 * none is taken for another, and between them what a symbol of its kind would show.
 */
public final class ManyEnds {
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

    /**
     * The strokes of such a component, on the sheet. Composed after IEC 60617 07-02-05 (ways of a switch) and 05-03-01
     * (diode), from memory.
     *
     * @param state of a changeover switch, the number of the way that it has closed, "0" for none
     * @return lines of two points or more; empty for a kind of which there are no more than symbols
     */
    public static List<List<Point>> strokes(Component c, String state) {
        List<List<double[]>> lines = new ArrayList<>();
        int n = c.particulars().terminals().size() - 1;
        double half = Math.ceil((n - 1) / 2.0) * PITCH_MM;
        if (c.particulars() instanceof Switching.Changeover) {
            changeover(lines, n, half, state);
        } else if (c.particulars() instanceof Switching.DiodeIsolator) {
            diodes(lines, n, half);
        }
        List<List<Point>> out = new ArrayList<>();
        for (List<double[]> line : lines) {
            out.add(line.stream()
                    .map(p -> Placing.onSheet(p[0], p[1], c.place()))
                    .map(p -> new Point(p[0], p[1]))
                    .toList());
        }
        return out;
    }

    /** Fixed contacts in a row, the moving one from the common terminal to the closed way, or between two of them. */
    private static void changeover(List<List<double[]>> lines, int ways, double half, String state) {
        double to = -half + PITCH_MM / 2;
        double up = -0.6;
        for (int i = 0; i < ways; i++) {
            double x = -half + i * PITCH_MM;
            lines.add(List.of(new double[] {x, -HALF_MM}, new double[] {x, -1.5}));
            lines.add(List.of(new double[] {x - 0.9, -1.5}, new double[] {x + 0.9, -1.5}));
            if (state.equals(Integer.toString(i + 1))) {
                to = x;
                up = -1.5;
            }
        }
        lines.add(List.of(new double[] {0, HALF_MM}, new double[] {0, 2.5}, new double[] {to, up}));
    }

    /** One line in, a bar, and a diode to every output. */
    private static void diodes(List<List<double[]>> lines, int outputs, double half) {
        lines.add(List.of(new double[] {0, -HALF_MM}, new double[] {0, -2.5}));
        lines.add(List.of(new double[] {-half, -2.5}, new double[] {-half + (outputs - 1) * PITCH_MM, -2.5}));
        for (int i = 0; i < outputs; i++) {
            double x = -half + i * PITCH_MM;
            lines.add(List.of(new double[] {x, -2.5}, new double[] {x, HALF_MM}));
            lines.add(List.of(
                    new double[] {x - 1.25, -0.6}, new double[] {x + 1.25, -0.6}, new double[] {x, 1.6}, new double[] {
                        x - 1.25, -0.6
                    }));
            lines.add(List.of(new double[] {x - 1.25, 1.6}, new double[] {x + 1.25, 1.6}));
        }
    }
}
