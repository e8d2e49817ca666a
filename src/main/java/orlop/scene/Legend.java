package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.Words;
import orlop.findings.Severity;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/** What the lines and markers mean, and the cautions, at the foot of the sheet. */
final class Legend {
    private static final double INSET_MM = 4;
    private static final double WIDE_MM = 150;
    private static final double SAMPLE_MM = 12;
    private static final double GAP_MM = 3;
    private static final int ROWS = 4;

    private final SheetView view;
    private final Words words;
    private final Rect rect;

    Legend(SheetView view, Rect rect) {
        this.view = view;
        this.words = view.words();
        this.rect = rect;
    }

    private interface Sample {
        List<Mark> at(double x, double y);
    }

    private record Row(String key, Sample sample, double sampleMm) {
        Row(String key, Sample sample) {
            this(key, sample, SAMPLE_MM);
        }
    }

    void draw(ItemMaker items) {
        double top = caution(items);
        boolean wide = rect.width() > WIDE_MM;
        List<Row> rows = wide ? rows() : fewRows();
        int inColumn = wide ? ROWS : rows.size();
        double pitch = (top - (wide ? 2 : 0.8) - rect.minY() - 2) / inColumn;
        double column = (rect.width() - INSET_MM) / 2;
        List<Mark> marks = new ArrayList<>();
        List<String> spoken = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            double x = rect.minX() + INSET_MM + (i / inColumn > 0 ? column : 0);
            double y = rect.minY() + 2 + pitch * (i % inColumn + 0.5);
            String text = words.text(row.key);
            marks.addAll(row.sample.at(x, y));
            TextBlock block = TextBlock.of(List.of(Line.of(text, Weight.REGULAR, Ink.INK)));
            double left = x + row.sampleMm + GAP_MM;
            marks.addAll(block.marks(Rect.of(left, y - block.height() / 2, block.width(), block.height()), Side.RIGHT));
            spoken.add(text);
        }
        items.add(Role.LEGEND, "", String.join("; ", spoken), marks, Map.of());
    }

    /** At the foot, as many lines as it takes. Returns its upper edge. */
    private double caution(ItemMaker items) {
        String text = words.text("scene.caution");
        double width = rect.width() - 2 * INSET_MM;
        List<Line> lines = new ArrayList<>();
        for (String s : TextBlock.wrapped(text, width, TextBlock.SIZE_MM, Weight.BOLD, 6)) {
            lines.add(Line.of(s, Weight.BOLD, Ink.INK));
        }
        TextBlock block = TextBlock.of(lines);
        double top = rect.maxY() - 2 - block.height();
        Rect at = Rect.of(rect.minX() + INSET_MM, top, block.width(), block.height());
        items.add(Role.CAUTION, "", text, block.marks(at, Side.RIGHT), Map.of());
        return top;
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("scene.legend.cable", this::cable));
        rows.add(new Row("scene.legend.link", (x, y) -> List.of(line(x, y, 0.25, Ink.INK, Mark.Dash.SOLID))));
        rows.add(new Row("scene.legend.dead", (x, y) -> List.of(line(x, y, 0.7, Ink.DEAD, Mark.Dash.SOLID))));
        rows.add(new Row(
                "scene.legend.proposed",
                (x, y) -> List.of(
                        new Mark.Box(Rect.of(x, y - 1.25, SAMPLE_MM, 2.5), null, Ink.DANGER, 0.35, Mark.Dash.DASHED))));
        for (Severity s : Severity.values()) {
            rows.add(new Row("scene.legend." + s.word(), (x, y) -> Marker.marks(s, x + SAMPLE_MM / 2, y, "", false)));
        }
        rows.add(new Row("scene.legend.figures", this::figures));
        if (memory()) {
            rows.set(2, new Row("scene.legend.memory", (x, y) -> text(x, y, CableText.MEMORY)));
        }
        return rows;
    }

    /** On a small sheet: the lines, and the three markers in one row. */
    private List<Row> fewRows() {
        List<Row> few = new ArrayList<>(rows().subList(0, ROWS));
        if (!memory()) {
            few.remove(2); // dead lines are grey, and their labels say so
        }
        few.add(new Row(
                "scene.legend.kinds",
                (x, y) -> {
                    List<Mark> marks = new ArrayList<>();
                    double at = x;
                    for (Severity s : Severity.values()) {
                        marks.addAll(Marker.marks(s, at + Marker.WIDTH_MM / 2, y, "", false));
                        at += Marker.WIDTH_MM;
                    }
                    return marks;
                },
                3 * Marker.WIDTH_MM));
        return few;
    }

    /** Whether any area on the sheet carries the mark of a value from memory. */
    private boolean memory() {
        return view.ways().values().stream().anyMatch(w -> {
            var cable = view.drawing().cables().get(w.connection().id());
            return cable != null && new CableText(view, cable, view.system(w)).memory();
        });
    }

    private static Mark line(double x, double y, double width, Ink ink, Mark.Dash dash) {
        return new Mark.Line(List.of(new Point(x, y), new Point(x + SAMPLE_MM, y)), width, dash, false, ink);
    }

    private List<Mark> cable(double x, double y) {
        String system = "";
        for (ElectricalSystem s : view.drawing().systems().values()) {
            system = s.id();
            break;
        }
        String name = view.lineName(system);
        Ink ink = view.ink(system);
        double w = TextMeasure.bundled().widthMm(name, TextBlock.SIZE_MM, Weight.BOLD);
        double half = Math.min(SAMPLE_MM / 2 - 1, w / 2 + 0.7);
        double middle = x + SAMPLE_MM / 2;
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.Line.solid(0.7, ink, new Point(x, y), new Point(middle - half, y)));
        marks.add(Mark.Line.solid(0.7, ink, new Point(middle + half, y), new Point(x + SAMPLE_MM, y)));
        if (!name.isEmpty()) {
            marks.add(SystemName.text(name, middle, y, ink));
        }
        return marks;
    }

    private List<Mark> figures(double x, double y) {
        return text(x, y, words.text(Message.of("scene.legend.figures.sample")));
    }

    private static List<Mark> text(double x, double y, String s) {
        TextBlock block = TextBlock.of(List.of(Line.of(s, Weight.BOLD, Ink.INK)));
        Rect at = Rect.of(x + (SAMPLE_MM - block.width()) / 2, y - block.height() / 2, block.width(), block.height());
        return block.marks(at, Side.RIGHT);
    }
}
