package orlop.study;

import org.jspecify.annotations.Nullable;

/**
 * Copper in the cables of which Orlop chooses the area, all conductors and runs.
 *
 * @param chosenKg as chosen
 * @param stepwiseKg as it would be if areas were only thickened step by step where a kilogram of copper saves most drop
 * @param leastKg of the choice that takes least, found exactly, in every condition; null where it is not known: conditions
 *     that ask for thicker cables and feed them by different ways, a network without operating point, more work than is permitted
 */
public record Copper(
        double chosenKg, double stepwiseKg, @Nullable Double leastKg) {
    /** No such cable. */
    public static final Copper NONE = new Copper(0, 0, 0.0);
}
