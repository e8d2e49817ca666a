package orlop.drawing;

import static orlop.drawing.Checks.notNegative;
import static orlop.drawing.Checks.notNegativeOrUnknown;
import static orlop.drawing.Checks.positiveOrUnknown;
import static orlop.drawing.Checks.share;

import org.jspecify.annotations.Nullable;

/**
 * What takes power from one system and gives it to another: terminal 1 in the first of its systems, terminal 2 in the
 * second.
 */
public sealed interface Conversion extends Particulars
        permits Conversion.Inverter,
                Conversion.InverterCharger,
                Conversion.Charger,
                Conversion.DcDcConverter,
                Conversion.ChargeController,
                Conversion.Transformer,
                Conversion.FrequencyConverter,
                Conversion.PlainConverter {

    @Override
    default <R> R match(Cases<R> cases) {
        return cases.conversion(this);
    }

    /** Efficiency over its load; null where none is stated, of a transformer always. */
    default @Nullable EfficiencyByLoad efficiencyByLoad() {
        return null;
    }

    /** The phases of a three-phase board that its alternating input is connected to; {@code ALL} takes what reaches it. */
    default Phase phase() {
        return Phase.ALL;
    }

    /**
     * DC (terminal 1) to AC (terminal 2).
     *
     * @param ratedVa continuous output
     * @param efficiency at its usual load, above 0 to 1
     * @param idleW drawn from the DC side with nothing connected
     * @param surgeVa for some seconds
     * @param faultA most current into a fault
     * @param faultHoldS how long it holds that current before it shuts down
     * @param efficiencyByLoad efficiency over output in percent of the rated one; overrules {@code efficiency}
     */
    record Inverter(
            @Nullable Double ratedVa,
            double efficiency,
            double idleW,
            @Nullable Double surgeVa,
            @Nullable Double faultA,
            @Nullable Double faultHoldS,
            @Nullable EfficiencyByLoad efficiencyByLoad)
            implements Conversion {
        public Inverter {
            positiveOrUnknown(ratedVa, "ratedVa");
            share(efficiency, "efficiency");
            notNegative(idleW, "idleW");
            positiveOrUnknown(surgeVa, "surgeVa");
            notNegativeOrUnknown(faultA, "faultA");
            notNegativeOrUnknown(faultHoldS, "faultHoldS");
        }

        /** One whose efficiency does not follow its load. */
        public Inverter(
                @Nullable Double ratedVa,
                double efficiency,
                double idleW,
                @Nullable Double surgeVa,
                @Nullable Double faultA,
                @Nullable Double faultHoldS) {
            this(ratedVa, efficiency, idleW, surgeVa, faultA, faultHoldS, null);
        }

        static Inverter defaults() {
            return new Inverter(null, 0.9, 0, null, null, null);
        }

        @Override
        public Kind kind() {
            return Kind.INVERTER;
        }
    }

    /**
     * Inverter and charger with a transfer switch: terminal 1 DC, terminal 2 AC out, terminal 3 AC in (same system as
     * 2).
     *
     * @param ratedVa continuous output when inverting
     * @param efficiency at its usual load, both ways
     * @param idleW drawn from the DC side with nothing connected
     * @param chargeA most charging current
     * @param transferA rating of the transfer switch
     * @param surgeVa for some seconds
     * @param faultA most current into a fault when inverting
     * @param faultHoldS how long it holds that current
     * @param phase of a three-phase board that its alternating input is connected to; ALL takes what reaches it
     * @param efficiencyByLoad efficiency over output in percent of the rated one, both ways; overrules {@code efficiency}
     */
    record InverterCharger(
            @Nullable Double ratedVa,
            double efficiency,
            double idleW,
            @Nullable Double chargeA,
            @Nullable Double transferA,
            @Nullable Double surgeVa,
            @Nullable Double faultA,
            @Nullable Double faultHoldS,
            Phase phase,
            @Nullable EfficiencyByLoad efficiencyByLoad)
            implements Conversion {
        public InverterCharger {
            positiveOrUnknown(ratedVa, "ratedVa");
            share(efficiency, "efficiency");
            notNegative(idleW, "idleW");
            positiveOrUnknown(chargeA, "chargeA");
            positiveOrUnknown(transferA, "transferA");
            positiveOrUnknown(surgeVa, "surgeVa");
            notNegativeOrUnknown(faultA, "faultA");
            notNegativeOrUnknown(faultHoldS, "faultHoldS");
        }

        /** One that takes whatever phase reaches it. */
        public InverterCharger(
                @Nullable Double ratedVa,
                double efficiency,
                double idleW,
                @Nullable Double chargeA,
                @Nullable Double transferA,
                @Nullable Double surgeVa,
                @Nullable Double faultA,
                @Nullable Double faultHoldS) {
            this(ratedVa, efficiency, idleW, chargeA, transferA, surgeVa, faultA, faultHoldS, Phase.ALL, null);
        }

        static InverterCharger defaults() {
            return new InverterCharger(null, 0.9, 0, null, null, null, null, null);
        }

        @Override
        public Kind kind() {
            return Kind.INVERTER_CHARGER;
        }
    }

    /**
     * AC (terminal 1) to DC (terminal 2).
     *
     * @param ratedA charging current
     * @param setV charging voltage, the system's highest voltage if null
     * @param efficiency above 0 to 1
     * @param idleW drawn from the AC side with nothing to charge
     * @param selfLimiting whether it limits its own current, so that it needs no device at its own end
     * @param phase of a three-phase board that its alternating input is connected to; ALL takes what reaches it
     * @param efficiencyByLoad efficiency over output in percent of the rated one; overrules {@code efficiency}
     */
    record Charger(
            @Nullable Double ratedA,
            @Nullable Double setV,
            double efficiency,
            double idleW,
            boolean selfLimiting,
            Phase phase,
            @Nullable EfficiencyByLoad efficiencyByLoad)
            implements Conversion {
        public Charger {
            positiveOrUnknown(ratedA, "ratedA");
            positiveOrUnknown(setV, "setV");
            share(efficiency, "efficiency");
            notNegative(idleW, "idleW");
        }

        /** One that takes whatever phase reaches it. */
        public Charger(
                @Nullable Double ratedA, @Nullable Double setV, double efficiency, double idleW, boolean selfLimiting) {
            this(ratedA, setV, efficiency, idleW, selfLimiting, Phase.ALL, null);
        }

        static Charger defaults() {
            return new Charger(null, null, 0.88, 0, true);
        }

        @Override
        public Kind kind() {
            return Kind.CHARGER;
        }
    }

    /**
     * DC to DC.
     *
     * @param ratedW continuous output
     * @param setV output voltage, the system's nominal voltage if null
     * @param outputResistanceOhm slope of the output, 0 if it is held
     * @param efficiency above 0 to 1
     * @param idleW drawn with nothing connected
     * @param separated whether input and output are galvanically separated; a plain converter joins the negatives
     * @param faultA most current into a fault, from its rating if null
     * @param selfLimiting whether it limits its own current
     * @param efficiencyByLoad efficiency over output in percent of the rated one; overrules {@code efficiency}
     */
    record DcDcConverter(
            @Nullable Double ratedW,
            @Nullable Double setV,
            double outputResistanceOhm,
            double efficiency,
            double idleW,
            boolean separated,
            @Nullable Double faultA,
            boolean selfLimiting,
            @Nullable EfficiencyByLoad efficiencyByLoad)
            implements Conversion {
        public DcDcConverter {
            positiveOrUnknown(ratedW, "ratedW");
            positiveOrUnknown(setV, "setV");
            notNegative(outputResistanceOhm, "outputResistanceOhm");
            share(efficiency, "efficiency");
            notNegative(idleW, "idleW");
            notNegativeOrUnknown(faultA, "faultA");
        }

        /** One whose efficiency does not follow its load. */
        public DcDcConverter(
                @Nullable Double ratedW,
                @Nullable Double setV,
                double outputResistanceOhm,
                double efficiency,
                double idleW,
                boolean separated,
                @Nullable Double faultA,
                boolean selfLimiting) {
            this(ratedW, setV, outputResistanceOhm, efficiency, idleW, separated, faultA, selfLimiting, null);
        }

        static DcDcConverter defaults() {
            return new DcDcConverter(null, null, 0, 0.92, 0, false, null, true);
        }

        @Override
        public Kind kind() {
            return Kind.DC_DC_CONVERTER;
        }
    }

    /**
     * Photovoltaic strings (terminal 1) to a battery system (terminal 2).
     *
     * @param ratedA most output current
     * @param maxInputV most input voltage
     * @param setV charging voltage, the system's highest voltage if null
     * @param efficiency above 0 to 1
     * @param idleW drawn at night
     * @param efficiencyByLoad efficiency over output in percent of the rated one; overrules {@code efficiency}
     */
    record ChargeController(
            @Nullable Double ratedA,
            @Nullable Double maxInputV,
            @Nullable Double setV,
            double efficiency,
            double idleW,
            @Nullable EfficiencyByLoad efficiencyByLoad)
            implements Conversion {
        public ChargeController {
            positiveOrUnknown(ratedA, "ratedA");
            positiveOrUnknown(maxInputV, "maxInputV");
            positiveOrUnknown(setV, "setV");
            share(efficiency, "efficiency");
            notNegative(idleW, "idleW");
        }

        static ChargeController defaults() {
            return new ChargeController(null, null, null, 0.97, 0, null);
        }

        @Override
        public Kind kind() {
            return Kind.CHARGE_CONTROLLER;
        }
    }

    /**
     * A transformer.
     *
     * @param ratedKva apparent power
     * @param shortCircuitPercent rated short-circuit voltage
     * @param loadLossW at rated current
     * @param noLoadLossW with nothing connected
     * @param separate true for two windings, false for an autotransformer
     * @param phase of a three-phase board that its alternating input is connected to; ALL takes what reaches it
     */
    record Transformer(
            @Nullable Double ratedKva,
            @Nullable Double shortCircuitPercent,
            @Nullable Double loadLossW,
            @Nullable Double noLoadLossW,
            boolean separate,
            Phase phase)
            implements Conversion {
        public Transformer {
            positiveOrUnknown(ratedKva, "ratedKva");
            positiveOrUnknown(shortCircuitPercent, "shortCircuitPercent");
            notNegativeOrUnknown(loadLossW, "loadLossW");
            notNegativeOrUnknown(noLoadLossW, "noLoadLossW");
        }

        /** One that takes whatever phase reaches it. */
        public Transformer(
                @Nullable Double ratedKva,
                @Nullable Double shortCircuitPercent,
                @Nullable Double loadLossW,
                @Nullable Double noLoadLossW,
                boolean separate) {
            this(ratedKva, shortCircuitPercent, loadLossW, noLoadLossW, separate, Phase.ALL);
        }

        static Transformer defaults() {
            return new Transformer(null, null, null, null, true);
        }

        @Override
        public Kind kind() {
            return Kind.TRANSFORMER;
        }
    }

    /**
     * AC of one frequency to AC of another, for a motor.
     *
     * @param ratedVa continuous output
     * @param efficiency above 0 to 1
     * @param idleW drawn with the motor at rest
     * @param efficiencyByLoad efficiency over output in percent of the rated one; overrules {@code efficiency}
     */
    record FrequencyConverter(
            @Nullable Double ratedVa,
            double efficiency,
            double idleW,
            @Nullable EfficiencyByLoad efficiencyByLoad) implements Conversion {
        public FrequencyConverter {
            positiveOrUnknown(ratedVa, "ratedVa");
            share(efficiency, "efficiency");
            notNegative(idleW, "idleW");
        }

        static FrequencyConverter defaults() {
            return new FrequencyConverter(null, 0.95, 0, null);
        }

        @Override
        public Kind kind() {
            return Kind.FREQUENCY_CONVERTER;
        }
    }

    /**
     * A converter for what no trade kind fits: it holds {@code setV} behind {@code outputResistanceOhm}; input power is
     * output power over efficiency plus idle power.
     *
     * @param setV output voltage, the system's nominal voltage if null; of three phases, line to line like that
     * @param outputResistanceOhm slope of the output
     * @param efficiency above 0 to 1
     * @param idleW drawn whatever the output
     * @param ratedW output that its efficiency by load refers to; it limits nothing
     * @param efficiencyByLoad efficiency over output in percent of the rated one; overrules {@code efficiency}
     */
    record PlainConverter(
            @Nullable Double setV,
            double outputResistanceOhm,
            double efficiency,
            double idleW,
            @Nullable Double ratedW,
            @Nullable EfficiencyByLoad efficiencyByLoad)
            implements Conversion {
        public PlainConverter {
            positiveOrUnknown(setV, "setV");
            notNegative(outputResistanceOhm, "outputResistanceOhm");
            share(efficiency, "efficiency");
            notNegative(idleW, "idleW");
            positiveOrUnknown(ratedW, "ratedW");
        }

        /** One whose efficiency does not follow its load. */
        public PlainConverter(@Nullable Double setV, double outputResistanceOhm, double efficiency, double idleW) {
            this(setV, outputResistanceOhm, efficiency, idleW, null, null);
        }

        static PlainConverter defaults() {
            return new PlainConverter(null, 0, 1, 0);
        }

        @Override
        public Kind kind() {
            return Kind.CONVERTER;
        }
    }
}
