package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import orlop.layout.Rect;

/** Rows of a legend in columns of equal height, side by side. Immutable. */
record LegendBlock(List<List<LegendRow>> columns) {
    private static final double BETWEEN_MM = 3.5;

    LegendBlock {
        columns = List.copyOf(columns);
    }

    /** In columns of so many rows, the last of what is left. */
    static LegendBlock of(List<LegendRow> rows, int rowsInColumn) {
        List<List<LegendRow>> columns = new ArrayList<>();
        for (int from = 0; from < rows.size(); from += rowsInColumn) {
            columns.add(List.copyOf(rows.subList(from, Math.min(rows.size(), from + rowsInColumn))));
        }
        return new LegendBlock(columns);
    }

    /** The first columns that have room side by side in a width. */
    LegendBlock within(double widthMm) {
        int n = columns.size();
        while (n > 0 && first(n).width() > widthMm) {
            n--;
        }
        return first(n);
    }

    private LegendBlock first(int n) {
        return new LegendBlock(columns.subList(0, n));
    }

    int rows() {
        return columns.stream().mapToInt(List::size).sum();
    }

    double width() {
        double sum = Math.max(0, columns.size() - 1) * BETWEEN_MM;
        for (List<LegendRow> column : columns) {
            sum += width(column);
        }
        return sum;
    }

    double height() {
        return columns.stream().mapToInt(List::size).max().orElse(0) * LegendRow.HEIGHT_MM;
    }

    private static double width(List<LegendRow> column) {
        double sample = sample(column);
        return column.stream().mapToDouble(r -> r.width(sample)).max().orElse(0);
    }

    private static double sample(List<LegendRow> column) {
        return column.stream().mapToDouble(LegendRow::sampleMm).max().orElse(0);
    }

    /**
     * Draws it with its upper left corner at a point.
     *
     * @param more what stands beside the rows and belongs to them
     */
    void draw(ItemMaker items, double left, double top, List<Mark> more) {
        List<Mark> marks = new ArrayList<>();
        List<String> spoken = new ArrayList<>();
        double x = left;
        for (List<LegendRow> column : columns) {
            double y = top;
            for (LegendRow row : column) {
                marks.addAll(row.marks(x, y, sample(column)));
                spoken.add(row.text());
                y += LegendRow.HEIGHT_MM;
            }
            x += width(column) + BETWEEN_MM;
        }
        marks.addAll(more);
        if (!marks.isEmpty()) {
            Rect bounds = Rect.of(left, top, width(), height());
            Rect all = more.isEmpty() ? bounds : bounds.union(ItemMaker.bounds(more));
            items.add(Role.LEGEND, "", String.join("; ", spoken), all, marks, Map.of());
        }
    }
}
