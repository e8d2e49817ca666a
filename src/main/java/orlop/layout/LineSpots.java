package orlop.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;

/** Places for the texts of a line: beside its legs, the longest leg first. */
public final class LineSpots {
    private static final double ASIDE_MM = 1.5;
    private static final double STEP_MM = 2.5;
    private static final int STEPS = 14;
    private static final double BESIDE_NAME = 2.5;

    private LineSpots() {}

    /** A straight piece of a line: the one after its point number {@code index}. */
    record Leg(int index, Point a, Point b) {
        double length() {
            return Math.abs(a.xMm() - b.xMm()) + Math.abs(a.yMm() - b.yMm());
        }

        boolean lying() {
            return a.yMm() == b.yMm();
        }

        double middleX() {
            return (a.xMm() + b.xMm()) / 2;
        }

        double middleY() {
            return (a.yMm() + b.yMm()) / 2;
        }
    }

    static List<Leg> legs(List<Point> points) {
        List<Leg> legs = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            legs.add(new Leg(i - 1, points.get(i - 1), points.get(i)));
        }
        legs.sort(Comparator.comparingDouble(Leg::length).reversed());
        return legs;
    }

    /**
     * Where a block of this size may stand beside a line.
     *
     * @param name what the name that is set in the line covers: the block stands clear of it, above or below if it can;
     *     null without a name
     */
    public static Spots of(List<Point> points, double width, double height, @Nullable Rect name) {
        return new Beside(List.copyOf(points), width, height, name);
    }

    private record Beside(
            List<Point> points,
            double width,
            double height,
            @Nullable Rect name) implements Spots {
        @Override
        public List<Spot> all() {
            List<Spot> spots = new ArrayList<>();
            parts().forEach(p -> spots.addAll(p.all()));
            return spots;
        }

        @Override
        public List<Part> parts() {
            List<Leg> legs = legs(points);
            double longest = Math.max(1, legs.get(0).length());
            List<Part> parts = new ArrayList<>(legs.size());
            for (Leg leg : legs) {
                double base = 12 * (1 - leg.length() / longest);
                parts.add(new Part(base, () -> beside(leg, base)));
            }
            return parts;
        }

        private List<Spot> beside(Leg leg, double base) {
            List<Spot> spots = new ArrayList<>();
            if (leg.lying()) {
                lying(spots, leg, width, height, base);
            } else {
                double clear = name == null ? ASIDE_MM : Math.max(ASIDE_MM, name.width() / 2 + 1.2);
                standing(spots, leg, width, height, base, clear);
            }
            if (name != null) {
                Rect beside = name.grown(4, 0);
                spots.replaceAll(
                        s -> s.rect().overlaps(beside) ? new Spot(s.rect(), s.side(), s.cost() + BESIDE_NAME) : s);
            }
            return spots;
        }
    }

    private static void standing(List<Spot> spots, Leg leg, double width, double height, double base, double aside) {
        double reach = leg.length() / 2 + height / 2 - 1.5;
        for (int k = 0; k <= 2 * STEPS; k++) {
            double off = offset(k);
            if (Math.abs(off) > reach) {
                continue;
            }
            double over = Math.max(0, Math.abs(off) + height / 2 - leg.length() / 2);
            double cost = base + 0.25 * Math.abs(off) + over;
            double y = leg.middleY() + off - height / 2;
            double x = leg.middleX();
            spots.add(new Spot(Rect.of(x + aside, y, width, height), Side.RIGHT, cost));
            spots.add(new Spot(Rect.of(x - aside - width, y, width, height), Side.LEFT, cost + 4));
        }
    }

    private static void lying(List<Spot> spots, Leg leg, double width, double height, double base) {
        double reach = leg.length() / 2 + width / 2 - 3;
        for (int k = 0; k <= 2 * STEPS; k++) {
            double off = offset(k);
            if (Math.abs(off) > reach) {
                continue;
            }
            double over = Math.max(0, Math.abs(off) + width / 2 - leg.length() / 2);
            double cost = base + 0.25 * Math.abs(off) + 0.6 * over;
            double x = leg.middleX() + off - width / 2;
            double y = leg.middleY();
            spots.add(new Spot(Rect.of(x, y - ASIDE_MM - height, width, height), Side.ABOVE, cost));
            spots.add(new Spot(Rect.of(x, y + ASIDE_MM, width, height), Side.BELOW, cost + 3));
        }
    }

    /** 0, one step this way, one that way, two this way … */
    private static double offset(int k) {
        return (k % 2 == 1 ? (k + 1) / 2 : -k / 2) * STEP_MM;
    }
}
