package orlop.editor;

import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.util.Optional;

/**
 * What turning the wheel means: it zooms, or it moves the sheet, as a person likes. The fine steps of a trackpad always
 * move it, and with Shift it goes sideways. With Ctrl, all of them zoom.
 *
 * <p>Not every system tells of fine steps, and a quick stroke has whole ones among them: what comes soon after a fine step
 * belongs to the same stroke.
 */
final class Wheel {
    /** So long after a fine step the next one may come. */
    private static final long STROKE_MS = 400;

    private static final double PAN_PX = 48;

    private long fineAt = Long.MIN_VALUE / 2;

    /** How far it moves the sheet, in pixels; empty where it zooms. */
    Optional<Point2D> pans(MouseWheelEvent e) {
        double turned = e.getPreciseWheelRotation();
        if (turned != e.getWheelRotation() && !e.isControlDown()) {
            fineAt = e.getWhen();
        }
        boolean stroke = e.getWhen() - fineAt < STROKE_MS;
        if (e.isControlDown() || !(stroke || e.isShiftDown() || Preferences.wheelPans())) {
            return Optional.empty();
        }
        double by = -turned * PAN_PX;
        return Optional.of(e.isShiftDown() ? new Point2D.Double(by, 0) : new Point2D.Double(0, by));
    }

    /**
     * How far a stroke to the side moves the sheet where the system tells of it as a button beyond the third, in pixels;
     * 0 for every other button.
     */
    static double aside(int button) {
        return button == 4 ? PAN_PX : button == 5 ? -PAN_PX : 0;
    }
}
