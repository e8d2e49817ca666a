package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Point;

/** Makes lists of points into orthogonal lines without needless points. */
final class Corners {
    private Corners() {}

    /** Without repeated points and points in the middle of a straight leg; the two ends always stay. */
    static List<Point> merged(List<Point> points) {
        List<Point> out = new ArrayList<>();
        for (Point p : points) {
            if (!out.isEmpty() && out.get(out.size() - 1).equals(p)) {
                continue;
            }
            int n = out.size();
            if (n >= 2 && straight(out.get(n - 2), out.get(n - 1), p)) {
                out.remove(n - 1);
            }
            out.add(p);
        }
        if (out.size() == 1) {
            out.add(out.get(0));
        }
        return out;
    }

    private static boolean straight(Point a, Point b, Point c) {
        return (a.xMm() == b.xMm() && b.xMm() == c.xMm()) || (a.yMm() == b.yMm() && b.yMm() == c.yMm());
    }

    /** From port to port through corners set by hand; where two points do not lie in line, a corner is put between. */
    static List<Point> through(Port start, List<Point> bends, Port end) {
        List<Point> out = new ArrayList<>();
        out.add(new Point(start.x(), start.y()));
        boolean horizontal = start.heading().horizontal();
        for (Point p : bends) {
            horizontal = join(out, p, horizontal);
        }
        Point last = new Point(end.x(), end.y());
        Point at = out.get(out.size() - 1);
        if (at.xMm() != last.xMm() && at.yMm() != last.yMm()) {
            out.add(end.heading().horizontal() ? new Point(at.xMm(), last.yMm()) : new Point(last.xMm(), at.yMm()));
        }
        out.add(last);
        return merged(out);
    }

    private static boolean join(List<Point> out, Point p, boolean horizontalFirst) {
        Point at = out.get(out.size() - 1);
        if (at.xMm() != p.xMm() && at.yMm() != p.yMm()) {
            out.add(horizontalFirst ? new Point(p.xMm(), at.yMm()) : new Point(at.xMm(), p.yMm()));
            out.add(p);
            return !horizontalFirst;
        }
        out.add(p);
        return at.xMm() == p.xMm();
    }
}
