package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.drawing.Words;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/** The cautions at the foot of every sheet, and above them what the signs on it mean. */
final class Legend {
    private static final double INSET_MM = 4;
    private static final double TOP_MM = 1.2;
    private static final double BETWEEN_MM = 3.5;
    private static final double NOTICE_MM = 4;

    private final Words words;
    private final Rect rect;

    Legend(Words words, Rect rect) {
        this.words = words;
        this.rect = rect;
    }

    /**
     * Draws the cautions and as many rows as there is room for, and gives back the others.
     *
     * @param spare where else on the sheet the last rows may stand, if all that are left have room there
     */
    List<LegendRow> draw(ItemMaker items, List<LegendRow> rows, String next, Rect spare) {
        double bottom = caution(items) - TOP_MM;
        List<Spot> places = places(rows, bottom);
        if (places.size() == rows.size()) {
            add(items, rows, places, List.of());
            return List.of();
        }
        List<LegendRow> rest = rows.subList(places.size(), rows.size());
        List<Spot> beside = column(rest, spare);
        if (beside.size() == rest.size()) {
            add(items, rows.subList(0, places.size()), places, List.of());
            add(items, rest, beside, List.of());
            return List.of();
        }
        String text = words.text(Message.of("scene.legend.more", next));
        TextBlock notice = TextBlock.of(List.of(Line.of(text, Weight.BOLD, Ink.INK)));
        Rect at = Rect.of(rect.minX() + INSET_MM, bottom - notice.height(), notice.width(), notice.height());
        places = places(rows, bottom - NOTICE_MM);
        add(items, rows.subList(0, places.size()), places, notice.marks(at, Side.RIGHT));
        return rows.subList(places.size(), rows.size());
    }

    /** Where a row stands, and how wide the samples of its column are. */
    private record Spot(Rect rect, double sampleMm) {}

    /** Column by column, each as wide as its widest sample and text; fewer than rows where there is no more room. */
    private List<Spot> places(List<LegendRow> rows, double bottom) {
        List<Spot> places = new ArrayList<>();
        double x = rect.minX() + INSET_MM;
        int next = 0;
        while (next < rows.size()) {
            List<LegendRow> column = column(rows, next, bottom - rect.minY() - TOP_MM);
            double sample =
                    column.stream().mapToDouble(LegendRow::sampleMm).max().orElse(0);
            double width =
                    column.stream().mapToDouble(r -> r.width(sample)).max().orElse(0);
            if (column.isEmpty() || x + width > rect.maxX() - INSET_MM) {
                return places;
            }
            double y = rect.minY() + TOP_MM;
            for (LegendRow row : column) {
                places.add(new Spot(Rect.of(x, y, row.width(sample), row.heightMm()), sample));
                y += row.heightMm();
            }
            x += width + BETWEEN_MM;
            next += column.size();
        }
        return places;
    }

    /** One column at the foot of a room; empty if they do not all fit. */
    private static List<Spot> column(List<LegendRow> rows, Rect room) {
        double height = rows.stream().mapToDouble(LegendRow::heightMm).sum();
        double sample = rows.stream().mapToDouble(LegendRow::sampleMm).max().orElse(0);
        double width = rows.stream().mapToDouble(r -> r.width(sample)).max().orElse(0);
        List<Spot> places = new ArrayList<>();
        double y = room.maxY() - height;
        if (height <= room.height() && width <= room.width()) {
            for (LegendRow row : rows) {
                places.add(new Spot(Rect.of(room.minX(), y, row.width(sample), row.heightMm()), sample));
                y += row.heightMm();
            }
        }
        return places;
    }

    private static List<LegendRow> column(List<LegendRow> rows, int from, double heightMm) {
        double used = 0;
        int to = from;
        while (to < rows.size() && used + rows.get(to).heightMm() <= heightMm + 1e-9) {
            used += rows.get(to++).heightMm();
        }
        return rows.subList(from, to);
    }

    private static void add(ItemMaker items, List<LegendRow> rows, List<Spot> places, List<Mark> notice) {
        List<Mark> marks = new ArrayList<>();
        List<String> spoken = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            marks.addAll(rows.get(i)
                    .marks(
                            places.get(i).rect().minX(),
                            places.get(i).rect().minY(),
                            places.get(i).sampleMm()));
            spoken.add(rows.get(i).text());
        }
        marks.addAll(notice);
        if (!marks.isEmpty()) {
            Rect bounds = places.stream().map(Spot::rect).reduce(Rect::union).orElseGet(() -> ItemMaker.bounds(marks));
            Rect all = notice.isEmpty() ? bounds : bounds.union(ItemMaker.bounds(notice));
            items.add(Role.LEGEND, "", String.join("; ", spoken), all, marks, Map.of());
        }
    }

    /** At the foot, as many lines as it takes. Returns its upper edge. */
    private double caution(ItemMaker items) {
        String text = words.text("scene.caution");
        double width = rect.width() - 2 * INSET_MM;
        List<Line> lines = new ArrayList<>();
        NoteBlock.wrap(lines, text, width, Weight.BOLD, Ink.INK);
        TextBlock block = TextBlock.of(lines);
        double top = rect.maxY() - 1.5 - block.height();
        Rect at = Rect.of(rect.minX() + INSET_MM, top, block.width(), block.height());
        items.add(Role.CAUTION, "", text, block.marks(at, Side.RIGHT), Map.of());
        return top;
    }
}
