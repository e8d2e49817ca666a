package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
    /**
     * Which labels a decision moved where, and where it looked.
     *
     * @param settled where its own label stands for good; null if that is not decided by it
     */
    record Decision(Rect seen, Map<String, Spot> moves, Label.@Nullable Put settled) {
        boolean same(@Nullable Decision o) {
            return o != null && o.moves.equals(moves) && Objects.equals(o.settled, settled);
        }

        /** Everything that it covers. */
        void covers(Changes to) {
            moves.values().forEach(s -> to.add(s.rect()));
            if (settled != null) {
                to.add(settled);
            }
        }
    }

    /** Where a label stands in the end, and where was looked for it. */
    record Far(Rect seen, Label.Put put) {}

    private final @Nullable Decisions before;
    private final Set<String> same = new HashSet<>();
    private final Changes changes = new Changes();
    private final List<Map<String, Decision>> stages = new ArrayList<>();
    private final Map<String, Far> far = new HashMap<>();
    private Map<String, Spot> moves = new LinkedHashMap<>();
    private Label.@Nullable Put settled;

    private Decisions(@Nullable Decisions before) {
        // The chain ends here: what was before the earlier labelling is not needed.
        this.before = before;
    }

    static Decisions none() {
        return new Decisions(null);
    }

    static Decisions of(@Nullable Labelling labelling, Ground ground, Map<String, Label> labels) {
        if (labelling == null || !labelling.area().equals(ground.area())) {
            return none();
        }
        Decisions d = new Decisions(labelling.decisions().withoutPast());
        labels.forEach((id, l) -> {
            if (l.equals(labelling.labels().get(id))) {
                d.same.add(id);
            }
        });
        if (!d.sameOrder(labelling.labels(), labels)) {
            return none();
        }
        d.compare(labelling.fixed(), ground.fixed());
        labels.values().stream()
                .filter(l -> l.fixed() && !d.same.contains(l.id()))
                .forEach(l -> d.changes.add(byHand(l)));
        labelling.labels().values().stream()
                .filter(l -> !d.same.contains(l.id()))
                .forEach(l -> {
                    if (l.fixed()) {
                        d.changes.add(byHand(l));
                    }
                });
        labelling.decisions().placesOfOthers(d.same, d.changes);
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
        List<String> common = new ArrayList<>();
        is.keySet().stream().filter(was::containsKey).forEach(common::add);
        List<String> old = new ArrayList<>();
        was.keySet().stream().filter(is::containsKey).forEach(old::add);
        return common.equals(old);
    }

    /** What differs, apart from what both lists begin and end with. */
    private void compare(List<Ground.Solid.Key> was, List<Ground.Solid.Key> is) {
        int first = 0;
        int least = Math.min(was.size(), is.size());
        while (first < least && was.get(first).equals(is.get(first))) {
            first++;
        }
        int last = 0;
        while (last < least - first && was.get(was.size() - 1 - last).equals(is.get(is.size() - 1 - last))) {
            last++;
        }
        List<Ground.Solid.Key> old = was.subList(first, was.size() - last);
        List<Ground.Solid.Key> now = is.subList(first, is.size() - last);
        missing(old, new HashSet<>(now));
        missing(now, new HashSet<>(old));
    }

    private void missing(List<Ground.Solid.Key> of, Set<Ground.Solid.Key> in) {
        for (Ground.Solid.Key k : of) {
            if (!in.contains(k)) {
                changes.add(k.rect());
            }
        }
    }

    /** Everywhere where a label ever stood that is not the same now. */
    private void placesOfOthers(Set<String> same, Changes to) {
        for (Map<String, Decision> stage : stages) {
            stage.forEach((own, d) -> {
                if (!same.contains(own) && d.settled != null) {
                    to.add(d.settled);
                }
            });
            stage.values()
                    .forEach(d -> d.moves.forEach((id, s) -> {
                        if (!same.contains(id)) {
                            to.add(s.rect());
                        }
                    }));
        }
        far.forEach((id, f) -> {
            if (!same.contains(id)) {
                to.add(f.put);
            }
        });
    }

    private Map<String, Decision> stage(int n) {
        while (stages.size() <= n) {
            stages.add(new HashMap<>());
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
        Decision d = same.contains(id) ? old(stage, id) : null;
        if (d == null || changes.touch(d.seen)) {
            return null;
        }
        stage(stage).put(id, d);
        return d;
    }

    void begin() {
        moves = new LinkedHashMap<>();
        settled = null;
    }

    void settled(Label.Put put) {
        settled = put;
    }

    void moved(String id, Spot s) {
        moves.put(id, s);
    }

    /** Closes a decision. True if it moved a label. */
    boolean end(int stage, String id, Rect seen) {
        Decision now = new Decision(seen, moves, settled);
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
        Far f = same.contains(id) && before != null ? before.far.get(id) : null;
        if (f == null || changes.touch(f.seen)) {
            return null;
        }
        far.put(id, f);
        return f;
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
