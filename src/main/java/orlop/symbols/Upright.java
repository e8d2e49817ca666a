package orlop.symbols;

import java.awt.geom.AffineTransform;
import java.util.Objects;

/**
 * A letter or sign within a symbol that is to be read. Where the symbol is turned or mirrored, the middle of the sign moves
 * with it, but its strokes are neither turned nor mirrored.
 *
 * @param id that of its group in the symbol's file; begins with {@link #ID}
 * @param ink what its strokes cover as the symbol is drawn in its file
 */
public record Upright(String id, Bounds ink) {
    /** How the ids of such groups begin. */
    public static final String ID = "upright";

    public Upright {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(ink, "ink");
    }

    /** How far the turn takes it: to the right, in mm. */
    private double rightMm(Turn turn) {
        return turn.xMm(ink.centreXMm(), ink.centreYMm()) - ink.centreXMm();
    }

    /** How far the turn takes it: downwards, in mm. */
    private double downMm(Turn turn) {
        return turn.yMm(ink.centreXMm(), ink.centreYMm()) - ink.centreYMm();
    }

    /** From the symbol's file to where its strokes stand about the turned symbol's origin. A new one at each call. */
    public AffineTransform transform(Turn turn) {
        return AffineTransform.getTranslateInstance(rightMm(turn), downMm(turn));
    }

    /** What its strokes cover in the turned symbol. */
    Bounds ink(Turn turn) {
        double right = rightMm(turn);
        double down = downMm(turn);
        return new Bounds(ink.minXMm() + right, ink.minYMm() + down, ink.maxXMm() + right, ink.maxYMm() + down);
    }
}
