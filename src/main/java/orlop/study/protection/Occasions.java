package orlop.study.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** In which conditions a source that is on can drive current unguarded to the end of a cable. */
final class Occasions {
    private final Grid grid;
    private final Surroundings around;
    private final List<Entrance> entrances;
    private final boolean[] bridge;
    private final double[] passesA; // without proposed devices
    private final List<String> conditions;
    private final List<On> on = new ArrayList<>(); // by condition; those with the same sources share one

    /** Sources that are on together. */
    private static final class On {
        private final List<Entrance> sources;
        private final Map<Integer, List<Entrance>> byPin = new HashMap<>();
        private final Arrivals strong;
        private final Arrivals limited;

        On(Grid grid, double[] passesA, List<Entrance> sources) {
            this.sources = sources;
            sources.forEach(
                    e -> byPin.computeIfAbsent(e.pin(), k -> new ArrayList<>(1)).add(e));
            strong = new Arrivals(
                    grid, passesA, sources.stream().filter(Entrance::isStrong).toList());
            limited = new Arrivals(
                    grid, passesA, sources.stream().filter(e -> !e.isStrong()).toList());
        }
    }

    /** @param bridge by connection: whether the network falls apart without it */
    Occasions(Grid grid, Surroundings around, List<Entrance> entrances, boolean[] bridge) {
        this.grid = grid;
        this.around = around;
        this.entrances = entrances;
        this.bridge = bridge;
        conditions = around.conditions();
        passesA = grid.passesA();
    }

    /** Worked out when first asked. */
    private void find() {
        for (int i = 0; i < conditions.size(); i++) {
            int condition = i;
            List<Entrance> sources = entrances.stream()
                    .filter(e -> around.isOn(condition, e.component()))
                    .toList();
            on.add(on.stream()
                    .filter(o -> o.sources.equals(sources))
                    .findFirst()
                    .orElseGet(() -> new On(grid, passesA, sources)));
        }
    }

    /** Whether it is so, by condition in the order of the list. */
    boolean[] of(int edge, int pin, double ampacityA) {
        if (on.isEmpty()) {
            find();
        }
        boolean[] found = new boolean[conditions.size()];
        for (int i = 0; i < found.length; i++) {
            int same = on.indexOf(on.get(i));
            found[i] = same < i ? found[same] : is(on.get(i), edge, pin, ampacityA);
        }
        return found;
    }

    private boolean is(On o, int edge, int pin, double ampacityA) {
        boolean any = o.strong.simplified() || o.limited.simplified();
        Arrivals.Arrival first = o.strong.first(pin);
        for (Arrivals.Arrival a = first; a != null && a.passesA() > ampacityA && !any; a = a.next()) {
            if (bridge[edge] && a.via() != edge) {
                return true; // and it has not passed the cable itself before
            }
        }
        any |= first != null && first.passesA() > ampacityA;
        Arrivals.Arrival limited = o.limited.first(pin);
        any |= limited != null && limited.passesA() > ampacityA;
        if (!any) {
            return false;
        }
        Backward back = new Backward(grid, passesA, o.byPin, edge, pin, ampacityA);
        return back.strong() != null || back.limitedA() > ampacityA * (1 + 1e-9);
    }

    /** Ids of the conditions. */
    List<String> conditions() {
        return conditions;
    }
}
