package orlop.scene;

import java.util.List;
import orlop.drawing.Point;
import orlop.drawing.TerminalRef;

/**
 * The way of a cable or link over the sheet.
 *
 * @param id tag of the cable or id of the link
 * @param cable whether it is a cable
 * @param from terminal at the first point
 * @param to terminal at the last point
 * @param points two or more, each next to the last along the grid
 */
public record Route(String id, boolean cable, TerminalRef from, TerminalRef to, List<Point> points) {
    public Route {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a route has two points or more");
        }
    }

    /**
     * A spot along a route.
     *
     * @param id tag of the cable or id of the link
     * @param share how far along, 0 at {@code from} to 1 at {@code to}
     * @param distanceMm of the point that was asked for
     * @param segment index of the leg, 0 for the first
     */
    public record Spot(String id, double share, double xMm, double yMm, double distanceMm, int segment) {}

    public double lengthMm() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += distance(points.get(i - 1), points.get(i));
        }
        return sum;
    }

    /** The point at this share of the length; shares below 0 and above 1 give the ends. */
    public Point at(double share) {
        double rest = Math.max(0, Math.min(1, share)) * lengthMm();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double leg = distance(a, b);
            if (rest <= leg && leg > 0) {
                double t = rest / leg;
                return new Point(a.xMm() + t * (b.xMm() - a.xMm()), a.yMm() + t * (b.yMm() - a.yMm()));
            }
            rest -= leg;
        }
        return points.get(points.size() - 1);
    }

    /** The spot of the route nearest to a point. */
    public Spot nearest(double x, double y) {
        double total = lengthMm();
        double before = 0;
        Spot best = new Spot(id, 0, points.get(0).xMm(), points.get(0).yMm(), Double.POSITIVE_INFINITY, 0);
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double leg = distance(a, b);
            double dx = b.xMm() - a.xMm();
            double dy = b.yMm() - a.yMm();
            double t = leg == 0 ? 0 : ((x - a.xMm()) * dx + (y - a.yMm()) * dy) / (leg * leg);
            t = Math.max(0, Math.min(1, t));
            double px = a.xMm() + t * dx;
            double py = a.yMm() + t * dy;
            double d = Math.hypot(x - px, y - py);
            if (d < best.distanceMm()) {
                best = new Spot(id, total == 0 ? 0 : (before + t * leg) / total, px, py, d, i - 1);
            }
            before += leg;
        }
        return best;
    }

    private static double distance(Point a, Point b) {
        return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm());
    }
}
