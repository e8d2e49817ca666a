package orlop.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;

/**
 * Finds a place for every text so that none lies on another, on a symbol or on a line.
 *
 * <p>Greedy in the order given; then texts that still lie on something are moved, or push others to places that are as
 * free; what is left stands apart, with a thin line to what it speaks of. The same input gives the same places.
 *
 * <p>With an earlier labelling at hand, a decision is kept where nothing has changed in its surroundings; the result is
 * the same as without it, only quicker.
 */
public final class Labeller {
    /** Least distance between a text and anything else. */
    public static final double GAP_MM = 0.5;

    private static final int SWEEPS = 4;
    private static final int PUSHES = 12;
    private static final double CONFLICT = 200;
    private static final double CONFLICT_PER_MM2 = 10;

    private final Ground ground;
    private final Map<String, LabelState> states = new LinkedHashMap<>();
    private Decisions decisions;
    private @Nullable List<Rect> moved;

    /** @param area within which the texts stand of all that is not itself outside */
    public Labeller(Rect area) {
        ground = new Ground(area);
        decisions = Decisions.of(null, null, ground, states);
    }

    /** Something that no text may lie on. */
    public void solid(Rect r) {
        ground.solid(r);
    }

    /** A bar: no text may lie on it, but a leader may run over it if there is no better way. */
    public void bar(Rect r) {
        ground.bar(r);
    }

    /** A text that stands where it stands: nothing may lie on it, and no leader runs over it. */
    public void text(Rect r) {
        ground.text(r);
    }

    /** A line of this owner that no text may lie on. */
    public void line(String owner, List<Point> points, double widthMm) {
        ground.line(owner, points, widthMm);
    }

    /** Whether this would lie on nothing but lines of this owner. */
    public boolean free(Rect r, String owner) {
        return ground.free(r, owner);
    }

    /** Whether nothing lies here, no text and no leader either: to be asked after all have been placed. */
    public boolean open(Rect r) {
        return ground.clear("\n", r);
    }

    /** A place for each label, by id, in the order given. To be called once. */
    public Map<String, Label.Put> place(List<Label> wanted) {
        return place(wanted, null).places();
    }

    /**
     * The same places as {@link #place(List)}, and what is needed to find them quickly after a change. To be called once.
     *
     * @param before an earlier labelling of nearly the same; null if there is none
     */
    public Labelling place(List<Label> wanted, @Nullable Labelling before) {
        if (before != null && before.isOf(ground, wanted)) {
            before.places().forEach((id, put) -> ground.settle(null, id, put));
            moved = List.of();
            return before;
        }
        for (Label l : wanted) {
            states.put(l.id(), new LabelState(l));
        }
        FixedThings fixed = before == null ? null : FixedThings.compare(before.fixed(), ground.fixed());
        decisions = Decisions.of(before, fixed, ground, states);
        states.values().stream().filter(s -> s.label.fixed()).forEach(this::byHand);
        states.values().stream().filter(s -> !s.label.fixed()).forEach(s -> decide(0, s, seen -> first(s, seen)));
        boolean restless = true;
        int stage = 1;
        while (stage <= SWEEPS && restless) {
            restless = sweep(stage++);
        }
        decisions.ended(stage);
        states.values().forEach(s -> s.placed(apart(s)));
        if (before != null && fixed != null && before.area().equals(ground.area())) {
            List<Rect> changed = new ArrayList<>(fixed.changed());
            moved(states, before.states(), changed);
            moved(before.states(), states, changed);
            moved = Collections.unmodifiableList(changed);
        }
        states.values().forEach(LabelState::forget);
        return new Labelling(ground, states);
    }

    private static void moved(Map<String, LabelState> of, Map<String, LabelState> from, List<Rect> to) {
        of.forEach((id, s) -> {
            LabelState other = from.get(id);
            if (other == null || !other.put().rect().equals(s.put().rect())) {
                to.add(s.put().rect());
            }
        });
    }

    /**
     * Where anything stands now or stood in the earlier labelling that is not in the same place in both; null without one,
     * or if it was of another area. To be asked after {@link #place(List, Labelling)}.
     */
    public @Nullable List<Rect> moved() {
        return moved;
    }

    private void byHand(LabelState s) {
        Spot spot = s.candidates().first();
        choose(s, spot);
        settle(s, FarSpots.byHand(s.label, spot));
    }

    private void settle(LabelState s, Label.Put put) {
        s.settled = put;
        s.text = ground.settle(s.text, s.id(), put);
    }

    /** The best place beside what it speaks of; where symbols and lines leave none, one apart, before others take it. */
    private void first(LabelState s, Seen seen) {
        if (!s.candidates().any(spot -> !blocked(spot, seen)) && !beyond(s)) {
            Optional<Label.Put> far = new FarSpots(ground, s.label, seen).find();
            if (far.isPresent()) {
                settle(s, far.get());
                decisions.settled(far.get());
                return;
            }
        }
        choose(s, best(s, seen));
    }

    private boolean beyond(LabelState s) {
        return s.beyond(ground.area());
    }

    private boolean within(LabelState s, Rect r) {
        return ground.area().contains(r) || beyond(s);
    }

    private boolean blocked(Spot s, Seen seen) {
        Rect room = s.rect().grown(GAP_MM);
        seen.add(room);
        return !ground.area().contains(s.rect()) || ground.built(room);
    }

