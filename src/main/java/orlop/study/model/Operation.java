package orlop.study.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.OperatingCondition;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.flow.Flow;
import orlop.study.linear.Complex;

/**
 * A network at work in one condition: currents, voltages, conductor temperatures.
 *
 * <p>Resistance follows temperature and temperature follows current: both are repeated until no resistance moves by
 * more than 1e-9 of itself, which takes two to five passes.
 */
public final class Operation {
    private static final int PASSES = 12;
    private static final int ROUNDS = 100;

    private final Plan plan;
    private final Network network;
    private final Assembly assembly;
    private final Flow flow;
    private final AcOperation alternating;
    private final PhaseVoltages phases;
    private boolean settled = true;
    private @Nullable Delivery delivery;
    private final int[] connectionOfCable;
    private final double[] conductorC;
    private final double[] ohm;

    public Operation(Plan plan, Network network, OperatingCondition condition) {
        this.plan = plan;
        this.network = network;
        assembly = new Assembly(plan, network, condition);
        flow = new Flow(assembly.circuit(), assembly.live(), assembly.converters(), assembly.trackers());
        alternating = new AcOperation(plan, network, condition, assembly);
        phases = new PhaseVoltages(plan, alternating);
        int count = plan.cables().size();
        connectionOfCable = new int[count];
        Arrays.fill(connectionOfCable, -1);
        for (int i = 0; i < network.connections().size(); i++) {
            Connection c = network.connections().get(i);
            if (c.cable() != null) {
                connectionOfCable[network.cableOf(i)] = i;
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
        delivery = null;
        setResistances(areaMm2);
        for (int pass = 0; pass < PASSES; pass++) {
            solveBothSides(stale);
            for (int i = 0; i < ohm.length; i++) {
                double amps = currentOfCable(i);
                conductorC[i] = plan.cables().get(i).conductorC(ratings[i], Double.isNaN(amps) ? 0 : amps);
            }
            if (setResistances(areaMm2) <= 1e-9) {
                return;
            }
        }
    }

    /** Which source delivers to which pin, at this operating point. */
    public Delivery delivery() {
        Delivery found = delivery;
        if (found == null) {
            found = new Delivering(this).found();
            delivery = found;
        }
        return found;
    }

    /** The end of a connection that its current flows to; where nothing flows, the one farther from the source. */
    public int farPin(int connection) {
        Connection c = network.connections().get(connection);
        double amps = currentOfConnection(connection);
        if (Math.abs(amps) > 1e-9) {
            return amps > 0 ? c.b() : c.a();
        }
        Delivery d = delivery();
        if (d.via(c.a()) == connection) {
            return c.a();
        }
        return d.via(c.b()) == connection || d.lengthM(c.b()) >= d.lengthM(c.a()) ? c.b() : c.a();
    }

    /** Converters between direct and alternating current couple both sides until their powers agree. */
    private void solveBothSides(BooleanSupplier stale) {
        settled = false;
        for (int round = 0; round < ROUNDS && !settled; round++) {
            flow.solve(stale);
            alternating.solve(stale);
            settled = !alternating.couple(flow);
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
                double nominalV = plan.cables().get(i).system().nominalV();
                assembly.circuit().setFirst(part, 1 / Resolvable.ohm(now, nominalV));
            } else if (connectionOfCable[i] >= 0) {
                alternating.setCable(connectionOfCable[i], plan.cables().get(i), areaMm2[i], conductorC[i]);
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

    /**
     * Current from its {@code from} to its {@code to}; NaN where it is dead or contracted to one point. In alternating
     * current the r.m.s. value with the sign of the active power.
     */
    public double currentOfCable(int cable) {
        return connectionOfCable[cable] < 0 ? Double.NaN : currentOfConnection(connectionOfCable[cable]);
    }

    /** What of a cable's current makes a drop across a resistance: all of it, or the part in phase with the voltage. */
    public double activeCurrentOfCable(int cable) {
        int edge = connectionOfCable[cable];
        if (edge < 0 || !isAc(network.connections().get(edge).a())) {
            return currentOfCable(cable);
        }
        int pin = network.connections().get(edge).a();
        double most = Double.NaN;
        for (int wire = 0; wire < Math.min(3, alternating.wires(pin)); wire++) {
            Complex volts = alternating.lineVoltage(pin, wire);
            double active =
                    volts.times(alternating.connection(edge, wire).conjugate()).re() / volts.magnitude();
            most = Double.isNaN(most) || Math.abs(active) > Math.abs(most) ? active : most;
        }
        return most;
    }

    /** As {@link #currentOfCable}, of any connection. */
    public double currentOfConnection(int connection) {
        Connection c = network.connections().get(connection);
        int a = c.a();
        if (c.closed() && !c.contracted() && network.pointOf(a) == network.pointOf(c.b())) {
            return Double.isNaN(voltage(a)) ? Double.NaN : 0; // from a point to itself
        }
        if (isAc(a)) {
            return mostLoaded(a, wire -> alternating.connection(connection, wire));
        }
        int part = assembly.partOfConnection(connection);
        return part < 0 ? Double.NaN : flow.current(part);
    }

    /**
     * The greatest of the currents of the conductors at a pin, the neutral's too, with the sign of the active power
     * that all of them carry.
     */
    public double mostLoaded(int pin, IntFunction<Complex> ofWire) {
        double most = Double.NaN;
        double watts = 0;
        double apparent = 0;
        for (int wire = 0; wire < alternating.wires(pin); wire++) {
            Complex amps = ofWire.apply(wire);
            if (amps.isNaN()) {
                continue;
            }
            most = Double.isNaN(most) ? amps.magnitude() : Math.max(most, amps.magnitude());
            Complex volts = wire == Wires.N ? Complex.ZERO : alternating.lineVoltage(pin, wire);
            if (!volts.isNaN()) {
                watts += volts.times(amps.conjugate()).re();
                apparent += volts.magnitude() * amps.magnitude();
            }
        }
        return watts < -1e-9 * apparent ? -most : most;
    }

    /** Current into a source, a load, a converter's input at its pin; NaN where it is dead or not calculated. */
    public double currentOfAttachment(int attachment) {
        int pin = network.attachments().get(attachment).pin();
        if (isAc(pin)) {
            double most = Double.NaN;
            for (int wire = 0; wire < alternating.wires(pin); wire++) {
                double amps = alternating.attachment(attachment, wire).magnitude();
                most = Double.isNaN(most) || amps > most ? amps : most;
            }
            return alternating.powerOfAttachment(attachment) < -1e-9 * most ? -most : most;
        }
        int part = assembly.partOfAttachment(attachment);
        return part < 0 ? Double.NaN : flow.current(part);
    }

    /** Current into the output of a converter, so mostly negative; NaN where it is dead or not calculated. */
    public double currentOfOutput(int attachment) {
        int pin = network.attachments().get(attachment).outputPin();
        if (isAc(pin)) {
            return mostLoaded(pin, wire -> alternating.output(attachment, wire));
        }
        int part = assembly.outputOfAttachment(attachment);
        return part < 0 ? Double.NaN : flow.current(part);
    }

    /** Whether a source, a load or the input of a converter takes part. */
    public boolean calculates(int attachment) {
        return assembly.partOfAttachment(attachment) >= 0 || alternating.calculates(attachment);
    }

    /** Whether a pin lies in an alternating-current system that is calculated. */
    public boolean isAc(int pin) {
        return alternating.isAc(pin);
    }

    public double conductorC(int cable) {
        return conductorC[cable];
    }

    public double ohm(int cable) {
        return ohm[cable];
    }

    /**
     * Voltage of a pin against the common negative, in alternating current the r.m.s. value against neutral, the lowest
     * of the phases; NaN where it is dead.
     */
    public double voltage(int pin) {
        if (isAc(pin)) {
            return phasor(pin).magnitude();
        }
        int node = assembly.node(pin);
        if (node >= 0) {
            return flow.voltage(node);
        }
        return network.pointOf(pin) >= 0 ? 0 : Double.NaN;
    }

    /** Voltage of a pin against another, or against the reference where that is −1. */
    public double across(int pin, int back) {
        if (isAc(pin) && back >= 0 && !alternating.byPhase(pin)) {
            return phasor(pin).minus(phasor(back)).magnitude();
        }
        return voltage(pin) - (back < 0 ? 0 : voltage(back));
    }

    /** Voltage across a load: its pin against its drawn return, in alternating current across what it hangs on. */
    public double across(int attachment) {
        Attachment t = network.attachments().get(attachment);
        if (isAc(t.pin()) && alternating.calculates(attachment)) {
            return alternating.across(attachment);
        }
        return across(t.pin(), t.returnPin());
    }

    /** Voltage at a pin between the conductors that a load hangs on; of one on all phases the lowest, as line to neutral. */
    public double forLoad(int pin, Component load) {
        int mask = alternating.byPhase(pin) ? plan.wires(load) : Wires.ALL;
        return isAc(pin) && alternating.byPhase(pin) ? phases.pair(pin, mask) : voltage(pin);
    }

    /** Voltage of a pin of an alternating-current system, of the phase that has least; NaN where it is dead. */
    public Complex phasor(int pin) {
        return phases.phasor(pin);
    }

    /** What a cable of alternating current loses of the voltage's magnitude, of the phase that loses most. */
    public double dropV(int cable) {
        Connection c = network.connections().get(connectionOfCable[cable]);
        return alternating.byPhase(c.a()) ? phases.dropV(c) : voltage(c.a()) - voltage(c.b());
    }

    /**
     * What one line of a cable loses, against the neutral at both ends or, where it does not reach both, against the
     * middle of the lines; NaN where it is dead.
     */
    public double dropV(Connection c, int wire) {
        return phases.lostV(c.a(), c.b(), wire);
    }

    /** What is lost from one pin to another, of the phase that reaches both and loses most. */
    public double lostV(int source, int pin) {
        boolean inPhases = isAc(pin) && alternating.byPhase(pin) && alternating.byPhase(source);
        return inPhases ? phases.lostV(source, pin) : voltage(source) - voltage(pin);
    }

    /** Nominal voltage that a cable's drop is a share of: line to neutral, unless it has two lines and no neutral. */
    public double nominalV(int cable) {
        CableModel w = plan.cables().get(cable);
        return plan.hasUnequalPhases(w.system())
                ? Wires.nominalV(w.system(), plan.wires(w.cable()))
                : Plan.phaseV(w.system());
    }

    /** Heat in all conductors of a cable of alternating current; NaN where nothing is calculated. */
    public double heatW(int cable) {
        Connection c = network.connections().get(connectionOfCable[cable]);
        double amps = currentOfCable(cable);
        return alternating.byPhase(c.a())
                ? alternating.heatW(connectionOfCable[cable])
                : plan.cables().get(cable).phases() * amps * amps * ohm[cable];
    }

    public AcOperation alternating() {
        return alternating;
    }

    /** Greatest sum of currents at any node. */
    public double residualA() {
        return Math.max(flow.residualA(), alternating.residualA());
    }

    /** Whether converters that feed each other came to rest. */
    public boolean settled() {
        return flow.settled() && settled;
    }

    /** Islands without operating point. */
    public List<Flow.Trouble> troubles() {
        List<Flow.Trouble> all = new ArrayList<>(flow.troubles());
        all.addAll(alternating.troubles());
        return all;
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
