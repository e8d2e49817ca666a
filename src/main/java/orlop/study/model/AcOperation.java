package orlop.study.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import orlop.drawing.OperatingCondition;
import orlop.network.Attachment;
import orlop.network.Network;
import orlop.study.flow.Circuit;
import orlop.study.flow.Flow;
import orlop.study.flow.Part;
import orlop.study.flow.PhasorCircuit;
import orlop.study.flow.PhasorFlow;
import orlop.study.linear.Complex;

/**
 * The alternating-current side of a network at work, in r.m.s. phasors. A conductor is a number of {@link Wires} where
 * phases are calculated one by one, else always 0: one phase against neutral.
 */
public final class AcOperation {
    private static final Complex NONE = new Complex(Double.NaN, Double.NaN);

    private final Network network;
    private final Assembly direct;
    private final AcAssembly assembly;
    private final PhasorFlow flow;

    AcOperation(Plan plan, Network network, OperatingCondition condition, Assembly direct) {
        this.network = network;
        this.direct = direct;
        assembly = new AcAssembly(plan, network, condition, direct);
        flow = new PhasorFlow(assembly.circuit());
    }

    /** Whether the pin's system is calculated here. */
    public boolean isAc(int pin) {
        return assembly.isAc(pin);
    }

    /** Whether the pin's system is calculated phase by phase. */
    public boolean byPhase(int pin) {
        return pin >= 0 && assembly.nodes().byPhase(pin);
    }

    void solve(BooleanSupplier stale) {
        if (assembly.circuit().partCount() > 0) {
            flow.solve(stale);
        }
    }

    /**
     * Carries powers over: chargers take from the AC side at power factor 1 what they give and lose, inverters from the
     * DC side; true if a side has to be solved again.
     */
    boolean couple(Flow directFlow) {
        boolean again = false;
        for (AcAssembly.Coupling c : assembly.couplings()) {
            again |= c.inverts() ? inverter(c) : charger(c, directFlow);
        }
        for (AcAssembly.Passing p : assembly.passings()) {
            again |= passes(p);
        }
        return again;
    }

    private boolean inverter(AcAssembly.Coupling c) {
        Circuit circuit = direct.circuit();
        double given = -power(c.acParts().stream().mapToInt(x -> x).toArray()) * c.phases();
        double watts = c.efficiency().inputW(given);
        double before = circuit.first(c.dcPart());
        if (unmoved(watts, before)) {
            return false;
        }
        circuit.setFirst(c.dcPart(), watts);
        return true;
    }

    private boolean passes(AcAssembly.Passing c) {
        double given = -power(c.out().stream().mapToInt(x -> x).toArray()) * c.outPhases();
        double watts = c.efficiency().inputW(given);
        return take(c.in(), watts / c.inPhases());
    }

    private boolean take(List<Integer> parts, double watts) {
        double each = watts / Math.max(1, parts.size());
        if (parts.isEmpty()
                || unmoved(each, assembly.circuit().piece(parts.get(0)).value().re())) {
            return false;
        }
        for (int part : parts) {
            assembly.circuit().setValue(part, new Complex(each, 0));
        }
        return true;
    }

    private boolean charger(AcAssembly.Coupling c, Flow directFlow) {
        Circuit circuit = direct.circuit();
        int b = circuit.b(c.dcPart());
        double volts = directFlow.voltage(circuit.a(c.dcPart())) - (b < 0 ? 0 : directFlow.voltage(b));
        double given = -directFlow.current(c.dcPart()) * volts;
        double watts = c.efficiency().inputW(given);
        return take(c.acParts(), watts / c.phases());
    }

    private static boolean unmoved(double value, double before) {
        return Math.abs(value - before) <= 1e-11 * Math.max(1, Math.abs(value));
    }

    void setCable(int connection, CableModel cable, double areaMm2, double conductorC) {
        int pin = network.connections().get(connection).a();
        if (!byPhase(pin)) {
            set(connection, cable, 0, new Complex(cable.loopOhm(areaMm2, conductorC), cable.reactanceOhm()));
            return;
        }
        Complex line = cable.line(areaMm2, conductorC);
        for (int wire = 0; wire < Wires.N; wire++) {
            set(connection, cable, wire, line);
        }
        set(connection, cable, Wires.N, cable.back(areaMm2, conductorC));
    }

