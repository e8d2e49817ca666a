package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Point;
import orlop.drawing.SheetSize;

/**
 * The grid reference of a sheet after ISO 5457 (from memory): fields of 50 mm counted from the middle of the sheet,
 * numbers from the left, letters from the top without I and O.
 */
final class Zones {
    private static final double FIELD_MM = 50;
    private static final double LEAST_MM = 12; // a narrower rest belongs to its neighbour
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final List<Double> xs;
    private final List<Double> ys;

    private Zones(List<Double> xs, List<Double> ys) {
        this.xs = xs;
        this.ys = ys;
    }

    static Zones of(SheetSize size) {
        return new Zones(
                edges(SheetFrame.LEFT_MM, size.widthMm() - SheetFrame.EDGE_MM, size.widthMm() / 2),
                edges(SheetFrame.EDGE_MM, size.heightMm() - SheetFrame.EDGE_MM, size.heightMm() / 2));
    }

    private static List<Double> edges(double min, double max, double middle) {
        List<Double> edges = new ArrayList<>(List.of(min));
        double first = middle - Math.floor((middle - min) / FIELD_MM) * FIELD_MM;
        for (double e = first; e < max; e += FIELD_MM) {
            if (e - min > LEAST_MM && max - e > LEAST_MM) {
                edges.add(e);
            }
        }
        edges.add(max);
        return edges;
    }

    /** The edges of the numbered fields, the frame's two included. */
    List<Double> columns() {
        return xs;
    }

    /** The edges of the lettered fields, the frame's two included. */
    List<Double> rows() {
        return ys;
    }

    static String letter(int row) {
        return String.valueOf(LETTERS.charAt(row % LETTERS.length()));
    }

    /** The field of a point: {@code B4}. */
    String at(Point p) {
        return letter(field(ys, p.yMm())) + (field(xs, p.xMm()) + 1);
    }

    private static int field(List<Double> edges, double v) {
        int i = 0;
        while (i < edges.size() - 2 && v >= edges.get(i + 1)) {
            i++;
        }
        return i;
    }
}
