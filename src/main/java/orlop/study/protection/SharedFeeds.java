package orlop.study.protection;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Group;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.network.Zones;
import orlop.study.Remark;
import orlop.study.model.DeviceModel;
import orlop.study.model.Rating;

/**
 * Cables that several feeds can load together beyond what they carry, though each of the devices alone would guard them:
 * two banks, each with its fuse, on one bar, and a feeder from there. What devices behind the feeder let pass together
 * counts as well: where that is no more than it carries, all is well (IEC 60364-4-43 433.2.1, 433.3.1 a; from memory). So
 * is a cable to a single load, which draws what it draws (433.3.1 b; from memory).
 */
final class SharedFeeds {
    /** So many cables are looked at closely at most. */
    private static final int MOST = 2_000;

    private final Grid grid;
    private final Surroundings around;
    private final Zones zones;
    private final Stretch.Search search;
    private final double[] feedsA; // by zone: ratings of all devices that feed it
    private final int[] feeds; // by zone: how many they are

    SharedFeeds(Grid grid, Surroundings around, Zones zones) {
        this.grid = grid;
        this.around = around;
        this.zones = zones;
        search = new Stretch.Search(grid);
        feedsA = new double[zones.count()];
        feeds = new int[zones.count()];
        for (int e = 0; e < grid.count(); e++) {
            if (grid.device(e) != null) {
                count(e, grid.connection(e).a());
                count(e, grid.connection(e).b());
            }
        }
    }

    private void count(int edge, int pin) {
        if (feeds(edge, pin)) {
            feedsA[zones.zoneOf(pin)] += ratingA(edge);
            feeds[zones.zoneOf(pin)]++;
        }
    }

    private boolean feeds(int edge, int pin) {
        return zones.strongBeyond(edge, pin) > 0;
    }

    private double ratingA(int edge) {
        DeviceModel d = grid.device(edge);
        Double amps = d == null ? null : d.ratingA();
        return amps == null ? 0 : amps;
    }

    /** Notes every such cable. */
    void note() {
        int looked = 0;
        for (int e = 0; e < grid.count() && looked < MOST; e++) {
            int cable = grid.cable(e);
            Rating r = cable < 0 ? null : around.rating(cable);
            int zone = zones.zoneOf(grid.connection(e).a());
            if (r != null && feeds[zone] > 1 && feedsA[zone] > r.amps() * (1 + 1e-9)) {
                looked++;
                look(e, r.amps());
            }
        }
    }

    private void look(int edge, double ampacityA) {
        Map<Integer, Double> one = side(edge, grid.connection(edge).a());
        Map<Integer, Double> other = side(edge, grid.connection(edge).b());
        if (!one.equals(other)) { // else it closes a ring
            say(edge, ampacityA, one, grid.connection(edge).b());
            say(edge, ampacityA, other, grid.connection(edge).a());
        }
    }

    private void say(int edge, double ampacityA, Map<Integer, Double> devices, int towards) {
        double sum = 0;
        double most = 0;
        List<Object> tags = new ArrayList<>();
        for (Map.Entry<Integer, Double> d : devices.entrySet()) {
            sum += d.getValue();
            most = Math.max(most, d.getValue());
            tags.add(grid.connection(d.getKey()).item());
        }
        Stretch behind = new Stretch(grid, search, grid.other(edge, towards), edge);
        boolean limited = behind.endsAtDevices() && behind.neededA() <= ampacityA * (1 + 1e-9);
        limited |= isSingleLoad(edge, towards);
        if (devices.size() > 1 && sum > ampacityA * (1 + 1e-9) && most <= ampacityA && !limited) {
            String cable = grid.connection(edge).item();
            grid.plan()
                    .notes()
                    .add(
                            Remark.Kind.BEYOND_RATING,
                            cable,
                            "",
                            "study.beyond.together",
                            cable,
                            new Quantity(ampacityA, Unit.AMPERE),
                            tags,
                            new Quantity(sum, Unit.AMPERE));
        }
    }

    /** Whether a single line leads on from there to a load, without branch and device. */
    private boolean isSingleLoad(int edge, int pin) {
        int via = edge;
        int at = pin;
        for (int n = 0; n < grid.count() && grid.degree(at) == 2; n++) {
            via = grid.onward(at, via);
            if (grid.device(via) != null) {
                return false;
            }
            at = grid.other(via, at);
        }
        return grid.degree(at) == 1 && grid.network().componentOf(at).kind().group() == Group.LOADS;
    }

    /** The devices that feed what hangs on one end of a cable, the cable itself left out. */
    private Map<Integer, Double> side(int edge, int pin) {
        Map<Integer, Double> found = new LinkedHashMap<>();
        Set<Integer> seen = new HashSet<>();
        Deque<Integer> open = new ArrayDeque<>();
        seen.add(pin);
        open.add(pin);
        while (!open.isEmpty()) {
            int at = open.remove();
            for (int k = grid.start(at); k < grid.start(at + 1); k++) {
                int e = grid.edge(k);
                if (e == edge) {
                    continue;
                }
                if (grid.device(e) != null) {
                    if (feeds(e, at)) {
                        found.put(e, ratingA(e));
                    }
                } else if (grid.leaves(e, at) && seen.add(grid.other(e, at))) {
                    open.add(grid.other(e, at));
                }
            }
        }
        return found;
    }
}
