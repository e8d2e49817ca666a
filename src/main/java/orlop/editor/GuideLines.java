package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import orlop.desk.Guides;

/** Paints thin lines between what stands in line: a line, a little longer than the distance, with its ends marked. */
final class GuideLines {
    private static final double OVER_MM = 4;

    private GuideLines() {}

    static void paint(Graphics2D g, List<Guides.Guide> guides, double pxMm) {
        g.setColor(Look.accent());
        float px = (float) pxMm;
        for (Guides.Guide l : guides) {
            g.setStroke(new BasicStroke(px));
            g.draw(line(l, l.fromMm() - OVER_MM, l.toMm() + OVER_MM, l.atMm()));
            tick(g, l, l.fromMm(), pxMm);
            tick(g, l, l.toMm(), pxMm);
        }
    }

    private static Line2D line(Guides.Guide l, double from, double to, double at) {
        return l.upright() ? new Line2D.Double(at, from, at, to) : new Line2D.Double(from, at, to, at);
    }

    private static void tick(Graphics2D g, Guides.Guide l, double along, double pxMm) {
        double half = 4 * pxMm;
        g.draw(
                l.upright()
                        ? new Line2D.Double(l.atMm() - half, along, l.atMm() + half, along)
                        : new Line2D.Double(along, l.atMm() - half, along, l.atMm() + half));
    }
}
