package orlop.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Things by where they lie, in square cells over an area; what lies beyond it is kept in the cells at its edge. Not safe
 * for use by several threads, and a question may not be asked while another is being answered.
 */
final class Grid<T extends Grid.Item> {
    private static final double CELL_MM = 10;

    /** One thing. The stamp keeps it from being met twice by one question if it lies in several cells. */
    abstract static class Item {
        final Rect rect;
        private int stamp;

        Item(Rect rect) {
            this.rect = rect;
        }
    }

    private final Rect area;
    private final int columns;
    private final int rows;
    private final List<List<T>> cells;
    private int question;

    Grid(Rect area) {
        this.area = area;
        columns = 1 + (int) (area.width() / CELL_MM);
        rows = 1 + (int) (area.height() / CELL_MM);
        cells = new ArrayList<>(Collections.nCopies(columns * rows, List.of()));
    }

    void add(T item) {
        int right = column(item.rect.maxX());
        int bottom = row(item.rect.maxY());
        for (int j = row(item.rect.minY()); j <= bottom; j++) {
            for (int i = column(item.rect.minX()); i <= right; i++) {
                int at = j * columns + i;
                List<T> cell = cells.get(at);
                if (cell.isEmpty()) {
                    cell = new ArrayList<>(4);
                    cells.set(at, cell);
                }
                cell.add(item);
            }
        }
    }

    void remove(T item) {
        int right = column(item.rect.maxX());
        int bottom = row(item.rect.maxY());
        for (int j = row(item.rect.minY()); j <= bottom; j++) {
            for (int i = column(item.rect.minX()); i <= right; i++) {
                int at = j * columns + i;
                List<T> cell = cells.get(at);
                cell.remove(item);
                if (cell.isEmpty()) {
                    cells.set(at, List.of());
                }
            }
        }
    }

    /** All that touch the rectangle. */
    void near(Rect r, Consumer<T> visit) {
        question++;
        int right = column(r.maxX());
        int bottom = row(r.maxY());
        for (int j = row(r.minY()); j <= bottom; j++) {
            for (int i = column(r.minX()); i <= right; i++) {
                List<T> cell = cells.get(j * columns + i);
                for (int k = 0; k < cell.size(); k++) {
                    T t = cell.get(k);
                    Item item = t;
                    if (item.stamp != question) {
                        item.stamp = question;
                        if (r.touches(t.rect)) {
                            visit.accept(t);
                        }
                    }
                }
            }
        }
    }

    /** All that touch the rectangle, as a list. */
    List<T> touching(Rect r) {
        List<T> found = new ArrayList<>(0);
        near(r, found::add);
        return found;
    }

    /** All that share more than an edge with the rectangle. */
    List<T> overlapping(Rect r) {
        List<T> found = new ArrayList<>(2);
        near(r, t -> {
            if (t.rect.overlaps(r)) {
                found.add(t);
            }
        });
        return found;
    }

    /** Whether one of those that share more than an edge with the rectangle is of this kind. */
    boolean any(Rect r, Predicate<T> kind) {
        int right = column(r.maxX());
        int bottom = row(r.maxY());
        for (int j = row(r.minY()); j <= bottom; j++) {
            for (int i = column(r.minX()); i <= right; i++) {
                List<T> cell = cells.get(j * columns + i);
                for (int k = 0; k < cell.size(); k++) {
                    T t = cell.get(k);
                    if (t.rect.overlaps(r) && kind.test(t)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) Math.floor((x - area.minX()) / CELL_MM)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(rows - 1, (int) Math.floor((y - area.minY()) / CELL_MM)));
    }
}
