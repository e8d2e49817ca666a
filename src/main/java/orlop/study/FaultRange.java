package orlop.study;

import org.jspecify.annotations.Nullable;

/**
 * Prospective fault currents at a place.
 *
 * @param maxA highest: cold conductors, all sources; null where nothing feeds the place
 * @param minA lowest: hot conductors, fewest sources; null where nothing feeds the place
 * @param unlimited whether nothing limits the highest, because a source has no resistance; {@code maxA} is then null
 */
public record FaultRange(@Nullable Double maxA, @Nullable Double minA, boolean unlimited) {
    /** Nothing feeds the place. */
    public static final FaultRange NONE = new FaultRange(null, null);

    /** How far the two may cross by rounding alone. */
    private static final double ROUNDING = 1e-9;

    /** A range that something limits. */
    public FaultRange(@Nullable Double maxA, @Nullable Double minA) {
        this(maxA, minA, false);
    }

    public FaultRange {
        maxA = unlimited ? null : maxA;
        if (maxA != null && minA != null && minA > maxA && minA <= maxA * (1 + ROUNDING)) {
            minA = maxA;
        }
    }
}
