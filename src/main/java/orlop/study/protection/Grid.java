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
    private final int[][] at; // connections that end at each pin
    private final @Nullable DeviceModel[] devices;
    private final double[] passesA; // by connection: least ampacity that its device guards; infinite without one
    private final int[] cable; // by connection; −1 for all else
    private final int[][] needs;
    private final Positions positions = new Positions();

    Grid(Plan plan, Network network) {
        this.plan = plan;
        this.network = network;
        int count = network.connections().size();
        at = adjacency(network);
        devices = new DeviceModel[count];
        passesA = new double[count];
        cable = new int[count];
        needs = new int[count][];
        GuardLevels levels = new GuardLevels(plan.rules());
        for (int e = 0; e < count; e++) {
            Connection c = network.connections().get(e);
            ElectricalSystem system = plan.system(c.a());
            boolean counts = c.device() != null && plan.calculates(system);
            devices[e] = counts ? DeviceModel.of(c.theDevice(), system.nature().isDc()) : null;
            DeviceModel d = devices[e];
            passesA[e] = d == null ? Double.POSITIVE_INFINITY : levels.leastAmpacityA(d);
            cable[e] = network.cableOf(e);
            needs[e] = c.device() == null ? NONE : needs(c, c.theDevice());
        }
    }

    private static int[][] adjacency(Network network) {
        int[] degree = new int[network.pinCount()];
        for (Connection c : network.connections()) {
            degree[c.a()]++;
            degree[c.b()] += c.a() == c.b() ? 0 : 1;
        }
        int[][] at = new int[degree.length][];
        for (int v = 0; v < at.length; v++) {
            at[v] = new int[degree[v]];
        }
        for (int e = network.connections().size() - 1; e >= 0; e--) {
            Connection c = network.connections().get(e);
            at[c.a()][--degree[c.a()]] = e;
            if (c.a() != c.b()) {
                at[c.b()][--degree[c.b()]] = e;
            }
        }
        return at;
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

    Positions positions() {
        return positions;
    }

    int count() {
        return cable.length;
    }

    int pins() {
        return at.length;
    }

    int[] at(int pin) {
        return at[pin];
    }

    Connection connection(int e) {
        return network.connections().get(e);
    }

    int other(int e, int pin) {
        return network.connections().get(e).other(pin);
    }

    double lengthM(int e) {
        return network.connections().get(e).lengthM();
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

    /** Whether current can leave a pin by a connection: not against a diode. */
    boolean leaves(int e, int pin) {
        Connection c = network.connections().get(e);
        return c.a() != c.b() && (c.kind() != Connection.Kind.DIODE || c.a() == pin);
    }

    /** The positions needed once the connection is passed too; −1 if that cannot be. */
    int pass(int set, int e) {
        return needs[e].length == 0 ? set : positions.with(set, needs[e]);
    }
}
