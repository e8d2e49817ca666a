package orlop.drawing;

/**
 * A place on a sheet, in millimetres from the upper left corner of the paper, y downwards.
 *
 * @param xMm finite, −10,000 to 10,000
 * @param yMm finite, −10,000 to 10,000
 */
public record Point(double xMm, double yMm) {
    public Point {
        Checks.between(xMm, -10_000, 10_000, "at");
        Checks.between(yMm, -10_000, 10_000, "at");
    }

    /** This point moved by (dx, dy). */
    public Point plus(double dxMm, double dyMm) {
        return new Point(xMm + dxMm, yMm + dyMm);
    }

    /** The nearest point of a square grid of this pitch in millimetres. */
    public Point onGrid(double pitchMm) {
        return new Point(Math.rint(xMm / pitchMm) * pitchMm, Math.rint(yMm / pitchMm) * pitchMm);
    }
}
