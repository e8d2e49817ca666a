package orlop.study.model;

import orlop.drawing.Chemistry;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.FaultMethod;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.Source;
import orlop.drawing.Unit;
import orlop.study.flow.Part;

/**
 * Electromotive force and resistance of batteries. What is not stated is taken from chemistry, capacity and system:
 * rest voltages from memory, resistances (ohms times ampere-hours per 12 V) engineering estimates.
 */
final class Batteries {
    /** Rest voltage of 12 V of lead-acid cells at 0, 25, 50, 75, 100 % charge, 25 °C; from memory. */
    private static final double[] LEAD_V = {11.8, 12.0, 12.2, 12.4, 12.7};

    /** Rest voltage of four lithium iron phosphate cells at 0, 25, 50, 75, 100 % charge; from memory. */
    private static final double[] LITHIUM_V = {11.0, 12.95, 13.2, 13.3, 13.4};

    private static final double ASSUMED_AH = 100;

    /** IEC 61660-1 (from memory): what of the stated resistance counts at the peak. */
    private static final double PEAK_SHARE = 0.9;

    /** IEC 61660-1 (from memory): emf of a charged battery over its nominal voltage, where it is not known. */
    private static final double CHARGED = 1.05;

    /** IEC 61660-1 (from memory): emf of a discharged battery over its nominal voltage. */
    private static final double DISCHARGED = 0.9;

    /** IEC 61660-1 (from memory): quasi-steady current over emf and resistance. */
    private static final double QUASI_STEADY = 0.95;

    /** Resistance at low charge and the end of life over the stated one; engineering estimate. */
    private static final double AGED = 1.7;

    private Batteries() {}

    static SourceModel of(
            Component c, Source.Battery b, ElectricalSystem system, int inChain, FaultMethod method, Notes notes) {
        double nominal = system.nominalV() / inChain;
        double emf = b.emfV() != null ? b.emfV() : assumedEmf(c, b, nominal, notes);
        double ohm = b.resistanceOhm() != null ? b.resistanceOhm() : assumedOhm(c, b, nominal, notes);
        double none = Double.POSITIVE_INFINITY;
        SourceModel.Thevenin most = new SourceModel.Thevenin(emf, ohm, none);
        SourceModel.Thevenin least = most;
        if (method == FaultMethod.IEC) {
            boolean lithium = b.chemistry() == Chemistry.LITHIUM_IRON_PHOSPHATE;
            double full = lithium ? LITHIUM_V[4] / 12 * nominal : CHARGED * nominal;
            double charged = b.emfV() != null ? emf : full;
            most = new SourceModel.Thevenin(charged, lithium ? ohm : PEAK_SHARE * ohm, none);
            double low = Math.min(emf, DISCHARGED * nominal);
            least = new SourceModel.Thevenin(lithium ? low : QUASI_STEADY * low, AGED * ohm, none);
        }
        return new SourceModel(Part.EMF, emf, ohm, none, most, least, none, false, true);
    }

    private static double assumedEmf(Component c, Source.Battery b, double nominal, Notes notes) {
        double[] curve = b.chemistry() == Chemistry.LITHIUM_IRON_PHOSPHATE ? LITHIUM_V : LEAD_V;
        double at = b.stateOfChargePercent() / 25;
        int step = Math.min(3, (int) at);
        double emf = (curve[step] + (at - step) * (curve[step + 1] - curve[step])) / 12 * nominal;
        notes.assumed(
                c.id(),
                "study.assumed.battery-emf",
                c.id(),
                new Quantity(emf, Unit.VOLT),
                chemistry(b),
                new Quantity(b.stateOfChargePercent(), Unit.PERCENT));
        return emf;
    }

    private static double assumedOhm(Component c, Source.Battery b, double nominal, Notes notes) {
        double ohmTimesAh = switch (b.chemistry()) {
            case FLOODED_LEAD, UNKNOWN -> 0.33;
            case AGM -> 0.5;
            case GEL -> 0.65;
            case LITHIUM_IRON_PHOSPHATE -> 0.4;
        };
        double ah = b.capacityAh() != null ? b.capacityAh() : ASSUMED_AH;
        double ohm = ohmTimesAh * nominal / 12 / ah;
        notes.assumed(
                c.id(),
                b.capacityAh() != null ? "study.assumed.battery-ohm" : "study.assumed.battery-ohm-ah",
                c.id(),
                new Quantity(ohm * 1_000, Unit.MILLIOHM),
                chemistry(b),
                new Quantity(ah, Unit.AMPERE_HOUR));
        return ohm;
    }

    private static Message chemistry(Source.Battery b) {
        return Message.of("study.chemistry." + b.chemistry().word());
    }
}
