package orlop.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A place where overcurrent protection is missing or does not do.
 *
 * @param kind what is wrong
 * @param cable tag of the cable that is not guarded
 * @param atFrom whether the gap lies at its {@code from} end
 * @param distanceM along the cable from that end at which a device belongs, 0 or more
 * @param source tag of the source that can drive a fault through it
 * @param faultA highest fault current there, of an opening the lowest; null where none is known or nothing limits it
 * @param unlimited whether nothing limits the fault current there
 * @param device tag of the device that does not do; null where there is none
 * @param conditions ids of the conditions in which a source that can drive it is on, in whatever position the switches
 *     stand; of a device those in which the current there is too much for it, or all
 * @param proposed device that would do; null if none of the tables would
 * @param permittedM how far from the source or the branch the first device may stand; NaN where that is not the matter
 * @param reachedM how far the furthest of the first devices stands; NaN where that is not the matter
 * @param also tags of the other cables that are bare for want of the same device
 */
public record Gap(
        Kind kind,
        String cable,
        boolean atFrom,
        double distanceM,
        String source,
        @Nullable Double faultA,
        boolean unlimited,
        @Nullable String device,
        List<String> conditions,
        @Nullable Proposal proposed,
        double permittedM,
        double reachedM,
        List<String> also) {
    public Gap {
        conditions = List.copyOf(conditions);
        also = List.copyOf(also);
    }

    /** The same with these other cables, in these conditions. */
    public Gap withAlso(List<String> cables, List<String> inConditions) {
        return new Gap(
                kind,
                cable,
                atFrom,
                distanceM,
                source,
                faultA,
                unlimited,
                device,
                inConditions,
                proposed,
                permittedM,
                reachedM,
                cables);
    }

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
        /** The device does not open on the lowest fault current behind it. */
        DOES_NOT_OPEN,
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
