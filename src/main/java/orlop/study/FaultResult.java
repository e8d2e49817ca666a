package orlop.study;

import org.jspecify.annotations.Nullable;

/**
 * Prospective currents of one kind of fault at a place, r.m.s. in alternating current.
 *
 * @param maxA highest, at its beginning; null where nothing limits it
 * @param minA lowest
 * @param peakA highest instantaneous value
 * @param sustainedA what still flows, at least, when the fault lasts; null where it is not known
 */
public record FaultResult(
        @Nullable Double maxA,
        @Nullable Double minA,
        @Nullable Double peakA,
        @Nullable Double sustainedA) {}
