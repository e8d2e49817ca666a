package orlop.layout;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The decisions of a labelling in the order in which they were made, and those of an earlier one that still hold: at each,
 * all places are known in which the sheet differs from what it was at that moment the last time.
 */
final class Decisions {
    /** A label that was put to a spot, from where it stood; null if it stood nowhere. */
    record Move(String id, @Nullable Spot from, Spot spot) {
        void covers(Changes to) {
            if (from != null) {
                to.add(from.rect());
            }
            to.add(spot.rect());
        }
    }

    /**
     * Which labels a decision moved where, and where it looked.
     *
     * @param moves all of them in their order, those too that were taken back: in whatever order the texts come to lie on
     *     the sheet, they are met again
     * @param settled where its own label stands for good; null if that is not decided by it
     * @param asked labels other than its own that it asked where they might stand
     */
    record Decision(Rect seen, List<Move> moves, Label.@Nullable Put settled, Set<String> asked) {
        boolean same(@Nullable Decision o) {
            return o != null && o.moves.equals(moves) && Objects.equals(o.settled, settled);
        }

        /** Everything that it covers. */
        void covers(Changes to) {
            moves.forEach(m -> m.covers(to));
            if (settled != null) {
                to.add(settled);
            }
        }
    }

    /** Where a label stands in the end, and where was looked for it. */
    record Far(Rect seen, Label.Put put) {}

    private final Map<String, LabelState> states;
    private final boolean again;
    private final Changes changes = new Changes();
    private List<Move> moves = new ArrayList<>(1);
    private Label.@Nullable Put settled;
    private Set<String> asked = Set.of();

    private Decisions(Map<String, LabelState> states, boolean again) {
        this.states = states;
        this.again = again;
    }

    /**
     * @param labelling the earlier one; null if there is none
     * @param fixed what differs of what stays; null if there is none
     * @param states of the labels that are to be placed, by id; each is told how it was
     */
    static Decisions of(
            @Nullable Labelling labelling, @Nullable FixedThings fixed, Ground ground, Map<String, LabelState> states) {
        boolean comparable = labelling != null
                && fixed != null
                && fixed.sameOrder()
                && labelling.area().equals(ground.area())
                && sameOrder(labelling.states(), states);
        Decisions d = new Decisions(states, comparable);
        if (labelling != null && fixed != null && comparable) {
            d.compare(labelling.states(), fixed);
        }
        return d;
    }

    private void compare(Map<String, LabelState> before, FixedThings fixed) {
        fixed.changed().forEach(changes::add);
        int known = 0;
        for (LabelState s : states.values()) {
            LabelState was = before.get(s.id());
            s.was = was;
            s.other = was == null || !s.label.equals(was.label);
            known += was == null ? 0 : 1;
            if (s.other) {
                standsByHand(s);
                standsByHand(was);
            }
        }
        if (known < before.size()) {
            Map<String, LabelState> gone = new LinkedHashMap<>(before);
            gone.keySet().removeAll(states.keySet());
            gone.values().forEach(this::standsByHand);
            before.values().forEach(s -> covers(s, gone));
        }
    }

    private void standsByHand(@Nullable LabelState s) {
        if (s != null && s.label.fixed()) {
            changes.add(FarSpots.byHand(s.label, s.label.spots().all().get(0)));
        }
    }

    private static boolean sameOrder(Map<String, LabelState> was, Map<String, LabelState> is) {
        Iterator<String> old = was.keySet().iterator();
        Iterator<String> now = is.keySet().iterator();
        while (old.hasNext() && now.hasNext()) {
            if (!old.next().equals(now.next())) {
                return sameOrderOfCommon(was, is);
            }
        }
        return true;
    }

    private static boolean sameOrderOfCommon(Map<String, LabelState> was, Map<String, LabelState> is) {
        List<String> common = new ArrayList<>();
        is.keySet().stream().filter(was::containsKey).forEach(common::add);
        List<String> old = new ArrayList<>();
        was.keySet().stream().filter(is::containsKey).forEach(old::add);
        return common.equals(old);
    }

    /** Everywhere where one of those that are gone ever stood, and what it pushed elsewhere. */
    private void covers(LabelState s, Map<String, LabelState> gone) {
        boolean isGone = gone.containsKey(s.id());
        for (int stage = 0; stage < s.stages(); stage++) {
            Decision d = s.decision(stage);
            if (d != null && isGone) {
                d.covers(changes); // it may have pushed others, which are not pushed now
            } else if (d != null) {
                for (Move m : d.moves) {
                    if (gone.containsKey(m.id)) {
                        m.covers(changes);
                    }
                }
            }
        }
        if (isGone && s.far != null) {
            changes.add(s.far.put);
        }
    }

    private static @Nullable Decision old(int stage, LabelState s) {
        return s.was == null ? null : s.was.decision(stage);
    }

    /** The earlier decision on a label, if it holds still. */
    @Nullable
    Decision kept(int stage, LabelState s) {
        Decision d = s.other ? null : old(stage, s);
        if (d == null || asksOther(d) || changes.touch(d.seen)) {
            return null;
        }
        s.decided(stage, d);
        return d;
    }

    private boolean asksOther(Decision d) {
        for (String id : d.asked) {
            LabelState s = states.get(id);
            if (s == null || s.other) {
                return true;
            }
        }
        return false;
    }

    void begin() {
        moves = new ArrayList<>(1);
        settled = null;
        asked = Set.of();
    }

    /** Is told of a label that is asked where it might stand. */
    void asks(String id) {
        if (asked.isEmpty()) {
            asked = new LinkedHashSet<>();
        }
        asked.add(id);
    }

    /** Is told that no stage follows: what later ones did the last time doesn't happen. */
    void ended(int stages) {
        for (LabelState s : states.values()) {
            for (int n = stages; s.was != null && n < s.was.stages(); n++) {
                skipped(n, s);
            }
        }
    }

    /** Is told that nothing is decided on a label: what was decided on it the last time doesn't happen. */
    void skipped(int stage, LabelState s) {
        Decision then = old(stage, s);
        if (then != null) {
            then.covers(changes);
        }
    }

    void settled(Label.Put put) {
        settled = put;
    }

    void moved(String id, @Nullable Spot from, Spot s) {
        moves.add(new Move(id, from, s));
    }

    /** Closes a decision. True if it moved a label. */
    boolean end(int stage, LabelState s, Rect seen) {
        Decision now = new Decision(seen, moves, settled, asked);
        s.decided(stage, now);
        Decision then = old(stage, s);
        if (again && !now.same(then)) {
            now.covers(changes);
            if (then != null) {
                then.covers(changes);
            }
        }
        return !moves.isEmpty();
    }

    @Nullable
    Far keptFar(LabelState s) {
        Far f = s.other || s.was == null ? null : s.was.far;
        if (f == null || changes.touch(f.seen)) {
            return null;
        }
        s.far = f;
        return f;
    }

    /** Is told that a label was settled before the end: where it stood in the end the last time, it may not now. */
    void skippedFar(LabelState s) {
        Far then = s.was == null ? null : s.was.far;
        if (then != null) {
            changes.add(then.put);
        }
    }

    void madeFar(LabelState s, Far now) {
        s.far = now;
        Far then = s.was == null ? null : s.was.far;
        if (then != null && !then.equals(now)) {
            changes.add(then.put);
        }
        if (again && !now.equals(then)) {
            changes.add(now.put);
        }
    }
}
