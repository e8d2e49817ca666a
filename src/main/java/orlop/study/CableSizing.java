package orlop.study;

import org.jspecify.annotations.Nullable;

/**
 * What the search for areas says of a cable besides its least area.
 *
 * @param leastCopperAreaMm2 its area in the choice that takes least copper, found exactly; null where it is installed,
 *     where it closes a ring, or where the least is not known
 * @param togetherAreaMm2 where a load behind it is over its drop limit: the area that it gets if the whole path is
 *     thickened where copper saves most, never less than what all but the drop asks; null where no such load is behind it
 * @param fromMemory whether what governs its least area rests on a value from memory or weaker
 * @param parallel where no single run would do, fewest runs side by side that would; null else, or if none would
 * @param faultAreaMm2 least standard area that bears the heat of a fault until the device before it has cleared it; null
 *     where no fault is known to be cleared within 5 s
 */
public record CableSizing(
        @Nullable Double leastCopperAreaMm2,
        @Nullable Double togetherAreaMm2,
        boolean fromMemory,
        @Nullable ParallelRuns parallel,
        @Nullable Double faultAreaMm2) {
    /** Nothing to say. */
    public static final CableSizing NONE = new CableSizing(null, null, false, null, null);

    /**
     * Equal runs side by side.
     *
     * @param runs 2 to 20
     * @param areaMm2 of each conductor
     */
    public record ParallelRuns(int runs, double areaMm2) {}
}
