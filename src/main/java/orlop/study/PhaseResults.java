package orlop.study;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import orlop.network.Connection;
import orlop.study.linear.Complex;
import orlop.study.model.AcOperation;
import orlop.study.model.Operation;
import orlop.study.model.PointCurrents;
import orlop.study.model.Wires;

/** The figures of single conductors, where a system is calculated phase by phase; else nothing. */
final class PhaseResults {
    static final Complex NONE = new Complex(Double.NaN, Double.NaN);

    private final Operation operation;
    private final AcOperation alternating;
    private final PointCurrents currents;

    PhaseResults(Operation operation, PointCurrents currents) {
        this.operation = operation;
        this.currents = currents;
        alternating = operation.alternating();
    }

    /** Voltages at a pin. */
    Map<String, PhaseResult> at(int pin) {
        return at(pin, wire -> NONE);
    }

    /** Voltages at a pin with these currents. */
    Map<String, PhaseResult> at(int pin, IntFunction<Complex> current) {
        if (!alternating.byPhase(pin)) {
            return Map.of();
        }
        Map<String, PhaseResult> all = new LinkedHashMap<>();
        for (int wire = 0; wire < Wires.COUNT; wire++) {
            Complex volts = wire == Wires.N ? alternating.voltage(pin, wire) : alternating.lineVoltage(pin, wire);
            if (!volts.isNaN()) {
                Double amps = signed(current.apply(wire), wire, volts);
                all.put(Wires.NAMES.get(wire), new PhaseResult(volts.magnitude(), volts.angleDeg(), amps, null));
            }
        }
        return all;
    }

    /** Currents and drops along a cable. */
    Map<String, PhaseResult> along(int connection) {
        Connection c = operation.network().connections().get(connection);
        if (!alternating.byPhase(c.a())) {
            return Map.of();
        }
        Map<String, PhaseResult> all = new LinkedHashMap<>();
        for (int wire = 0; wire < Wires.COUNT; wire++) {
            Complex amps = currents.phasor(connection, wire);
            boolean line = wire != Wires.N;
            if (!amps.isNaN() && (line || !alternating.voltage(c.a(), wire).isNaN())) {
                Complex volts = alternating.lineVoltage(c.a(), wire);
                double across = alternating
                        .voltage(c.a(), wire)
                        .minus(alternating.voltage(c.b(), wire))
                        .magnitude();
                double drop = line ? operation.dropV(c, wire) : across;
                all.put(
                        Wires.NAMES.get(wire),
                        new PhaseResult(null, null, signed(amps, wire, volts), Double.isNaN(drop) ? null : drop));
            }
        }
        return all;
    }

    /** In the neutral, which has no voltage to speak of, without a sign. */
    private static @Nullable Double signed(Complex amps, int wire, Complex volts) {
        boolean plain = wire == Wires.N || volts.isNaN();
        return amps.isNaN() ? null : plain ? (Double) amps.magnitude() : (Double) AcOperation.signed(amps, volts);
    }
}
