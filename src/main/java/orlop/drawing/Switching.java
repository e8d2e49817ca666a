package orlop.drawing;

import static orlop.drawing.Checks.between;
import static orlop.drawing.Checks.notNegative;
import static orlop.drawing.Checks.notNegativeOrUnknown;
import static orlop.drawing.Checks.positiveOrUnknown;
import static orlop.drawing.Checks.text;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What connects and disconnects. Positions are those shown; an operating condition may set others. */
public sealed interface Switching extends Particulars
        permits Switching.Isolator,
                Switching.Changeover,
                Switching.Contactor,
                Switching.DiodeIsolator,
                Switching.CombiningRelay,
                Switching.Diode {

    @Override
    default <R> R match(Cases<R> cases) {
        return cases.switching(this);
    }

    /**
     * A hand-operated switch.
     *
     * @param ratingA continuous rating
     * @param resistanceOhm of one pole, assumed if null
     * @param poles in which it stands
     * @param position in which the drawing shows it
     */
    record Isolator(@Nullable Double ratingA, @Nullable Double resistanceOhm, Poles poles, Position position)
            implements Switching {
        public Isolator {
            positiveOrUnknown(ratingA, "ratingA");
            notNegativeOrUnknown(resistanceOhm, "resistanceOhm");
        }

        static Isolator defaults() {
            return new Isolator(null, null, Poles.POSITIVE, Position.CLOSED);
        }

        @Override
        public Kind kind() {
            return Kind.ISOLATOR;
        }
    }

    /**
     * A switch that joins its common terminal to one of several ways. With n ways the terminals 1 to n are the ways and
     * n + 1 is the common one.
     *
     * @param ways 2 to 6
     * @param ratingA continuous rating
     * @param poles which it switches
     * @param position 0 (off) or the number of the way
     * @param interlock name of the interlock that it shares with others, "" without one; noted only: a changeover parts its
     *     own ways, and several may be on together
     */
    record Changeover(int ways, @Nullable Double ratingA, Poles poles, int position, String interlock)
            implements Switching {
        public Changeover {
            between(ways, 2, 6, "ways");
            positiveOrUnknown(ratingA, "ratingA");
            between(position, 0, ways, "position");
            text(interlock, "interlock");
        }

        static Changeover defaults() {
            return new Changeover(2, null, Poles.POSITIVE, 1, "");
        }

        @Override
        public Kind kind() {
            return Kind.CHANGEOVER_SWITCH;
        }

        @Override
        public List<String> terminals() {
            return numbers(ways + 1);
        }
    }

    /**
     * A contactor.
     *
     * @param ratingA continuous rating
     * @param resistanceOhm of one pole, assumed if null
     * @param poles which it switches
     * @param position in which the drawing shows it
     * @param interlock name of the interlock that it shares with others, "" without one: of the contactors that share it
     *     only one closes
     */
    record Contactor(
            @Nullable Double ratingA, @Nullable Double resistanceOhm, Poles poles, Position position, String interlock)
            implements Switching {
        public Contactor {
            positiveOrUnknown(ratingA, "ratingA");
            notNegativeOrUnknown(resistanceOhm, "resistanceOhm");
            text(interlock, "interlock");
        }

        static Contactor defaults() {
            return new Contactor(null, null, Poles.POSITIVE, Position.OPEN, "");
        }

        @Override
        public Kind kind() {
            return Kind.CONTACTOR;
        }
    }

    /**
     * Diodes that part one charging source into several outputs: terminal 1 in, 2 and on out.
     *
     * @param outputs 1 to 5
     * @param ratingA continuous rating
     * @param dropV of a conducting diode
     */
    record DiodeIsolator(int outputs, @Nullable Double ratingA, double dropV) implements Switching {
        public DiodeIsolator {
            between(outputs, 1, 5, "outputs");
            positiveOrUnknown(ratingA, "ratingA");
            notNegative(dropV, "dropV");
        }

        static DiodeIsolator defaults() {
            return new DiodeIsolator(2, null, 0.7);
        }

        @Override
        public Kind kind() {
            return Kind.DIODE_ISOLATOR;
        }

        @Override
        public List<String> terminals() {
            return numbers(outputs + 1);
        }
    }

    /**
     * A relay that joins two banks while one of them is being charged.
     *
     * @param ratingA continuous rating
     * @param closesV voltage above which it closes
     * @param opensV voltage below which it opens
     * @param position in which the drawing shows it
     */
    record CombiningRelay(
            @Nullable Double ratingA,
            @Nullable Double closesV,
            @Nullable Double opensV,
            Position position) implements Switching {
        public CombiningRelay {
            positiveOrUnknown(ratingA, "ratingA");
            positiveOrUnknown(closesV, "closesV");
            positiveOrUnknown(opensV, "opensV");
        }

        static CombiningRelay defaults() {
            return new CombiningRelay(null, null, null, Position.OPEN);
        }

        @Override
        public Kind kind() {
            return Kind.COMBINING_RELAY;
        }
    }

    /**
     * A diode from terminal 1 to terminal 2: {@code i = max(0, (v1 − v2 − dropV) / resistanceOhm)}.
     *
     * @param dropV forward voltage, 0 or more
     * @param resistanceOhm slope, 0 or more
     */
    record Diode(double dropV, double resistanceOhm) implements Switching {
        public Diode {
            notNegative(dropV, "dropV");
            notNegative(resistanceOhm, "resistanceOhm");
        }

        static Diode defaults() {
            return new Diode(0.7, 0);
        }

        @Override
        public Kind kind() {
            return Kind.DIODE;
        }
    }

    private static List<String> numbers(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(Integer::toString).toList();
    }
}
