package orlop.study;

import org.jspecify.annotations.Nullable;

/**
 * A place where overcurrent protection is missing or does not do.
 *
 * @param kind what is wrong
 * @param cable tag of the cable that is not guarded
 * @param atFrom whether the gap lies at its {@code from} end
 * @param distanceM along the cable from that end at which a device belongs, 0 or more
 * @param source tag of the source that can drive a fault through it
 * @param faultA highest current that this source can drive there
 * @param device tag of the device that does not do; null where there is none
 * @param condition id of the condition in which it shows
 * @param proposed device that would do; null if none of the tables would
 */
public record Gap(
        Kind kind,
        String cable,
        boolean atFrom,
        double distanceM,
        String source,
        @Nullable Double faultA,
        @Nullable String device,
        String condition,
        @Nullable Proposal proposed) {
    /** What is wrong with the protection of a cable. */
    public enum Kind {
        /** No device between the source and the cable. */
        NO_DEVICE,
        /** The first device stands further from the source than is permitted. */
        TOO_FAR,
        /** The device's rating is too great for the conductor. */
        TOO_LARGE,
        /** The device cannot break the highest fault current. */
        CANNOT_BREAK,
        /** The device is not made for the system's highest voltage. */
        VOLTAGE
    }

    /**
     * A device that would do.
     *
     * @param family id of a family of the standards room
     * @param ratingA rated current
     * @param breakingKa breaking capacity
     */
    public record Proposal(String family, double ratingA, double breakingKa) {}
}
