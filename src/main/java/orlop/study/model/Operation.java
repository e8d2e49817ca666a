package orlop.study.model;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import orlop.drawing.OperatingCondition;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.flow.Flow;

/**
 * A network at work in one condition: currents, voltages, conductor temperatures.
 *
 * <p>Resistance follows temperature and temperature follows current: both are repeated until no resistance moves by
 * more than 1e-9 of itself, which takes two to five passes.
 */
public final class Operation {
    private static final int PASSES = 12;

    private final Plan plan;
    private final Network network;
    private final Assembly assembly;
    private final Flow flow;
    private final int[] connectionOfCable;
    private final double[] conductorC;
    private final double[] ohm;

    public Operation(Plan plan, Network network, OperatingCondition condition) {
        this.plan = plan;
        this.network = network;
        assembly = new Assembly(plan, network, condition);
        flow = new Flow(assembly.circuit(), assembly.live(), assembly.converters(), assembly.trackers());
        int count = plan.cables().size();
        connectionOfCable = new int[count];
        Arrays.fill(connectionOfCable, -1);
        for (int i = 0; i < network.connections().size(); i++) {
            Connection c = network.connections().get(i);
            if (c.cable() != null) {
                connectionOfCable[plan.indexOf(c.cable())] = i;
            }
        }
        conductorC = new double[count];
        ohm = new double[count];
        for (int i = 0; i < count; i++) {
            conductorC[i] = plan.cables().get(i).conductorC(new Rating(1, false), 0);
        }
    }

    /**
     * Finds the operating point with these areas.
     *
     * @param areaMm2 by cable
     * @param ratings by cable; null where none is known
     */
    public void solve(double[] areaMm2, @Nullable Rating[] ratings, BooleanSupplier stale) {
        setResistances(areaMm2);
        for (int pass = 0; pass < PASSES; pass++) {
            flow.solve(stale);
            for (int i = 0; i < ohm.length; i++) {
                double amps = currentOfCable(i);
                conductorC[i] = plan.cables().get(i).conductorC(ratings[i], Double.isNaN(amps) ? 0 : amps);
            }
            if (setResistances(areaMm2) <= 1e-9) {
                return;
            }
        }
    }

    private double setResistances(double[] areaMm2) {
        double moved = 0;
        for (int i = 0; i < ohm.length; i++) {
            double now = plan.cables().get(i).loopOhm(areaMm2[i], conductorC[i]);
            moved = Math.max(moved, ohm[i] > 0 ? Math.abs(now - ohm[i]) / ohm[i] : now > 0 ? 1 : 0);
            ohm[i] = now;
            int part = partOfCable(i);
            if (part >= 0) {
                assembly.circuit().setFirst(part, 1 / now);
            }
        }
        return moved;
    }

    private int partOfCable(int cable) {
        int connection = connectionOfCable[cable];
        return connection < 0 ? -1 : assembly.partOfConnection(connection);
    }

    /** The connection of a cable; −1 where it is not part of the network. */
    public int connectionOfCable(int cable) {
        return connectionOfCable[cable];
    }

    /** Current from its {@code from} to its {@code to}; NaN where it is dead or contracted to one point. */
    public double currentOfCable(int cable) {
        int part = partOfCable(cable);
        return part < 0 ? Double.NaN : flow.current(part);
    }

    public double conductorC(int cable) {
        return conductorC[cable];
    }

    public double ohm(int cable) {
        return ohm[cable];
    }

    /** Voltage of a pin against the common negative; NaN where it is dead. */
    public double voltage(int pin) {
        int node = assembly.node(pin);
        if (node >= 0) {
            return flow.voltage(node);
        }
        return network.pointOf(pin) >= 0 ? 0 : Double.NaN;
    }

    public Assembly assembly() {
        return assembly;
    }

    public Flow flow() {
        return flow;
    }

    public Network network() {
        return network;
    }
}
