package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Point;

/** Makes lists of points into orthogonal lines without needless points. */
final class Corners {
    /** How far a line that was led by hand runs straight into a terminal. */
    private static final double STUB_MM = 5;

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

    /**
     * From port to port through corners set by hand. Where two points do not lie in line, a corner is put between, so that
     * the line goes on rather than back over itself.
     */
    static List<Point> through(Port start, List<Point> bends, Port end) {
        List<Point> out = new ArrayList<>();
        out.add(new Point(start.x(), start.y()));
        Heading heading = start.heading();
        for (Point p : bends) {
            heading = join(out, p, heading);
        }
        Point last = new Point(end.x(), end.y());
        Point at = out.get(out.size() - 1);
        if (at.xMm() != last.xMm() && at.yMm() != last.yMm()) {
            Point corner =
                    end.heading().horizontal() ? new Point(at.xMm(), last.yMm()) : new Point(last.xMm(), at.yMm());
            boolean inwards = heading(corner, last) == end.heading().opposite();
            if (inwards && heading(at, corner) != heading.opposite()) {
                out.add(corner);
            } else {
                join(
                        out,
                        last.plus(
                                STUB_MM * end.heading().dx(),
                                STUB_MM * end.heading().dy()),
                        heading);
            }
        }
        out.add(last);
        return merged(out);
    }

    /** Adds a point, with a corner before it if need be. Returns where the line is heading then. */
    private static Heading join(List<Point> out, Point p, Heading heading) {
        Point at = out.get(out.size() - 1);
        if (at.equals(p)) {
            return heading;
        }
        if (at.xMm() != p.xMm() && at.yMm() != p.yMm()) {
            double ahead = (p.xMm() - at.xMm()) * heading.dx() + (p.yMm() - at.yMm()) * heading.dy();
            boolean lyingFirst = ahead > 0 == heading.horizontal();
            out.add(lyingFirst ? new Point(p.xMm(), at.yMm()) : new Point(at.xMm(), p.yMm()));
        }
        out.add(p);
        return heading(out.get(out.size() - 2), p);
    }

    private static Heading heading(Point from, Point to) {
        if (from.xMm() == to.xMm()) {
            return to.yMm() > from.yMm() ? Heading.DOWN : Heading.UP;
        }
        return to.xMm() > from.xMm() ? Heading.RIGHT : Heading.LEFT;
    }
}
