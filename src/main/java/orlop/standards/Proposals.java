package orlop.standards;

import java.util.List;
import java.util.Optional;

/**
 * The devices that would do at a place.
 *
 * @param inOrder the one to propose first; empty if none would do
 * @param whyNone the last obstacle of the family that came nearest; empty if there is a proposal
 */
public record Proposals(List<Proposal> inOrder, Optional<Obstacle> whyNone) {
    /** What a family fails on, in the order in which it is asked. */
    public enum Obstacle {
        /** The least rating asked for lies above the greatest one permitted. */
        RATING_RANGE_EMPTY,
        /** No family is made for that voltage. */
        VOLTAGE,
        /** None breaks the prospective current. */
        BREAKING_CAPACITY,
        /** None has a standard rating in the range. */
        RATING
    }

    /** Keeps a copy; refuses both or neither. */
    public Proposals {
        inOrder = List.copyOf(inOrder);
        if (inOrder.isEmpty() != whyNone.isPresent()) {
            throw new IllegalArgumentException("either proposals or the reason why there are none");
        }
    }

    /** The one to propose. */
    public Optional<Proposal> first() {
        return inOrder.stream().findFirst();
    }
}
