package orlop.symbols;

import java.awt.Shape;
import java.util.Objects;

/**
 * One stroke or one filled area of a symbol. Every painter draws it alike: strokes have butt ends and mitred corners with
 * the limit 4 (the defaults of SVG), areas are filled by the non-zero rule, all in the one ink of the moment.
 *
 * @param shape the line or area in mm from the symbol's origin; never changed by anybody
 * @param strokeWidthMm width of the stroke, finite and > 0; or 0: the shape is filled
 */
public record Outline(Shape shape, double strokeWidthMm) {
    public Outline {
        Objects.requireNonNull(shape, "shape");
        if (!Double.isFinite(strokeWidthMm) || strokeWidthMm < 0) {
            throw new IllegalArgumentException("strokeWidthMm must be finite and not negative: " + strokeWidthMm);
        }
    }

    /** Whether the shape is filled, not stroked. */
    public boolean filled() {
        return strokeWidthMm == 0;
    }

    /** What the ink covers. */
    public Bounds bounds() {
        return Bounds.around(shape, strokeWidthMm / 2);
    }
}
