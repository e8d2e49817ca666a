package orlop.symbols;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One stroke or one filled area of a symbol. Every painter draws it alike: strokes have butt ends and mitred corners with
 * the limit 4 (the defaults of SVG), areas are filled by the non-zero rule, all in the one ink of the moment.
 *
 * @param shape the line or area in mm from the symbol's origin; never changed by anybody
 * @param strokeWidthMm width of the stroke, finite and > 0; or 0: the shape is filled
 * @param upright the letter or sign of which it is a part, which stays upright; null: it turns with the symbol
 */
public record Outline(
        Shape shape, double strokeWidthMm, @Nullable Upright upright) {
    public Outline {
        Objects.requireNonNull(shape, "shape");
        if (!Double.isFinite(strokeWidthMm) || strokeWidthMm < 0) {
            throw new IllegalArgumentException("strokeWidthMm must be finite and not negative: " + strokeWidthMm);
        }
    }

    /** One that turns with the symbol. */
    Outline(Shape shape, double strokeWidthMm) {
        this(shape, strokeWidthMm, null);
    }

    /** The same as a part of this sign. */
    Outline in(@Nullable Upright sign) {
        return new Outline(shape, strokeWidthMm, sign);
    }

    /** Whether the shape is filled, not stroked. */
    public boolean filled() {
        return strokeWidthMm == 0;
    }

    /** From the shape to where it stands about the turned symbol's origin. A new one at each call. */
    public AffineTransform transform(Turn turn) {
        return upright == null ? turn.transform() : upright.transform(turn);
    }

    /** What the ink covers as the symbol is drawn in its file. */
    public Bounds bounds() {
        return Bounds.around(shape, strokeWidthMm / 2);
    }
}
