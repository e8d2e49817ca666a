package orlop.scene;

import orlop.drawing.TerminalRef;
import orlop.layout.Heading;
import orlop.layout.Rect;

/**
 * A bar, along which a cable can begin anywhere.
 *
 * @param component its tag
 * @param rect what it covers; its longer side is the bar
 * @param freeTerminal a terminal name that is not used yet
 */
public record BarSpan(String component, Rect rect, String freeTerminal) {
    private static final double GRID_MM = 2.5;

    /** The spot on the bar nearest to a point, on the grid, leaving towards the side on which the point lies. */
    public TerminalSpot nearest(double x, double y) {
        TerminalRef ref = new TerminalRef(component, freeTerminal);
        if (rect.width() >= rect.height()) {
            double at = onBar(x, rect.minX(), rect.maxX());
            return new TerminalSpot(ref, at, rect.centreY(), y < rect.centreY() ? Heading.UP : Heading.DOWN, false);
        }
        double at = onBar(y, rect.minY(), rect.maxY());
        return new TerminalSpot(ref, rect.centreX(), at, x < rect.centreX() ? Heading.LEFT : Heading.RIGHT, false);
    }

    /** The spot in the middle of the bar. */
    public TerminalSpot middle() {
        return nearest(rect.centreX(), rect.centreY());
    }

    private static double onBar(double value, double min, double max) {
        double v = Math.rint(value / GRID_MM) * GRID_MM;
        double first = Math.ceil(min / GRID_MM) * GRID_MM;
        double last = Math.floor(max / GRID_MM) * GRID_MM;
        return Math.max(first, Math.min(last, v));
    }
}
