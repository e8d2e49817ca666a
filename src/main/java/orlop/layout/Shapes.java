package orlop.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import orlop.drawing.Point;

/** The ways that need no search: one corner or two, if nothing at all speaks against them. */
final class Shapes {
    private static final double PITCH = 2.5;
    private static final double LEAST_LEG_MM = 2.5;
    private static final double EPS = 1e-6;

    private final LegCost legs;
    private final Port a;
    private final Port b;

    private Shapes(LegCost legs, Port a, Port b) {
        this.legs = legs;
        this.a = a;
        this.b = b;
    }

    /** The way with fewest corners between two single ports, if it costs nothing beyond its length and corners. */
    static Optional<WaySearch.Found> simple(LegCost legs, List<Port> starts, List<Port> goals) {
        if (starts.size() != 1 || goals.size() != 1) {
            return Optional.empty();
        }
        Shapes s = new Shapes(legs, starts.get(0), goals.get(0));
        for (List<Point> points : s.candidates()) {
            if (s.free(points)) {
                return Optional.of(new WaySearch.Found(s.a, s.b, points));
            }
        }
        return Optional.empty();
    }

    private List<List<Point>> candidates() {
        Point start = new Point(a.x(), a.y());
        Point end = new Point(b.x(), b.y());
        List<List<Point>> all = new ArrayList<>();
        if (a.heading().horizontal() != b.heading().horizontal()) {
            Point corner = a.heading().horizontal() ? new Point(b.x(), a.y()) : new Point(a.x(), b.y());
            if (ahead(a, corner) && ahead(b, corner)) {
                all.add(List.of(start, corner, end));
            }
        } else if (a.heading() == b.heading().opposite()) {
            steps(all, start, end);
        }
        return all;
    }

    /** Out, aside, on: the leg aside nearest to the end first, so that a drop runs straight as far as it can. */
    private void steps(List<List<Point>> all, Point start, Point end) {
        boolean lying = a.heading().horizontal();
        double from = lying ? start.xMm() : start.yMm();
        double to = lying ? end.xMm() : end.yMm();
        double sign = lying ? a.heading().dx() : a.heading().dy();
        for (double d = Math.abs(to - from) - LEAST_LEG_MM; d >= LEAST_LEG_MM; d -= PITCH) {
            double at = Math.rint((from + sign * d) / PITCH) * PITCH;
            Point p = lying ? new Point(at, start.yMm()) : new Point(start.xMm(), at);
            Point q = lying ? new Point(at, end.yMm()) : new Point(end.xMm(), at);
            if (ahead(a, p) && ahead(b, q)) {
                all.add(List.of(start, p, q, end));
            }
        }
    }

    private static boolean ahead(Port p, Point to) {
        double along = (to.xMm() - p.x()) * p.heading().dx()
                + (to.yMm() - p.y()) * p.heading().dy();
        return along >= LEAST_LEG_MM - EPS;
    }

    private boolean free(List<Point> points) {
        for (int i = 1; i < points.size(); i++) {
            Point p = points.get(i - 1);
            Point q = points.get(i);
            double length = Math.abs(p.xMm() - q.xMm()) + Math.abs(p.yMm() - q.yMm());
            boolean corner = i < points.size() - 1;
            if (legs.leg(p.xMm(), p.yMm(), q.xMm(), q.yMm()) > length + EPS
                    || (corner && legs.cornerBlocked(q.xMm(), q.yMm()))) {
                return false;
            }
        }
        return true;
    }
}
