package orlop.symbols;

import java.awt.geom.AffineTransform;

/**
 * How a symbol stands on the sheet: mirrored (left and right exchanged), then turned.
 *
 * @param rotationDegree 0, 90, 180 or 270, clockwise
 * @param mirrored whether it is mirrored before it is turned
 */
public record Turn(int rotationDegree, boolean mirrored) {
    /** As the symbol is drawn in its file. */
    public static final Turn NONE = new Turn(0, false);

    public Turn {
        if (rotationDegree != 0 && rotationDegree != 90 && rotationDegree != 180 && rotationDegree != 270) {
            throw new IllegalArgumentException("rotationDegree must be 0, 90, 180 or 270: " + rotationDegree);
        }
    }

    /** Where a point comes to lie: its distance to the right of the symbol's origin. */
    public double xMm(double xMm, double yMm) {
        double x = mirrored ? -xMm : xMm;
        return switch (rotationDegree) {
            case 90 -> -yMm;
            case 180 -> -x;
            case 270 -> yMm;
            default -> x;
        };
    }

    /** Where a point comes to lie: its distance below the symbol's origin. */
    public double yMm(double xMm, double yMm) {
        double x = mirrored ? -xMm : xMm;
        return switch (rotationDegree) {
            case 90 -> x;
            case 180 -> -yMm;
            case 270 -> -x;
            default -> yMm;
        };
    }

    /** The rectangle that a rectangle becomes. */
    Bounds of(Bounds b) {
        double x = xMm(b.minXMm(), b.minYMm());
        double y = yMm(b.minXMm(), b.minYMm());
        double otherX = xMm(b.maxXMm(), b.maxYMm());
        double otherY = yMm(b.maxXMm(), b.maxYMm());
        return new Bounds(Math.min(x, otherX), Math.min(y, otherY), Math.max(x, otherX), Math.max(y, otherY));
    }

    /** The same for shapes, about the symbol's origin; free of rounding. A new one at each call. */
    public AffineTransform transform() {
        AffineTransform t = AffineTransform.getQuadrantRotateInstance(rotationDegree / 90);
        if (mirrored) {
            t.scale(-1, 1);
        }
        return t;
    }
}
