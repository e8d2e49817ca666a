package orlop.layout;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Looks ever farther from what a text speaks of for a place that is wholly free. */
final class FarSpots {
    private static final double STEP_MM = 2.5;
    private static final int RINGS = 60;
    private static final double CLEAR_MM = 0.4;

    private final Labeller labeller;
    private final Rect area;

    FarSpots(Labeller labeller, Rect area) {
        this.labeller = labeller;
        this.area = area;
    }

    /** The nearest free place, with a leader; none if the sheet is full. */
    Optional<Label.Put> find(Label l) {
        for (int ring = 1; ring <= RINGS; ring++) {
            Optional<Label.Put> put = ring(l, ring);
            if (put.isPresent()) {
                return put;
            }
        }
        return Optional.empty();
    }

    private Optional<Label.Put> ring(Label l, int ring) {
        Label.@Nullable Put best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int i = -ring; i <= ring; i++) {
            int step = Math.abs(i) == ring ? 1 : 2 * ring;
            for (int j = -ring; j <= ring; j += step) {
                Optional<Label.Put> put = at(l, i * STEP_MM, j * STEP_MM);
                if (put.isPresent() && length(put.get()) < least) {
                    least = length(put.get());
                    best = put.get();
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private Optional<Label.Put> at(Label l, double dx, double dy) {
        Rect t = l.target();
        Rect r = Rect.of(t.centreX() + dx - l.width() / 2, t.centreY() + dy - l.height() / 2, l.width(), l.height());
        if (!area.contains(r) || labeller.conflicts(l, r) > 0) {
            return Optional.empty();
        }
        Label.Leader leader = leader(r, t);
        Side side = r.centreX() >= t.centreX() ? Side.RIGHT : Side.LEFT;
        return labeller.overOthers(l, leader) ? Optional.empty() : Optional.of(new Label.Put(r, side, leader));
    }

    private static double length(Label.Put put) {
        Label.Leader m = put.leader();
        return m == null ? 0 : Math.hypot(m.x1() - m.x2(), m.y1() - m.y2());
    }

    /** From the nearest side of the text, half a letter high, to the nearest edge of what it speaks of. */
    private static Label.Leader leader(Rect r, Rect target) {
        double x1 = Math.max(r.minX(), Math.min(r.maxX(), target.centreX()));
        double y1 = Math.max(r.minY(), Math.min(r.maxY(), target.centreY()));
        x1 += x1 == r.minX() ? -CLEAR_MM : x1 == r.maxX() ? CLEAR_MM : 0;
        y1 += y1 == r.minY() ? -CLEAR_MM : y1 == r.maxY() ? CLEAR_MM : 0;
        double x2 = Math.max(target.minX(), Math.min(target.maxX(), x1));
        double y2 = Math.max(target.minY(), Math.min(target.maxY(), y1));
        return new Label.Leader(x1, y1, x2, y2);
    }
}