    private void set(int connection, CableModel cable, int wire, Complex z) {
        int part = assembly.partOfConnection(connection, wire);
        if (part >= 0) {
            assembly.circuit()
                    .setImpedance(part, Resolvable.conductor(z, cable.system().nominalV()));
        }
    }

    /** Active power that parts take together; NaN where none of them is alive. */
    private double power(int[] parts) {
        double sum = Double.NaN;
        for (int part : parts) {
            PhasorCircuit.Piece p = assembly.circuit().piece(part);
            Complex volts = flow.voltage(p.a()).minus(flow.voltage(p.b()));
            double watts = volts.times(flow.current(part).conjugate()).re();
            sum = Double.isNaN(watts) ? sum : Double.isNaN(sum) ? watts : sum + watts;
        }
        return sum;
    }

    /** How many conductors are told apart at a pin: 1, or four where phases are calculated one by one. */
    public int wires(int pin) {
        return assembly.nodes().wires(pin);
    }

    /** Voltage of a conductor at a pin against the reference; NaN where it is dead. */
    public Complex voltage(int pin, int wire) {
        return network.pointOf(pin) < 0 ? NONE : flow.voltage(assembly.nodes().of(pin, wire));
    }

    /**
     * Voltage of a line at a pin against the neutral there, where there is none against the middle of the three lines;
     * NaN where dead.
     */
    public Complex lineVoltage(int pin, int wire) {
        if (!byPhase(pin)) {
            return voltage(pin, wire);
        }
        return hasNeutral(pin) ? voltage(pin, wire).minus(voltage(pin, Wires.N)) : againstLines(pin, wire);
    }

    /** Whether a neutral reaches a pin. */
    boolean hasNeutral(int pin) {
        return !voltage(pin, Wires.N).isNaN();
    }

    /** Voltage of a line at a pin against the middle of the three lines; against the reference where not all are there. */
    Complex againstLines(int pin, int wire) {
        Complex middle =
                voltage(pin, 0).plus(voltage(pin, 1)).plus(voltage(pin, 2)).times(1 / 3.0);
        return middle.isNaN() ? voltage(pin, wire) : voltage(pin, wire).minus(middle);
    }

    /** Current of a conductor of a connection from a to b; NaN where it has no impedance or is dead. */
    public Complex connection(int connection, int wire) {
        int part = assembly.partOfConnection(connection, wire);
        return part < 0 ? NONE : flow.current(part);
    }

    /** Power that a connection gives off as heat, of the conductors that are calculated. */
    double heatW(int connection) {
        double sum = 0;
        for (int wire = 0; wire < Wires.COUNT; wire++) {
            int part = assembly.partOfConnection(connection, wire);
            Complex amps = part < 0 ? NONE : flow.current(part);
            if (!amps.isNaN()) {
                double r = assembly.circuit().piece(part).z().re();
                sum += r * (amps.re() * amps.re() + amps.im() * amps.im());
            }
        }
        return sum;
    }

    /** Current that a source, a load or the input of a converter takes by a conductor of its pin; NaN where none. */
    public Complex attachment(int attachment, int wire) {
        Attachment t = network.attachments().get(attachment);
        Complex parts = entering(assembly.partsOfAttachment(attachment), t.pin(), wire);
        return plus(parts, windings(attachment, t.pin(), wire, true));
    }

    /** Current that the output of a converter takes by a conductor of its pin; NaN where it is not calculated. */
    public Complex output(int attachment, int wire) {
        Attachment t = network.attachments().get(attachment);
        Complex parts = entering(assembly.partsOfOutput(attachment), t.outputPin(), wire);
        return plus(parts, windings(attachment, t.outputPin(), wire, false));
    }

    private static Complex plus(Complex a, Complex b) {
        return a.isNaN() ? b : b.isNaN() ? a : a.plus(b);
    }

