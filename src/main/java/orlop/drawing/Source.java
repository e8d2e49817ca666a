package orlop.drawing;

import static orlop.drawing.Checks.between;
import static orlop.drawing.Checks.betweenOrUnknown;
import static orlop.drawing.Checks.finite;
import static orlop.drawing.Checks.notNegative;
import static orlop.drawing.Checks.notNegativeOrUnknown;
import static orlop.drawing.Checks.positiveOrUnknown;

import org.jspecify.annotations.Nullable;

/** What gives power. */
public sealed interface Source extends Particulars
        permits Source.Battery,
                Source.ShorePedestal,
                Source.ShoreInlet,
                Source.Generator,
                Source.Alternator,
                Source.PvArray,
                Source.Turbine,
                Source.Supply,
                Source.CurrentSupply,
                Source.LimitedSupply,
                Source.PowerSupply {

    @Override
    default <R> R match(Cases<R> cases) {
        return cases.source(this);
    }

    /**
     * A bank of cells or blocks. Terminal 1 is the positive; terminal 2 the negative, drawn only for series blocks.
     *
     * @param chemistry the kind of its cells
     * @param inSeries blocks or cells in series, 1 to 1,000
     * @param inParallel blocks in parallel, 1 to 100
     * @param capacityAh of the whole bank at the 20-hour rate, not known if null
     * @param emfV electromotive force of the bank at rest, from the chemistry and the system if null
     * @param resistanceOhm internal resistance of the whole bank, from the chemistry and capacity if null
     * @param chargeLimitA most it may be charged with, no limit stated if null
     * @param dischargeLimitA what its management system lets through, none if null
     * @param stateOfChargePercent at which the drawing is studied, 0 to 100
     */
    record Battery(
            Chemistry chemistry,
            int inSeries,
            int inParallel,
            @Nullable Double capacityAh,
            @Nullable Double emfV,
            @Nullable Double resistanceOhm,
            @Nullable Double chargeLimitA,
            @Nullable Double dischargeLimitA,
            double stateOfChargePercent)
            implements Source {
        public Battery {
            between(inSeries, 1, 1_000, "inSeries");
            between(inParallel, 1, 100, "inParallel");
            positiveOrUnknown(capacityAh, "capacityAh");
            notNegativeOrUnknown(emfV, "emfV");
            notNegativeOrUnknown(resistanceOhm, "resistanceOhm");
            positiveOrUnknown(chargeLimitA, "chargeLimitA");
            positiveOrUnknown(dischargeLimitA, "dischargeLimitA");
            between(stateOfChargePercent, 0, 100, "stateOfChargePercent");
        }

        static Battery defaults() {
            return new Battery(Chemistry.UNKNOWN, 1, 1, null, null, null, null, null, 80);
        }

        @Override
        public Kind kind() {
            return Kind.BATTERY;
        }
    }

    /**
     * The socket ashore.
     *
     * @param ratingA of its own breaker
     * @param faultMaxA highest prospective current at the socket
     * @param faultMinA lowest prospective current at the socket
     * @param residualMilliA rating of its residual-current device, none known if null
     */
    record ShorePedestal(
            @Nullable Double ratingA,
            @Nullable Double faultMaxA,
            @Nullable Double faultMinA,
            @Nullable Double residualMilliA)
            implements Source {
        public ShorePedestal {
            positiveOrUnknown(ratingA, "ratingA");
            positiveOrUnknown(faultMaxA, "faultMaxA");
            positiveOrUnknown(faultMinA, "faultMinA");
            positiveOrUnknown(residualMilliA, "residualMilliA");
        }

        static ShorePedestal defaults() {
            return new ShorePedestal(null, null, null, null);
        }

        @Override
        public Kind kind() {
            return Kind.SHORE_PEDESTAL;
        }
    }

    /**
     * The inlet aboard. Terminal 1 feeds the vessel. With nothing drawn at terminal 2 it stands for the shore itself.
     *
     * @param ratingA of the inlet
     * @param faultMaxA highest prospective current at the pedestal
     * @param faultMinA lowest prospective current at the pedestal
     */
    record ShoreInlet(
            @Nullable Double ratingA,
            @Nullable Double faultMaxA,
            @Nullable Double faultMinA) implements Source {
        public ShoreInlet {
            positiveOrUnknown(ratingA, "ratingA");
            positiveOrUnknown(faultMaxA, "faultMaxA");
            positiveOrUnknown(faultMinA, "faultMinA");
        }

        static ShoreInlet defaults() {
            return new ShoreInlet(null, null, null);
        }

        @Override
        public Kind kind() {
            return Kind.SHORE_INLET;
        }
    }

    /**
     * An engine-driven AC generator.
     *
     * @param ratedKva apparent power
     * @param powerFactor rated cos φ, 0 to 1
     * @param poles number of poles, 2 to 24
     * @param subtransientPercent X″d in percent of the rated impedance
     * @param transientPercent X′d in percent of the rated impedance
     * @param excitation what holds the current in a fault
     * @param fuelAtFullLoadLitrePerHour for the energy balance
     */
    record Generator(
            @Nullable Double ratedKva,
            double powerFactor,
            int poles,
            @Nullable Double subtransientPercent,
            @Nullable Double transientPercent,
            Excitation excitation,
            @Nullable Double fuelAtFullLoadLitrePerHour)
            implements Source {
        public Generator {
            positiveOrUnknown(ratedKva, "ratedKva");
            between(powerFactor, 0.01, 1, "powerFactor");
            between(poles, 2, 24, "poles");
            betweenOrUnknown(subtransientPercent, 0.1, 200, "subtransientPercent");
            betweenOrUnknown(transientPercent, 0.1, 200, "transientPercent");
            positiveOrUnknown(fuelAtFullLoadLitrePerHour, "fuelAtFullLoadLitrePerHour");
        }

        static Generator defaults() {
            return new Generator(null, 0.8, 4, null, null, Excitation.UNKNOWN, null);
        }

        @Override
        public Kind kind() {
            return Kind.GENERATOR;
        }
    }

    /**
     * An alternator on a propulsion engine, DC out.
     *
     * @param hotOutputA what it gives when hot at cruising speed
     * @param idleOutputA what it gives at idle
     * @param setV regulated voltage
     * @param returnPath whether its return is isolated from the engine block
     */
    record Alternator(
            @Nullable Double hotOutputA,
            @Nullable Double idleOutputA,
            @Nullable Double setV,
            KnownReturn returnPath) implements Source {
        public Alternator {
            positiveOrUnknown(hotOutputA, "hotOutputA");
            notNegativeOrUnknown(idleOutputA, "idleOutputA");
            positiveOrUnknown(setV, "setV");
        }

        static Alternator defaults() {
            return new Alternator(null, null, null, KnownReturn.UNKNOWN);
        }

        @Override
        public Kind kind() {
            return Kind.ALTERNATOR;
        }
    }

    /**
     * A photovoltaic array of like modules.
     *
     * @param moduleW rated power of one module at standard test conditions
     * @param openCircuitV of one module at standard test conditions
     * @param shortCircuitA of one module at standard test conditions
     * @param powerPointV of one module
     * @param powerPointA of one module
     * @param voltagePercentPerK temperature coefficient of the open-circuit voltage, negative
     * @param seriesFuseA the module's greatest series fuse
     * @param inSeries modules in a string
     * @param inParallel strings
     * @param tiltDegree 0 lies flat
     * @param azimuthDegree from north, clockwise; null if it swings with the vessel
     * @param shadedPercent share of the yield lost to shade
     */
    record PvArray(
            @Nullable Double moduleW,
            @Nullable Double openCircuitV,
            @Nullable Double shortCircuitA,
            @Nullable Double powerPointV,
            @Nullable Double powerPointA,
            double voltagePercentPerK,
            @Nullable Double seriesFuseA,
            int inSeries,
            int inParallel,
            double tiltDegree,
            @Nullable Double azimuthDegree,
            double shadedPercent)
            implements Source {
        public PvArray {
            positiveOrUnknown(moduleW, "moduleW");
            positiveOrUnknown(openCircuitV, "openCircuitV");
            positiveOrUnknown(shortCircuitA, "shortCircuitA");
            positiveOrUnknown(powerPointV, "powerPointV");
            positiveOrUnknown(powerPointA, "powerPointA");
            between(voltagePercentPerK, -2, 0, "voltagePercentPerK");
            positiveOrUnknown(seriesFuseA, "seriesFuseA");
            between(inSeries, 1, 1_000, "inSeries");
            between(inParallel, 1, 100, "inParallel");
            between(tiltDegree, 0, 90, "tiltDegree");
            betweenOrUnknown(azimuthDegree, 0, 360, "azimuthDegree");
            between(shadedPercent, 0, 100, "shadedPercent");
        }

        static PvArray defaults() {
            return new PvArray(null, null, null, null, null, -0.3, null, 1, 1, 0, null, 0);
        }

        @Override
        public Kind kind() {
            return Kind.PV_ARRAY;
        }
    }

    /**
     * A wind or towed generator, DC out.
     *
     * @param ratedA most current it gives
     * @param averageW mean power for the energy balance
     */
    record Turbine(@Nullable Double ratedA, @Nullable Double averageW) implements Source {
        public Turbine {
            positiveOrUnknown(ratedA, "ratedA");
            notNegativeOrUnknown(averageW, "averageW");
        }

        static Turbine defaults() {
            return new Turbine(null, null);
        }

        @Override
        public Kind kind() {
            return Kind.TURBINE;
        }
    }

    /**
     * A voltage source behind an impedance, for what no trade kind fits.
     *
     * @param emfV electromotive force; of a three-phase system, phase to neutral; null is the system's nominal voltage
     * @param angleDeg phase angle, of L1
     * @param resistanceOhm in series
     * @param reactanceOhm in series
     * @param oneWay true if it may not be charged; in alternating current it is said where it would be
     */
    record Supply(@Nullable Double emfV, double angleDeg, double resistanceOhm, double reactanceOhm, boolean oneWay)
            implements Source {
        public Supply {
            notNegativeOrUnknown(emfV, "emfV");
            finite(angleDeg, "angleDeg");
            notNegative(resistanceOhm, "resistanceOhm");
            finite(reactanceOhm, "reactanceOhm");
        }

        static Supply defaults() {
            return new Supply(null, 0, 0, 0, false);
        }

        @Override
        public Kind kind() {
            return Kind.SUPPLY;
        }
    }

    /**
     * A source that gives a fixed current whatever the voltage.
     *
     * @param currentA given at terminal 1
     */
    record CurrentSupply(double currentA) implements Source {
        public CurrentSupply {
            finite(currentA, "currentA");
        }

        static CurrentSupply defaults() {
            return new CurrentSupply(0);
        }

        @Override
        public Kind kind() {
            return Kind.CURRENT_SUPPLY;
        }
    }

    /**
     * A charger-like source: {@code i = min(limitA, max(0, (setV − v) / resistanceOhm))}.
     *
     * @param setV voltage that it holds, the system's nominal voltage if null
     * @param resistanceOhm slope below its limit, 0 or more
     * @param limitA most current, none if null
     */
    record LimitedSupply(
            @Nullable Double setV,
            double resistanceOhm,
            @Nullable Double limitA) implements Source {
        public LimitedSupply {
            notNegativeOrUnknown(setV, "setV");
            notNegative(resistanceOhm, "resistanceOhm");
            notNegativeOrUnknown(limitA, "limitA");
        }

        static LimitedSupply defaults() {
            return new LimitedSupply(null, 0, null);
        }

        @Override
        public Kind kind() {
            return Kind.LIMITED_SUPPLY;
        }
    }

    /**
     * A source of fixed power: {@code i = min(limitA, powerW / v)}.
     *
     * @param powerW given, 0 or more
     * @param limitA most current, none if null
     */
    record PowerSupply(double powerW, @Nullable Double limitA) implements Source {
        public PowerSupply {
            notNegative(powerW, "powerW");
            notNegativeOrUnknown(limitA, "limitA");
        }

        static PowerSupply defaults() {
            return new PowerSupply(0, null);
        }

        @Override
        public Kind kind() {
            return Kind.POWER_SUPPLY;
        }
    }
}
