package orlop.study.fault;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import orlop.drawing.FaultMethod;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.network.Resistances;
import orlop.study.flow.PhasorCircuit;
import orlop.study.flow.PhasorEquations;
import orlop.study.flow.Potentials;
import orlop.study.linear.Complex;
import orlop.study.model.AcSourceModel;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;

/**
 * Highest and lowest prospective fault currents of alternating-current networks, r.m.s.: between line and neutral in
 * single-phase systems, of all three phases in three-phase ones: {@code |U₀ / Z|} (IEC 60909-0, initial symmetrical
 * current; c as in {@link AcSourceModel}). Highest with conductors at 20 °C, lowest at their insulation's rating; with
 * {@code PLAIN} a stated conductor temperature holds. Loads are left out.
 *
 * <p>An inverter gives no more than its limit. Alone it gives that, or less where the cables hold it back further; beside
 * other sources it adds its whole limit to the highest current and nothing to the lowest.
 */
public final class AcFaults {
    private final Plan plan;
    private final Operation operation;
    private final Network network;
    private final double faultOhm;
    private final double[] maxA;
    private final double[] minA;

    /**
     * @param areaMm2 by cable
     * @param faultOhm resistance of the fault itself, 0 or more
     */
    public AcFaults(Plan plan, Operation operation, double[] areaMm2, double faultOhm, BooleanSupplier stale) {
        this.plan = plan;
        this.operation = operation;
        this.faultOhm = faultOhm;
        network = operation.network();
        boolean plain = plan.drawing().vessel().faultMethod() == FaultMethod.PLAIN;
        maxA = new double[network.points().size()];
        minA = new double[maxA.length];
        Arrays.fill(maxA, Double.NaN);
        Arrays.fill(minA, Double.NaN);
        if (plan.calculatesAnyAc()) {
            solve(true, i -> ohm(i, areaMm2[i], Temperatures.coldC(plan, i, plain)), maxA);
            if (stale.getAsBoolean()) {
                throw new java.util.concurrent.CancellationException("superseded");
            }
            solve(false, i -> ohm(i, areaMm2[i], Temperatures.hotC(plan, i, plain)), minA);
        }
    }

    private double ohm(int cable, double areaMm2, double conductorC) {
        return plan.cables().get(cable).loopOhm(areaMm2, conductorC);
    }

    private void solve(boolean highest, IntToDoubleFunction ohm, double[] amps) {
        PhasorCircuit circuit = new PhasorCircuit(maxA.length);
        Potentials joined = new Potentials(maxA.length + 1); // used as a plain union-find
        impedances(circuit, joined, ohm);
        boolean[] strong = new boolean[maxA.length + 1];
        double[] limited = new double[maxA.length + 1];
        for (int i = 0; i < network.attachments().size(); i++) {
            count(i, joined, strong, limited);
        }
        sources(circuit, joined, strong, highest);
        PhasorEquations equations = new PhasorEquations(circuit);
        if (!equations.prepare()) {
            return;
        }
        Complex[] none = new Complex[circuit.partCount()];
        Arrays.fill(none, Complex.ZERO);
        Complex[] open = equations.solve(none);
        Complex[] z = equations.impedances();
        for (int v = 0; v < amps.length; v++) {
            double volts = open[v].magnitude();
            double through = z[v].plus(new Complex(faultOhm, 0)).magnitude();
            double most = volts > 0 ? volts / through : Double.NaN;
            double limit = limited[joined.root(v)];
            boolean alone = !strong[joined.root(v)];
            amps[v] = alone ? Math.min(limit, most) : highest ? most + limit : most;
            amps[v] = Double.isNaN(most) ? Double.NaN : amps[v];
        }
    }

    private void impedances(PhasorCircuit circuit, Potentials joined, IntToDoubleFunction ohm) {
        for (int e = 0; e < network.connections().size(); e++) {
            Connection c = network.connections().get(e);
            int a = node(c.a());
            int b = node(c.b());
            boolean counts = !c.contracted() && c.closed() && a != b && operation.isAc(c.a());
            if (!counts || c.kind() == Connection.Kind.DIODE) {
                continue;
            }
            Complex z = impedance(c, ohm);
            if (z.magnitude() > 0) {
                circuit.impedance(a, b, z);
                if (a >= 0 && b >= 0) {
                    joined.tie(a, b, 0);
                }
            }
        }
    }

    private Complex impedance(Connection c, IntToDoubleFunction ohm) {
        if (c.cable() == null) {
            return new Complex(c.resistanceOhm(), Resistances.reactanceOf(plan.drawing(), c.theDevice()));
        }
        int cable = plan.indexOf(c.theCable());
        CableModel w = plan.cables().get(cable);
        return new Complex(ohm.applyAsDouble(cable), w.reactanceOhm());
    }

    private int node(int pin) {
        return operation.assembly().node(pin);
    }

    /** Notes which islands have a source with an impedance, and what inverters give at most. */
    private void count(int i, Potentials joined, boolean[] strong, double[] limited) {
        Attachment t = network.attachments().get(i);
        if (operation.alternating().feeds(i)) {
            limited[joined.root(node(t.outputPin()))] += plan.inverterFaultA(t.component());
        } else if (source(i) != null) {
            strong[joined.root(node(t.pin()))] = true;
        }
    }

    private @Nullable AcSourceModel source(int i) {
        Attachment t = network.attachments().get(i);
        boolean works = t.isSource() && t.on() && operation.isAc(t.pin()) && node(t.pin()) >= 0;
        return works ? plan.acSource(t.component()) : null;
    }

    private void sources(PhasorCircuit circuit, Potentials joined, boolean[] strong, boolean highest) {
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            AcSourceModel m = source(i);
            if (m != null) {
                boolean balanced =
                        plan.system(network.systemOf(t.pin())).nature().isThreePhase();
                int back = t.returnPin() < 0 || balanced ? -1 : node(t.returnPin());
                AcSourceModel.Thevenin s = highest ? m.strongest() : m.weakest();
                circuit.source(node(t.pin()), back, s.emf(), s.z());
            } else if (operation.alternating().feeds(i) && !strong[joined.root(node(t.outputPin()))]) {
                double volts = Plan.phaseV(plan.system(network.systemOf(t.outputPin())));
                circuit.source(node(t.outputPin()), -1, new Complex(volts, 0), Complex.ZERO);
            }
        }
    }

    /** Highest fault current at a node; NaN where nothing feeds it, infinite where nothing limits it. */
    public double maxA(int node) {
        return node < 0 ? Double.NaN : maxA[node];
    }

    /** Lowest fault current at a node; NaN where nothing feeds it, infinite where nothing limits it. */
    public double minA(int node) {
        return node < 0 ? Double.NaN : minA[node];
    }
}
