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

    /** Draws the cautions and as many rows as there is room for, and gives back the others. */
    List<LegendRow> draw(ItemMaker items, List<LegendRow> rows, String next) {
        double bottom = caution(items) - TOP_MM;
        List<Rect> places = places(rows, bottom);
        if (places.size() == rows.size()) {
            add(items, rows, places, List.of());
            return List.of();
        }
        String text = words.text(Message.of("scene.legend.more", next));
        TextBlock notice = TextBlock.of(List.of(Line.of(text, Weight.BOLD, Ink.INK)));
        Rect at = Rect.of(rect.minX() + INSET_MM, bottom - notice.height(), notice.width(), notice.height());
        places = places(rows, bottom - NOTICE_MM);
        add(items, rows.subList(0, places.size()), places, notice.marks(at, Side.RIGHT));
        return rows.subList(places.size(), rows.size());
    }

    /** Column by column, each as wide as its widest row; fewer places than rows where there is no more room. */
    private List<Rect> places(List<LegendRow> rows, double bottom) {
        List<Rect> places = new ArrayList<>();
        double x = rect.minX() + INSET_MM;
        double y = rect.minY() + TOP_MM;
        double widest = 0;
        for (LegendRow row : rows) {
            if (y + row.heightMm() > bottom + 1e-9) {
                x += widest + BETWEEN_MM;
                y = rect.minY() + TOP_MM;
                widest = 0;
            }
            if (x + row.width() > rect.maxX() - INSET_MM || y + row.heightMm() > bottom + 1e-9) {
                return places;
            }
            places.add(Rect.of(x, y, row.width(), row.heightMm()));
            widest = Math.max(widest, row.width());
            y += row.heightMm();
        }
        return places;
    }

    private static void add(ItemMaker items, List<LegendRow> rows, List<Rect> places, List<Mark> notice) {
        List<Mark> marks = new ArrayList<>();
        List<String> spoken = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            marks.addAll(rows.get(i).marks(places.get(i).minX(), places.get(i).minY()));
            spoken.add(rows.get(i).text());
        }
        marks.addAll(notice);
        if (!marks.isEmpty()) {
            Rect bounds = places.stream().reduce(Rect::union).orElseGet(() -> ItemMaker.bounds(marks));
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
