package orlop.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    private final Map<String, Label> labels = new LinkedHashMap<>();
    private final Map<String, Label.Put> settled = new HashMap<>();
    private final Map<String, Spot> chosen = new HashMap<>();
    private final Map<String, Candidates> candidates = new HashMap<>();
    private final Map<String, Boolean> beyond = new HashMap<>();
    private Decisions decisions = Decisions.none();
    private @Nullable List<Rect> moved;

    /** @param area within which the texts stand of all that is not itself outside */
    public Labeller(Rect area) {
        ground = new Ground(area);
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
        for (Label l : wanted) {
            labels.put(l.id(), l);
        }
        if (before != null && before.isOf(ground, labels)) {
            before.places().forEach(ground::settle);
            moved = List.of();
            return before;
        }
        FixedThings fixed = before == null ? null : FixedThings.compare(before.fixed(), ground.fixed());
        decisions = Decisions.of(before, fixed, ground, labels);
        wanted.stream().filter(Label::fixed).forEach(this::byHand);
        wanted.stream().filter(l -> !l.fixed()).forEach(l -> decide(0, l, seen -> first(l, seen)));
        boolean restless = true;
        int stage = 1;
        while (stage <= SWEEPS && restless) {
            restless = sweep(stage++);
        }
        decisions.ended(stage);
        Map<String, Label.Put> out = new LinkedHashMap<>();
        for (Label l : wanted) {
            out.put(l.id(), apart(l));
        }
        if (before != null && fixed != null && before.area().equals(ground.area())) {
            List<Rect> changed = new ArrayList<>(fixed.changed());
            moved(out, before.places(), changed);
            moved(before.places(), out, changed);
            moved = Collections.unmodifiableList(changed);
        }
        return new Labelling(out, ground, labels, decisions);
    }

    private static void moved(Map<String, Label.Put> of, Map<String, Label.Put> from, List<Rect> to) {
        of.forEach((id, put) -> {
            Label.Put other = from.get(id);
            if (other == null || !other.rect().equals(put.rect())) {
                to.add(put.rect());
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

    private void byHand(Label l) {
        Spot s = candidates(l).first();
        choose(l, s);
        settle(l.id(), FarSpots.byHand(l, s));
    }

    private void settle(String id, Label.Put put) {
        settled.put(id, put);
        ground.settle(id, put);
    }

    /** The best place beside what it speaks of; where symbols and lines leave none, one apart, before others take it. */
    private void first(Label l, Seen seen) {
        if (!candidates(l).any(s -> !blocked(s, seen)) && !beyond(l)) {
            Optional<Label.Put> far = new FarSpots(ground, l, seen).find();
            if (far.isPresent()) {
                settle(l.id(), far.get());
                decisions.settled(far.get());
                return;
            }
        }
        choose(l, best(l, seen));
    }

    /** Whether what it speaks of lies outside the area: its text stays with it and is not drawn in from afar. */
    private boolean beyond(Label l) {
        return beyond.computeIfAbsent(
                l.id(), k -> !candidates(l).any(s -> ground.area().contains(s.rect())));
    }

    private boolean within(Label l, Rect r) {
        return ground.area().contains(r) || beyond(l);
    }

    private boolean blocked(Spot s, Seen seen) {
        Rect room = s.rect().grown(GAP_MM);
        seen.add(room);
        return !ground.area().contains(s.rect()) || ground.built(room);
    }

    private Label.Put apart(Label l) {
        Label.Put stands = settled.get(l.id());
        if (stands != null) {
            decisions.skippedFar(l.id());
            return stands;
        }
        Spot s = chosen(l.id());
        Label.Put near = new Label.Put(s.rect(), s.side(), null);
        Decisions.Far kept = decisions.keptFar(l.id());
        if (kept == null) {
            Seen seen = new Seen();
            boolean free = clear(l, s, seen);
            Label.Put put = free || beyond(l)
                    ? near
                    : new FarSpots(ground, l, seen).find().orElse(near);
            kept = new Decisions.Far(seen.rect(), put);
            decisions.madeFar(l.id(), kept);
        }
        ground.settle(l.id(), kept.put());
        return kept.put();
    }

    private Spot chosen(String id) {
        return Optional.ofNullable(chosen.get(id)).orElseThrow();
    }

    private void choose(Label l, Spot s) {
        Spot from = chosen.put(l.id(), s);
        ground.put(l.id(), s.rect());
        decisions.moved(l.id(), from, s);
    }

    /** What is worked out for a decision; it chooses spots and tells where it looked. */
    private interface Choice {
        void make(Seen seen);
    }

    /** Takes the moves of an earlier decision if nothing has changed where it looked, or decides anew. */
    private boolean decide(int stage, Label l, Choice choice) {
        Decisions.Decision kept = decisions.kept(stage, l.id());
        if (kept != null) {
            for (Decisions.Move m : kept.moves()) {
                chosen.put(m.id(), m.spot());
                ground.put(m.id(), m.spot().rect());
            }
            if (kept.settled() != null) {
                settle(l.id(), kept.settled());
            }
            return !kept.moves().isEmpty();
        }
        Seen seen = new Seen();
        decisions.begin();
        choice.make(seen);
        return decisions.end(stage, l.id(), seen.rect());
    }

    private boolean sweep(int stage) {
        boolean moved = false;
        for (Label l : labels.values()) {
            if (settled.containsKey(l.id())) {
                decisions.skipped(stage, l.id());
            } else {
                moved |= decide(stage, l, seen -> {
                    if (!clear(l, chosen(l.id()), seen)) {
                        improve(l, seen);
                    }
                });
            }
        }
        return moved;
    }

    private boolean clear(Label l, Spot s, Seen seen) {
        seen.add(s.rect().grown(GAP_MM));
        return ground.clear(l.id(), s.rect());
    }

    private void improve(Label l, Seen seen) {
        Spot before = chosen(l.id());
        Spot better = best(l, seen);
        if (clear(l, better, seen)) {
            choose(l, better);
            return;
        }
        int tried = 0;
        for (Spot s : candidates(l).all()) {
            Rect room = s.rect().grown(GAP_MM);
            seen.add(room);
            boolean open = within(l, s.rect()) && !ground.built(room);
            if (tried < PUSHES && open) {
                tried++;
                if (push(l, s, seen)) {
                    return;
                }
            }
        }
        if (!better.equals(before)) {
            choose(l, better);
        }
    }

    /** Takes a spot if every text that lies there can go to one where it lies on nothing. */
    private boolean push(Label l, Spot s, Seen seen) {
        List<Label> others = new ArrayList<>();
        for (Ground.Text t : ground.texts(s.rect().grown(GAP_MM))) {
            if (t.id.isEmpty()) {
                return false;
            }
            if (!t.id.equals(l.id())) {
                others.add(label(t.id));
            }
        }
        if (others.size() > 2 || others.stream().anyMatch(o -> settled.containsKey(o.id()))) {
            return false;
        }
        Map<Label, Spot> old = new LinkedHashMap<>();
        old.put(l, chosen(l.id()));
        choose(l, s);
        for (Label o : others) {
            old.put(o, chosen(o.id()));
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

    private Label label(String id) {
        return Optional.ofNullable(labels.get(id)).orElseThrow();
    }

    /** The cheapest spot as things stand. */
    private Spot best(Label l, Seen seen) {
        return candidates(l)
                .best(
                        s -> seen.add(s.rect().grown(GAP_MM)),
                        s -> s.cost() + (within(l, s.rect()) ? 0 : 5 * CONFLICT) + solidCost(s.rect()),
                        s -> textCost(l, s.rect()));
    }

    /** Made once, and only for those that are decided anew. */
    private Candidates candidates(Label l) {
        return candidates.computeIfAbsent(l.id(), k -> new Candidates(l.spots()));
    }

    private double solidCost(Rect r) {
        double cost = 0;
        Rect room = r.grown(GAP_MM);
        for (Ground.Solid s : ground.solids(room)) {
            cost += CONFLICT + CONFLICT_PER_MM2 * room.sharedArea(s.rect);
        }
        return cost;
    }

    private double textCost(Label l, Rect r) {
        Rect room = r.grown(GAP_MM);
        double cost = CONFLICT * ground.crossing(l.id(), room);
        for (Ground.Text t : ground.texts(room)) {
            if (!t.id.equals(l.id())) {
                cost += CONFLICT + CONFLICT_PER_MM2 * room.sharedArea(t.rect);
            }
        }
        return cost;
    }
}
