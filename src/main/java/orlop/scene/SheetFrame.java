package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import orlop.drawing.Point;
import orlop.drawing.SheetSize;
import orlop.drawing.Words;
import orlop.layout.Rect;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;

/** The division of a sheet: frame and grid reference after ISO 5457, title block, printed margin, room for the drawing. */
final class SheetFrame {
    /** Left margin of the paper, for filing. */
    static final double LEFT_MM = 20;

    /** The other margins of the paper. */
    static final double EDGE_MM = 10;

    /** Height of title block, legend and cautions. */
    static final double STRIP_MM = 36;

    /** Width of the title block, ISO 7200. */
    static final double TITLE_MM = 180;

    private static final double BORDER_MM = 5;
    private static final double FRAME_LINE_MM = 0.7;
    private static final double FIELD_LINE_MM = 0.35;

    private final SheetSize size;

    SheetFrame(SheetSize size) {
        this.size = size;
    }

    Rect frame() {
        return new Rect(LEFT_MM, EDGE_MM, size.widthMm() - EDGE_MM, size.heightMm() - EDGE_MM);
    }

    Rect titleBlock() {
        Rect f = frame();
        return new Rect(f.maxX() - TITLE_MM, f.maxY() - STRIP_MM, f.maxX(), f.maxY());
    }

    /** Left of the title block: legend and cautions. */
    Rect foot() {
        Rect f = frame();
        return new Rect(f.minX(), f.maxY() - STRIP_MM, f.maxX() - TITLE_MM, f.maxY());
    }

    /** The printed margin, right of the drawing, above the title block. */
    Rect margin() {
        Rect f = frame();
        double width = switch (size) {
            case A4 -> 62;
            case A3 -> 76;
            case A2, A1 -> 90;
        };
        return new Rect(f.maxX() - width, f.minY(), f.maxX(), f.maxY() - STRIP_MM);
    }

    /** Where the drawing itself may lie. */
    Rect drawable() {
        Rect f = frame();
        return new Rect(f.minX(), f.minY(), margin().minX(), f.maxY() - STRIP_MM);
    }

    void draw(ItemMaker items, Words words) {
        List<Mark> marks = new ArrayList<>();
        Rect f = frame();
        Zones zones = Zones.of(size);
        marks.add(new Mark.Box(f, null, Ink.INK, FRAME_LINE_MM, Mark.Dash.SOLID));
        List<Double> xs = zones.columns();
        for (int i = 1; i < xs.size(); i++) {
            String name = Integer.toString(i);
            fieldAcross(marks, (xs.get(i - 1) + xs.get(i)) / 2, name);
            if (i < xs.size() - 1) {
                double x = xs.get(i);
                line(marks, x, f.minY() - BORDER_MM, x, f.minY());
                line(marks, x, f.maxY(), x, f.maxY() + BORDER_MM);
            }
        }
        List<Double> ys = zones.rows();
        for (int i = 1; i < ys.size(); i++) {
            fieldDown(marks, (ys.get(i - 1) + ys.get(i)) / 2, Zones.letter(i - 1));
            if (i < ys.size() - 1) {
                double y = ys.get(i);
                line(marks, f.minX() - BORDER_MM, y, f.minX(), y);
                line(marks, f.maxX(), y, f.maxX() + BORDER_MM, y);
            }
        }
        items.add(Role.FRAME, "", words.text("scene.frame"), marks, Map.of());
    }

    private void fieldAcross(List<Mark> marks, double x, String name) {
        text(marks, x, frame().minY() - BORDER_MM / 2, name);
        text(marks, x, frame().maxY() + BORDER_MM / 2, name);
    }

    private void fieldDown(List<Mark> marks, double y, String name) {
        text(marks, frame().minX() - BORDER_MM / 2, y, name);
        text(marks, frame().maxX() + BORDER_MM / 2, y, name);
    }

    private static void line(List<Mark> marks, double x1, double y1, double x2, double y2) {
        marks.add(Mark.Line.solid(FIELD_LINE_MM, Ink.INK, new Point(x1, y1), new Point(x2, y2)));
    }

    private static void text(List<Mark> marks, double x, double y, String s) {
        double size = TextBlock.SIZE_MM;
        double cap = size * TextMeasure.bundled().capHeightEm(Weight.REGULAR);
        double width = TextMeasure.bundled().widthMm(s, size, Weight.REGULAR);
        marks.add(new Mark.Text(x, y + cap / 2, Mark.Anchor.MIDDLE, size, Weight.REGULAR, Ink.INK, s, width));
    }
}
