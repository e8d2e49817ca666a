package orlop.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Things by where they lie, in square cells over an area, and as far beyond it as anything reaches; what lies very far
 * beyond is kept in the outermost cells. Not safe for use by several threads, and a question may not be asked while another
 * is being answered.
 */
final class Grid<T extends Grid.Item> {
    private static final double CELL_MM = 10;

    /** So many cells there are at first on each side of the area: frames and their marks lie there. */
    private static final int RIM = 3;

    /** So many cells there are at most on each side of the area. */
    private static final int BEYOND = 300;

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
    private Cells<T> cells;
    private int question;

    /** The cells of these columns and rows, the last ones included, row by row; those of the area begin at 0. */
    private record Cells<T>(int left, int top, int right, int bottom, List<List<T>> all) {
        static <T> Cells<T> empty(int left, int top, int right, int bottom) {
            int n = (right - left + 1) * (bottom - top + 1);
            return new Cells<>(left, top, right, bottom, new ArrayList<>(Collections.nCopies(n, List.of())));
        }

        private int at(int i, int j) {
            return (j - top) * (right - left + 1) + i - left;
        }

        List<T> get(int i, int j) {
            return all.get(at(i, j));
        }

        void set(int i, int j, List<T> cell) {
            all.set(at(i, j), cell);
        }

        /** The same with these cells too, and some more on that side. */
        Cells<T> grown(int toLeft, int toTop, int toRight, int toBottom) {
            int aside = (right - left + 1) / 2;
            int down = (bottom - top + 1) / 2;
            Cells<T> grown = empty(
                    toLeft < left ? toLeft - aside : left,
                    toTop < top ? toTop - down : top,
                    toRight > right ? toRight + aside : right,
                    toBottom > bottom ? toBottom + down : bottom);
            for (int j = top; j <= bottom; j++) {
                for (int i = left; i <= right; i++) {
                    grown.set(i, j, get(i, j));
                }
            }
            return grown;
        }
    }

    Grid(Rect area) {
        this.area = area;
        columns = 1 + (int) (area.width() / CELL_MM);
        rows = 1 + (int) (area.height() / CELL_MM);
        cells = Cells.empty(-RIM, -RIM, columns - 1 + RIM, rows - 1 + RIM);
    }

    void add(T item) {
        int left = bounded((item.rect.minX() - area.minX()) / CELL_MM, columns);
        int right = bounded((item.rect.maxX() - area.minX()) / CELL_MM, columns);
        int top = bounded((item.rect.minY() - area.minY()) / CELL_MM, rows);
        int bottom = bounded((item.rect.maxY() - area.minY()) / CELL_MM, rows);
        if (left < cells.left() || top < cells.top() || right > cells.right() || bottom > cells.bottom()) {
            cells = cells.grown(left, top, right, bottom);
        }
        for (int j = top; j <= bottom; j++) {
            for (int i = left; i <= right; i++) {
                List<T> cell = cells.get(i, j);
                if (cell.isEmpty()) {
                    cell = new ArrayList<>(4);
                    cells.set(i, j, cell);
                }
                cell.add(item);
            }
        }
    }

    /** The number of a column or row, not too far from those of the area. */
    private static int bounded(double cell, int within) {
        return Math.max(-BEYOND, Math.min(within - 1 + BEYOND, (int) Math.floor(cell)));
    }

    void remove(T item) {
        int right = column(item.rect.maxX());
        int bottom = row(item.rect.maxY());
        for (int j = row(item.rect.minY()); j <= bottom; j++) {
            for (int i = column(item.rect.minX()); i <= right; i++) {
                List<T> cell = cells.get(i, j);
                cell.remove(item);
                if (cell.isEmpty()) {
                    cells.set(i, j, List.of());
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
                List<T> cell = cells.get(i, j);
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
                List<T> cell = cells.get(i, j);
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
        return Math.max(cells.left(), Math.min(cells.right(), bounded((x - area.minX()) / CELL_MM, columns)));
    }

    private int row(double y) {
        return Math.max(cells.top(), Math.min(cells.bottom(), bounded((y - area.minY()) / CELL_MM, rows)));
    }
}
