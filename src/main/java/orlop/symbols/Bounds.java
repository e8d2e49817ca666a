package orlop.symbols;

import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;

/**
 * An upright rectangle in mm from a symbol's origin.
 *
 * @param minXMm left edge
 * @param minYMm top edge
 * @param maxXMm right edge, not left of the left one
 * @param maxYMm bottom edge, not above the top one
 */
public record Bounds(double minXMm, double minYMm, double maxXMm, double maxYMm) {
    /** Curves are followed to this distance, finer than any printer. */
    private static final double FLATNESS_MM = 0.005;

    public Bounds {
        if (!(minXMm <= maxXMm && minYMm <= maxYMm)) {
            throw new IllegalArgumentException(
                    "not a rectangle: " + minXMm + " " + minYMm + " " + maxXMm + " " + maxYMm);
        }
    }

    public double widthMm() {
        return maxXMm - minXMm;
    }

    public double heightMm() {
        return maxYMm - minYMm;
    }

    public double centreXMm() {
        return (minXMm + maxXMm) / 2;
    }

    public double centreYMm() {
        return (minYMm + maxYMm) / 2;
    }

    /** Whether the other rectangle lies within this one, give or take {@code toleranceMm}. */
    public boolean contains(Bounds other, double toleranceMm) {
        return other.minXMm >= minXMm - toleranceMm
                && other.minYMm >= minYMm - toleranceMm
                && other.maxXMm <= maxXMm + toleranceMm
                && other.maxYMm <= maxYMm + toleranceMm;
    }

    /** The least rectangle around both. */
    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(minXMm, other.minXMm),
                Math.min(minYMm, other.minYMm),
                Math.max(maxXMm, other.maxXMm),
                Math.max(maxYMm, other.maxYMm));
    }

    /**
     * The rectangle around the points of a shape, grown on all sides. {@code Shape.getBounds2D} will not do: it counts
     * the control points of curves, which lie outside.
     *
     * @throws IllegalArgumentException if the shape has no point
     */
    static Bounds around(Shape shape, double growMm) {
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        double[] at = new double[6];
        for (PathIterator i = new FlatteningPathIterator(shape.getPathIterator(null), FLATNESS_MM);
                !i.isDone();
                i.next()) {
            if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
                minX = Math.min(minX, at[0]);
                minY = Math.min(minY, at[1]);
                maxX = Math.max(maxX, at[0]);
                maxY = Math.max(maxY, at[1]);
            }
        }
        return new Bounds(minX - growMm, minY - growMm, maxX + growMm, maxY + growMm);
    }
}
