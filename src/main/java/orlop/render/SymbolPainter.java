package orlop.render;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.Objects;
import orlop.symbols.Outline;
import orlop.symbols.Symbol;
import orlop.symbols.Turn;
import orlop.symbols.Upright;

/** Draws symbols on any Graphics2D whose unit is the millimetre, be it a sheet's or not. */
public final class SymbolPainter {
    private static final float MITRE = 4;

    private SymbolPainter() {}

    /**
     * Draws a symbol in the colour that the graphics has. Its stroke is changed, its transform put back.
     *
     * @param xMm where the symbol's origin stands
     * @param yMm where the symbol's origin stands
     * @param scale 1 is the symbol's own size; its lines are scaled too
     */
    public static void paint(Graphics2D g, Symbol symbol, double xMm, double yMm, Turn turn, double scale) {
        AffineTransform before = g.getTransform();
        g.translate(xMm, yMm);
        g.scale(scale, scale);
        AffineTransform upright = g.getTransform();
        g.transform(turn.transform());
        AffineTransform turned = symbol.hasUprights() ? g.getTransform() : upright;
        Upright within = null;
        for (Outline o : symbol.outlines()) {
            Upright sign = o.upright();
            if (!Objects.equals(sign, within)) {
                g.setTransform(sign == null ? turned : upright);
                if (sign != null) {
                    g.transform(sign.transform(turn));
                }
                within = sign;
            }
            if (o.filled()) {
                g.fill(o.shape());
            } else {
                g.setStroke(new BasicStroke(
                        (float) o.strokeWidthMm(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, MITRE));
                g.draw(o.shape());
            }
        }
        g.setTransform(before);
    }
}