    private Label.Put apart(LabelState s) {
        if (s.settled != null) {
            decisions.skippedFar(s);
            return s.settled;
        }
        Decisions.Far kept = decisions.keptFar(s);
        if (kept == null) {
            Spot spot = s.chosen();
            Label.Put near = new Label.Put(spot.rect(), spot.side(), null);
            Seen seen = new Seen();
            boolean free = clear(s, spot, seen);
            Label.Put put = free || beyond(s)
                    ? near
                    : new FarSpots(ground, s.label, seen).find().orElse(near);
            kept = new Decisions.Far(seen.rect(), put);
            decisions.madeFar(s, kept);
        }
        s.text = ground.settle(s.text, s.id(), kept.put());
        return kept.put();
    }

    private void choose(LabelState s, Spot spot) {
        Spot from = s.chosen;
        stand(s, spot);
        decisions.moved(s.id(), from, spot);
    }

    private void stand(LabelState s, Spot spot) {
        s.chosen = spot;
        s.text = ground.put(s.text, s.id(), spot.rect());
    }

    /** What is worked out for a decision; it chooses spots and tells where it looked. */
    private interface Choice {
        void make(Seen seen);
    }

    /** Takes the moves of an earlier decision if nothing has changed where it looked, or decides anew. */
    private boolean decide(int stage, LabelState s, Choice choice) {
        Decisions.Decision kept = decisions.kept(stage, s);
        if (kept != null) {
            for (Decisions.Move m : kept.moves()) {
                stand(m.id().equals(s.id()) ? s : state(m.id()), m.spot());
            }
            if (kept.settled() != null) {
                settle(s, kept.settled());
            }
            return !kept.moves().isEmpty();
        }
        Seen seen = new Seen();
        decisions.begin();
        choice.make(seen);
        return decisions.end(stage, s, seen.rect());
    }

    private boolean sweep(int stage) {
        boolean moved = false;
        for (LabelState s : states.values()) {
            if (s.settled != null) {
                decisions.skipped(stage, s);
            } else {
                moved |= decide(stage, s, seen -> {
                    if (!clear(s, s.chosen(), seen)) {
                        improve(s, seen);
                    }
                });
            }
        }
        return moved;
    }

    private boolean clear(LabelState s, Spot spot, Seen seen) {
        seen.add(spot.rect().grown(GAP_MM));
        return ground.clear(s.id(), spot.rect());
    }

    private void improve(LabelState s, Seen seen) {
        Spot before = s.chosen();
        Spot better = best(s, seen);
        if (clear(s, better, seen)) {
            choose(s, better);
            return;
        }
        int tried = 0;
        for (Spot spot : s.candidates().all()) {
            Rect room = spot.rect().grown(GAP_MM);
            seen.add(room);
            boolean open = within(s, spot.rect()) && !ground.built(room);
            if (tried < PUSHES && open) {
                tried++;
                if (push(s, spot, seen)) {
                    return;
                }
            }
        }
        if (!better.equals(before)) {
            choose(s, better);
        }
    }

    /** Takes a spot if every text that lies there can go to one where it lies on nothing. */
    private boolean push(LabelState s, Spot spot, Seen seen) {
        List<LabelState> others = new ArrayList<>();
        for (Ground.Text t : ground.texts(spot.rect().grown(GAP_MM))) {
            if (t.id.isEmpty()) {
                return false;
            }
            if (!t.id.equals(s.id())) {
                others.add(state(t.id));
            }
        }
        if (others.size() > 2 || others.stream().anyMatch(o -> o.settled != null)) {
            return false;
        }
        Map<LabelState, Spot> old = new LinkedHashMap<>();
        old.put(s, s.chosen());
        choose(s, spot);
        for (LabelState o : others) {
            old.put(o, o.chosen());
            decisions.asks(o.id());
            Spot alternative = best(o, seen);
            if (!clear(o, alternative, seen)) {
                old.forEach(this::choose);
                return false;
            }
            choose(o, alternative);
        }
        return true;
    }

    private LabelState state(String id) {
        return Objects.requireNonNull(states.get(id));
    }

    /** The cheapest spot as things stand. */
    private Spot best(LabelState s, Seen seen) {
        return s.candidates()
                .best(
                        spot -> seen.add(spot.rect().grown(GAP_MM)),
                        spot -> spot.cost() + (within(s, spot.rect()) ? 0 : 5 * CONFLICT) + solidCost(spot.rect()),
                        spot -> textCost(s.id(), spot.rect()));
    }

    private double solidCost(Rect r) {
        double cost = 0;
        Rect room = r.grown(GAP_MM);
        for (Ground.Solid s : ground.solids(room)) {
            cost += CONFLICT + CONFLICT_PER_MM2 * room.sharedArea(s.rect);
        }
        return cost;
    }

    private double textCost(String id, Rect r) {
        Rect room = r.grown(GAP_MM);
        double cost = CONFLICT * ground.crossing(id, room);
        for (Ground.Text t : ground.texts(room)) {
            if (!t.id.equals(id)) {
                cost += CONFLICT + CONFLICT_PER_MM2 * room.sharedArea(t.rect);
            }
        }
        return cost;
    }
}
