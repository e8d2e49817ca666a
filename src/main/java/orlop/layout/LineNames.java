package orlop.layout;

import java.util.List;
import java.util.Optional;
import orlop.drawing.Point;

/** Where the name of its system is set in a line, as a height in a contour: on a long leg, towards the far end. */
public final class LineNames {
    /** How much of the line is left out before and behind the name. */
    public static final double ROOM_MM = 0.7;

    private static final double LEAST_LINE_MM = 2.5;
    private static final double STEP_MM = 1.25;

    private LineNames() {}

    /**
     * A gap in a line, and the name in it.
     *
     * @param leg index of the leg, 0 for the first
     * @param rect what is left out of the line
     */
    public record Gap(int leg, Rect rect) {}

    /**
     * A place for a name of this size where it lies on nothing but its own line, if one of the legs has room.
     *
     * @param owner under whose name the line is known to the labeller
     * @param labeller knows what lies on the sheet
     */
    public static Optional<Gap> find(String owner, List<Point> points, double width, double height, Labeller labeller) {
        List<LineSpots.Leg> legs = LineSpots.legs(points);
        for (LineSpots.Leg leg : legs) {
            double along = (leg.lying() ? width : height) + 2 * ROOM_MM;
            double across = leg.lying() ? height : width;
            double slack = leg.length() - along - 2 * LEAST_LINE_MM;
            if (slack < 0) {
                continue;
            }
            for (double d = 0; d <= slack; d += STEP_MM) {
                // From a quarter of the room before the far end towards the near one, then the rest.
                double from = LEAST_LINE_MM + (0.75 * slack - d + (d > 0.75 * slack ? slack : 0));
                Rect r = rect(leg, from, along, across);
                if (labeller.free(r.grown(0.3), owner)) {
                    return Optional.of(new Gap(leg.index(), r));
                }
            }
        }
        return Optional.empty();
    }

    private static Rect rect(LineSpots.Leg leg, double from, double along, double across) {
        double sx = Math.signum(leg.b().xMm() - leg.a().xMm());
        double sy = Math.signum(leg.b().yMm() - leg.a().yMm());
        double x = leg.a().xMm() + sx * from;
        double y = leg.a().yMm() + sy * from;
        return leg.lying()
                ? new Rect(Math.min(x, x + sx * along), y - across / 2, Math.max(x, x + sx * along), y + across / 2)
                : new Rect(x - across / 2, Math.min(y, y + sy * along), x + across / 2, Math.max(y, y + sy * along));
    }
}
