package orlop.study;

import org.jspecify.annotations.Nullable;

/**
 * Prospective fault currents at a place.
 *
 * @param maxA highest: cold conductors, all sources; null where nothing feeds the place
 * @param minA lowest: hot conductors, fewest sources; null where nothing feeds the place
 */
public record FaultRange(@Nullable Double maxA, @Nullable Double minA) {
    /** Nothing feeds the place. */
    public static final FaultRange NONE = new FaultRange(null, null);

    /** How far the two may cross by rounding alone. */
    private static final double ROUNDING = 1e-9;

    public FaultRange {
        if (maxA != null && minA != null && minA > maxA && minA <= maxA * (1 + ROUNDING)) {
            minA = maxA;
        }
    }
}
