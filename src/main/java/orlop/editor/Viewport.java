package orlop.editor;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import orlop.layout.Rect;

/**
 * Which part of the sheet is seen. Immutable.
 *
 * @param pxPerMm pixels for a millimetre of the sheet, above 0
 * @param xPx where the sheet's left edge lies, in pixels of the canvas
 * @param yPx where its upper edge lies
 */
record Viewport(double pxPerMm, double xPx, double yPx) {
    /** A screen of 96 pixels per inch shows the sheet in its own size at this scale. */
    static final double FULL_SIZE = 96 / 25.4;

    private static final double LEAST_LETTER_PX = 3;
    private static final double LEAST = 0.2;
    private static final double MOST = 60;

    Viewport {
        pxPerMm = Math.max(LEAST, Math.min(MOST, pxPerMm));
    }

    /** The whole sheet in the middle of a canvas, with a little desk around it. */
    static Viewport fitting(double widthMm, double heightMm, int widthPx, int heightPx) {
        double rim = 16;
        double scale = Math.min((widthPx - 2 * rim) / widthMm, (heightPx - 2 * rim) / heightMm);
        Viewport v = new Viewport(scale, 0, 0);
        return new Viewport(v.pxPerMm, (widthPx - widthMm * v.pxPerMm) / 2, (heightPx - heightMm * v.pxPerMm) / 2);
    }

    /** This place of the sheet in the middle of a canvas, at this scale. */
    static Viewport around(double xMm, double yMm, double pxPerMm, int widthPx, int heightPx) {
        Viewport v = new Viewport(pxPerMm, 0, 0);
        return v.moved(widthPx / 2.0 - xMm * v.pxPerMm, heightPx / 2.0 - yMm * v.pxPerMm);
    }

    /** Whether the texts of a sheet can be guessed at: its smallest letters are 1.8 mm high. */
    boolean legible() {
        return pxPerMm * 1.8 >= LEAST_LETTER_PX;
    }

    AffineTransform toView() {
        return new AffineTransform(pxPerMm, 0, 0, pxPerMm, xPx, yPx);
    }

    Point2D toSheet(double x, double y) {
        return new Point2D.Double((x - xPx) / pxPerMm, (y - yPx) / pxPerMm);
    }

    Point2D toView(double xMm, double yMm) {
        return new Point2D.Double(xMm * pxPerMm + xPx, yMm * pxPerMm + yPx);
    }

    /** Nearer or farther, with the place under this pixel kept where it is. */
    Viewport zoomed(double factor, double atX, double atY) {
        double scale = Math.max(LEAST, Math.min(MOST, pxPerMm * factor));
        double f = scale / pxPerMm;
        return new Viewport(scale, atX - (atX - xPx) * f, atY - (atY - yPx) * f);
    }

    Viewport moved(double dxPx, double dyPx) {
        return new Viewport(pxPerMm, xPx + dxPx, yPx + dyPx);
    }

    /** Moved just so far that this place of the sheet lies within the canvas. */
    Viewport showing(double xMm, double yMm, int widthPx, int heightPx) {
        Point2D p = toView(xMm, yMm);
        double rim = Math.min(60, Math.min(widthPx, heightPx) / 4.0);
        double dx = Math.max(0, rim - p.getX()) - Math.max(0, p.getX() - (widthPx - rim));
        double dy = Math.max(0, rim - p.getY()) - Math.max(0, p.getY() - (heightPx - rim));
        return moved(dx, dy);
    }

    /** Moved just so far that a strip of this part of the sheet lies within the canvas. */
    Viewport keeping(Rect r, int widthPx, int heightPx) {
        double strip = Math.min(60, Math.min(widthPx, heightPx) / 4.0);
        double dx = Math.max(0, strip - (xPx + r.maxX() * pxPerMm))
                - Math.max(0, xPx + r.minX() * pxPerMm - (widthPx - strip));
        double dy = Math.max(0, strip - (yPx + r.maxY() * pxPerMm))
                - Math.max(0, yPx + r.minY() * pxPerMm - (heightPx - strip));
        return dx == 0 && dy == 0 ? this : moved(dx, dy);
    }

    /** Length on the sheet of so many pixels. */
    double mm(double px) {
        return px / pxPerMm;
    }

    /** How the scale is spoken: 100 for the sheet's own size on a screen of 96 pixels per inch. */
    int percent() {
        return (int) Math.round(pxPerMm / FULL_SIZE * 100);
    }
}
