package orlop.standards;

/**
 * One factor on a table's ampacity.
 *
 * @param kind what it allows for
 * @param basis the figure it was looked up with: a temperature or a count
 * @param factor above 0, without unit, with its source
 */
public record CorrectionFactor(Kind kind, double basis, Sourced factor) {
    /** What a factor allows for, and the unit of its basis. */
    public enum Kind {
        /** Air warmer or cooler than the table's; °C. */
        AMBIENT,
        /** Lying in an engine space, by the rule set's own figure; °C. */
        ENGINE_SPACE,
        /** Current-carrying conductors in one bundle; their number. */
        BUNDLE,
        /** Circuits lying together; their number. */
        GROUPING,
        /** Loaded cores in one sheath; their number. */
        LOADED_CORES,
        /** A neutral that carries current besides three phases; loaded conductors. */
        LOADED_NEUTRAL
    }

    /** Refuses a factor that is not above 0. */
    public CorrectionFactor {
        Checks.positive(factor.value(), "factor");
    }
}
