package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Point;

/**
 * What becomes of the corners of a line when a person pulls at one of its legs. Everything is in millimetres on the sheet;
 * a line is the points of its route, ends included, and the answer is the corners between them.
 */
public final class Bends {
    /** How far a line runs straight out of a terminal before it may turn. */
    static final double STUB_MM = 5;

    private static final double EPS = 1e-6;

    private final List<Point> points;

    private Bends(List<Point> points) {
        this.points = new ArrayList<>(points);
    }

    /** The corners as they are: of a straight line, one in its middle, so that it is known as set by hand. */
    static List<Point> of(List<Point> points) {
        return new Bends(points).corners();
    }

    /** Whether a leg runs left and right. */
    public static boolean lying(List<Point> points, int leg) {
        Point a = points.get(leg);
        Point b = points.get(leg + 1);
        return Math.abs(a.yMm() - b.yMm()) < EPS && Math.abs(a.xMm() - b.xMm()) > EPS;
    }

    /**
     * The corners after a leg has been moved aside.
     *
     * @param points of the line, two or more
     * @param leg index of the leg, 0 for the first
     * @param to where it is to lie: y of a lying leg, x of a standing one
     * @param startSlides whether the line's start may move along with it: it lies on a bar
     * @param endSlides the same of its end
     */
    public static List<Point> legMoved(List<Point> points, int leg, double to, boolean startSlides, boolean endSlides) {
        boolean lying = lying(points, leg);
        Bends b = new Bends(points);
        int at = leg;
        double length = distance(points.get(leg), points.get(leg + 1));
        if (at == points.size() - 2 && !endSlides) {
            b.stub(at + 1, at, length);
        }
        if (at == 0 && !startSlides) {
            b.stub(0, 1, length);
            at += 2;
        }
        b.shift(at, lying, to);
        b.shift(at + 1, lying, to);
        return b.corners();
    }

    /** Puts two points at one place on the leg near an end, so that the rest of it can be moved aside. */
    private void stub(int end, int other, double length) {
        Point a = points.get(end);
        Point b = points.get(other);
        double out = Math.min(STUB_MM, length / 3);
        double dx = Math.signum(b.xMm() - a.xMm());
        double dy = Math.signum(b.yMm() - a.yMm());
        Point p = a.plus(out * dx, out * dy);
        int between = Math.max(end, other);
        points.add(between, p);
        points.add(between, p);
    }

    private void shift(int i, boolean lying, double to) {
        Point p = points.get(i);
        points.set(i, lying ? new Point(p.xMm(), to) : new Point(to, p.yMm()));
    }

    /** The corners with one more, through which the line is to run, in the leg that lies nearest to it. */
    static List<Point> through(List<Point> points, int leg, Point at) {
        List<Point> all = new ArrayList<>(points.subList(1, points.size() - 1));
        all.add(leg, at);
        return all;
    }

    private List<Point> corners() {
        List<Point> out = new ArrayList<>();
        for (Point p : points) {
            int n = out.size();
            if (n > 0 && distance(out.get(n - 1), p) < EPS) {
                continue;
            }
            if (n >= 2 && inLine(out.get(n - 2), out.get(n - 1), p)) {
                out.remove(n - 1);
            }
            out.add(p);
        }
        if (out.size() > 2) {
            return List.copyOf(out.subList(1, out.size() - 1));
        }
        Point a = out.get(0);
        Point b = out.get(out.size() - 1);
        return List.of(new Point((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2));
    }

    private static boolean inLine(Point a, Point b, Point c) {
        return (same(a.xMm(), b.xMm()) && same(b.xMm(), c.xMm())) || (same(a.yMm(), b.yMm()) && same(b.yMm(), c.yMm()));
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) < EPS;
    }

    private static double distance(Point a, Point b) {
        return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm());
    }
}