    /** What the first or second windings of a transformer take by a conductor of their pin; NaN where none does. */
    private Complex windings(int attachment, int pin, int wire, boolean first) {
        Complex sum = NONE;
        for (int w : assembly.windings(attachment)) {
            PhasorCircuit.Windings pair = assembly.circuit().windings(w);
            Complex in = flow.windings(w).times(first ? -pair.ratio() : 1);
            int node = assembly.nodes().of(pin, wire);
            if ((first ? pair.a1() : pair.a2()) == node) {
                sum = plus(sum, in);
            } else if ((first ? pair.b1() : pair.b2()) == node) {
                sum = plus(sum, in.times(-1));
            }
        }
        return sum;
    }

    private double windingsW(int attachment, boolean first) {
        double sum = Double.NaN;
        for (int w : assembly.windings(attachment)) {
            PhasorCircuit.Windings pair = assembly.circuit().windings(w);
            Complex in = flow.windings(w).times(first ? -pair.ratio() : 1);
            Complex a = flow.voltage(first ? pair.a1() : pair.a2());
            Complex volts = a.minus(flow.voltage(first ? pair.b1() : pair.b2()));
            double watts = volts.times(in.conjugate()).re();
            sum = Double.isNaN(watts) ? sum : Double.isNaN(sum) ? watts : sum + watts;
        }
        return sum;
    }

    private static double plus(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : a + b;
    }

    private Complex entering(int[] parts, int pin, int wire) {
        if (parts.length == 1 && !byPhase(pin)) {
            return flow.current(parts[0]);
        }
        int node = assembly.nodes().of(pin, wire);
        Complex sum = NONE;
        for (int part : parts) {
            PhasorCircuit.Piece p = assembly.circuit().piece(part);
            Complex amps = flow.current(part);
            if (amps.isNaN() || (p.a() != node && p.b() != node)) {
                continue;
            }
            Complex in = p.a() == node ? amps : amps.times(-1);
            sum = sum.isNaN() ? in : sum.plus(in);
        }
        return sum;
    }

    /** Voltage across a load or source: the lowest of several, those of a delta as line to neutral; NaN where dead. */
    public double across(int attachment) {
        double least = Double.NaN;
        int[] parts = assembly.partsOfAttachment(attachment);
        for (int part : parts) {
            PhasorCircuit.Piece p = assembly.circuit().piece(part);
            double volts = flow.voltage(p.a()).minus(flow.voltage(p.b())).magnitude();
            volts *= parts.length == 3 && p.kind() != Part.EMF ? 1 / Math.sqrt(3) : 1; // line to line in a delta
            least = Double.isNaN(least) || volts < least ? volts : least;
        }
        return least;
    }

    /** Active power that an attachment takes, of all phases; NaN where it is not calculated. */
    public double powerOfAttachment(int attachment) {
        int pin = network.attachments().get(attachment).pin();
        double parts = power(assembly.partsOfAttachment(attachment));
        return plus(parts, windingsW(attachment, true)) * assembly.phases(pin);
    }

    /** Active power that the output of a converter takes, of all phases; NaN where it is not calculated. */
    public double powerOfOutput(int attachment) {
        int pin = network.attachments().get(attachment).outputPin();
        double parts = power(assembly.partsOfOutput(attachment));
        return plus(parts, windingsW(attachment, false)) * assembly.phases(pin);
    }

    /** Whether a source, load or converter input is part of the circuit. */
    public boolean calculates(int attachment) {
        return assembly.partsOfAttachment(attachment).length + assembly.windings(attachment).length > 0;
    }

    /** Whether the output of a converter feeds a system that is calculated here. */
    public boolean feeds(int attachment) {
        return assembly.partsOfOutput(attachment).length + assembly.windings(attachment).length > 0;
    }

    double residualA() {
        return flow.residualA();
    }

    List<Flow.Trouble> troubles() {
        List<Flow.Trouble> all = new ArrayList<>();
        for (Flow.Trouble t : flow.troubles()) {
            all.add(new Flow.Trouble(assembly.nodes().point(t.node()), t.contradiction()));
        }
        return all;
    }

    /** A current's magnitude with the sign of the active power that it carries at this voltage. */
    public static double signed(Complex amps, Complex volts) {
        double power = volts.times(amps.conjugate()).re();
        double most = volts.magnitude() * amps.magnitude();
        return power < -1e-9 * most ? -amps.magnitude() : amps.magnitude();
    }
}
