package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import orlop.network.Zones;
import orlop.study.model.DeviceModel;
import orlop.study.model.Rating;

/** Which devices guard which cable: those at the border of its zone with a source beyond that fit its ampacity. */
final class Guards {
    /** A device and how many steps it stands away. */
    private record Near(String tag, int steps) {}

    private final Grid grid;
    private final Surroundings around;
    private final List<List<Near>> of = new ArrayList<>();
    private final List<List<String>> tags = new ArrayList<>();
    private final Zones zones;

    Guards(Grid grid, Surroundings around, List<Entrance> entrances) {
        this.grid = grid;
        this.around = around;
        for (int i = 0; i < grid.plan().cables().size(); i++) {
            of.add(new ArrayList<>(1));
        }
        int[] strong = new int[grid.pins()];
        double[] limited = new double[grid.pins()];
        for (Entrance e : entrances) {
            strong[e.pin()] += e.isStrong() ? 1 : 0;
            limited[e.pin()] += e.isStrong() ? 0 : e.mostA();
        }
        boolean[] cut = new boolean[grid.count()];
        for (int e = 0; e < cut.length; e++) {
            cut[e] = grid.device(e) != null;
        }
        zones = new Zones(grid.network(), cut, strong, limited);
        for (int e = 0; e < cut.length; e++) {
            DeviceModel device = grid.device(e);
            if (device != null) {
                enter(e, grid.connection(e).a(), device);
                enter(e, grid.connection(e).b(), device);
            }
        }
        for (List<Near> guards : of) {
            tags.add(guards.stream().map(Near::tag).toList());
        }
    }

    private void enter(int e, int pin, DeviceModel device) {
        if (zones.strongBeyond(e, pin) > 0 || zones.limitedBeyond(e, pin) > 0) {
            walk(pin, device);
        }
    }

    private void walk(int start, DeviceModel device) {
        Map<Integer, Integer> seen = new HashMap<>(); // steps from the device, by pin
        Deque<Integer> open = new ArrayDeque<>();
        seen.put(start, 0);
        open.add(start);
        while (!open.isEmpty()) {
            int pin = open.remove();
            int steps = 1 + Objects.requireNonNull(seen.get(pin));
            for (int k = grid.start(pin); k < grid.start(pin + 1); k++) {
                int e = grid.edge(k);
                if (grid.device(e) != null || !grid.leaves(e, pin)) {
                    continue;
                }
                boolean on = grid.cable(e) < 0 || guards(grid.cable(e), device, steps);
                if (on && seen.putIfAbsent(grid.other(e, pin), steps) == null) {
                    open.add(grid.other(e, pin));
                }
            }
        }
    }

    private boolean guards(int cable, DeviceModel device, int steps) {
        Rating r = around.rating(cable);
        boolean does = r == null || device.guards(grid.plan().rules(), r.amps());
        if (does) {
            add(of.get(cable), new Near(device.component().id(), steps));
        }
        return does;
    }

    /** The nearest first; of those as near, the one that is drawn first. */
    private static void add(List<Near> guards, Near one) {
        Near there = guards.stream()
                .filter(g -> g.tag().equals(one.tag()))
                .findFirst()
                .orElse(null);
        if (there != null && there.steps() <= one.steps()) {
            return;
        }
        guards.remove(there);
        int at = 0;
        while (at < guards.size() && guards.get(at).steps() <= one.steps()) {
            at++;
        }
        guards.add(at, one);
    }

    /** The network parted at its devices. */
    Zones zones() {
        return zones;
    }

    /** Tags of the devices that guard a cable, nearest first. */
    List<String> of(int cable) {
        return tags.get(cable);
    }
}
