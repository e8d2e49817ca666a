package orlop.study.model;

import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Particulars;
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

    static double efficiency(Component c) {
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

    static double idleW(Component c) {
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
