package orlop.drawing;

import static orlop.drawing.Checks.betweenOrUnknown;
import static orlop.drawing.Checks.finiteOrUnknown;
import static orlop.drawing.Checks.notNegativeOrUnknown;
import static orlop.drawing.Checks.positiveOrUnknown;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A cable between two terminals: one line on the sheet, the whole loop in the sums.
 *
 * @param id its tag
 * @param from terminal at which it starts
 * @param to terminal at which it ends
 * @param lengthM one-way route length; null if it is not known or is to come from the cableways
 * @param lengthEstimated whether nobody has measured that length: when a device was put into a longer cable, its length was
 *     shared out as drawn
 * @param areaMm2 cross-section of each conductor; null leaves it to Orlop ({@code auto})
 * @param parallel equal runs side by side, 1 to 20
 * @param conductors which conductors it has
 * @param construction how it is made and where it lies
 * @param returns a return conductor that differs from the positive
 * @param measured resistances from a data sheet or a measurement
 * @param conductorC calculate at this temperature; null follows the current
 * @param refit existing, new, to be removed
 * @param stage how far it has come
 * @param name what it is for, "" for none
 * @param cableways ids of the cableways that it runs along, in order
 * @param bends corners set by hand, in order; empty leaves the routing to the layout
 * @param labelAt where a person dragged its label to; null leaves it to the layout
 * @param locked whether its way and label stay as they are and it can't be deleted
 * @param extras keys that this version does not know
 */
