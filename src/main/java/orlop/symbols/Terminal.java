package orlop.symbols;

import java.util.Objects;

/**
 * Where a terminal sits in its symbol.
 *
 * @param id the terminal's name in its kind: {@code 1}, {@code 2} …
 * @param xMm distance to the right of the symbol's origin, on the grid of {@link #GRID_MM}
 * @param yMm distance below the symbol's origin, on the grid of {@link #GRID_MM}
 * @param direction the way a cable leaves
 */
public record Terminal(String id, double xMm, double yMm, Direction direction) {
    /** The module of all symbols and of the sheet, in mm. */
    public static final double GRID_MM = 2.5;

    public Terminal {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(direction, "direction");
    }

    /** Whether it lies on the grid, so that a component placed on the grid joins cables on the grid. */
    boolean onGrid() {
        return xMm % GRID_MM == 0 && yMm % GRID_MM == 0;
    }
}
