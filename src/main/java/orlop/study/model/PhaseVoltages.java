package orlop.study.model;

import orlop.network.Connection;
import orlop.study.linear.Complex;

/** Voltages at a pin of alternating current, and what is lost between two pins, where each phase has its own. */
final class PhaseVoltages {
    private final Plan plan;
    private final AcOperation alternating;

    PhaseVoltages(Plan plan, AcOperation alternating) {
        this.plan = plan;
        this.alternating = alternating;
    }

    /**
     * Voltage at a pin across a set of conductors: between a line and the neutral, between two lines; of three lines the
     * lowest between two of them, as line to neutral.
     */
    double pair(int pin, int mask) {
        if (Wires.lines(mask) == 3) {
            double least = Double.NaN;
            for (int wire = 0; wire < 3; wire++) {
                Complex other = alternating.voltage(pin, (wire + 1) % 3);
                double volts = alternating.voltage(pin, wire).minus(other).magnitude() / Math.sqrt(3);
                least = Double.isNaN(least) || volts < least ? volts : least;
            }
            return least;
        }
        if (Wires.lines(mask) == 2 && !Wires.has(mask, Wires.N)) {
            int[] two = Wires.branches(mask).get(0);
            return alternating
                    .voltage(pin, two[0])
                    .minus(alternating.voltage(pin, two[1]))
                    .magnitude();
        }
        double least = Double.NaN;
        for (int wire = 0; wire < Wires.N; wire++) {
            double volts =
                    Wires.has(mask, wire) ? alternating.lineVoltage(pin, wire).magnitude() : Double.NaN;
            least = Double.isNaN(least) || volts < least ? volts : least;
        }
        return least;
    }

    /** Voltage of a pin of an alternating-current system, of the phase that has least; NaN where it is dead. */
    Complex phasor(int pin) {
        Complex least = alternating.lineVoltage(pin, 0);
        for (int wire = 1; wire < Math.min(3, alternating.wires(pin)); wire++) {
            Complex here = alternating.lineVoltage(pin, wire);
            least = least.isNaN() || here.magnitude() < least.magnitude() ? here : least;
        }
        return least;
    }

    /** What a cable of alternating current loses of the voltage's magnitude, of the phase that loses most. */
    double dropV(Connection c) {
        int mask = plan.wires(c.theCable());
        if (Wires.lines(mask) == 2 && !Wires.has(mask, Wires.N)) {
            return pair(c.a(), mask) - pair(c.b(), mask);
        }
        double most = Double.NaN;
        for (int wire = 0; wire < Wires.N; wire++) {
            double drop = Wires.has(mask, wire) ? lostV(c.a(), c.b(), wire) : Double.NaN;
            most = Double.isNaN(most) || Math.abs(drop) > Math.abs(most) ? drop : most;
        }
        return most;
    }

    /** What one line loses, against the neutral at both ends or, where it does not reach both, against the middle of the lines. */
    double lostV(int from, int to, int wire) {
        if (alternating.hasNeutral(from) && alternating.hasNeutral(to)) {
            return alternating.lineVoltage(from, wire).magnitude()
                    - alternating.lineVoltage(to, wire).magnitude();
        }
        return alternating.againstLines(from, wire).magnitude()
                - alternating.againstLines(to, wire).magnitude();
    }

    /** What is lost from one pin to another, of the phase that reaches both and loses most. */
    double lostV(int source, int pin) {
        int mask = plan.wiresAt(pin);
        if (Wires.lines(mask) == 2 && !Wires.has(mask, Wires.N)) {
            return pair(source, mask) - pair(pin, mask);
        }
        double most = Double.NaN;
        for (int wire = 0; wire < Wires.N; wire++) {
            double drop = lostV(source, pin, wire);
            most = Double.isNaN(most) || drop > most ? drop : most;
        }
        return most;
    }
}
