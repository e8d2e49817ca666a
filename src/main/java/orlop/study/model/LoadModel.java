package orlop.study.model;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.study.flow.Part;

/**
 * A load; in three-phase systems one phase of it.
 *
 * @param part how it behaves
 * @param value watts, amperes or siemens, all of it running; in alternating current the active part
 * @param reactive in alternating current the reactive part, lagging positive; else 0
 * @param ratedA current at the nominal voltage
 * @param vital whether safety depends on it
 */
public record LoadModel(Part part, double value, double reactive, double ratedA, boolean vital) {

    static LoadModel of(Component c, Consumer load, ElectricalSystem system, Notes notes) {
        double volts = system.nominalV();
        if (load instanceof Consumer.PlainLoad p) {
            return plain(c, p, volts, notes);
        }
        if (load instanceof Consumer.Heater h) {
            return resistance(c, h.powerW(), volts, h.vital(), notes);
        }
        if (load instanceof Consumer.Lighting l) {
            return l.filament()
                    ? resistance(c, l.powerW(), volts, l.vital(), notes)
                    : power(c, l.powerW(), volts, l.vital(), notes);
        }
        return power(c, watts(load, volts), volts, load.vital(), notes);
    }

    /**
     * Real power that an alternating-current load takes at its nominal voltage, all of it running; 0 where it is not
     * known. A fixed figure for the direct-current side of its inverter.
     */
    static double alternatingW(Consumer load, double volts) {
        double single = load.phase() == orlop.drawing.Phase.ALL ? volts : volts / Math.sqrt(3);
        Double watts;
        if (load instanceof Consumer.PlainLoad p) {
            Double amps = p.behaviour() == orlop.drawing.LoadBehaviour.CURRENT ? p.currentA() : null;
            Double ohm = p.behaviour() == orlop.drawing.LoadBehaviour.RESISTANCE ? p.resistanceOhm() : null;
            double cosPhi = p.powerFactor() == null ? 1 : p.powerFactor();
            watts = amps != null
                    ? (Double) (amps * single * cosPhi)
                    : ohm != null ? (Double) (single * single / ohm) : p.powerW();
        } else if (load instanceof Consumer.Heater h) {
            watts = h.powerW();
        } else if (load instanceof Consumer.Lighting l) {
            watts = l.powerW();
        } else if (load instanceof Consumer.Motor m && m.ratedA() != null) {
            watts = m.ratedA() * single * m.powerFactor();
        } else {
            watts = watts(load, single);
        }
        return watts == null ? 0 : watts;
    }

    private static @Nullable Double watts(Consumer load, double volts) {
        if (load instanceof Consumer.Motor m) {
            if (m.ratedA() != null) {
                return m.ratedA() * volts;
            }
            return m.shaftW() == null ? null : (Double) (m.shaftW() / m.efficiency());
        }
        if (load instanceof Consumer.Electronics e) {
            return e.powerW();
        }
        if (load instanceof Consumer.SocketOutlet s) {
            return s.powerW() != null || s.ratingA() == null ? s.powerW() : (Double) (s.ratingA() * volts);
        }
        if (load instanceof Consumer.ShortTimeMachine m) {
            return m.ratedA() != null ? (Double) (m.ratedA() * volts) : m.powerW();
        }
        throw new AssertionError("load kind without a model: " + load.kind());
    }

    private static LoadModel plain(Component c, Consumer.PlainLoad p, double volts, Notes notes) {
        switch (p.behaviour()) {
            case CURRENT -> {
                double amps = known(c, p.currentA(), "currentA", notes);
                return new LoadModel(Part.LOAD_CURRENT, amps, 0, amps, p.vital());
            }
            case RESISTANCE -> {
                Double ohm = p.resistanceOhm();
                double siemens = ohm == null ? known(c, null, "resistanceOhm", notes) : 1 / ohm;
                return new LoadModel(Part.LOAD_CONDUCTANCE, siemens, 0, siemens * volts, p.vital());
            }
            case POWER -> {
                return power(c, p.powerW(), volts, p.vital(), notes);
            }
        }
        throw new AssertionError(p.behaviour());
    }

    private static LoadModel power(Component c, @Nullable Double powerW, double volts, boolean vital, Notes notes) {
        double watts = known(c, powerW, "powerW", notes);
        return new LoadModel(Part.LOAD_POWER, watts, 0, volts > 0 ? watts / volts : 0, vital);
    }

    private static LoadModel resistance(
            Component c, @Nullable Double powerW, double volts, boolean vital, Notes notes) {
        double watts = known(c, powerW, "powerW", notes);
        double siemens = volts > 0 ? watts / volts / volts : 0;
        return new LoadModel(Part.LOAD_CONDUCTANCE, siemens, 0, siemens * volts, vital);
    }

    static double known(Component c, @Nullable Double value, String field, Notes notes) {
        if (value != null) {
            return value;
        }
        // A motor's data sheet gives the power at its shaft.
        String asked = field.equals("powerW") && c.particulars() instanceof Consumer.Motor ? "shaftW" : field;
        notes.assumed(c.id(), "study.assumed.no-load", c.id(), value(asked), new Quantity(0, Unit.NONE));
        return 0;
    }

    /** What a key of the file means, in words. */
    static Message value(String key) {
        return Message.of("study.value." + key);
    }
}
