package orlop.study.model;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.study.flow.Part;
import orlop.study.linear.Complex;

/**
 * Alternating-current loads, one phase of them: power and impedance of a three-phase load are shared by its phases,
 * its impedance is that of one phase in star.
 */
final class AcLoads {
    private final Notes notes;

    AcLoads(Notes notes) {
        this.notes = notes;
    }

    /**
     * @param phaseV nominal voltage of a phase to neutral
     * @param phases 1 or 3
     */
    LoadModel of(Component c, Consumer load, double phaseV, int phases) {
        if (load instanceof Consumer.PlainLoad p) {
            return plain(c, p, phaseV, phases);
        }
        if (load instanceof Consumer.Heater h) {
            return resistance(c, h.powerW(), phaseV, phases, h.vital());
        }
        if (load instanceof Consumer.Lighting l) {
            return l.filament()
                    ? resistance(c, l.powerW(), phaseV, phases, l.vital())
                    : factor(c, l.powerW(), l.powerFactor(), phaseV, phases, l.vital());
        }
        if (load instanceof Consumer.Motor m) {
            Double input = m.shaftW() == null ? null : (Double) (m.shaftW() / m.efficiency());
            Double watts = m.ratedA() != null ? ofCurrent(m.ratedA(), m.powerFactor(), phaseV, phases) : input;
            return factor(c, watts, m.powerFactor(), phaseV, phases, m.vital());
        }
        if (load instanceof Consumer.Electronics e) {
            return factor(c, e.powerW(), e.powerFactor(), phaseV, phases, e.vital());
        }
        if (load instanceof Consumer.SocketOutlet s) {
            boolean rated = s.powerW() == null && s.ratingA() != null;
            Double watts = rated ? ofCurrent(s.ratingA(), 1, phaseV, phases) : s.powerW();
            return factor(c, watts, 1, phaseV, phases, s.vital());
        }
        if (load instanceof Consumer.ShortTimeMachine m) {
            Double watts = m.ratedA() != null ? ofCurrent(m.ratedA(), m.powerFactor(), phaseV, phases) : m.powerW();
            return factor(c, watts, m.powerFactor(), phaseV, phases, m.vital());
        }
        throw new AssertionError("load kind without a model: " + load.kind());
    }

    private static @Nullable Double ofCurrent(@Nullable Double amps, double powerFactor, double phaseV, int phases) {
        return amps == null ? null : (Double) (amps * powerFactor * phaseV * phases);
    }

    private LoadModel plain(Component c, Consumer.PlainLoad p, double phaseV, int phases) {
        switch (p.behaviour()) {
            case CURRENT -> {
                double amps = LoadModel.known(c, p.currentA(), "currentA", notes);
                if (p.powerFactor() == null && amps != 0) {
                    notes.assumed(c.id(), "study.assumed.power-factor", c.id());
                }
                double active = p.powerFactor() == null ? 1 : p.powerFactor();
                double reactive = Math.sqrt(1 - active * active);
                return new LoadModel(Part.LOAD_CURRENT, amps * active, amps * reactive, amps, p.vital());
            }
            case RESISTANCE -> {
                double x = p.reactanceOhm() == null ? 0 : p.reactanceOhm();
                Complex z = new Complex(p.resistanceOhm() == null ? 0 : p.resistanceOhm(), x);
                if (z.magnitude() == 0) {
                    LoadModel.known(c, null, "resistanceOhm", notes);
                    return new LoadModel(Part.LOAD_CONDUCTANCE, 0, 0, 0, p.vital());
                }
                Complex y = z.inverse();
                return new LoadModel(Part.LOAD_CONDUCTANCE, y.re(), -y.im(), y.magnitude() * phaseV, p.vital());
            }
            case POWER -> {
                boolean reactiveOnly = p.powerW() == null && p.reactiveVar() != null;
                double watts = reactiveOnly ? 0 : LoadModel.known(c, p.powerW(), "powerW", notes);
                double var = p.reactiveVar() == null ? 0 : p.reactiveVar();
                return power(watts, var, phaseV, phases, p.vital());
            }
        }
        throw new AssertionError(p.behaviour());
    }

    private LoadModel factor(
            Component c, @Nullable Double powerW, double powerFactor, double phaseV, int phases, boolean vital) {
        double watts = LoadModel.known(c, powerW, "powerW", notes);
        double var = watts * Math.sqrt(1 - powerFactor * powerFactor) / powerFactor;
        return power(watts, var, phaseV, phases, vital);
    }

    private static LoadModel power(double watts, double var, double phaseV, int phases, boolean vital) {
        double amps = phaseV > 0 ? Math.hypot(watts, var) / phases / phaseV : 0;
        return new LoadModel(Part.LOAD_POWER, watts / phases, var / phases, amps, vital);
    }

    private LoadModel resistance(Component c, @Nullable Double powerW, double phaseV, int phases, boolean vital) {
        double watts = LoadModel.known(c, powerW, "powerW", notes) / phases;
        double siemens = phaseV > 0 ? watts / phaseV / phaseV : 0;
        return new LoadModel(Part.LOAD_CONDUCTANCE, siemens, 0, siemens * phaseV, vital);
    }
}
