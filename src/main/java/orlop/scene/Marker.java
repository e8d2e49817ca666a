package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Point;
import orlop.findings.Severity;
import orlop.layout.TextMeasure;
import orlop.layout.TextMeasure.Weight;

/** The numbered marker of a finding: a triangle, a diamond or a disc, so that it reads without colour. */
final class Marker {
    static final double WIDTH_MM = 5.6;
    static final double HEIGHT_MM = 5;
    private static final double EDGE_MM = 0.35;

    private Marker() {}

    static Ink ink(Severity s) {
        return switch (s) {
            case DANGER -> Ink.DANGER;
            case DEFECT -> Ink.DEFECT;
            case ADVICE -> Ink.ADVICE;
        };
    }

    /**
     * The marks of a marker.
     *
     * @param number "" for none
     * @param accepted whether somebody lives with it: then it is an outline
     */
    static List<Mark> marks(Severity severity, double x, double y, String number, boolean accepted) {
        Ink ink = ink(severity);
        Ink fill = accepted ? Ink.PAPER : ink;
        List<Mark> marks = new ArrayList<>();
        marks.add(shape(severity, x, y, 1, fill, ink));
        if (!number.isEmpty()) {
            double down = severity == Severity.DANGER ? 0.65 : 0;
            double room = severity == Severity.DANGER ? 3.1 : 3.6;
            double size = TextBlock.SIZE_MM;
            double wide = TextMeasure.bundled().widthMm(number, size, Weight.BOLD);
            size = Math.min(size, size * room / wide);
            double cap = size * TextMeasure.bundled().capHeightEm(Weight.BOLD);
            double width = TextMeasure.bundled().widthMm(number, size, Weight.BOLD);
            Ink in = accepted ? ink : Ink.PAPER;
            marks.add(new Mark.Text(x, y + down + cap / 2, Mark.Anchor.MIDDLE, size, Weight.BOLD, in, number, width));
        }
        return marks;
    }

    /** A marker without a number, of this height: for a legend. */
    static List<Mark> sample(Severity severity, double x, double y, double heightMm, boolean accepted) {
        Ink ink = ink(severity);
        return List.of(shape(severity, x, y, heightMm / HEIGHT_MM, accepted ? Ink.PAPER : ink, ink));
    }

    private static Mark shape(Severity severity, double x, double y, double scale, @Nullable Ink fill, Ink ink) {
        double w = scale * WIDTH_MM / 2 - EDGE_MM / 2;
        double h = scale * HEIGHT_MM / 2 - EDGE_MM / 2;
        return switch (severity) {
            case DANGER ->
                new Mark.Area(
                        List.of(new Point(x, y - h), new Point(x + w, y + h), new Point(x - w, y + h)),
                        fill,
                        ink,
                        EDGE_MM);
            case DEFECT ->
                new Mark.Area(
                        List.of(new Point(x, y - h), new Point(x + h, y), new Point(x, y + h), new Point(x - h, y)),
                        fill,
                        ink,
                        EDGE_MM);
            case ADVICE -> new Mark.Disc(x, y, h, fill, ink, EDGE_MM);
        };
    }
}