public record Cable(
        String id,
        TerminalRef from,
        TerminalRef to,
        @Nullable Double lengthM,
        boolean lengthEstimated,
        @Nullable Double areaMm2,
        int parallel,
        @Nullable Conductors conductors,
        Construction construction,
        Return returns,
        Measured measured,
        @Nullable Double conductorC,
        RefitStatus refit,
        Stage stage,
        String name,
        List<String> cableways,
        List<Point> bends,
        @Nullable Point labelAt,
        boolean locked,
        Extras extras) {
    public Cable {
        Checks.id(id, "id");
        notNegativeOrUnknown(lengthM, "lengthM");
        positiveOrUnknown(areaMm2, "areaMm2");
        Checks.between(parallel, 1, 20, "parallel");
        betweenOrUnknown(conductorC, -60, 300, "conductorC");
        Checks.text(name, "name");
        cableways = List.copyOf(cableways);
        bends = List.copyOf(bends);
        if (from.equals(to)) {
            throw new Checks.OutOfRange(
                    "to",
                    Message.of("drawing.range.both-ends", "to", to.toString()),
                    "cable " + id + " starts and ends at " + from);
        }
    }

    /**
     * How a cable is made and where it lies.
     *
     * @param conductorClass 2 (stranded) or 5 (flexible), IEC 60228
     * @param finish plain or tinned
     * @param insulationC temperature rating of the insulation, 40 to 250 °C
     * @param laying where it lies
     * @param bunchedWith other loaded circuits in the same bunch, 0 to 60
     * @param engineSpace whether any of it lies in an engine space
     * @param ambientC ambient temperature along it; null takes the vessel's or the engine space's
     */
    public record Construction(
            int conductorClass,
            Finish finish,
            double insulationC,
            Laying laying,
            int bunchedWith,
            boolean engineSpace,
            @Nullable Double ambientC) {
        /** Flexible plain conductors, insulation rated 90 °C, in free air. */
        public static final Construction DEFAULT =
                new Construction(5, Finish.PLAIN, 90, Laying.FREE_AIR, 0, false, null);

        public Construction {
            if (conductorClass != 2 && conductorClass != 5) {
                throw new Checks.OutOfRange(
                        "conductorClass",
                        Message.of("drawing.range.class", "conductorClass", conductorClass),
                        "conductorClass must be 2 or 5 but is " + conductorClass);
            }
            Checks.between(insulationC, 40, 250, "insulationC");
            Checks.between(bunchedWith, 0, 60, "bunchedWith");
            betweenOrUnknown(ambientC, -40, 90, "ambientC");
        }
    }

    /**
     * A return conductor that is not the mirror of the positive.
     *
     * @param returnLengthM its length, as the positive if null
     * @param returnAreaMm2 its cross-section, as the positive if null
     */
    public record Return(
            @Nullable Double returnLengthM, @Nullable Double returnAreaMm2) {
        /** The return mirrors the positive. */
        public static final Return MIRRORED = new Return(null, null);

        public Return {
            notNegativeOrUnknown(returnLengthM, "returnLengthM");
            positiveOrUnknown(returnAreaMm2, "returnAreaMm2");
        }
    }

    /**
     * Resistances that overrule length and area, all parallel runs together.
     *
     * @param loopResistanceOhm DC and single-phase: the whole pair
     * @param loopReactanceOhm DC and single-phase: the whole pair
     * @param conductorResistanceOhm three-phase: one phase
     * @param conductorReactanceOhm three-phase: one phase
     * @param returnResistanceOhm three-phase: the neutral
     * @param returnReactanceOhm three-phase: the neutral
     * @param peResistanceOhm the protective conductor
     */
    public record Measured(
            @Nullable Double loopResistanceOhm,
            @Nullable Double loopReactanceOhm,
            @Nullable Double conductorResistanceOhm,
            @Nullable Double conductorReactanceOhm,
            @Nullable Double returnResistanceOhm,
            @Nullable Double returnReactanceOhm,
            @Nullable Double peResistanceOhm) {
        /** Nothing measured: length, area and temperature decide. */
        public static final Measured NOTHING = new Measured(null, null, null, null, null, null, null);

        public Measured {
            notNegativeOrUnknown(loopResistanceOhm, "loopResistanceOhm");
            finiteOrUnknown(loopReactanceOhm, "loopReactanceOhm");
            notNegativeOrUnknown(conductorResistanceOhm, "conductorResistanceOhm");
            finiteOrUnknown(conductorReactanceOhm, "conductorReactanceOhm");
            notNegativeOrUnknown(returnResistanceOhm, "returnResistanceOhm");
            finiteOrUnknown(returnReactanceOhm, "returnReactanceOhm");
            notNegativeOrUnknown(peResistanceOhm, "peResistanceOhm");
        }
    }

    /** A new cable of unknown length, its area left to Orlop. */
    public static Cable of(String id, TerminalRef from, TerminalRef to) {
        return new Cable(
                id,
                from,
                to,
                null,
                false,
                null,
                1,
                null,
                Construction.DEFAULT,
                Return.MIRRORED,
                Measured.NOTHING,
                null,
                RefitStatus.NEW,
                Stage.PLANNED,
                "",
                List.of(),
                List.of(),
                null,
                false,
                Extras.NONE);
    }

    /** Whether Orlop chooses the area. */
    public boolean auto() {
        return areaMm2 == null;
    }

    public Cable withId(String v) {
        Change c = new Change(this);
        c.id = v;
        return c.made();
    }

    /** @param v one-way length, 0 or more; null for not known */
    public Cable withLengthM(@Nullable Double v) {
        Change c = new Change(this);
        c.lengthM = v;
        return c.made();
    }

    /** @param v whether its length is an estimate */
    public Cable withLengthEstimated(boolean v) {
        Change c = new Change(this);
        c.lengthEstimated = v;
        return c.made();
    }

    /** @param v area of each conductor; null for auto */
    public Cable withAreaMm2(@Nullable Double v) {
        Change c = new Change(this);
        c.areaMm2 = v;
        return c.made();
    }

    public Cable withEnds(TerminalRef f, TerminalRef t) {
        Change c = new Change(this);
        c.from = f;
        c.to = t;
        return c.made();
    }

    public Cable withBends(List<Point> v) {
        Change c = new Change(this);
        c.bends = v;
        return c.made();
    }

    /** @param v upper left corner of its label on the sheet; null leaves it to the layout */
    public Cable withLabelAt(@Nullable Point v) {
        Change c = new Change(this);
        c.labelAt = v;
        return c.made();
    }

    public Cable withLocked(boolean v) {
        Change c = new Change(this);
        c.locked = v;
        return c.made();
    }

    public Cable withConstruction(Construction v) {
        Change c = new Change(this);
        c.construction = v;
        return c.made();
    }

    public Cable withParallel(int v) {
        Change c = new Change(this);
        c.parallel = v;
        return c.made();
    }

    public Cable withMeasured(Measured v) {
        Change c = new Change(this);
        c.measured = v;
        return c.made();
    }

    /** A cable of which something is being changed: it is checked again when it is made. */
    private static final class Change {
        private String id;
        private TerminalRef from;
        private TerminalRef to;
        private @Nullable Double lengthM;
        private boolean lengthEstimated;
        private @Nullable Double areaMm2;
        private int parallel;
        private @Nullable Conductors conductors;
        private Construction construction;
        private Return returns;
        private Measured measured;
        private @Nullable Double conductorC;
        private RefitStatus refit;
        private Stage stage;
        private String name;
        private List<String> cableways;
        private List<Point> bends;
        private @Nullable Point labelAt;
        private boolean locked;
        private Extras extras;

        Change(Cable w) {
            id = w.id;
            from = w.from;
            to = w.to;
            lengthM = w.lengthM;
            lengthEstimated = w.lengthEstimated;
            areaMm2 = w.areaMm2;
            parallel = w.parallel;
            conductors = w.conductors;
            construction = w.construction;
            returns = w.returns;
            measured = w.measured;
            conductorC = w.conductorC;
            refit = w.refit;
            stage = w.stage;
            name = w.name;
            cableways = w.cableways;
            bends = w.bends;
            labelAt = w.labelAt;
            locked = w.locked;
            extras = w.extras;
        }

        Cable made() {
            return new Cable(
                    id,
                    from,
                    to,
                    lengthM,
                    lengthEstimated,
                    areaMm2,
                    parallel,
                    conductors,
                    construction,
                    returns,
                    measured,
                    conductorC,
                    refit,
                    stage,
                    name,
                    cableways,
                    bends,
                    labelAt,
                    locked,
                    extras);
        }
    }
}
