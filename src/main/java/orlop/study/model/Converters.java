package orlop.study.model;

import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Particulars;

/** Efficiency and idle power of converters of every kind. */
final class Converters {
    private Converters() {}

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
