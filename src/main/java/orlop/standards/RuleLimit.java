package orlop.standards;

import java.util.Objects;

/**
 * A figure that a rule set asks for; its unit is named by the method that hands it out.
 *
 * @param limit the figure with its source
 * @param clause standard and clause
 */
public record RuleLimit(Sourced limit, String clause) {
    /** Refuses a blank clause. */
    public RuleLimit {
        Objects.requireNonNull(limit, "limit");
        if (clause.isBlank()) {
            throw new IllegalArgumentException("clause of " + limit + " is blank");
        }
    }

    /** The figure itself. */
    public double value() {
        return limit.value();
    }

    /** How firm it is. */
    public Provenance provenance() {
        return limit.provenance();
    }

    static RuleLimit of(CsvRow row, String column) {
        return new RuleLimit(row.sourced(column), row.word("clause"));
    }
}
