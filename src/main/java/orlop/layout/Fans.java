package orlop.layout;

import java.util.List;
import java.util.Optional;
import orlop.drawing.Point;

/**
 * Lines from a bar to what stands beyond its end: out of the bar, along it, and straight on to the end. Made for the farthest
 * first, which runs nearest to the bar, they lie in each other and none crosses another.
 */
final class Fans {
    private static final double PITCH = 2.5;
    private static final double LEAST_LEG_MM = 2.5;

    private Fans() {}

    /** The first way that crosses nothing, the one nearest to the bar first; none if the end does not face the bar. */
    static Optional<WaySearch.Found> find(LegCost legs, Port start, Port end, boolean fromBar) {
        Port tap = fromBar ? start : end;
        Port far = fromBar ? end : start;
        if (tap.heading() != far.heading().opposite()) {
            return Optional.empty();
        }
        boolean lying = !tap.heading().horizontal();
        double room = lying ? Math.abs(far.y() - tap.y()) : Math.abs(far.x() - tap.x());
        for (double d = PITCH; d <= room - LEAST_LEG_MM; d += PITCH) {
            double at = (lying ? tap.y() : tap.x())
                    + d * (lying ? tap.heading().dy() : tap.heading().dx());
            at = Math.rint(at / PITCH) * PITCH;
            Point p = lying ? new Point(tap.x(), at) : new Point(at, tap.y());
            Point q = lying ? new Point(far.x(), at) : new Point(at, far.y());
            Point a = new Point(tap.x(), tap.y());
            Point b = new Point(far.x(), far.y());
            List<Point> way = fromBar ? List.of(a, p, q, b) : List.of(b, q, p, a);
            if (free(legs, way)) {
                return Optional.of(new WaySearch.Found(start, end, way));
            }
        }
        return Optional.empty();
    }

    /** Nothing blocks and no line is crossed; running close to lines and past texts is allowed. */
    private static boolean free(LegCost legs, List<Point> way) {
        int before = legs.crossings();
        for (int i = 1; i < way.size(); i++) {
            Point p = way.get(i - 1);
            Point q = way.get(i);
            boolean corner = i < way.size() - 1;
            if (legs.leg(p.xMm(), p.yMm(), q.xMm(), q.yMm()) == LegCost.BLOCKED
                    || (corner && legs.cornerBlocked(q.xMm(), q.yMm()))) {
                return false;
            }
        }
        return legs.crossings() == before;
    }
}
