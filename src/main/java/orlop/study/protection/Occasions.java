package orlop.study.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** In which conditions a source that is on can drive current unguarded to the end of a cable. */
final class Occasions {
    private final Grid grid;
    private final double[] passesA; // without proposed devices
    private final List<String> conditions;
    private final List<Map<Integer, List<Entrance>>> on = new ArrayList<>();

    Occasions(Grid grid, Surroundings around, List<Entrance> entrances) {
        this.grid = grid;
        conditions = around.conditions();
        passesA = new double[grid.count()];
        for (int e = 0; e < passesA.length; e++) {
            passesA[e] = grid.passesA(e);
        }
        for (int i = 0; i < conditions.size(); i++) {
            Map<Integer, List<Entrance>> byPin = new HashMap<>();
            for (Entrance e : entrances) {
                if (around.isOn(i, e.component())) {
                    byPin.computeIfAbsent(e.pin(), k -> new ArrayList<>(1)).add(e);
                }
            }
            on.add(byPin);
        }
    }

    /** Whether it is so in the condition of this place in the list. */
    boolean is(int condition, int edge, int pin, double ampacityA) {
        Backward back = new Backward(grid, passesA, on.get(condition), edge, pin, ampacityA);
        return back.strong() != null || back.limitedA() > ampacityA * (1 + 1e-9);
    }

    /** Ids of the conditions. */
    List<String> conditions() {
        return conditions;
    }
}
