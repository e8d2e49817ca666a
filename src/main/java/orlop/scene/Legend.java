package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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
    private static final double NOTICE_MM = 4;
    private static final double BOX_MM = 0.18;
    private static final double AROUND_MM = 2.5;
    private static final double HEAD_MM = 4.5;
    private static final double CLEAR_MM = 4;
    private static final double STEP_MM = 5;
    private static final List<Integer> SHAPES = List.of(2, 3, 4, 1);

    /** The cautions as they are drawn at the foot of every sheet of a size. */
    private record Caution(String text, Rect rect, double topMm, Rect bounds, List<Mark> marks) {}

    private static volatile @Nullable Caution lastCaution;

    private final Words words;
    private final Rect rect;

    Legend(Words words, Rect rect) {
        this.words = words;
        this.rect = rect;
    }

    /** Whether nothing lies in a rectangle. */
    interface Room {
        boolean open(Rect r);
    }

    /**
     * Where else on the sheet rows may stand for which the foot has no room.
     *
     * @param beside a room that is kept free, or one without height
     * @param field the field of the drawing
     * @param room tells where in it nothing lies
     */
    record Spare(Rect beside, Rect field, Room room) {
        static final Spare NONE = new Spare(new Rect(0, 0, 0, 0), new Rect(0, 0, 0, 0), r -> false);
    }

    /**
     * Draws the cautions and as many rows as there is room for, at the foot, else beside it, else in a free part of the
     * drawing's field, and gives back the others.
     */
    List<LegendRow> draw(ItemMaker items, List<LegendRow> rows, String next, Spare spare) {
        double bottom = caution(items) - TOP_MM;
        LegendBlock foot = foot(rows, bottom);
        List<LegendRow> rest = rows.subList(foot.rows(), rows.size());
        if (rest.isEmpty() || besides(items, rest, spare.beside()) || inField(items, rest, spare)) {
            foot.draw(items, rect.minX() + INSET_MM, rect.minY() + TOP_MM, List.of());
            return List.of();
        }
        String text = words.text(Message.of("scene.legend.more", next));
        TextBlock notice = TextBlock.of(List.of(Line.of(text, Weight.BOLD, Ink.INK)));
        Rect at = Rect.of(rect.minX() + INSET_MM, bottom - notice.height(), notice.width(), notice.height());
        foot = foot(rows, bottom - NOTICE_MM);
        foot.draw(items, rect.minX() + INSET_MM, rect.minY() + TOP_MM, notice.marks(at, Side.RIGHT));
        return rows.subList(foot.rows(), rows.size());
    }

    private LegendBlock foot(List<LegendRow> rows, double bottom) {
        int fitting = (int) Math.floor((bottom - rect.minY() - TOP_MM) / LegendRow.HEIGHT_MM + 1e-9);
        return fitting < 1
                ? new LegendBlock(List.of())
                : LegendBlock.of(rows, fitting).within(rect.width() - 2 * INSET_MM);
    }

    /** At the foot of a room that is kept free. */
    private boolean besides(ItemMaker items, List<LegendRow> rows, Rect room) {
        LegendBlock one = LegendBlock.of(rows, rows.size());
        boolean fits = one.height() + HEAD_MM <= room.height() && one.width() <= room.width();
        if (fits) {
            double top = room.maxY() - one.height();
            one.draw(items, room.minX(), top, head(room.minX(), top - HEAD_MM));
        }
        return fits;
    }

    private List<Mark> head(double x, double y) {
        String head = words.text("scene.legend.head");
        TextBlock line = TextBlock.of(List.of(Line.of(head, Weight.BOLD, Ink.QUIET)));
        return line.marks(Rect.of(x, y, line.width(), line.height()), Side.RIGHT);
    }

    /** In a box of its own, so that no sample is taken for a part of the drawing. */
    private boolean inField(ItemMaker items, List<LegendRow> rows, Spare spare) {
        for (int columns : SHAPES) {
            LegendBlock block = LegendBlock.of(rows, (rows.size() + columns - 1) / columns);
            double width = block.width() + 2 * AROUND_MM;
            double height = block.height() + 2 * AROUND_MM + HEAD_MM;
            Optional<Rect> box = find(spare, width, height);
            if (box.isPresent()) {
                Rect b = box.get();
                List<Mark> more = new ArrayList<>(head(b.minX() + AROUND_MM, b.minY() + AROUND_MM));
                more.add(new Mark.Box(b, null, Ink.QUIET, BOX_MM, Mark.Dash.SOLID));
                block.draw(items, b.minX() + AROUND_MM, b.minY() + AROUND_MM + HEAD_MM, more);
                return true;
            }
        }
        return false;
    }

    /** The lowest free place, of those the one farthest to the right. */
    private static Optional<Rect> find(Spare spare, double width, double height) {
        Rect f = spare.field().grown(-CLEAR_MM);
        for (double y = f.maxY() - height; y >= f.minY(); y -= STEP_MM) {
            for (double x = f.maxX() - width; x >= f.minX(); x -= STEP_MM) {
                Rect r = Rect.of(x, y, width, height);
                if (spare.room().open(r.grown(CLEAR_MM - 1))) {
                    return Optional.of(r);
                }
            }
        }
        return Optional.empty();
    }

    /** At the foot, as many lines as it takes, about equally long. Returns its upper edge. */
    private double caution(ItemMaker items) {
        String text = words.text("scene.caution");
        Caution last = lastCaution;
        Caution now = last != null && last.text.equals(text) && last.rect.equals(rect) ? last : made(text);
        lastCaution = now;
        items.add(Role.CAUTION, "", text, now.bounds, now.marks, Map.of());
        return now.topMm;
    }

    private Caution made(String text) {
        List<Line> lines = lines(text, rect.width() - 2 * INSET_MM);
        double width = rect.width() - 2 * INSET_MM;
        while (width > STEP_MM && lines(text, width - STEP_MM).size() == lines.size()) {
            width -= STEP_MM;
        }
        TextBlock block = TextBlock.of(lines(text, width));
        double top = rect.maxY() - 1.5 - block.height();
        Rect at = Rect.of(rect.minX() + INSET_MM, top, block.width(), block.height());
        List<Mark> marks = List.copyOf(block.marks(at, Side.RIGHT));
        return new Caution(text, rect, top, ItemMaker.bounds(marks), marks);
    }

    private static List<Line> lines(String text, double width) {
        List<Line> lines = new ArrayList<>();
        NoteBlock.wrap(lines, text, width, Weight.BOLD, Ink.INK);
        return lines;
    }
}
