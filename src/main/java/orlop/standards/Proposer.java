package orlop.standards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Chooses among device families for one place. */
final class Proposer {
    private final double systemHighestV;
    private final boolean dc;
    private final double minRatingA;
    private final double maxRatingA;
    private final double prospectiveA;

    Proposer(double systemHighestV, boolean dc, double minRatingA, double maxRatingA, double prospectiveA) {
        Checks.positive(systemHighestV, "systemHighestV");
        Checks.positive(minRatingA, "minRatingA");
        Checks.notNegative(maxRatingA, "maxRatingA");
        Checks.notNegative(prospectiveA, "prospectiveA");
        this.systemHighestV = systemHighestV;
        this.dc = dc;
        this.minRatingA = minRatingA;
        this.maxRatingA = maxRatingA;
        this.prospectiveA = prospectiveA;
    }

    Proposals among(List<ProtectiveFamily> families) {
        if (minRatingA > maxRatingA) {
            return new Proposals(List.of(), Optional.of(Proposals.Obstacle.RATING_RANGE_EMPTY));
        }
        List<Proposal> found = new ArrayList<>();
        Proposals.Obstacle furthest = Proposals.Obstacle.VOLTAGE;
        for (ProtectiveFamily family : families) {
            Proposals.Obstacle obstacle = consider(family, found);
            furthest = obstacle.compareTo(furthest) > 0 ? obstacle : furthest;
        }
        // Every breaker is marked with its breaking capacity, but a voltage mark has to be looked for. The sort is
        // stable.
        found.sort(Comparator.comparing(p -> p.mustBeMarked().contains(Proposal.Mark.VOLTAGE)));
        return new Proposals(found, found.isEmpty() ? Optional.of(furthest) : Optional.empty());
    }

    /** Adds the family's least device that would do; returns how far it came. */
    private Proposals.Obstacle consider(ProtectiveFamily family, List<Proposal> found) {
        boolean markVoltage = false;
        boolean markBreaking = false;
        if (!enough(family.maxVoltageV(dc), systemHighestV)) {
            if (!enough(family.markableVoltageV(dc), systemHighestV)) {
                return Proposals.Obstacle.VOLTAGE;
            }
            markVoltage = true;
        }
        if (!enough(family.breakingA(dc), prospectiveA)) {
            if (!enough(family.markableBreakingA(dc), prospectiveA)) {
                return Proposals.Obstacle.BREAKING_CAPACITY;
            }
            markBreaking = true;
        }
        Optional<Sourced> rating = family.leastRatingA(minRatingA);
        if (rating.isPresent() && rating.get().value() <= maxRatingA) {
            found.add(new Proposal(family, rating.get(), marks(markVoltage, markBreaking)));
        }
        return Proposals.Obstacle.RATING;
    }

    private static Set<Proposal.Mark> marks(boolean voltage, boolean breaking) {
        if (voltage && breaking) {
            return Set.of(Proposal.Mark.VOLTAGE, Proposal.Mark.BREAKING_CAPACITY);
        }
        return voltage ? Set.of(Proposal.Mark.VOLTAGE) : breaking ? Set.of(Proposal.Mark.BREAKING_CAPACITY) : Set.of();
    }

    private static boolean enough(Optional<Sourced> limit, double wanted) {
        return limit.isPresent() && limit.get().value() >= wanted;
    }
}
