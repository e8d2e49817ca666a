package orlop.study.protection;

import org.jspecify.annotations.Nullable;

/**
 * How current comes unguarded to one end of a cable.
 *
 * @param entrance a source that drives it; null while it is not sure that one does
 * @param arrival the way; null where it is not kept
 */
record Exposure(@Nullable Entrance entrance, Arrivals.@Nullable Arrival arrival) {
    /** No way but through the cable itself was kept: there may be another that is no worse. */
    static final Exposure UNSURE = new Exposure(null, null);

    boolean isUnsure() {
        return entrance == null;
    }
}
