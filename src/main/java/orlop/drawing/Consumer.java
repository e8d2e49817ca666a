package orlop.drawing;

import static orlop.drawing.Checks.between;
import static orlop.drawing.Checks.betweenOrUnknown;
import static orlop.drawing.Checks.finite;
import static orlop.drawing.Checks.finiteOrUnknown;
import static orlop.drawing.Checks.notNegativeOrUnknown;
import static orlop.drawing.Checks.positiveOrUnknown;

import org.jspecify.annotations.Nullable;

/** What uses power. */
public sealed interface Consumer extends Particulars
        permits Consumer.PlainLoad,
                Consumer.Motor,
                Consumer.Heater,
                Consumer.Lighting,
                Consumer.Electronics,
                Consumer.SocketOutlet,
                Consumer.ShortTimeMachine {

    /** Whether safety depends on it: it is held to the lower limit of voltage drop. */
    boolean vital();

    /** The phases that it is connected to; of no meaning in DC. */
    Phase phase();

    @Override
    default <R> R match(Cases<R> cases) {
        return cases.consumer(this);
    }

    /**
     * A load given by its behaviour alone.
     *
     * @param behaviour which of the next particulars counts
     * @param powerW real power, for the behaviour {@link LoadBehaviour#POWER}
     * @param reactiveVar reactive power, lagging positive, for the same
     * @param currentA for {@link LoadBehaviour#CURRENT}
     * @param powerFactor of that current, lagging, to the load's own voltage; 1 if null
     * @param resistanceOhm for {@link LoadBehaviour#RESISTANCE}
     * @param reactanceOhm in series with it
     * @param phase the phases that it is connected to
     * @param vital whether safety depends on it
     */
    record PlainLoad(
            LoadBehaviour behaviour,
            @Nullable Double powerW,
            @Nullable Double reactiveVar,
            @Nullable Double currentA,
            @Nullable Double powerFactor,
            @Nullable Double resistanceOhm,
            @Nullable Double reactanceOhm,
            Phase phase,
            boolean vital)
            implements Consumer {
        public PlainLoad {
            notNegativeOrUnknown(powerW, "powerW");
            finiteOrUnknown(reactiveVar, "reactiveVar");
            notNegativeOrUnknown(currentA, "currentA");
            betweenOrUnknown(powerFactor, 0, 1, "powerFactor");
            positiveOrUnknown(resistanceOhm, "resistanceOhm");
            finiteOrUnknown(reactanceOhm, "reactanceOhm");
        }

        static PlainLoad defaults() {
            return new PlainLoad(LoadBehaviour.POWER, null, null, null, null, null, null, Phase.ALL, false);
        }

        @Override
        public Kind kind() {
            return Kind.LOAD;
        }
    }

    /**
     * A motor in continuous or intermittent duty: pump, compressor, fan.
     *
     * @param shaftW rated mechanical output
     * @param efficiency at the rated output, above 0 to 1
     * @param powerFactor cos φ at the rated output
     * @param ratedA rated current, from the output if null
     * @param startingA starting current, assumed from the rated current if null
     * @param startingS starting time
     * @param phase the phases that it is connected to
     * @param vital whether safety depends on it
     */
    record Motor(
            @Nullable Double shaftW,
            double efficiency,
            double powerFactor,
            @Nullable Double ratedA,
            @Nullable Double startingA,
            @Nullable Double startingS,
            Phase phase,
            boolean vital)
            implements Consumer {
        public Motor {
            positiveOrUnknown(shaftW, "shaftW");
            between(efficiency, 0.01, 1, "efficiency");
            between(powerFactor, 0.01, 1, "powerFactor");
            positiveOrUnknown(ratedA, "ratedA");
            positiveOrUnknown(startingA, "startingA");
            positiveOrUnknown(startingS, "startingS");
        }

        static Motor defaults() {
            return new Motor(null, 0.8, 0.8, null, null, null, Phase.ALL, false);
        }

        @Override
        public Kind kind() {
            return Kind.MOTOR;
        }
    }

    /**
     * A heater, a cooker, a kettle: a resistance.
     *
     * @param powerW at the nominal voltage
     * @param phase the phases that it is connected to
     * @param vital whether safety depends on it
     */
    record Heater(@Nullable Double powerW, Phase phase, boolean vital) implements Consumer {
        public Heater {
            positiveOrUnknown(powerW, "powerW");
        }

        static Heater defaults() {
            return new Heater(null, Phase.ALL, false);
        }

        @Override
        public Kind kind() {
            return Kind.HEATER;
        }
    }

    /**
     * Lamps on one circuit.
     *
     * @param powerW of them all
     * @param powerFactor cos φ
     * @param points how many there are
     * @param filament true for filament lamps (a resistance), false for lamps with their own converter
     * @param phase the phases that they are connected to
     * @param vital true for navigation and emergency lights
     */
    record Lighting(
            @Nullable Double powerW, double powerFactor, int points, boolean filament, Phase phase, boolean vital)
            implements Consumer {
        public Lighting {
            positiveOrUnknown(powerW, "powerW");
            between(powerFactor, 0.01, 1, "powerFactor");
            between(points, 1, 1_000, "points");
        }

        static Lighting defaults() {
            return new Lighting(null, 1, 1, false, Phase.ALL, false);
        }

        @Override
        public Kind kind() {
            return Kind.LIGHTING;
        }
    }

    /**
     * Navigation, communication, control and other electronics.
     *
     * @param powerW drawn
     * @param powerFactor cos φ
     * @param phase the phases that it is connected to
     * @param vital whether safety depends on it
     */
    record Electronics(@Nullable Double powerW, double powerFactor, Phase phase, boolean vital) implements Consumer {
        public Electronics {
            positiveOrUnknown(powerW, "powerW");
            between(powerFactor, 0.01, 1, "powerFactor");
        }

        static Electronics defaults() {
            return new Electronics(null, 1, Phase.ALL, false);
        }

        @Override
        public Kind kind() {
            return Kind.ELECTRONICS;
        }
    }

    /**
     * One or more socket-outlets on a circuit.
     *
     * @param ratingA of the outlet
     * @param points how many there are
     * @param powerW counted for the circuit, from the rating if null
     * @param phase the phases that they are connected to
     * @param vital whether safety depends on what is plugged in
     */
    record SocketOutlet(
            @Nullable Double ratingA, int points, @Nullable Double powerW, Phase phase, boolean vital)
            implements Consumer {
        public SocketOutlet {
            positiveOrUnknown(ratingA, "ratingA");
            between(points, 1, 1_000, "points");
            positiveOrUnknown(powerW, "powerW");
        }

        static SocketOutlet defaults() {
            return new SocketOutlet(null, 1, null, Phase.ALL, false);
        }

        @Override
        public Kind kind() {
            return Kind.SOCKET_OUTLET;
        }
    }

    /**
     * A machine that runs for minutes: windlass, winch, thruster.
     *
     * @param powerW electrical input at its rated pull
     * @param ratedA rated current, from the power if null
     * @param powerFactor cos φ
     * @param startingA starting current, assumed if null
     * @param runMinutes longest run
     * @param phase the phases that it is connected to
     * @param vital whether safety depends on it
     */
    record ShortTimeMachine(
            @Nullable Double powerW,
            @Nullable Double ratedA,
            double powerFactor,
            @Nullable Double startingA,
            double runMinutes,
            Phase phase,
            boolean vital)
            implements Consumer {
        public ShortTimeMachine {
            positiveOrUnknown(powerW, "powerW");
            positiveOrUnknown(ratedA, "ratedA");
            between(powerFactor, 0.01, 1, "powerFactor");
            positiveOrUnknown(startingA, "startingA");
            finite(runMinutes, "runMinutes");
            between(runMinutes, 0.01, 1_000, "runMinutes");
        }

        static ShortTimeMachine defaults() {
            return new ShortTimeMachine(null, null, 0.8, null, 5, Phase.ALL, false);
        }

        @Override
        public Kind kind() {
            return Kind.SHORT_TIME_MACHINE;
        }
    }
}
