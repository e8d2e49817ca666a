package orlop.scene;

import java.util.List;
import java.util.Map;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/** Free texts of a person. */
public final class NoteItems {
    private NoteItems() {}

    private static TextBlock block(Note n) {
        double size = n.heightMm() / TextMeasure.bundled().capHeightEm(Weight.REGULAR);
        List<Line> lines = n.text()
                .lines()
                .map(s -> Line.of(s.replace("\t", "    "), Weight.REGULAR, Ink.INK))
                .toList();
        return new TextBlock(lines, size);
    }

    /** The rectangle that its lines take on the sheet, in millimetres. */
    public static Rect rect(Note n) {
        TextBlock b = block(n);
        return Rect.of(n.at().xMm(), n.at().yMm(), b.width(), Math.max(0, b.height()));
    }

    static void draw(ItemMaker items, SheetView view) {
        for (Note n : view.drawing().notes().values()) {
            if (n.sheet().equals(view.request().sheet()) && !n.text().isBlank()) {
                List<Mark> marks = block(n).marks(rect(n), Side.RIGHT).stream()
                        .filter(m -> !(m instanceof Mark.Text t && t.text().isEmpty()))
                        .toList();
                String title = view.words().text(Message.of("scene.note", n.text()));
                items.add(Role.NOTE, n.id(), title, rect(n), marks, Map.of());
            }
        }
    }
}
