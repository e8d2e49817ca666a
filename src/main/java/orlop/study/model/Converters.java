package orlop.study.model;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.EfficiencyByLoad;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Particulars;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.study.flow.Efficiency;
import orlop.study.linear.Complex;

/** Efficiency, idle power and alternating-current output of converters of every kind. */
public final class Converters {
    private Converters() {}

    /**
     * What a converter is at an alternating-current output, phase to neutral: one for what no trade kind fits holds its
     * set voltage behind its resistance, all others the nominal voltage.
     */
    public static AcSourceModel.Thevenin alternatingOutput(Component c, ElectricalSystem out) {
        double phaseV = Plan.phaseV(out);
        if (!(c.particulars() instanceof Conversion.PlainConverter p)) {
            return new AcSourceModel.Thevenin(new Complex(phaseV, 0), Complex.ZERO);
        }
        double volts = p.setV() == null ? phaseV : p.setV() * phaseV / out.nominalV();
        return new AcSourceModel.Thevenin(new Complex(volts, 0), new Complex(p.outputResistanceOhm(), 0));
    }

    /** What it takes for what it gives into such a system. */
    static Efficiency efficiency(Component c, ElectricalSystem out) {
        EfficiencyByLoad byLoad = c.particulars() instanceof Conversion k ? k.efficiencyByLoad() : null;
        Double rated = byLoad == null ? null : ratedW(c.particulars(), out);
        return new Efficiency(usual(c), idleW(c), rated == null ? Double.NaN : rated, byLoad);
    }

    /** Says where efficiency over the load is stated, but not what a load of 100 % is. */
    static void note(Component c, Plan plan) {
        if (!(c.particulars() instanceof Conversion k) || k.efficiencyByLoad() == null) {
            return;
        }
        for (String system : c.systems()
                .subList(Math.min(1, c.systems().size() - 1), c.systems().size())) {
            Efficiency e = efficiency(c, plan.system(system));
            if (!(e.ratedW() > 0)) {
                Quantity percent = new Quantity(100 * e.usual(), Unit.PERCENT);
                plan.notes().assumed(c.id(), "study.assumed.efficiency", c.id(), percent);
            }
        }
    }

    /** Output at full load: watts as stated, apparent power at power factor 1, charging current at its voltage. */
    private static @Nullable Double ratedW(Particulars p, ElectricalSystem out) {
        if (p instanceof Conversion.PlainConverter k) {
            return k.ratedW();
        }
        if (p instanceof Conversion.DcDcConverter k) {
            return k.ratedW();
        }
        if (p instanceof Conversion.Charger k) {
            return watts(k.ratedA(), k.setV(), out);
        }
        if (p instanceof Conversion.ChargeController k) {
            return watts(k.ratedA(), k.setV(), out);
        }
        if (p instanceof Conversion.InverterCharger k) {
            return out.nature().isDc() ? watts(k.chargeA(), null, out) : k.ratedVa();
        }
        if (p instanceof Conversion.Inverter k) {
            return k.ratedVa();
        }
        return p instanceof Conversion.FrequencyConverter k ? k.ratedVa() : null;
    }

    private static @Nullable Double watts(@Nullable Double amps, @Nullable Double volts, ElectricalSystem out) {
        return amps == null ? null : (Double) (amps * (volts == null ? out.highestV() : volts));
    }

    private static double usual(Component c) {
        Particulars p = c.particulars();
        if (p instanceof Conversion.PlainConverter k) {
            return k.efficiency();
        }
        if (p instanceof Conversion.DcDcConverter k) {
            return k.efficiency();
        }
        if (p instanceof Conversion.Charger k) {
            return k.efficiency();
        }
        if (p instanceof Conversion.ChargeController k) {
            return k.efficiency();
        }
        if (p instanceof Conversion.Inverter k) {
            return k.efficiency();
        }
        if (p instanceof Conversion.InverterCharger k) {
            return k.efficiency();
        }
        return p instanceof Conversion.FrequencyConverter k ? k.efficiency() : 1;
    }

    private static double idleW(Component c) {
        Particulars p = c.particulars();
        if (p instanceof Conversion.PlainConverter k) {
            return k.idleW();
        }
        if (p instanceof Conversion.DcDcConverter k) {
            return k.idleW();
        }
        if (p instanceof Conversion.Charger k) {
            return k.idleW();
        }
        if (p instanceof Conversion.ChargeController k) {
            return k.idleW();
        }
        if (p instanceof Conversion.Inverter k) {
            return k.idleW();
        }
        if (p instanceof Conversion.InverterCharger k) {
            return k.idleW();
        }
        return p instanceof Conversion.FrequencyConverter k ? k.idleW() : 0;
    }
}
