package orlop.symbols;

import java.util.Objects;

/**
 * A place where the block of a symbol's texts (tag, name, particulars) may stand.
 *
 * <p>The point is that of the block nearest to the symbol: for {@code RIGHT} the middle of its left edge, for {@code LEFT}
 * the middle of its right edge, for {@code BELOW} and {@code ABOVE} the middle of its top or bottom edge, for
 * {@code INSIDE} its centre.
 *
 * @param side on which side of the symbol
 * @param xMm distance to the right of the symbol's origin
 * @param yMm distance below the symbol's origin
 */
public record TextPlace(Side side, double xMm, double yMm) {
    /** A side of the symbol, and so how the lines of the block are set. */
    public enum Side {
        RIGHT(Anchor.START),
        LEFT(Anchor.END),
        BELOW(Anchor.MIDDLE),
        ABOVE(Anchor.MIDDLE),
        INSIDE(Anchor.MIDDLE);

        private final Anchor anchor;

        Side(Anchor anchor) {
            this.anchor = anchor;
        }
    }

    /** Which part of each line stands at the point. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    public TextPlace {
        Objects.requireNonNull(side, "side");
    }

    /** How each line of the block is set: it follows from the side. */
    public Anchor anchor() {
        return side.anchor;
    }
}
