package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

/** The title block, with the data fields of ISO 7200 (from memory) and what is shown. */
final class TitleBlock {
    private static final int COLUMNS = 3;
    private static final int ROWS = 3;
    private static final double INSET_MM = 2;
    private static final double VALUE_MM = 3.5;
    private static final double OUTER_MM = 0.7;
    private static final double INNER_MM = 0.35;

    private final SceneRequest request;
    private final Words words;

    TitleBlock(SceneRequest request) {
        this.request = request;
        this.words = request.words();
    }

    void draw(ItemMaker items, Rect rect) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Box(rect, null, Ink.INK, OUTER_MM, Mark.Dash.SOLID));
        double w = rect.width() / COLUMNS;
        double h = rect.height() / ROWS;
        for (int i = 1; i < COLUMNS; i++) {
            double x = rect.minX() + i * w;
            marks.add(Mark.Line.solid(INNER_MM, Ink.INK, new Point(x, rect.minY()), new Point(x, rect.maxY())));
        }
        for (int i = 1; i < ROWS; i++) {
            double y = rect.minY() + i * h;
            marks.add(Mark.Line.solid(INNER_MM, Ink.INK, new Point(rect.minX(), y), new Point(rect.maxX(), y)));
        }
        List<String> spoken = new ArrayList<>();
        int i = 0;
        for (String[] field : fields()) {
            int row = i / COLUMNS;
            Rect cell = Rect.of(rect.minX() + (i % COLUMNS) * w, rect.minY() + row * h, w, h);
            cell(marks, cell, words.text("scene.title." + field[0]), field[1], field[0].equals("condition"));
            spoken.add(words.text("scene.title." + field[0]) + ": " + field[1]);
            i++;
        }
        items.add(Role.TITLE_BLOCK, "", String.join("; ", spoken), rect, marks, Map.of());
    }

    private List<String[]> fields() {
        Drawing d = request.drawing();
        Sheet s = d.sheets().require(request.sheet());
        Vessel v = d.vessel();
        return List.of(
                new String[] {"vessel", v.name()},
                new String[] {"title", s.title()},
                new String[] {
                    "number", v.documentPrefix().isEmpty() ? s.number() : v.documentPrefix() + "-" + s.number()
                },
                new String[] {"drawn", Format.dotted(List.of(s.drawnBy(), s.date()))},
                new String[] {"condition", condition()},
                new String[] {"rule-set", ruleSet(v)},
                new String[] {"status", s.status()},
                new String[] {"revision", s.revision()},
                new String[] {"sheet", position(d, s.id()) + " / " + d.sheets().size()});
    }

    private String condition() {
        boolean governing = request.results().condition().equals(orlop.study.Results.GOVERNING);
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

    private static int position(Drawing d, String sheet) {
        int n = 1;
        for (Sheet s : d.sheets().values()) {
            if (s.id().equals(sheet)) {
                return n;
            }
            n++;
        }
        throw new IllegalArgumentException("there is no sheet " + sheet);
    }

    private static void cell(List<Mark> marks, Rect cell, String label, String value, boolean bold) {
        double x = cell.minX() + INSET_MM;
        double room = cell.width() - 2 * INSET_MM;
        text(marks, x, cell.minY() + 3.6, room, TextBlock.SIZE_MM, Weight.REGULAR, Ink.QUIET, label);
        if (!value.isEmpty()) {
            Weight weight = bold ? Weight.BOLD : Weight.REGULAR;
            text(marks, x, cell.minY() + 9.2, room, VALUE_MM, weight, Ink.INK, value);
        }
    }

    private static void text(
            List<Mark> marks, double x, double y, double room, double size, Weight weight, Ink ink, String s) {
        TextMeasure measure = TextMeasure.bundled();
        double wide = measure.widthMm(s, size, weight);
        double smaller = Math.max(TextBlock.SIZE_MM, Math.min(size, size * room / wide));
        String text = TextBlock.cut(s.replace('\n', ' '), room, smaller, weight);
        double width = measure.widthMm(text, smaller, weight);
        marks.add(new Mark.Text(x, y, Mark.Anchor.START, smaller, weight, ink, text, width));
    }
}
