package orlop.editor;

import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import javax.swing.SwingUtilities;

/**
 * Where the mouse is, on the sheet and on the canvas.
 *
 * @param xMm on the sheet
 * @param yMm on the sheet
 * @param xPx on the canvas
 * @param yPx on the canvas
 * @param mm how long a pixel is on the sheet
 * @param shift whether the Shift key is down
 * @param alt whether the Alt key is down
 * @param clicks 2 for a double click
 * @param left whether the left button is meant
 */
record Spot(double xMm, double yMm, int xPx, int yPx, double mm, boolean shift, boolean alt, int clicks, boolean left) {
    private static final double NEAR_PX = 7;

    static Spot of(MouseEvent e, Viewport v) {
        Point2D p = v.toSheet(e.getX(), e.getY());
        int m = e.getModifiersEx();
        boolean add = (m & (InputEvent.SHIFT_DOWN_MASK | InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) != 0;
        return new Spot(
                p.getX(),
                p.getY(),
                e.getX(),
                e.getY(),
                v.mm(1),
                add,
                (m & InputEvent.ALT_DOWN_MASK) != 0,
                e.getClickCount(),
                SwingUtilities.isLeftMouseButton(e));
    }

    /** A place on the canvas, with nothing pressed. */
    static Spot of(int xPx, int yPx, Viewport v) {
        Point2D p = v.toSheet(xPx, yPx);
        return new Spot(p.getX(), p.getY(), xPx, yPx, v.mm(1), false, false, 1, false);
    }

    /** A place on the sheet, with nothing pressed. */
    static Spot at(double xMm, double yMm, Viewport v) {
        Point2D p = v.toView(xMm, yMm);
        return of((int) Math.round(p.getX()), (int) Math.round(p.getY()), v);
    }

    /** The same with the Shift key held. */
    Spot withShift() {
        return new Spot(xMm, yMm, xPx, yPx, mm, true, alt, clicks, left);
    }

    /** How near something must be to be meant, in millimetres. */
    double nearMm() {
        return NEAR_PX * mm;
    }

    /** Whether the mouse has moved enough from there to mean a drag. */
    boolean dragged(Spot from) {
        return Math.hypot(xPx - from.xPx, yPx - from.yPx) >= 4;
    }
}
