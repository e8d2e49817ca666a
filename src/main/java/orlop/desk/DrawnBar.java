package orlop.desk;

import java.util.Optional;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Kind;
import orlop.drawing.Point;

/**
 * A new bar as it is drawn: from one point to another, lying or standing, whichever the pull is nearer to.
 *
 * @param middle where it stands, on the grid if its beginning is
 * @param lengthMm 15 to 2,000, in steps of 5
 * @param lying whether it runs across the sheet, not down
 */
public record DrawnBar(Point middle, double lengthMm, boolean lying) {
    /** A shorter pull is meant as a click. */
    private static final double LEAST_MM = 15;

    private static final double STEP_MM = 2 * Arranging.GRID_MM;

    /** The bar that is pulled from a point on the grid to any other; none while the pull is too short to be meant. */
    public static Optional<DrawnBar> pulled(Point from, Point to) {
        double across = to.xMm() - from.xMm();
        double down = to.yMm() - from.yMm();
        boolean lying = Math.abs(across) >= Math.abs(down);
        double pull = lying ? across : down;
        double length = Math.min(Distribution.Bar.MOST_DRAWN_MM, STEP_MM * Math.rint(Math.abs(pull) / STEP_MM));
        if (length < LEAST_MM) {
            return Optional.empty();
        }
        double half = Math.signum(pull) * length / 2;
        Point middle = lying ? new Point(from.xMm() + half, from.yMm()) : new Point(from.xMm(), from.yMm() + half);
        return Optional.of(new DrawnBar(middle, length, lying));
    }

    /** How long a bar of this kind is drawn where nobody says, in millimetres; 0 for what is no bar. */
    public static double usualMm(Kind kind) {
        return kind.defaults() instanceof Distribution.Bar b ? b.drawnLengthMm() : 0;
    }

    /** This bar or board, placed and as long as it is drawn; what is no bar has no length. */
    public Component of(Component bar) {
        Component placed = bar.withPlace(bar.place().withAt(middle).withRotationDegree(lying ? 0 : 90));
        return bar.particulars() instanceof Distribution.Bar b ? placed.withParticulars(b.drawn(lengthMm)) : placed;
    }
}
