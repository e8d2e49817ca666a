package orlop.drawing;

import static orlop.drawing.Checks.between;
import static orlop.drawing.Checks.finite;
import static orlop.drawing.Checks.notNegative;
import static orlop.drawing.Checks.positiveOrUnknown;
import static orlop.drawing.Checks.text;

import org.jspecify.annotations.Nullable;

/** What joins conductors. */
public sealed interface Distribution extends Particulars
        permits Distribution.Bar,
                Distribution.Junction,
                Distribution.Terminal,
                Distribution.SheetLink,
                Distribution.Impedance {

    @Override
    default <R> R match(Cases<R> cases) {
        return cases.distribution(this);
    }

    /** What is drawn as a bar, as long as one likes, on which cables end anywhere. */
    sealed interface Bar extends Distribution permits Busbar, DistributionBoard {
        double LEAST_DRAWN_MM = 5;
        double MOST_DRAWN_MM = 2_000;

        /** How long it is drawn, 5 to 2,000 mm. */
        double drawnLengthMm();

        /** The same bar, drawn so long, 5 to 2,000 mm. */
        Bar drawn(double lengthMm);
    }

    /**
     * A bar with any number of taps.
     *
     * @param ratingA continuous rating
     * @param drawnLengthMm how long it is drawn, 5 to 2,000 mm
     */
    record Busbar(@Nullable Double ratingA, double drawnLengthMm) implements Bar {
        public Busbar {
            positiveOrUnknown(ratingA, "ratingA");
            between(drawnLengthMm, LEAST_DRAWN_MM, MOST_DRAWN_MM, "drawnLengthMm");
        }

        static Busbar defaults() {
            return new Busbar(null, 60);
        }

        @Override
        public Kind kind() {
            return Kind.BUSBAR;
        }

        @Override
        public Busbar drawn(double lengthMm) {
            return new Busbar(ratingA, lengthMm);
        }
    }

    /**
     * A board with its own bar, drawn as one item.
     *
     * @param ratingA continuous rating
     * @param drawnLengthMm how long it is drawn, 5 to 2,000 mm
     * @param enclosed whether a short conductor inside counts as lying in an enclosure
     */
    record DistributionBoard(@Nullable Double ratingA, double drawnLengthMm, boolean enclosed) implements Bar {
        public DistributionBoard {
            positiveOrUnknown(ratingA, "ratingA");
            between(drawnLengthMm, LEAST_DRAWN_MM, MOST_DRAWN_MM, "drawnLengthMm");
        }

        static DistributionBoard defaults() {
            return new DistributionBoard(null, 60, true);
        }

        @Override
        public Kind kind() {
            return Kind.DISTRIBUTION_BOARD;
        }

        @Override
        public DistributionBoard drawn(double lengthMm) {
            return new DistributionBoard(ratingA, lengthMm, enclosed);
        }
    }

    /** A joint of conductors without a bar. */
    record Junction() implements Distribution {
        static Junction defaults() {
            return new Junction();
        }

        @Override
        public Kind kind() {
            return Kind.JUNCTION;
        }
    }

    /**
     * A terminal of a terminal strip.
     *
     * @param strip the strip's name and number, "" if it has none
     * @param ratingA continuous rating
     */
    record Terminal(String strip, @Nullable Double ratingA) implements Distribution {
        public Terminal {
            text(strip, "strip");
            positiveOrUnknown(ratingA, "ratingA");
        }

        static Terminal defaults() {
            return new Terminal("", null);
        }

        @Override
        public Kind kind() {
            return Kind.TERMINAL;
        }
    }

    /**
     * One of exactly two ends that stand for the same point on two sheets.
     *
     * @param mate the id of the other end, "" while it has none
     */
    record SheetLink(String mate) implements Distribution {
        public SheetLink {
            text(mate, "mate");
        }

        static SheetLink defaults() {
            return new SheetLink("");
        }

        @Override
        public Kind kind() {
            return Kind.SHEET_LINK;
        }
    }

    /**
     * A series impedance for what no trade kind fits.
     *
     * @param resistanceOhm of the whole loop
     * @param reactanceOhm of the whole loop
     */
    record Impedance(double resistanceOhm, double reactanceOhm) implements Distribution {
        public Impedance {
            notNegative(resistanceOhm, "resistanceOhm");
            finite(reactanceOhm, "reactanceOhm");
        }

        static Impedance defaults() {
            return new Impedance(0, 0);
        }

        @Override
        public Kind kind() {
            return Kind.IMPEDANCE;
        }
    }
}
