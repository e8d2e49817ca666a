package orlop.standards;

/**
 * The adiabatic constant k between two temperatures.
 *
 * @param initialC at the start of the fault, °C
 * @param finalC at its end, °C
 * @param k A·s½/mm², with its source
 */
public record AdiabaticFactor(double initialC, double finalC, Sourced k) {
    /** Refuses a final temperature that isn't above the initial one. */
    public AdiabaticFactor {
        if (!(finalC > initialC)) {
            throw new IllegalArgumentException("finalC " + finalC + " must be above initialC " + initialC);
        }
        Checks.positive(k.value(), "k");
    }
}
