package orlop.study.model;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.FaultMethod;
import orlop.drawing.Quantity;
import orlop.drawing.Source;
import orlop.drawing.Unit;

/** Turns the particulars of sources and converters into models. */
final class Sources {
    private final FaultMethod method;
    private final Notes notes;

    Sources(FaultMethod method, Notes notes) {
        this.method = method;
        this.notes = notes;
    }

    /** Null for a kind that has no direct-current model. */
    @Nullable
    SourceModel of(Component c, ElectricalSystem system, int inChain) {
        if (c.particulars() instanceof Source.Battery b) {
            return Batteries.of(c, b, system, inChain, method, notes);
        }
        if (c.particulars() instanceof Source.Supply s) {
            double emf = s.emfV() != null ? s.emfV() : system.nominalV();
            return SourceModel.emf(emf, s.resistanceOhm(), s.oneWay());
        }
        if (c.particulars() instanceof Source.CurrentSupply s) {
            return SourceModel.current(s.currentA());
        }
        if (c.particulars() instanceof Source.LimitedSupply s) {
            double set = s.setV() != null ? s.setV() : system.nominalV();
            double limit = s.limitA() != null ? s.limitA() : Double.POSITIVE_INFINITY;
            return SourceModel.limited(set, s.resistanceOhm(), limit, limit, true);
        }
        if (c.particulars() instanceof Source.PowerSupply s) {
            return powerSupply(c, s, system);
        }
        return charging(c, system);
    }

    private SourceModel powerSupply(Component c, Source.PowerSupply s, ElectricalSystem system) {
        double limit = s.limitA() != null ? s.limitA() : Double.POSITIVE_INFINITY;
        double usual = system.nominalV() > 0 ? s.powerW() / system.nominalV() : 0;
        double fault = s.limitA() != null ? s.limitA() : usual;
        if (s.limitA() == null) {
            notes.assumed(c.id(), "study.assumed.power-limit", c.id(), new Quantity(usual, Unit.AMPERE));
        }
        SourceModel.Thevenin t = SourceModel.Thevenin.current(fault);
        return new SourceModel(orlop.study.flow.Part.POWER_SOURCE, s.powerW(), 0, limit, t, t, fault, true, false);
    }

    private @Nullable SourceModel charging(Component c, ElectricalSystem system) {
        if (c.particulars() instanceof Source.Alternator a) {
            double set = a.setV() != null ? a.setV() : system.highestV();
            double most = known(c, a.hotOutputA(), "hotOutputA");
            return SourceModel.limited(set, 0, most, most, true);
        }
        if (c.particulars() instanceof Source.Turbine t) {
            double most = known(c, t.ratedA(), "ratedA");
            return SourceModel.limited(system.highestV(), 0, most, most, true);
        }
        if (c.particulars() instanceof Source.PvArray p) {
            double amps = p.powerPointA() != null ? p.powerPointA() : known(c, p.shortCircuitA(), "powerPointA");
            if (amps > 0 && p.powerPointV() == null && p.openCircuitV() == null) {
                Quantity taken = new Quantity(system.nominalV(), Unit.VOLT);
                notes.assumed(c.id(), "study.assumed.power-point", c.id(), taken);
            }
            return SourceModel.current(amps * p.inParallel());
        }
        return null;
    }

    /** The output of a converter into a direct-current system; null for a kind that has none. */
    @Nullable
    SourceModel output(Component c, ElectricalSystem system) {
        if (c.particulars() instanceof Conversion.PlainConverter p) {
            double set = p.setV() != null ? p.setV() : system.nominalV();
            return SourceModel.emf(set, p.outputResistanceOhm(), false);
        }
        if (c.particulars() instanceof Conversion.DcDcConverter d) {
            double set = d.setV() != null ? d.setV() : system.nominalV();
            double limit = d.ratedW() != null && set > 0 ? d.ratedW() / set : Double.POSITIVE_INFINITY;
            double fault = d.faultA() != null ? d.faultA() : d.ratedW() != null ? limit : known(c, null, "ratedW");
            SourceModel m = SourceModel.limited(set, d.outputResistanceOhm(), limit, fault, d.selfLimiting());
            return d.ratedW() != null ? m : withoutLimitInService(m, fault);
        }
        if (c.particulars() instanceof Conversion.Charger k) {
            double set = k.setV() != null ? k.setV() : system.highestV();
            double most = known(c, k.ratedA(), "ratedA");
            return SourceModel.limited(set, 0, most, most, k.selfLimiting());
        }
        if (c.particulars() instanceof Conversion.InverterCharger k) {
            double most = known(c, k.chargeA(), "chargeA");
            return SourceModel.limited(system.highestV(), 0, most, most, true);
        }
        if (c.particulars() instanceof Conversion.ChargeController k) {
            double set = k.setV() != null ? k.setV() : system.highestV();
            double most = known(c, k.ratedA(), "ratedA");
            return SourceModel.limited(set, 0, most, most, true);
        }
        return null;
    }

    private static SourceModel withoutLimitInService(SourceModel m, double faultA) {
        SourceModel.Thevenin held = new SourceModel.Thevenin(m.first(), m.second(), faultA);
        return new SourceModel(
                m.part(),
                m.first(),
                m.second(),
                Double.POSITIVE_INFINITY,
                held,
                held,
                faultA,
                m.carriesItself(),
                false);
    }

    private double known(Component c, @Nullable Double value, String field) {
        if (value != null) {
            return value;
        }
        notes.assumed(c.id(), "study.assumed.no-output", c.id(), LoadModel.value(field));
        return 0;
    }
}
