package orlop.drawing;

import static orlop.drawing.Checks.notNegativeOrUnknown;
import static orlop.drawing.Checks.positiveOrUnknown;
import static orlop.drawing.Checks.text;

import org.jspecify.annotations.Nullable;

/** What protects conductors, persons and apparatus. Families are ids of the standards room. */
public sealed interface Protection extends Particulars
        permits Protection.Fuse,
                Protection.CircuitBreaker,
                Protection.ResidualCurrentDevice,
                Protection.SurgeArrester,
                Protection.GalvanicIsolator,
                Protection.InsulationMonitor {

    @Override
    default <R> R match(Cases<R> cases) {
        return cases.protection(this);
    }

    /**
     * A fuse.
     *
     * @param family standard type, such as {@code gg}; "" if not known
     * @param ratingA rated current
     * @param breakingKa breaking capacity, the family's if null
     * @param maxV greatest voltage, the family's if null
     * @param resistanceOhm of fuse and holder, assumed if null
     * @param poles in which it stands
     */
    record Fuse(
            String family,
            @Nullable Double ratingA,
            @Nullable Double breakingKa,
            @Nullable Double maxV,
            @Nullable Double resistanceOhm,
            Poles poles)
            implements Protection {
        public Fuse {
            text(family, "family");
            positiveOrUnknown(ratingA, "ratingA");
            positiveOrUnknown(breakingKa, "breakingKa");
            positiveOrUnknown(maxV, "maxV");
            notNegativeOrUnknown(resistanceOhm, "resistanceOhm");
        }

        static Fuse defaults() {
            return new Fuse("", null, null, null, null, Poles.POSITIVE);
        }

        @Override
        public Kind kind() {
            return Kind.FUSE;
        }
    }

    /**
     * A circuit breaker.
     *
     * @param family standard type, such as {@code mcb-c}; "" if not known
     * @param ratingA rated current
     * @param settingA set current of an adjustable breaker, its rating if null
     * @param breakingKa breaking capacity, the family's if null
     * @param maxV greatest voltage, the family's if null
     * @param resistanceOhm of one pole, assumed if null
     * @param poles in which it stands
     * @param position in which the drawing shows it, unless a condition says otherwise
     * @param letThroughA2s most energy that it lets through up to its breaking capacity, as its maker states it
     */
    record CircuitBreaker(
            String family,
            @Nullable Double ratingA,
            @Nullable Double settingA,
            @Nullable Double breakingKa,
            @Nullable Double maxV,
            @Nullable Double resistanceOhm,
            Poles poles,
            Position position,
            @Nullable Double letThroughA2s)
            implements Protection {
        public CircuitBreaker {
            text(family, "family");
            positiveOrUnknown(ratingA, "ratingA");
            positiveOrUnknown(settingA, "settingA");
            positiveOrUnknown(breakingKa, "breakingKa");
            positiveOrUnknown(maxV, "maxV");
            notNegativeOrUnknown(resistanceOhm, "resistanceOhm");
            positiveOrUnknown(letThroughA2s, "letThroughA2s");
        }

        /** One whose let-through energy is not stated. */
        public CircuitBreaker(
                String family,
                @Nullable Double ratingA,
                @Nullable Double settingA,
                @Nullable Double breakingKa,
                @Nullable Double maxV,
                @Nullable Double resistanceOhm,
                Poles poles,
                Position position) {
            this(family, ratingA, settingA, breakingKa, maxV, resistanceOhm, poles, position, null);
        }

        static CircuitBreaker defaults() {
            return new CircuitBreaker("", null, null, null, null, null, Poles.POSITIVE, Position.CLOSED);
        }

        @Override
        public Kind kind() {
            return Kind.CIRCUIT_BREAKER;
        }
    }

    /**
     * A residual-current device.
     *
     * @param ratingA rated current
     * @param residualMilliA rated residual current
     * @param type A, AC, F or B; "" if not known
     * @param overcurrent whether it is a breaker for overcurrent too
     * @param family standard type of its overcurrent part, "" without one
     * @param breakingKa breaking capacity of that part
     * @param poles in which it stands
     * @param position in which the drawing shows it
     */
    record ResidualCurrentDevice(
            @Nullable Double ratingA,
            @Nullable Double residualMilliA,
            String type,
            boolean overcurrent,
            String family,
            @Nullable Double breakingKa,
            Poles poles,
            Position position)
            implements Protection {
        public ResidualCurrentDevice {
            positiveOrUnknown(ratingA, "ratingA");
            positiveOrUnknown(residualMilliA, "residualMilliA");
            text(type, "type");
            text(family, "family");
            positiveOrUnknown(breakingKa, "breakingKa");
        }

        static ResidualCurrentDevice defaults() {
            return new ResidualCurrentDevice(null, null, "", false, "", null, Poles.L_N, Position.CLOSED);
        }

        @Override
        public Kind kind() {
            return Kind.RESIDUAL_CURRENT_DEVICE;
        }
    }

    /**
     * A surge arrester.
     *
     * @param maxV greatest continuous voltage
     */
    record SurgeArrester(@Nullable Double maxV) implements Protection {
        public SurgeArrester {
            positiveOrUnknown(maxV, "maxV");
        }

        static SurgeArrester defaults() {
            return new SurgeArrester(null);
        }

        @Override
        public Kind kind() {
            return Kind.SURGE_ARRESTER;
        }
    }

    /**
     * A galvanic isolator in the protective conductor.
     *
     * @param ratingA continuous rating
     * @param failSafe whether its failure leaves the protective conductor whole
     */
    record GalvanicIsolator(@Nullable Double ratingA, boolean failSafe) implements Protection {
        public GalvanicIsolator {
            positiveOrUnknown(ratingA, "ratingA");
        }

        static GalvanicIsolator defaults() {
            return new GalvanicIsolator(null, false);
        }

        @Override
        public Kind kind() {
            return Kind.GALVANIC_ISOLATOR;
        }
    }

    /**
     * A monitor of the insulation of an unearthed system.
     *
     * @param alarmKiloOhm resistance below which it warns
     */
    record InsulationMonitor(@Nullable Double alarmKiloOhm) implements Protection {
        public InsulationMonitor {
            positiveOrUnknown(alarmKiloOhm, "alarmKiloOhm");
        }

        static InsulationMonitor defaults() {
            return new InsulationMonitor(null);
        }

        @Override
        public Kind kind() {
            return Kind.INSULATION_MONITOR;
        }
    }
}
