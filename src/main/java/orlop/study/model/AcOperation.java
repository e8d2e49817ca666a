package orlop.study.model;

import java.util.List;
import java.util.function.BooleanSupplier;
import orlop.drawing.OperatingCondition;
import orlop.network.Network;
import orlop.study.flow.Circuit;
import orlop.study.flow.Flow;
import orlop.study.flow.PhasorCircuit;
import orlop.study.flow.PhasorFlow;
import orlop.study.linear.Complex;

/** The alternating-current side of a network at work. Phasors are r.m.s. values of one phase against neutral. */
public final class AcOperation {
    private static final Complex NONE = new Complex(Double.NaN, Double.NaN);

    private final Assembly direct;
    private final AcAssembly assembly;
    private final PhasorFlow flow;

    AcOperation(Plan plan, Network network, OperatingCondition condition, Assembly direct) {
        this.direct = direct;
        assembly = new AcAssembly(plan, network, condition, direct);
        flow = new PhasorFlow(assembly.circuit());
    }

    /** Whether the pin's system is calculated here. */
    public boolean isAc(int pin) {
        return assembly.isAc(pin);
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
        return again;
    }

    private boolean inverter(AcAssembly.Coupling c) {
        Circuit circuit = direct.circuit();
        double given = -power(c.acPart()) * c.phases();
        double watts = Math.max(0, Double.isNaN(given) ? 0 : given) / c.efficiency() + c.idleW();
        double before = circuit.first(c.dcPart());
        if (unmoved(watts, before)) {
            return false;
        }
        circuit.setFirst(c.dcPart(), watts);
        return true;
    }

    private boolean charger(AcAssembly.Coupling c, Flow directFlow) {
        Circuit circuit = direct.circuit();
        int b = circuit.b(c.dcPart());
        double volts = directFlow.voltage(circuit.a(c.dcPart())) - (b < 0 ? 0 : directFlow.voltage(b));
        double given = -directFlow.current(c.dcPart()) * volts;
        double watts = Math.max(0, Double.isNaN(given) ? 0 : given) / c.efficiency() + c.idleW();
        double before = assembly.circuit().piece(c.acPart()).value().re();
        if (unmoved(watts / c.phases(), before)) {
            return false;
        }
        assembly.circuit().setValue(c.acPart(), new Complex(watts / c.phases(), 0));
        return true;
    }

    private static boolean unmoved(double value, double before) {
        return Math.abs(value - before) <= 1e-11 * Math.max(1, Math.abs(value));
    }

    void setCable(int connection, double ohm, double reactanceOhm) {
        int part = assembly.partOfConnection(connection);
        if (part >= 0) {
            assembly.circuit().setImpedance(part, new Complex(ohm, reactanceOhm));
        }
    }

    /** Active power of one phase that a part takes; NaN where it is dead. */
    private double power(int part) {
        PhasorCircuit.Piece p = assembly.circuit().piece(part);
        Complex volts = flow.voltage(p.a()).minus(flow.voltage(p.b()));
        return volts.times(flow.current(part).conjugate()).re();
    }

    /** Voltage of a node (−1 is the reference) against neutral; NaN where it is dead. */
    public Complex voltage(int node) {
        return flow.voltage(node);
    }

    /** Current of a connection from a to b; NaN where it has no impedance or is dead. */
    public Complex connection(int connection) {
        return current(assembly.partOfConnection(connection));
    }

    /** Current that a source, a load or the input of a converter takes at its pin; NaN where it is not calculated. */
    public Complex attachment(int attachment) {
        return current(assembly.partOfAttachment(attachment));
    }

    /** Current that the output of a converter takes; NaN where it is not calculated. */
    public Complex output(int attachment) {
        return current(assembly.outputOfAttachment(attachment));
    }

    private Complex current(int part) {
        return part < 0 ? NONE : flow.current(part);
    }

    /** Active power of one phase that an attachment takes; NaN where it is not calculated. */
    public double powerOfAttachment(int attachment) {
        int part = assembly.partOfAttachment(attachment);
        return part < 0 ? Double.NaN : power(part);
    }

    /** Whether a source, load or converter input is part of the circuit. */
    public boolean calculates(int attachment) {
        return assembly.partOfAttachment(attachment) >= 0;
    }

    /** Whether the output of a converter feeds a system that is calculated here. */
    public boolean feeds(int attachment) {
        return assembly.outputOfAttachment(attachment) >= 0;
    }

    double residualA() {
        return flow.residualA();
    }

    List<Flow.Trouble> troubles() {
        return flow.troubles();
    }

    /** A current's magnitude with the sign of the active power that it carries at this voltage. */
    public static double signed(Complex amps, Complex volts) {
        double power = volts.times(amps.conjugate()).re();
        double most = volts.magnitude() * amps.magnitude();
        return power < -1e-9 * most ? -amps.magnitude() : amps.magnitude();
    }
}
