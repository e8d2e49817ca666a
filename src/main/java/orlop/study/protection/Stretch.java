package orlop.study.protection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Kind;
import orlop.drawing.Laying;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;

/**
 * Everything that hangs unguarded on one end of a cable, until devices stop it. The nearest open end ends the search: no
 * device further on closes the stretch any more, and without this a mesh would be walked whole from each of its cables.
 */
final class Stretch {
    /** Blocks joined by a cable as short as this are one bank: common practice, no source. */
    private static final double ONE_BANK_M = 0.2;

    private record Step(int pin, int via, double distanceM) {}

    /** What a search needs while it is at work; many searches use one after the other. */
    static final class Search {
        private final double[] nearestM; // by pin
        private final int[] reachedBy; // by pin: number of the search of which its distance is
        private final int[] metBy; // by connection: number of the search that has met its device
        private final PriorityQueue<Step> open = new PriorityQueue<>(Comparator.comparingDouble(Step::distanceM));
        private int number;

        Search(Grid grid) {
            nearestM = new double[grid.pins()];
            reachedBy = new int[grid.pins()];
            metBy = new int[grid.count()];
        }

        private void reach(int pin, double metres) {
            reachedBy[pin] = number;
            nearestM[pin] = metres;
        }
    }

    private final List<DeviceModel> devices = new ArrayList<>(1);
    private double greatestM;
    private double sumPassesA;
    private boolean endsOpen;
    private boolean sheathed = true;
    private boolean engineSpace;

    /**
     * @param pin where it starts
     * @param edge the cable by which it leaves
     */
    Stretch(Grid grid, Search search, int pin, int edge) {
        search.number++;
        search.open.clear();
        search.reach(pin, Double.NEGATIVE_INFINITY); // no way leads back to the start
        cross(grid, search, new Step(pin, -1, 0), edge);
        while (!search.open.isEmpty() && !endsOpen) {
            Step s = search.open.remove();
            if (s.distanceM() <= search.nearestM[s.pin()]) {
                spread(grid, search, s);
            }
        }
    }

    private void spread(Grid grid, Search search, Step s) {
        boolean ahead = false;
        for (int e : grid.at(s.pin())) {
            if (e == s.via() || !grid.leaves(e, s.pin()) || fromWayToWay(grid, s.via(), e)) {
                continue;
            }
            ahead = true;
            DeviceModel device = grid.device(e);
            if (device == null) {
                cross(grid, search, s, e);
            } else if (search.metBy[e] != search.number) {
                search.metBy[e] = search.number;
                greatestM = Math.max(greatestM, s.distanceM());
                devices.add(device);
                sumPassesA += grid.passesA(e);
            }
        }
        endsOpen |= !ahead;
    }

    private static boolean fromWayToWay(Grid grid, int via, int next) {
        return grid.pass(Math.max(0, grid.pass(0, via)), next) < 0;
    }

    private void cross(Grid grid, Search search, Step s, int edge) {
        if (grid.cable(edge) >= 0) {
            CableModel w = grid.plan().cables().get(grid.cable(edge));
            sheathed &= w.sheathed();
            engineSpace |= w.cable().construction().engineSpace();
        }
        int other = grid.other(edge, s.pin());
        double distance = s.distanceM() + grid.lengthM(edge);
        if (search.reachedBy[other] != search.number || distance < search.nearestM[other]) {
            search.reach(other, distance);
            search.open.add(new Step(other, edge, distance));
        }
    }

    /** Whether every way ends at a device. */
    boolean endsAtDevices() {
        return !endsOpen && !devices.isEmpty();
    }

    /** Distance from the start to the furthest of the first devices. */
    double greatestM() {
        return greatestM;
    }

    /** The device, if there is exactly one. */
    @Nullable
    DeviceModel onlyDevice() {
        return devices.size() == 1 ? devices.get(0) : null;
    }

    int deviceCount() {
        return devices.size();
    }

    /** Ampacity that carries what all its devices let pass together. */
    double neededA() {
        return sumPassesA;
    }

    /** Whether every cable of it, up to the nearest open end, lies in a sheath or conduit. */
    boolean sheathed() {
        return sheathed;
    }

    boolean engineSpace() {
        return engineSpace;
    }

    /** Whether a cable only joins blocks to one bank. */
    static boolean isBankJumper(Grid grid, int edge) {
        if (grid.lengthM(edge) > ONE_BANK_M + 1e-9) {
            return false; // soonest told
        }
        Cable w = grid.connection(edge).theCable();
        Component a = grid.network().componentOf(grid.connection(edge).a());
        Component b = grid.network().componentOf(grid.connection(edge).b());
        return a.kind() == Kind.BATTERY
                && b.kind() == Kind.BATTERY
                && w.construction().laying() != Laying.BUNCHED
                && w.lengthM() != null;
    }
}
