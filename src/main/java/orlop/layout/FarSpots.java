package orlop.layout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;

/** Looks ever farther from what a text speaks of for a place that is wholly free. */
final class FarSpots {
    private static final double STEP_MM = 2.5;
    private static final int RINGS = 40;
    private static final int NEAR_RINGS = 12;
    private static final double CLEAR_MM = 0.4;
    private static final double CROSSING_MM = 8;
    private static final int ALONG = 4;

    /** A text this near to what it speaks of needs no leader. */
    private static final double BY_HAND_MM = 4;

    private final Ground ground;
    private final Label label;
    private final Seen seen;
    private double width;
    private double height;

    /** @param seen is told where was looked */
    FarSpots(Ground ground, Label label, Seen seen) {
        this.ground = ground;
        this.label = label;
        this.seen = seen;
        this.width = label.width();
        this.height = label.height();
    }

    private record Found(Label.Put put, double cost) {}

    /** Where a person put it; if that is apart from what it speaks of, with a leader to the nearest part of that. */
    static Label.Put byHand(Label label, Spot spot) {
        Label.Leader best = null;
        for (Rect target : label.targets()) {
            Label.Leader m = leader(spot.rect(), target);
            if (best == null || m.length() < best.length()) {
                best = m;
            }
        }
        boolean beside = best == null || best.length() <= BY_HAND_MM;
        return new Label.Put(spot.rect(), spot.side(), beside ? null : best);
    }

    /**
     * The nearest free place, with a leader, with a corner if none runs straight; set in shorter lines if there is none else;
     * none if the sheet is full.
     */
    Optional<Label.Put> find() {
        double reach = RINGS * STEP_MM + Math.max(width, height);
        if (!label.target().grown(reach).overlaps(ground.area())) {
            seen.add(label.target().grown(reach)); // it lies beside the sheet
            return Optional.empty();
        }
        Found best = whole();
        if (best == null) {
            Set<List<Double>> sizes = new LinkedHashSet<>();
            label.spots()
                    .all()
                    .forEach(s -> sizes.add(List.of(s.rect().width(), s.rect().height())));
            for (List<Double> size : sizes) {
                if (best == null && size.get(1) > label.height()) {
                    width = size.get(0);
                    height = size.get(1);
                    best = whole();
                }
            }
        }
        return Optional.ofNullable(best).map(Found::put);
    }

    private @Nullable Found whole() {
        Found straight = search(false);
        return straight == null ? search(true) : straight;
    }

    private @Nullable Found search(boolean corner) {
        Found best = null;
        double near =
                Math.max(width + label.target().width(), height + label.target().height()) / 2;
        int ring = 1;
        while (ring <= RINGS && (best == null || best.cost > ring * STEP_MM - near)) {
            best = ring(ring, ring > NEAR_RINGS ? 2 : 1, corner, best);
            ring += ring >= NEAR_RINGS ? 2 : 1;
        }
        return best;
    }

    private @Nullable Found ring(int ring, int by, boolean corner, @Nullable Found before) {
        Found best = before;
        for (int i = -ring; i <= ring; i += by) {
            int step = Math.abs(i) == ring ? by : 2 * ring;
            for (int j = -ring; j <= ring; j += step) {
                best = at(i * STEP_MM, j * STEP_MM, corner, best);
            }
        }
        return best;
    }

    private @Nullable Found at(double dx, double dy, boolean corner, @Nullable Found before) {
        Rect t = label.target();
        Rect r = Rect.of(t.centreX() + dx - width / 2, t.centreY() + dy - height / 2, width, height);
        seen.add(r.grown(Labeller.GAP_MM));
        if (!ground.clear(label.id(), r)) {
            return before;
        }
        Side side = r.centreX() >= t.centreX() ? Side.RIGHT : Side.LEFT;
        Found best = before;
        for (Rect target : label.targets()) {
            for (int k = 0; k <= ALONG; k++) {
                Rect end = k == 0 ? target : part(target, k - 1);
                for (Label.Leader leader : corner ? turned(r, end) : List.of(leader(r, end))) {
                    best = better(best, r, side, leader);
                }
            }
        }
        return best;
    }

    private @Nullable Found better(@Nullable Found best, Rect r, Side side, Label.Leader leader) {
        double length = leader.length();
        if (best != null && length >= best.cost) {
            return best;
        }
        seen.add(leader.box().grown(Labeller.GAP_MM));
        double cost = length;
        for (Label.Leader piece : leader.pieces()) {
            if (overTexts(piece)) {
                return best;
            }
            cost += solids(piece) + leads(piece);
            if (best == null ? cost == Double.POSITIVE_INFINITY : cost >= best.cost) {
                return best;
            }
        }
        return new Found(new Label.Put(r, side, leader), cost);
    }

    /** Out of the text one way along the grid of the sheet and on to the target the other way. */
    private static List<Label.Leader> turned(Rect r, Rect end) {
        double x = end.centreX();
        double y = end.centreY();
        List<Label.Leader> all = new ArrayList<>();
        double side = x < r.minX() ? r.minX() - CLEAR_MM : r.maxX() + CLEAR_MM;
        if (x < r.minX() - CLEAR_MM || x > r.maxX() + CLEAR_MM) {
            all.add(new Label.Leader(side, r.centreY(), new Point(x, r.centreY()), x, y));
        }
        double edge = y < r.minY() ? r.minY() - CLEAR_MM : r.maxY() + CLEAR_MM;
        if (y < r.minY() - CLEAR_MM || y > r.maxY() + CLEAR_MM) {
            for (double from : new double[] {r.minX() + 1, r.centreX(), r.maxX() - 1}) {
                all.add(new Label.Leader(from, edge, new Point(from, y), x, y));
            }
        }
        return all;
    }

    /** Whether a leader would run over a text other than its own. */
    private boolean overTexts(Label.Leader leader) {
        Rect near = leader.box().grown(Labeller.GAP_MM);
        return ground.anyText(near, t -> !t.id.equals(label.id()) && leader.crosses(t.rect.grown(0.2)));
    }

    /** What it costs to cross the lines in the way; infinite if it runs through a symbol that it does not lead to. */
    private double solids(Label.Leader leader) {
        double cost = 0;
        for (Ground.Solid s : ground.solids(leader.box().grown(0.01))) {
            if (leader.crosses(s.rect) && !s.rect.grown(Labeller.GAP_MM).contains(leader.x2(), leader.y2())) {
                if (!s.line) {
                    return Double.POSITIVE_INFINITY;
                }
                cost += s.owner.isEmpty() ? 3 * CROSSING_MM : CROSSING_MM;
            }
        }
        return cost;
    }

    private double leads(Label.Leader leader) {
        double cost = 0;
        for (Ground.Lead l : ground.leads(leader.box().grown(0.01))) {
            if (!l.id.equals(label.id()) && leader.meets(l.piece)) {
                cost += 2 * CROSSING_MM;
            }
        }
        return cost;
    }

    /** A point along a line, or the middle of a side of a symbol. */
    private static Rect part(Rect target, int k) {
        if (target.width() > 0 && target.height() > 0) {
            double x = k == 0 ? target.minX() : k == 1 ? target.maxX() : target.centreX();
            double y = k == 2 ? target.minY() : k == 3 ? target.maxY() : target.centreY();
            return new Rect(x, y, x, y);
        }
        double share = (k + 0.5) / ALONG;
        double x = target.minX() + share * target.width();
        double y = target.minY() + share * target.height();
        return new Rect(x, y, x, y);
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
