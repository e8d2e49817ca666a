package orlop.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
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

    private final @Nullable Decisions before;
    /** Labels that are not as they were, that were not there or that are no longer. */
    private final Set<String> others = new HashSet<>();

    private final Changes changes = new Changes();
    private final List<Map<String, Decision>> stages = new ArrayList<>();
    private final Map<String, Far> far = new HashMap<>();
    private List<Move> moves = new ArrayList<>(1);
    private Label.@Nullable Put settled;
    private Set<String> asked = Set.of();

    private Decisions(@Nullable Decisions before) {
        // The chain ends here: what was before the earlier labelling is not needed.
        this.before = before;
    }

    static Decisions none() {
        return new Decisions(null);
    }

    static Decisions of(
            @Nullable Labelling labelling, @Nullable FixedThings fixed, Ground ground, Map<String, Label> labels) {
        if (labelling == null || fixed == null || !labelling.area().equals(ground.area())) {
            return none();
        }
        Decisions d = new Decisions(labelling.decisions().withoutPast());
        labels.forEach((id, l) -> {
            if (!l.equals(labelling.labels().get(id))) {
                d.others.add(id);
            }
        });
        Set<String> gone = new HashSet<>(labelling.labels().keySet());
        gone.removeAll(labels.keySet());
        d.others.addAll(gone);
        if (!d.sameOrder(labelling.labels(), labels) || !fixed.sameOrder()) {
            return none();
        }
        fixed.changed().forEach(d.changes::add);
        for (String id : d.others) {
            for (Label l : Arrays.asList(labels.get(id), labelling.labels().get(id))) {
                if (l != null && l.fixed()) {
                    d.changes.add(byHand(l));
                }
            }
        }
        labelling.decisions().placesOf(gone, d.changes);
        return d;
    }

    private static Label.Put byHand(Label l) {
        return FarSpots.byHand(l, l.spots().all().get(0));
    }

    private Decisions withoutPast() {
        Decisions d = new Decisions(null);
        d.stages.addAll(stages);
        d.far.putAll(far);
        return d;
    }

    private boolean sameOrder(Map<String, Label> was, Map<String, Label> is) {
        if (List.copyOf(is.keySet()).equals(List.copyOf(was.keySet()))) {
            return true;
        }
        List<String> common = new ArrayList<>();
        is.keySet().stream().filter(was::containsKey).forEach(common::add);
        List<String> old = new ArrayList<>();
        was.keySet().stream().filter(is::containsKey).forEach(old::add);
        return common.equals(old);
    }

    /** Everywhere where one of these labels ever stood, and what it pushed elsewhere. */
    private void placesOf(Set<String> others, Changes to) {
        if (others.isEmpty()) {
            return;
        }
        for (Map<String, Decision> stage : stages) {
            for (Map.Entry<String, Decision> e : stage.entrySet()) {
                Decision d = e.getValue();
                if (others.contains(e.getKey())) {
                    d.covers(to); // it may have pushed others, which are not pushed now
                }
                for (Move m : d.moves) {
                    if (others.contains(m.id)) {
                        m.covers(to);
                    }
                }
            }
        }
        for (String id : others) {
            Far f = far.get(id);
            if (f != null) {
                to.add(f.put);
            }
        }
    }

    private Map<String, Decision> stage(int n) {
        while (stages.size() <= n) {
            boolean known = before != null && stages.size() < before.stages.size();
            int expected =
                    before != null && known ? before.stages.get(stages.size()).size() : 8;
            stages.add(new HashMap<>(2 * expected));
        }
        return stages.get(n);
    }

    private @Nullable Decision old(int stage, String id) {
        return before != null && stage < before.stages.size()
                ? before.stages.get(stage).get(id)
                : null;
    }

    /** The earlier decision on a label, if it holds still. */
    @Nullable
    Decision kept(int stage, String id) {
        Decision d = others.contains(id) ? null : old(stage, id);
        boolean asks = d != null && !d.asked.isEmpty() && !Collections.disjoint(d.asked, others);
        if (d == null || asks || changes.touch(d.seen)) {
            return null;
        }
        stage(stage).put(id, d);
        return d;
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
        if (before != null) {
            for (int n = stages; n < before.stages.size(); n++) {
                before.stages.get(n).values().forEach(d -> d.covers(changes));
            }
        }
    }

    /** Is told that nothing is decided on a label: what was decided on it the last time doesn't happen. */
    void skipped(int stage, String id) {
        Decision then = old(stage, id);
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
    boolean end(int stage, String id, Rect seen) {
        Decision now = new Decision(seen, moves, settled, asked);
        stage(stage).put(id, now);
        Decision then = old(stage, id);
        if (before != null && !now.same(then)) {
            now.covers(changes);
            if (then != null) {
                then.covers(changes);
            }
        }
        return !moves.isEmpty();
    }

    @Nullable
    Far keptFar(String id) {
        Far f = before == null || others.contains(id) ? null : before.far.get(id);
        if (f == null || changes.touch(f.seen)) {
            return null;
        }
        far.put(id, f);
        return f;
    }

    /** Is told that a label was settled before the end: where it stood in the end the last time, it may not now. */
    void skippedFar(String id) {
        Far then = before == null ? null : before.far.get(id);
        if (then != null) {
            changes.add(then.put);
        }
    }

    void madeFar(String id, Far now) {
        far.put(id, now);
        Far then = before == null ? null : before.far.get(id);
        if (then != null && !then.equals(now)) {
            changes.add(then.put);
        }
        if (before != null && !now.equals(then)) {
            changes.add(now.put);
        }
    }
}
