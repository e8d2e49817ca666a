package orlop.scene;

import java.util.ArrayList;
import java.util.List;
import orlop.layout.Rect;
import orlop.layout.Side;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.TextBlock.Line;

/**
 * One line of a legend: a sample, and what it means.
 *
 * @param sample draws the sample with its middle at a point
 * @param sampleMm width of the sample
 */
record LegendRow(String text, double sampleMm, Sample sample) {
    /** Height of every row, so that the rows of all columns stand side by side. */
    static final double HEIGHT_MM = 4.15;

    /** Width of the samples. */
    static final double SAMPLE_MM = 11;

    private static final double GAP_MM = 1.5;

    /** Draws a sample. */
    interface Sample {
        List<Mark> at(double x, double y);
    }

    LegendRow(String text, Sample sample) {
        this(text, SAMPLE_MM, sample);
    }

    /** Its width in a column whose samples are so wide. */
    double width(double columnSampleMm) {
        return columnSampleMm + GAP_MM + block().width();
    }

    private TextBlock block() {
        return TextBlock.of(List.of(Line.of(text, Weight.REGULAR, Ink.INK)));
    }

    /** The marks of the row with its upper left corner at a point, in a column whose samples are so wide. */
    List<Mark> marks(double x, double top, double columnSampleMm) {
        double y = top + HEIGHT_MM / 2;
        List<Mark> marks = new ArrayList<>(sample.at(x + columnSampleMm / 2, y));
        TextBlock b = block();
        Rect at = Rect.of(x + columnSampleMm + GAP_MM, y - b.height() / 2 + 0.2, b.width(), b.height());
        marks.addAll(b.marks(at, Side.RIGHT));
        return marks;
    }
}
