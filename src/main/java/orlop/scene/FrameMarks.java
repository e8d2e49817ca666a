package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Point;
import orlop.drawing.SheetSize;
import orlop.layout.Rect;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;

/**
 * What ISO 5457 puts around a drawing (from memory): the frame of 0.7 mm; the grid reference in a border of 5 mm, in letters
 * of 3.5 mm, of A4 above and on the right alone; centring marks through the border and 5 mm on into the frame;
 * trimming marks of two overlapping rectangles of 10 × 5 mm in each corner; the size's designation below on the right.
 */
final class FrameMarks {
    private static final double BORDER_MM = 5;
    private static final double FRAME_LINE_MM = 0.7;
    private static final double FIELD_LINE_MM = 0.35;
    private static final double LETTER_MM = 3.5;
    /** How far the centring marks reach into the frame. */
    static final double CENTRING_MM = 5;

    private static final double TRIM_LONG_MM = 10;
    private static final double TRIM_SHORT_MM = 5;

    private final List<Mark> marks = new ArrayList<>();
    private final Rect frame;
    private final SheetSize size;
    private final boolean small;

    private FrameMarks(Rect frame, SheetSize size) {
        this.frame = frame;
        this.size = size;
        this.small = size.designation().equals("A4");
    }

    static List<Mark> of(Rect frame, SheetSize size) {
        FrameMarks f = new FrameMarks(frame, size);
        f.trimming();
        f.marks.add(new Mark.Box(frame, null, Ink.INK, FRAME_LINE_MM, Mark.Dash.SOLID));
        f.columns(Zones.of(size).columns());
        f.rows(Zones.of(size).rows());
        f.centring();
        f.text(frame.maxX() - 4, frame.maxY() + BORDER_MM / 2, size.designation());
        return f.marks;
    }

    private void columns(List<Double> xs) {
        for (int i = 1; i < xs.size(); i++) {
            double middle = (xs.get(i - 1) + xs.get(i)) / 2;
            text(middle, frame.minY() - BORDER_MM / 2, Integer.toString(i));
            if (!small) {
                text(middle, frame.maxY() + BORDER_MM / 2, Integer.toString(i));
            }
            if (i < xs.size() - 1) {
                double x = xs.get(i);
                line(FIELD_LINE_MM, x, frame.minY() - BORDER_MM, x, frame.minY());
                line(FIELD_LINE_MM, x, frame.maxY(), x, frame.maxY() + BORDER_MM);
            }
        }
    }

    private void rows(List<Double> ys) {
        for (int i = 1; i < ys.size(); i++) {
            double middle = (ys.get(i - 1) + ys.get(i)) / 2;
            text(frame.maxX() + BORDER_MM / 2, middle, Zones.letter(i - 1));
            if (!small) {
                text(frame.minX() - BORDER_MM / 2, middle, Zones.letter(i - 1));
            }
            if (i < ys.size() - 1) {
                double y = ys.get(i);
                line(FIELD_LINE_MM, frame.minX() - BORDER_MM, y, frame.minX(), y);
                line(FIELD_LINE_MM, frame.maxX(), y, frame.maxX() + BORDER_MM, y);
            }
        }
    }

    /** At the middles of the paper, not of the frame: by them a copy is lined up. */
    private void centring() {
        double x = size.widthMm() / 2;
        double y = size.heightMm() / 2;
        line(FRAME_LINE_MM, x, frame.minY() - BORDER_MM, x, frame.minY() + CENTRING_MM);
        line(FRAME_LINE_MM, x, frame.maxY() + BORDER_MM, x, frame.maxY());
        line(FRAME_LINE_MM, frame.minX() - BORDER_MM, y, frame.minX() + CENTRING_MM, y);
        line(FRAME_LINE_MM, frame.maxX() + BORDER_MM, y, frame.maxX() - CENTRING_MM, y);
    }

    private void trimming() {
        double w = size.widthMm();
        double h = size.heightMm();
        for (Point corner : List.of(new Point(0, 0), new Point(w, 0), new Point(w, h), new Point(0, h))) {
            double dx = corner.xMm() == 0 ? 1 : -1;
            double dy = corner.yMm() == 0 ? 1 : -1;
            marks.add(new Mark.Area(
                    List.of(
                            corner,
                            new Point(corner.xMm() + dx * TRIM_LONG_MM, corner.yMm()),
                            new Point(corner.xMm() + dx * TRIM_LONG_MM, corner.yMm() + dy * TRIM_SHORT_MM),
                            new Point(corner.xMm() + dx * TRIM_SHORT_MM, corner.yMm() + dy * TRIM_SHORT_MM),
                            new Point(corner.xMm() + dx * TRIM_SHORT_MM, corner.yMm() + dy * TRIM_LONG_MM),
                            new Point(corner.xMm(), corner.yMm() + dy * TRIM_LONG_MM)),
                    Ink.INK,
                    null,
                    0));
        }
    }

    private void line(double width, double x1, double y1, double x2, double y2) {
        marks.add(Mark.Line.solid(width, Ink.INK, new Point(x1, y1), new Point(x2, y2)));
    }

    private void text(double x, double y, String s) {
        TextMeasure measure = TextMeasure.bundled();
        double em = LETTER_MM / measure.capHeightEm(Weight.REGULAR);
        double width = measure.widthMm(s, em, Weight.REGULAR);
        marks.add(new Mark.Text(x, y + LETTER_MM / 2, Mark.Anchor.MIDDLE, em, Weight.REGULAR, Ink.INK, s, width));
    }
}
