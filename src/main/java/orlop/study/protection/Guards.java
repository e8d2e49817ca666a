package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import orlop.network.Zones;
import orlop.study.model.DeviceModel;
import orlop.study.model.Rating;

/** Which devices guard which cable: those at the border of its zone with a source beyond that fit its ampacity. */
final class Guards {
    private final Grid grid;
    private final Surroundings around;
    private final List<List<String>> of = new ArrayList<>();
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
    }

    private void enter(int e, int pin, DeviceModel device) {
        if (zones.strongBeyond(e, pin) > 0 || zones.limitedBeyond(e, pin) > 0) {
            walk(pin, device);
        }
    }

    private void walk(int start, DeviceModel device) {
        Set<Integer> seen = new HashSet<>();
        Deque<Integer> open = new ArrayDeque<>();
        seen.add(start);
        open.add(start);
        while (!open.isEmpty()) {
            int pin = open.remove();
            for (int k = grid.start(pin); k < grid.start(pin + 1); k++) {
                int e = grid.edge(k);
                if (grid.device(e) != null || !grid.leaves(e, pin)) {
                    continue;
                }
                boolean on = grid.cable(e) < 0 || guards(grid.cable(e), device);
                if (on && seen.add(grid.other(e, pin))) {
                    open.add(grid.other(e, pin));
                }
            }
        }
    }

    private boolean guards(int cable, DeviceModel device) {
        Rating r = around.rating(cable);
        boolean does = r == null || device.guards(grid.plan().rules(), r.amps());
        if (does && !of.get(cable).contains(device.component().id())) {
            of.get(cable).add(device.component().id());
        }
        return does;
    }

    /** The network parted at its devices. */
    Zones zones() {
        return zones;
    }

    /** Tags of the devices that guard a cable. */
    List<String> of(int cable) {
        return of.get(cable);
    }
}
