package orlop.standards;

import java.util.Objects;

/**
 * A number with where it comes from. Its unit is named by the method or component that hands it out.
 *
 * @param value finite
 * @param provenance how firm it is
 * @param source the text it stands in, or the formula; never blank
 */
public record Sourced(double value, Provenance provenance, String source) {
    /** Refuses a number that is not finite or a source that is blank. */
    public Sourced {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value must be finite, was " + value);
        }
        Objects.requireNonNull(provenance, "provenance");
        if (source.isBlank()) {
            throw new IllegalArgumentException("source of " + value + " is blank");
        }
    }
}
