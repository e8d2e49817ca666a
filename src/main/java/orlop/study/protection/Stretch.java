package orlop.study.protection;

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

    /** What a search needs while it is at work; many searches use one after the other. */
    static final class Search {
        private final double[] nearestM; // by pin
        private final int[] reachedBy; // by pin: number of the search of which its distance is
        private final int[] metBy; // by connection: number of the search that has met its device
        private final Ahead open = new Ahead();
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

    private @Nullable DeviceModel device; // the first that was met
    private int deviceCount;
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
        cross(grid, search, pin, 0, edge);
        while (!search.open.isEmpty() && !endsOpen) {
            double metres = search.open.leastM();
            int at = search.open.pin();
            int via = search.open.via();
            search.open.remove();
            if (metres <= search.nearestM[at]) {
                spread(grid, search, at, via, metres);
            }
        }
    }

    private void spread(Grid grid, Search search, int pin, int via, double metres) {
        boolean ahead = false;
        for (int k = grid.start(pin); k < grid.start(pin + 1); k++) {
            int e = grid.edge(k);
            if (e == via || !grid.leaves(e, pin) || fromWayToWay(grid, via, e)) {
                continue;
            }
            ahead = true;
            DeviceModel here = grid.device(e);
            if (here == null) {
                cross(grid, search, pin, metres, e);
            } else if (search.metBy[e] != search.number) {
                search.metBy[e] = search.number;
                greatestM = Math.max(greatestM, metres);
                device = deviceCount++ == 0 ? here : device;
                sumPassesA += grid.passesA(e);
            }
        }
        endsOpen |= !ahead;
    }

    private static boolean fromWayToWay(Grid grid, int via, int next) {
        return grid.pass(Math.max(0, grid.pass(0, via)), next) < 0;
    }

    private void cross(Grid grid, Search search, int pin, double metres, int edge) {
        if (grid.cable(edge) >= 0) {
            CableModel w = grid.plan().cables().get(grid.cable(edge));
            sheathed &= w.sheathed();
            engineSpace |= w.cable().construction().engineSpace();
        }
        int other = grid.other(edge, pin);
        double distance = metres + grid.lengthM(edge);
        if (search.reachedBy[other] != search.number || distance < search.nearestM[other]) {
            search.reach(other, distance);
            search.open.add(other, edge, distance);
        }
    }

    /** Whether every way ends at a device. */
    boolean endsAtDevices() {
        return !endsOpen && deviceCount > 0;
    }

    /** Distance from the start to the furthest of the first devices. */
    double greatestM() {
        return greatestM;
    }

    /** The device, if there is exactly one. */
    @Nullable
    DeviceModel onlyDevice() {
        return deviceCount == 1 ? device : null;
    }

    int deviceCount() {
        return deviceCount;
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
