package orlop.study.protection;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Switching;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.model.DeviceModel;
import orlop.study.model.Plan;

/**
 * The network as protection sees it: every switch may stand in every position, but one path holds a changeover in one
 * position and closes one contactor of an interlock. Changeovers that share one may be on together: each parts its own ways.
 */
final class Grid {
    private static final int[] NONE = {};

    private final Plan plan;
    private final Network network;
    private final int[] start; // by pin: where its connections start; one more at the end
    private final int[] edges; // connections that end at each pin, ascending
    private final @Nullable DeviceModel[] devices;
    private final double[] passesA; // by connection: least ampacity that its device guards; infinite without one
    private final int[] cable; // by connection; −1 for all else
    private final int[][] needs;
    private final int[] endA; // by connection: these four say again what it says itself, without a way through it
    private final int[] endB;
    private final double[] lengthM;
    private final boolean[] diode;
    private final Positions positions = new Positions();
    private boolean anyDevice;

    Grid(Plan plan, Network network) {
        this.plan = plan;
        this.network = network;
        int count = network.connections().size();
        start = new int[network.pinCount() + 1];
        devices = new DeviceModel[count];
        passesA = new double[count];
        cable = new int[count];
        needs = new int[count][];
        endA = new int[count];
        endB = new int[count];
        lengthM = new double[count];
        diode = new boolean[count];
        GuardLevels levels = new GuardLevels(plan.rules());
        for (int e = 0; e < count; e++) {
            Connection c = network.connections().get(e);
            endA[e] = c.a();
            endB[e] = c.b();
            lengthM[e] = c.lengthM();
            diode[e] = c.kind() == Connection.Kind.DIODE;
            ElectricalSystem system = plan.system(c.a());
            boolean counts = c.device() != null && plan.calculates(system);
            devices[e] = counts ? DeviceModel.of(c.theDevice(), system.nature().isDc()) : null;
            DeviceModel d = devices[e];
            anyDevice |= d != null;
            passesA[e] = d == null ? Double.POSITIVE_INFINITY : levels.leastAmpacityA(d);
            cable[e] = network.cableOf(e);
            needs[e] = c.device() == null ? NONE : needs(c, c.theDevice());
        }
        edges = adjacency();
    }

    private int[] adjacency() {
        for (int e = 0; e < endA.length; e++) {
            start[endA[e]]++;
            start[endB[e]] += endA[e] == endB[e] ? 0 : 1;
        }
        int sum = 0;
        for (int v = 0; v < start.length; v++) {
            sum += start[v];
            start[v] = sum;
        }
        int[] all = new int[sum];
        for (int e = endA.length - 1; e >= 0; e--) { // from behind, so that each pin's ascend
            all[--start[endA[e]]] = e;
            if (endA[e] != endB[e]) {
                all[--start[endB[e]]] = e;
            }
        }
        return all;
    }

    private int[] needs(Connection c, Component device) {
        String interlock = device.particulars() instanceof Switching.Contactor s ? s.interlock() : "";
        List<Integer> found = new ArrayList<>(2);
        if (c.kind() == Connection.Kind.WAY) {
            found.add(positions.need("way of " + device.id(), Integer.toString(c.a())));
        }
        if (!interlock.isEmpty()) {
            found.add(positions.need("interlock " + interlock, device.id()));
        }
        if (device.kind() == Kind.INVERTER_CHARGER) {
            found.add(transfer(device, true));
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /** What a path through, or out of, an inverter with a transfer switch needs. */
    int transfer(Component inverter, boolean passes) {
        return positions.need("transfer of " + inverter.id(), passes ? "through" : "inverting");
    }

    Network network() {
        return network;
    }

    Plan plan() {
        return plan;
    }

    /** Whether there is any device against overcurrent at all. */
    boolean hasDevices() {
        return anyDevice;
    }

    Positions positions() {
        return positions;
    }

    int count() {
        return cable.length;
    }

    int pins() {
        return start.length - 1;
    }

    /** How many connections end at a pin. */
    int degree(int pin) {
        return start[pin + 1] - start[pin];
    }

    /** Where the connections of a pin start among the {@link #edge}s; those of the next follow. */
    int start(int pin) {
        return start[pin];
    }

    /** The connection at this place. */
    int edge(int place) {
        return edges[place];
    }

    /** Of two connections that end at a pin, the other one. */
    int onward(int pin, int edge) {
        return edges[start[pin]] == edge ? edges[start[pin] + 1] : edges[start[pin]];
    }

    Connection connection(int e) {
        return network.connections().get(e);
    }

    int other(int e, int pin) {
        return pin == endA[e] ? endB[e] : endA[e];
    }

    /** A number for one end of one connection, below twice {@link #count}. */
    int end(int e, int pin) {
        return pin == endA[e] ? 2 * e : 2 * e + 1;
    }

    double lengthM(int e) {
        return lengthM[e];
    }

    /** Number of the cable; −1 for all else. */
    int cable(int e) {
        return cable[e];
    }

    @Nullable
    DeviceModel device(int e) {
        return devices[e];
    }

    /** Least ampacity that the connection's device guards; infinite where there is none. */
    double passesA(int e) {
        return passesA[e];
    }

    /** The same of all connections, as a copy. */
    double[] passesA() {
        return passesA.clone();
    }

    /** Whether current can leave a pin by a connection: not against a diode. */
    boolean leaves(int e, int pin) {
        return endA[e] != endB[e] && (!diode[e] || endA[e] == pin);
    }

    /** The positions needed once the connection is passed too; −1 if that cannot be. */
    int pass(int set, int e) {
        return needs[e].length == 0 ? set : positions.with(set, needs[e]);
    }
}
