package orlop.layout;

import java.util.ArrayList;
import java.util.List;

/** Places for the texts of a component: where its symbol says, then all around it. */
public final class BoxSpots {
    private static final double ASIDE_MM = 1;
    private static final double STEP_MM = 1.25;

    private BoxSpots() {}

    /**
     * Where a block of this size may stand by a symbol.
     *
     * @param preferred sides that the symbol prefers, the best first
     */
    public static Spots around(Rect ink, List<Side> preferred, double width, double height) {
        return new Around(ink, List.copyOf(preferred), width, height);
    }

    private record Around(Rect ink, List<Side> preferred, double width, double height) implements Spots {
        @Override
        public List<Spot> all() {
            List<Spot> spots = new ArrayList<>();
            parts().forEach(p -> spots.addAll(p.all()));
            return spots;
        }

        @Override
        public List<Part> parts() {
            List<Part> parts = new ArrayList<>(4);
            for (Side s : preferred) {
                parts.add(part(s, 3 * parts.size()));
            }
            for (Side s : Side.values()) {
                if (!preferred.contains(s)) {
                    parts.add(part(s, 4 + 3 * parts.size()));
                }
            }
            return parts;
        }

        private Part part(Side side, double base) {
            return new Part(base, () -> beside(ink, side, width, height, base));
        }
    }

    private static List<Spot> beside(Rect ink, Side side, double width, double height, double base) {
        List<Spot> spots = new ArrayList<>();
        boolean aside = side == Side.LEFT || side == Side.RIGHT;
        double reach = aside ? (ink.height() + height) / 2 + 2 : (ink.width() + width) / 2 + 1;
        for (int k = 0; k * STEP_MM <= reach; k++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                if (k > 0 || sign > 0) {
                    double off = sign * k * STEP_MM;
                    boolean apart = !aside && Math.abs(off) >= width / 2;
                    Side set = apart ? off > 0 ? Side.RIGHT : Side.LEFT : side;
                    spots.add(new Spot(rect(ink, side, width, height, off), set, base + 0.4 * Math.abs(off)));
                }
            }
        }
        return spots;
    }

    private static Rect rect(Rect ink, Side side, double width, double height, double off) {
        double midX = ink.centreX() - width / 2 + off;
        double midY = ink.centreY() - height / 2 + off;
        return switch (side) {
            case RIGHT -> Rect.of(ink.maxX() + ASIDE_MM, midY, width, height);
            case LEFT -> Rect.of(ink.minX() - ASIDE_MM - width, midY, width, height);
            case ABOVE -> Rect.of(midX, ink.minY() - ASIDE_MM - height, width, height);
            case BELOW -> Rect.of(midX, ink.maxY() + ASIDE_MM, width, height);
        };
    }

    /** Where the name of a bar may stand: over it from its beginning on, under it, before and behind it. */
    public static Spots alongBar(Rect bar, double width, double height) {
        return new AlongBar(bar, width, height);
    }

    private record AlongBar(Rect bar, double width, double height) implements Spots {
        @Override
        public List<Spot> all() {
            List<Spot> spots = new ArrayList<>();
            parts().forEach(p -> spots.addAll(p.all()));
            return spots;
        }

        @Override
        public List<Part> parts() {
            List<Part> parts = new ArrayList<>();
            parts.add(new Part(0, this::along));
            parts.addAll(new Worse(around(bar, List.of(Side.RIGHT, Side.LEFT), width, height), 8).parts());
            return parts;
        }

        private List<Spot> along() {
            List<Spot> spots = new ArrayList<>();
            if (bar.width() >= bar.height()) {
                double room = Math.max(0, bar.width() - width);
                for (double off = 0; off <= room; off += 2.5) {
                    double x = bar.minX() + off;
                    Rect above = Rect.of(x, bar.minY() - ASIDE_MM - height, width, height);
                    Rect below = Rect.of(x, bar.maxY() + ASIDE_MM, width, height);
                    spots.add(new Spot(above, Side.RIGHT, 0.05 * off));
                    spots.add(new Spot(below, Side.RIGHT, 3 + 0.05 * off));
                }
            }
            return spots;
        }
    }
}
