package orlop.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import orlop.drawing.Point;

/** Cuts pieces out of a line: for the name that is set in it, for a device that is proposed in it. */
final class LineCutter {
    /**
     * A piece to cut out.
     *
     * @param leg index of the leg, 0 for the first
     * @param from distance from the leg's first point, mm
     * @param to distance from the leg's first point, mm
     */
    record Cut(int leg, double from, double to) {}

    private LineCutter() {}

    /** What is left of the line, in order; pieces shorter than a hundredth of a millimetre are dropped. */
    static List<List<Point>> cut(List<Point> points, List<Cut> cuts) {
        List<List<Point>> pieces = new ArrayList<>();
        List<Point> current = new ArrayList<>(List.of(points.get(0)));
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            int leg = i - 1;
            List<Cut> here = cuts.stream()
                    .filter(c -> c.leg == leg)
                    .sorted(Comparator.comparingDouble(Cut::from))
                    .toList();
            for (Cut c : here) {
                current.add(along(a, b, c.from));
                finish(pieces, current);
                current = new ArrayList<>(List.of(along(a, b, c.to)));
            }
            current.add(b);
        }
        finish(pieces, current);
        return pieces;
    }

    private static void finish(List<List<Point>> pieces, List<Point> piece) {
        double length = 0;
        for (int i = 1; i < piece.size(); i++) {
            length += length(piece.get(i - 1), piece.get(i));
        }
        if (length > 0.01) {
            pieces.add(piece);
        }
    }

    static double length(Point a, Point b) {
        return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm());
    }

    /** The point so far from a towards b, never beyond either. */
    static Point along(Point a, Point b, double mm) {
        double length = length(a, b);
        double t = length == 0 ? 0 : Math.max(0, Math.min(1, mm / length));
        return new Point(a.xMm() + t * (b.xMm() - a.xMm()), a.yMm() + t * (b.yMm() - a.yMm()));
    }
}
