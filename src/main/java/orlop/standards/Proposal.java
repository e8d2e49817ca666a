package orlop.standards;

import java.util.Set;

/**
 * A device that would do at a place.
 *
 * @param family its family
 * @param rating least standard rating that would do, A, with its source
 * @param mustBeMarked what the single device must declare, because its family alone doesn't warrant it; empty if nothing
 */
public record Proposal(ProtectiveFamily family, Sourced rating, Set<Mark> mustBeMarked) {
    /** A figure that a device declares by its marking or data sheet. */
    public enum Mark {
        /** The system's highest voltage, of that kind of current. */
        VOLTAGE,
        /** The prospective current as its breaking capacity. */
        BREAKING_CAPACITY
    }

    /** Keeps a copy. */
    public Proposal {
        Checks.positive(rating.value(), "rating");
        mustBeMarked = Set.copyOf(mustBeMarked);
    }

    /** The rating itself, A. */
    public double ratingA() {
        return rating.value();
    }
}
