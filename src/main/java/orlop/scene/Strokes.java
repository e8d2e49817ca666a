package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Point;

/**
 * Small signs on a line: one oblique stroke for each conductor (IEC 60617, 03-01-02 and 03-01-03, from memory), and crosses on
 * what is to be removed (after ISO 7518 on drawings of rebuilding, from memory).
 */
final class Strokes {
    /** How far a stroke reaches to either side of its line: less than labels keep clear of it. */
    static final double REACH_MM = 1.1;

    private static final double SLANT_MM = 0.55;
    private static final double PITCH_MM = 0.9;
    private static final double WIDTH_MM = 0.25;
    private static final double CROSS_MM = 0.9;

    private Strokes() {}

    /** How much of the line they take. */
    static double length(int count) {
        return (count - 1) * PITCH_MM + 2 * SLANT_MM;
    }

    /** Strokes with their middle at a point of a line that lies, or else stands. */
    static List<Mark> marks(double x, double y, boolean lying, int count, Ink ink) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double along = (i - (count - 1) / 2.0) * PITCH_MM;
            double cx = lying ? x + along : x;
            double cy = lying ? y : y + along;
            double dx = lying ? SLANT_MM : REACH_MM;
            double dy = lying ? REACH_MM : SLANT_MM;
            marks.add(Mark.Line.solid(WIDTH_MM, ink, new Point(cx - dx, cy + dy), new Point(cx + dx, cy - dy)));
        }
        return marks;
    }

    /** A cross with its middle at a point. */
    static List<Mark> cross(double x, double y, Ink ink) {
        double c = CROSS_MM;
        return List.of(
                Mark.Line.solid(WIDTH_MM, ink, new Point(x - c, y - c), new Point(x + c, y + c)),
                Mark.Line.solid(WIDTH_MM, ink, new Point(x - c, y + c), new Point(x + c, y - c)));
    }
}
