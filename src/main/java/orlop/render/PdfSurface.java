package orlop.render;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import orlop.drawing.Point;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.Mark;
import orlop.scene.SceneItem;
import orlop.symbols.Outline;
import orlop.symbols.Symbol;
import orlop.symbols.Turn;

/** Paints on a page of a PDF, in its own operators: a text stays a text. Not safe for use by several threads. */
final class PdfSurface implements Surface {
    private static final float DASH_MM = 1.2f;
    private static final float DASH_GAP_MM = 0.8f;
    /** Control points of a quarter of a circle of radius 1, the common approximation by one cubic curve. */
    private static final double QUARTER = 0.5522847498;

    private final PDPageContentStream page;
    private final PdfFonts fonts;

    /** @param page whose unit has been made the millimetre, y downwards */
    PdfSurface(PDPageContentStream page, PdfFonts fonts) {
        this.page = page;
        this.fonts = fonts;
    }

    /** One or more operators. */
    private interface Operators {
        void write() throws IOException;
    }

    private static void write(Operators operators) {
        try {
            operators.write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void beginItem(SceneItem item) {
        // A page knows no items.
    }

    @Override
    public void endItem() {
        // A page knows no items.
    }

    @Override
    public void line(List<Point> points, double widthMm, Mark.Dash dash, boolean roundEnds, int rgb) {
        write(() -> {
            pen(widthMm, dash, roundEnds, rgb);
            path(points);
            page.stroke();
        });
    }

    @Override
    public void area(List<Point> points, int fillRgb, int strokeRgb, double widthMm, Mark.Dash dash) {
        write(() -> {
            prepare(fillRgb, strokeRgb, widthMm, dash);
            path(points);
            finish(fillRgb, strokeRgb);
        });
    }

    @Override
    public void disc(double xMm, double yMm, double radiusMm, int fillRgb, int strokeRgb, double widthMm) {
        write(() -> {
            float x = (float) xMm;
            float y = (float) yMm;
            float r = (float) radiusMm;
            float k = (float) (radiusMm * QUARTER);
            prepare(fillRgb, strokeRgb, widthMm, Mark.Dash.SOLID);
            page.moveTo(x + r, y);
            page.curveTo(x + r, y + k, x + k, y + r, x, y + r);
            page.curveTo(x - k, y + r, x - r, y + k, x - r, y);
            page.curveTo(x - r, y - k, x - k, y - r, x, y - r);
            page.curveTo(x + k, y - r, x + r, y - k, x + r, y);
            finish(fillRgb, strokeRgb);
        });
    }

    /** Colours and pen are set before a path begins: within one they are not allowed. */
    private void prepare(int fillRgb, int strokeRgb, double widthMm, Mark.Dash dash) throws IOException {
        if (fillRgb != NONE) {
            fillColour(fillRgb);
        }
        if (strokeRgb != NONE) {
            pen(widthMm, dash, false, strokeRgb);
        }
    }

    private void finish(int fillRgb, int strokeRgb) throws IOException {
        page.closePath();
        if (strokeRgb == NONE) {
            page.fill();
        } else if (fillRgb == NONE) {
            page.stroke();
        } else {
            page.fillAndStroke();
        }
    }

    @Override
    public void symbol(
            Symbol symbol, double xMm, double yMm, int rotationDegree, boolean mirrored, double scale, int rgb) {
        Turn turn = new Turn(rotationDegree, mirrored);
        write(() -> {
            for (Outline o : symbol.outlines()) {
                AffineTransform at = AffineTransform.getTranslateInstance(xMm, yMm);
                at.scale(scale, scale);
                at.concatenate(o.transform(turn));
                if (o.filled()) {
                    fillColour(rgb);
                    path(o.shape(), at);
                    page.fill();
                } else {
                    pen(scale * o.strokeWidthMm(), Mark.Dash.SOLID, false, rgb);
                    path(o.shape(), at);
                    page.stroke();
                }
            }
        });
    }

    @Override
    public void text(double leftMm, double yMm, double sizeMm, Weight weight, int rgb, String text, double widthMm) {
        write(() -> {
            fillColour(rgb);
            page.beginText();
            page.setFont(fonts.font(weight), (float) sizeMm);
            page.setTextMatrix(new Matrix(1, 0, 0, -1, (float) leftMm, (float) yMm));
            page.showText(PdfFonts.printable(text, weight));
            page.endText();
        });
    }

    void fillColour(int rgb) throws IOException {
        page.setNonStrokingColor((rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f);
    }

    private void pen(double widthMm, Mark.Dash dash, boolean roundEnds, int rgb) throws IOException {
        page.setStrokingColor((rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f);
        page.setLineWidth((float) widthMm);
        page.setLineCapStyle(roundEnds ? 1 : 0);
        page.setLineJoinStyle(0);
        page.setMiterLimit(4);
        page.setLineDashPattern(dash == Mark.Dash.DASHED ? new float[] {DASH_MM, DASH_GAP_MM} : new float[0], 0);
    }

    private void path(List<Point> points) throws IOException {
        page.moveTo((float) points.get(0).xMm(), (float) points.get(0).yMm());
        for (Point p : points.subList(1, points.size())) {
            page.lineTo((float) p.xMm(), (float) p.yMm());
        }
    }

    private void path(Shape shape, AffineTransform at) throws IOException {
        float[] c = new float[6];
        float x = 0;
        float y = 0;
        for (PathIterator i = shape.getPathIterator(at); !i.isDone(); i.next()) {
            int step = i.currentSegment(c);
            switch (step) {
                case PathIterator.SEG_MOVETO -> page.moveTo(c[0], c[1]);
                case PathIterator.SEG_LINETO -> page.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO -> {
                    Point2D.Float p = new Point2D.Float(x + 2 * (c[0] - x) / 3, y + 2 * (c[1] - y) / 3);
                    page.curveTo(p.x, p.y, c[2] + 2 * (c[0] - c[2]) / 3, c[3] + 2 * (c[1] - c[3]) / 3, c[2], c[3]);
                }
                case PathIterator.SEG_CUBICTO -> page.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> page.closePath();
            }
            int last = step == PathIterator.SEG_CUBICTO ? 4 : step == PathIterator.SEG_QUADTO ? 2 : 0;
            if (step != PathIterator.SEG_CLOSE) {
                x = c[last];
                y = c[last + 1];
            }
        }
    }
}
