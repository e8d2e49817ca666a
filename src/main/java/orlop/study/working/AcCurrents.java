package orlop.study.working;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Unit;
import orlop.network.Connection;
import orlop.study.linear.Complex;
import orlop.study.model.AcOperation;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;
import orlop.study.model.Wires;

/** The current of a cable of alternating current: the voltage along it over its impedance, by Ohm's law. */
final class AcCurrents {
    private final Operation operation;
    private final AcOperation alternating;

    AcCurrents(Operation operation) {
        this.operation = operation;
        alternating = operation.alternating();
    }

    /**
     * The conductor that carries most; null where it has no impedance.
     *
     * @param amps what has to come out, 0 or more
     */
    @Nullable
    Working along(Connection c, int edge, CableModel w, double areaMm2, double conductorC, double amps) {
        if (!alternating.byPhase(c.a())) {
            Complex z = new Complex(w.loopOhm(areaMm2, conductorC), w.reactanceOhm());
            return ohmsLaw(operation.phasor(c.a()), operation.phasor(c.b()), z, amps);
        }
        for (int wire = 0; wire < alternating.wires(c.a()); wire++) {
            Complex z = wire == Wires.N ? w.back(areaMm2, conductorC) : w.line(areaMm2, conductorC);
            Working found = Math.abs(alternating.connection(edge, wire).magnitude() - amps) <= 1e-9 * Math.max(1, amps)
                    ? ohmsLaw(alternating.voltage(c.a(), wire), alternating.voltage(c.b(), wire), z, amps)
                    : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private static @Nullable Working ohmsLaw(Complex a, Complex b, Complex z, double amps) {
        double along = a.minus(b).magnitude();
        if (!(Math.abs(along - amps * z.magnitude()) <= 1e-6 * along) || !(along > 0)) {
            return null;
        }
        List<Working> impedance = List.of(
                Working.given(Say.what("resistance-counted"), "R", z.re(), Unit.OHM, null),
                Working.given(Say.what("reactance"), "X", z.im(), Unit.OHM, Say.from("reactance")));
        List<Working> inputs = new ArrayList<>();
        inputs.add(Working.given(Say.what("volts-along"), "Uz", along, Unit.VOLT, Say.from("network")));
        inputs.add(Working.found(Say.what("impedance-along"), "Z", "√(R² + X²)", z.magnitude(), Unit.OHM, impedance));
        return Working.found(Say.what("current"), "I", "Uz / Z", amps, Unit.AMPERE, inputs);
    }
}
