package orlop.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;

/**
 * A block of text that wants a place.
 *
 * @param id unique among the labels
 * @param width mm
 * @param height mm
 * @param targets what it speaks of: a leader may end at any of them, at least one, the best first
 * @param spots where it may stand
 * @param fixed whether a person put it there: it has one spot and keeps it
 */
public record Label(String id, double width, double height, List<Rect> targets, Spots spots, boolean fixed) {
    public Label {
        targets = List.copyOf(targets);
        if (targets.isEmpty()) {
            throw new IllegalArgumentException("label " + id + " has no target");
        }
    }

    public Label(String id, double width, double height, Rect target, Spots spots, boolean fixed) {
        this(id, width, height, List.of(target), spots, fixed);
    }

    Rect target() {
        return targets.get(0);
    }

    /**
     * Where a label was put.
     *
     * @param rect what it covers
     * @param side how its lines are set
     * @param leader a thin line to what it speaks of, where it had to stand apart; null else
     */
    public record Put(Rect rect, Side side, @Nullable Leader leader) {}

    /** A thin line from a label to what it speaks of, with one corner if it has to turn. */
    public record Leader(double x1, double y1, @Nullable Point corner, double x2, double y2) {
        Leader(double x1, double y1, double x2, double y2) {
            this(x1, y1, null, x2, y2);
        }

        /** From the label to what it speaks of. */
        public List<Point> points() {
            Point from = new Point(x1, y1);
            Point to = new Point(x2, y2);
            return corner == null ? List.of(from, to) : List.of(from, corner, to);
        }

        List<Leader> pieces() {
            Point c = corner;
            return c == null
                    ? List.of(this)
                    : List.of(new Leader(x1, y1, c.xMm(), c.yMm()), new Leader(c.xMm(), c.yMm(), x2, y2));
        }

        Rect box() {
            Rect r = new Rect(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
            return corner == null ? r : r.union(Rect.around(corner, corner));
        }

        /** Whether a straight leader runs through a rectangle: Liang and Barsky's clipping (1984). */
        boolean crosses(Rect r) {
            double dx = x2 - x1;
            double dy = y2 - y1;
            double from = 0;
            double to = 1;
            for (int i = 0; i < 4; i++) {
                double p = i == 0 ? -dx : i == 1 ? dx : i == 2 ? -dy : dy;
                double q = i == 0 ? x1 - r.minX() : i == 1 ? r.maxX() - x1 : i == 2 ? y1 - r.minY() : r.maxY() - y1;
                if (p == 0 && q < 0) {
                    return false;
                } else if (p < 0) {
                    from = Math.max(from, q / p);
                } else if (p > 0) {
                    to = Math.min(to, q / p);
                }
            }
            return from <= to;
        }

        /** Whether two straight leaders cross. */
        boolean meets(Leader o) {
            return side(o.x1, o.y1) * side(o.x2, o.y2) <= 0 && o.side(x1, y1) * o.side(x2, y2) <= 0;
        }

        /** Positive on one side of the line, negative on the other. */
        private double side(double x, double y) {
            return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
        }

        double length() {
            Point c = corner;
            return c == null
                    ? distance(x1, y1, x2, y2)
                    : distance(x1, y1, c.xMm(), c.yMm()) + distance(c.xMm(), c.yMm(), x2, y2);
        }

        private static double distance(double ax, double ay, double bx, double by) {
            return Math.sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by));
        }
    }
}
