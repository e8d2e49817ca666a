package orlop.scene;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.Quantity;
import orlop.drawing.Sheet;
import orlop.drawing.Unit;
import orlop.drawing.Vessel;
import orlop.drawing.Words;
import orlop.layout.Rect;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;
import orlop.study.Results;

/**
 * The title block, with the data fields of ISO 7200 (from memory: owner, number, date of issue, sheet, title, approval,
 * creator, document type; revision, status) and what is shown. Nothing comes from the clock.
 */
final class TitleBlock {
    private static final double INSET_MM = 2;
    private static final double VALUE_MM = 3;
    /** Where a value that is too long for one line begins, below the upper edge of its field. */
    private static final double FIRST_OF_TWO_MM = 5.7;

    private static final double OUTER_MM = 0.7;
    private static final double INNER_MM = 0.35;
    private static final int ROWS = 4;

    private final SceneRequest request;
    private final Words words;
    private final SheetNumber number;

    TitleBlock(SceneRequest request, SheetNumber number) {
        this.request = request;
        this.words = request.words();
        this.number = number;
    }

    /** A field; widths are parts of 180. */
    private record Field(int row, double width, String key, String value, boolean bold) {
        Field(int row, double width, String key, String value) {
            this(row, width, key, value, false);
        }
    }

    void draw(ItemMaker items, Rect rect) {
        List<Field> fields = fields();
        items.add(Role.TITLE_BLOCK, "", From.of(rect, fields, words), true, () -> drawn(rect, fields), Map.of());
    }

    private ItemMaker.Drawn drawn(Rect rect, List<Field> fields) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Box(rect, Ink.PAPER, Ink.INK, OUTER_MM, Mark.Dash.SOLID));
        double h = rect.height() / ROWS;
        for (int i = 1; i < ROWS; i++) {
            double y = rect.minY() + i * h;
            marks.add(Mark.Line.solid(INNER_MM, Ink.INK, new Point(rect.minX(), y), new Point(rect.maxX(), y)));
        }
        List<String> spoken = new ArrayList<>();
        double x = rect.minX();
        int row = 0;
        for (Field f : fields) {
            if (f.row != row) {
                row = f.row;
                x = rect.minX();
            }
            double w = f.width * rect.width() / SheetFrame.TITLE_MM;
            Rect cell = Rect.of(x, rect.minY() + row * h, w, h);
            if (x > rect.minX()) {
                marks.add(Mark.Line.solid(INNER_MM, Ink.INK, new Point(x, cell.minY()), new Point(x, cell.maxY())));
            }
            String label = words.text("scene.title." + f.key);
            cell(marks, cell, label, f);
            spoken.add(label + ": " + f.value);
            x += w;
        }
        return new ItemMaker.Drawn(String.join("; ", spoken), rect, marks);
    }

    private List<Field> fields() {
        Drawing d = request.drawing();
        Sheet s = d.sheets().require(request.sheet());
        Vessel v = d.vessel();
        String document = v.documentPrefix().isEmpty() ? s.number() : v.documentPrefix() + "-" + s.number();
        String type = number.findings() == 0 ? "scene.title.type.drawing" : "scene.title.type.findings";
        return List.of(
                new Field(0, 58, "vessel", v.name()),
                new Field(0, 77, "title", s.title()),
                new Field(0, 45, "number", document + SheetNumber.suffix(number.findings())),
                new Field(1, 58, "owner", v.owner()),
                new Field(1, 77, "condition", condition(), true),
                new Field(1, 25, "sheet", words.text(Message.of("scene.title.sheet.of", number.text(), number.of()))),
                new Field(1, 20, "revision", s.revision()),
                new Field(2, 29, "drawn", s.drawnBy()),
                new Field(2, 29, "approved", s.approvedBy()),
                new Field(2, 77, "rule-set", ruleSet(v)),
                new Field(2, 45, "status", s.status()),
                new Field(3, 58, "type", words.text(type)),
                new Field(3, 77, "systems", systems(d, s.id())),
                new Field(3, 45, "date", s.date()));
    }

    private String condition() {
        boolean governing = request.results().condition().equals(Results.GOVERNING);
        String title = request.results().title();
        return governing || title.isEmpty() ? words.text("scene.governing") : title;
    }

    private String ruleSet(Vessel v) {
        String name = v.ruleSet().isEmpty()
                ? words.text("scene.rule-set.none")
                : words.pattern("scene.rule-set." + v.ruleSet()).orElse(v.ruleSet());
        Quantity ambient = new Quantity(v.ambientC(), Unit.DEGREE_CELSIUS);
        return words.text(Message.of("scene.rule-set.at", name, ambient));
    }

    /** The systems of what stands on the sheet, in the order of the drawing. */
    private static String systems(Drawing d, String sheet) {
        Set<String> used = new LinkedHashSet<>();
        for (Component c : d.components().values()) {
            if (c.place().sheet().equals(sheet)) {
                used.addAll(c.systems());
            }
        }
        return Format.dotted(d.systems().stream()
                .filter(s -> used.contains(s.id()))
                .map(SystemName::nature)
                .toList());
    }

    private static void cell(List<Mark> marks, Rect cell, String label, Field field) {
        double x = cell.minX() + INSET_MM;
        double room = cell.width() - 2 * INSET_MM;
        text(marks, x, cell.minY() + 3, room, TextBlock.SIZE_MM, Weight.REGULAR, Ink.QUIET, label);
        if (!field.value.isEmpty()) {
            Weight weight = field.bold ? Weight.BOLD : Weight.REGULAR;
            String value = field.value.replace('\n', ' ');
            if (TextMeasure.bundled().widthMm(value, TextBlock.SIZE_MM, weight) <= room) {
                text(marks, x, cell.minY() + 7.3, room, VALUE_MM, weight, Ink.INK, value);
                return;
            }
            double y = cell.minY() + FIRST_OF_TWO_MM;
            for (String line : TextBlock.wrapped(value, room, TextBlock.SIZE_MM, weight, 2)) {
                text(marks, x, y, room, TextBlock.SIZE_MM, weight, Ink.INK, line);
                y += TextBlock.SIZE_MM;
            }
        }
    }

    private static void text(
            List<Mark> marks, double x, double y, double room, double size, Weight weight, Ink ink, String s) {
        TextMeasure measure = TextMeasure.bundled();
        double wide = measure.widthMm(s, size, weight);
        double smaller = Math.max(TextBlock.SIZE_MM, Math.min(size, size * room / wide));
        String text = TextBlock.cut(s, room, smaller, weight);
        double width = measure.widthMm(text, smaller, weight);
        marks.add(new Mark.Text(x, y, Mark.Anchor.START, smaller, weight, ink, text, width));
    }
}
