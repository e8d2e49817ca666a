package orlop.render;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;
import orlop.drawing.Point;
import orlop.layout.TextMeasure.Weight;
import orlop.scene.Mark;
import orlop.scene.SceneItem;
import orlop.symbols.Symbol;
import orlop.symbols.Turn;

/**
 * Paints on a Graphics2D whose unit is the millimetre: scale it before. Colour, stroke, font and hints of the graphics are
 * changed, its transform is put back. Not safe for use by several threads.
 */
public final class Graphics2DSurface implements Surface {
    private static final float MITRE = 4;
    private static final float DASH_MM = 1.2f;
    private static final float DASH_GAP_MM = 0.8f;

    private final Graphics2D g;

    public Graphics2DSurface(Graphics2D g) {
        this.g = g;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    @Override
    public void beginItem(SceneItem item) {
        // A picture knows no items.
    }

    @Override
    public void endItem() {
        // A picture knows no items.
    }

    @Override
    public void line(List<Point> points, double widthMm, Mark.Dash dash, boolean roundEnds, int rgb) {
        g.setColor(new Color(rgb));
        g.setStroke(stroke(widthMm, dash, roundEnds));
        g.draw(path(points, false));
    }

    @Override
    public void area(List<Point> points, int fillRgb, int strokeRgb, double widthMm, Mark.Dash dash) {
        Path2D path = path(points, true);
        if (fillRgb != NONE) {
            g.setColor(new Color(fillRgb));
            g.fill(path);
        }
        if (strokeRgb != NONE) {
            g.setColor(new Color(strokeRgb));
            g.setStroke(stroke(widthMm, dash, false));
            g.draw(path);
        }
    }

    @Override
    public void disc(double xMm, double yMm, double radiusMm, int fillRgb, int strokeRgb, double widthMm) {
        Ellipse2D disc = new Ellipse2D.Double(xMm - radiusMm, yMm - radiusMm, 2 * radiusMm, 2 * radiusMm);
        if (fillRgb != NONE) {
            g.setColor(new Color(fillRgb));
            g.fill(disc);
        }
        if (strokeRgb != NONE) {
            g.setColor(new Color(strokeRgb));
            g.setStroke(stroke(widthMm, Mark.Dash.SOLID, false));
            g.draw(disc);
        }
    }

    @Override
    public void symbol(
            Symbol symbol, double xMm, double yMm, int rotationDegree, boolean mirrored, double scale, int rgb) {
        g.setColor(new Color(rgb));
        SymbolPainter.paint(g, symbol, xMm, yMm, new Turn(rotationDegree, mirrored), scale);
    }

    @Override
    public void text(double leftMm, double yMm, double sizeMm, Weight weight, int rgb, String text, double widthMm) {
        g.setColor(new Color(rgb));
        g.setFont(SheetFonts.font(weight).deriveFont((float) sizeMm));
        g.drawString(text, (float) leftMm, (float) yMm);
    }

    private static BasicStroke stroke(double widthMm, Mark.Dash dash, boolean roundEnds) {
        int cap = roundEnds ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
        return dash == Mark.Dash.SOLID
                ? new BasicStroke((float) widthMm, cap, BasicStroke.JOIN_MITER, MITRE)
                : new BasicStroke(
                        (float) widthMm,
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_MITER,
                        MITRE,
                        new float[] {DASH_MM, DASH_GAP_MM},
                        0);
    }

    private static Path2D path(List<Point> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).xMm(), points.get(0).yMm());
        for (Point p : points.subList(1, points.size())) {
            path.lineTo(p.xMm(), p.yMm());
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }
}
