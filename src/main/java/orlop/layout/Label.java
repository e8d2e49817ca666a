package orlop.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A block of text that wants a place.
 *
 * @param id unique among the labels
 * @param width mm
 * @param height mm
 * @param targets what it speaks of: a leader may end at any of them, at least one, the best first
 * @param spots where it may stand, at least one
 * @param fixed whether a person put it there: it has one spot and keeps it
 */
public record Label(String id, double width, double height, List<Rect> targets, List<Spot> spots, boolean fixed) {
    public Label {
        targets = List.copyOf(targets);
        spots = List.copyOf(spots);
        if (spots.isEmpty() || targets.isEmpty()) {
            throw new IllegalArgumentException("label " + id + " has no spot or no target");
        }
    }

    public Label(String id, double width, double height, Rect target, List<Spot> spots, boolean fixed) {
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

    /** A straight thin line from a label to what it speaks of. */
    public record Leader(double x1, double y1, double x2, double y2) {
        Rect box() {
            return new Rect(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
        }

        double length() {
            return Math.hypot(x1 - x2, y1 - y2);
        }
    }
}
