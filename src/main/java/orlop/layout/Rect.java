package orlop.layout;

import orlop.drawing.Point;

/**
 * An upright rectangle on a sheet in millimetres, y downwards. It may have no width or no height.
 *
 * @param minX left edge
 * @param minY upper edge
 * @param maxX right edge, not left of the left one
 * @param maxY lower edge, not above the upper one
 */
public record Rect(double minX, double minY, double maxX, double maxY) {
    public Rect {
        if (!(minX <= maxX && minY <= maxY)) {
            throw new IllegalArgumentException("no rectangle: " + minX + " " + minY + " " + maxX + " " + maxY);
        }
    }

    public static Rect of(double x, double y, double width, double height) {
        return new Rect(x, y, x + width, y + height);
    }

    /** The least rectangle around two points. */
    public static Rect around(Point a, Point b) {
        return new Rect(
                Math.min(a.xMm(), b.xMm()),
                Math.min(a.yMm(), b.yMm()),
                Math.max(a.xMm(), b.xMm()),
                Math.max(a.yMm(), b.yMm()));
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public double centreX() {
        return (minX + maxX) / 2;
    }

    public double centreY() {
        return (minY + maxY) / 2;
    }

    /** Grown by so much on all sides; shrunk, but never inside out, if negative. */
    public Rect grown(double mm) {
        return grown(mm, mm);
    }

    /** Grown by so much left and right, and above and below. */
    public Rect grown(double dx, double dy) {
        double x = Math.max(dx, -width() / 2);
        double y = Math.max(dy, -height() / 2);
        return new Rect(minX - x, minY - y, maxX + x, maxY + y);
    }

    public Rect moved(double dx, double dy) {
        return new Rect(minX + dx, minY + dy, maxX + dx, maxY + dy);
    }

    public boolean contains(double x, double y) {
        return x >= minX && x <= maxX && y >= minY && y <= maxY;
    }

    public boolean contains(Rect r) {
        return r.minX >= minX && r.maxX <= maxX && r.minY >= minY && r.maxY <= maxY;
    }

    /** Whether they share more than an edge. */
    public boolean overlaps(Rect r) {
        return r.minX < maxX && r.maxX > minX && r.minY < maxY && r.maxY > minY;
    }

    /** Whether they share at least a point of their edges. */
    public boolean touches(Rect r) {
        return r.minX <= maxX && r.maxX >= minX && r.minY <= maxY && r.maxY >= minY;
    }

    /** The area that they share, mm², 0 if none. */
    public double sharedArea(Rect r) {
        double w = Math.min(maxX, r.maxX) - Math.max(minX, r.minX);
        double h = Math.min(maxY, r.maxY) - Math.max(minY, r.minY);
        return w > 0 && h > 0 ? w * h : 0;
    }

    public Rect union(Rect r) {
        return new Rect(Math.min(minX, r.minX), Math.min(minY, r.minY), Math.max(maxX, r.maxX), Math.max(maxY, r.maxY));
    }

    /** Distance from a point, 0 inside. */
    public double distance(double x, double y) {
        double dx = Math.max(0, Math.max(minX - x, x - maxX));
        double dy = Math.max(0, Math.max(minY - y, y - maxY));
        return Math.hypot(dx, dy);
    }
}
