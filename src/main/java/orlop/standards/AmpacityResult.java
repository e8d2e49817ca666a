package orlop.standards;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** What a rule set says of a conductor's ampacity: a current, or why it gives none. */
public sealed interface AmpacityResult {
    /** The current, if there is one. */
    Optional<Carries> carries();

    /** The reason why there is none, if so. */
    Optional<NoValue> noValue();

    /** Why a figure may be shown but may decide nothing. */
    enum Doubt {
        /** The column of the insulation's temperature is doubted until checked against the standard. */
        INSULATION_COLUMN_UNCHECKED,
        /** The engine-space factor is doubted until checked against the standard. */
        ENGINE_SPACE_FACTOR_UNCHECKED
    }

    /** Why there is no figure. */
    enum Reason {
        /** The conductor is thinner than the table's first row. */
        AREA_BELOW_TABLE,
        /** The insulation's rating is below the table's first column. */
        INSULATION_BELOW_TABLE,
        /** The air is as warm as the conductor may get, or warmer. */
        AMBIENT_TOO_WARM,
        /** The rule set doesn't permit this insulation in an engine space. */
        NOT_PERMITTED_IN_ENGINE_SPACE,
        /** More circuits together than the table of groups knows. */
        GROUP_ABOVE_TABLE
    }

    /**
     * A current.
     *
     * @param cell the cell it starts from
     * @param factors all that were applied, those of 1 left out
     * @param doubts why it may not govern; empty if it may
     */
    record Carries(TableCell cell, List<CorrectionFactor> factors, Set<Doubt> doubts) implements AmpacityResult {
        /** Keeps copies of the lists. */
        public Carries {
            Objects.requireNonNull(cell, "cell");
            factors = List.copyOf(factors);
            doubts = Set.copyOf(doubts);
        }

        /** The ampacity, A: the cell times all factors, not rounded. */
        public double amps() {
            return cell.amps() * totalFactor();
        }

        /** All factors together, without unit. */
        public double totalFactor() {
            double total = 1;
            for (CorrectionFactor f : factors) {
                total *= f.factor().value();
            }
            return total;
        }

        /** Whether it may decide an area; if not it is only shown. */
        public boolean mayGovern() {
            return doubts.isEmpty();
        }

        /** The weakest of the cell's and the factors' provenance. */
        public Provenance provenance() {
            Provenance weakest = cell.provenance();
            for (CorrectionFactor f : factors) {
                weakest = weakest.weaker(f.factor().provenance());
            }
            return weakest;
        }

        @Override
        public Optional<Carries> carries() {
            return Optional.of(this);
        }

        @Override
        public Optional<NoValue> noValue() {
            return Optional.empty();
        }
    }

    /**
     * No current.
     *
     * @param reason why
     * @param limit the figure that was not met, in the unit of what the reason speaks of (mm², °C, circuits), with the
     *     source of the table
     */
    record NoValue(Reason reason, Sourced limit) implements AmpacityResult {
        /** Refuses null. */
        public NoValue {
            Objects.requireNonNull(reason, "reason");
            Objects.requireNonNull(limit, "limit");
        }

        @Override
        public Optional<Carries> carries() {
            return Optional.empty();
        }

        @Override
        public Optional<NoValue> noValue() {
            return Optional.of(this);
        }
    }
}
