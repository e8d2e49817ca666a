package orlop.drawing;

import static orlop.drawing.Checks.notNegativeOrUnknown;
import static orlop.drawing.Checks.positiveOrUnknown;
import static orlop.drawing.Checks.text;

import org.jspecify.annotations.Nullable;

/** Earthing, bonding and measuring. */
public sealed interface Earth extends Particulars
        permits Earth.Hull,
                Earth.HullBond,
                Earth.EngineBlock,
                Earth.ProtectiveEarthBar,
                Earth.NeutralEarthLink,
                Earth.Shunt,
                Earth.Meter {

    @Override
    default <R> R match(Cases<R> cases) {
        return cases.earth(this);
    }

    /** The hull, or the immersed plate of a hull that does not conduct. */
    record Hull() implements Earth {
        static Hull defaults() {
            return new Hull();
        }

        @Override
        public Kind kind() {
            return Kind.HULL;
        }
    }

    /**
     * A connection of a system's negative to the hull.
     *
     * @param areaMm2 of the bonding conductor
     */
    record HullBond(@Nullable Double areaMm2) implements Earth {
        public HullBond {
            positiveOrUnknown(areaMm2, "areaMm2");
        }

        static HullBond defaults() {
            return new HullBond(null);
        }

        @Override
        public Kind kind() {
            return Kind.HULL_BOND;
        }
    }

    /**
     * An engine block.
     *
     * @param returnPath whether starter, alternator and senders are isolated from it
     */
    record EngineBlock(KnownReturn returnPath) implements Earth {
        static EngineBlock defaults() {
            return new EngineBlock(KnownReturn.UNKNOWN);
        }

        @Override
        public Kind kind() {
            return Kind.ENGINE_BLOCK;
        }
    }

    /** The bar that joins all protective conductors. */
    record ProtectiveEarthBar() implements Earth {
        static ProtectiveEarthBar defaults() {
            return new ProtectiveEarthBar();
        }

        @Override
        public Kind kind() {
            return Kind.PROTECTIVE_EARTH_BAR;
        }
    }

    /**
     * The link of neutral and protective conductor. It belongs to a source and closes only with it.
     *
     * @param source the id of that source, "" while it has none
     */
    record NeutralEarthLink(String source) implements Earth {
        public NeutralEarthLink {
            text(source, "source");
        }

        static NeutralEarthLink defaults() {
            return new NeutralEarthLink("");
        }

        @Override
        public Kind kind() {
            return Kind.NEUTRAL_EARTH_LINK;
        }
    }

    /**
     * A measuring shunt.
     *
     * @param ratingA rated current
     * @param dropMilliV voltage at that current
     * @param resistanceOhm from the two before if null
     * @param poles in which it stands
     */
    record Shunt(
            @Nullable Double ratingA,
            @Nullable Double dropMilliV,
            @Nullable Double resistanceOhm,
            Poles poles) implements Earth {
        public Shunt {
            positiveOrUnknown(ratingA, "ratingA");
            positiveOrUnknown(dropMilliV, "dropMilliV");
            notNegativeOrUnknown(resistanceOhm, "resistanceOhm");
        }

        static Shunt defaults() {
            return new Shunt(null, null, null, Poles.NEGATIVE);
        }

        @Override
        public Kind kind() {
            return Kind.SHUNT;
        }
    }

    /**
     * A meter that draws nothing worth counting.
     *
     * @param quantity what it shows: V, A, W, Wh, Hz …
     */
    record Meter(String quantity) implements Earth {
        public Meter {
            text(quantity, "quantity");
        }

        static Meter defaults() {
            return new Meter("V");
        }

        @Override
        public Kind kind() {
            return Kind.METER;
        }
    }
}
