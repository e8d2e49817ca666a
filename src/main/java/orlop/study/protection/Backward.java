package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which sources reach one end of a cable by ways that no fitting device guards and that don't lead through the cable
 * itself. Searches from the end back to the sources.
 */
final class Backward {
    /** Where the search stands, seen from the end: needs of the positions between. */
    private record Step(
            int pin, int needs, int via, @Nullable Step towardsEnd) {}

    private final Grid grid;
    private final double[] passesA;
    private final int edge;
    private final double ampacityA;
    private final Map<Integer, List<Integer>> seen = new LinkedHashMap<>();
    private final Map<Entrance, List<Integer>> limited = new LinkedHashMap<>();
    private @Nullable Entrance strong;
    private List<Integer> path = List.of();

    /**
     * @param entrances by pin
     * @param edge the cable's connection
     * @param end the pin of its end
     */
    Backward(Grid grid, double[] passesA, Map<Integer, List<Entrance>> entrances, int edge, int end, double ampacityA) {
        this.grid = grid;
        this.passesA = passesA;
        this.edge = edge;
        this.ampacityA = ampacityA;
        Deque<Step> open = new ArrayDeque<>();
        add(new Step(end, 0, edge, null), open);
        while (!open.isEmpty() && strong == null) {
            Step s = open.remove();
            for (Entrance e : entrances.getOrDefault(s.pin(), List.of())) {
                meet(e, s);
            }
            spread(s, open);
        }
    }

    private void spread(Step s, Deque<Step> open) {
        for (int k = grid.start(s.pin()); k < grid.start(s.pin() + 1); k++) {
            int e = grid.edge(k);
            int from = grid.other(e, s.pin());
            boolean guarded = passesA[e] <= ampacityA;
            if (e != edge && e != s.via() && !guarded && grid.leaves(e, from)) {
                int needs = grid.pass(s.needs(), e);
                if (needs >= 0) {
                    add(new Step(from, needs, e, s), open);
                }
            }
        }
    }

    private void add(Step s, Deque<Step> open) {
        List<Integer> old = seen.computeIfAbsent(s.pin(), k -> new ArrayList<>(1));
        for (int needs : old) {
            if (grid.positions().within(needs, s.needs())) {
                return;
            }
        }
        old.add(s.needs());
        open.add(s);
    }

    private void meet(Entrance e, Step s) {
        int needs = grid.positions().both(s.needs(), e.needs());
        if (needs < 0) {
            return;
        }
        if (e.isStrong()) {
            strong = e;
        } else {
            limited.computeIfAbsent(e, k -> new ArrayList<>(1)).add(needs);
        }
        if (path.isEmpty()) {
            path = new ArrayList<>();
            for (Step at = s; at != null && at.towardsEnd() != null; at = at.towardsEnd()) {
                path.add(at.via());
            }
        }
    }

    /** A source that nothing limits; null if none is met. */
    @Nullable
    Entrance strong() {
        return strong;
    }

    /** The first limited source that is met; null if none is. */
    @Nullable
    Entrance firstLimited() {
        return limited.isEmpty() ? null : limited.keySet().iterator().next();
    }

    /** The most that limited sources give together which no switch position parts. */
    double limitedA() {
        return most(new ArrayList<>(limited.keySet()), 0, 0);
    }

    private double most(List<Entrance> all, int from, int needs) {
        if (from == all.size()) {
            return 0;
        }
        double without = from < 16 ? most(all, from + 1, needs) : 0;
        double with = 0;
        for (int own : limited.getOrDefault(all.get(from), List.of())) {
            int both = grid.positions().both(needs, own);
            with = both < 0 ? with : Math.max(with, all.get(from).mostA() + most(all, from + 1, both));
            if (own == 0) {
                return with; // it needs nothing: leaving it out gains nothing
            }
        }
        return Math.max(without, with);
    }
}
