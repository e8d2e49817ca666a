package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.RoundRectangle2D;
import orlop.drawing.Drawing;
import orlop.drawing.Locked;
import orlop.drawing.Point;
import orlop.scene.Route;
import orlop.scene.SceneItem;

/** A small padlock at the upper right corner of what is locked and selected, of a cable on its line. It keeps its size on the screen. */
final class LockMark {
    private LockMark() {}

    /** On the line of a cable or link, if it is locked. */
    static void paint(Graphics2D g, Drawing d, Route way, String id, double pxMm) {
        if (Locked.is(d, id)) {
            Point p = way.at(0.5);
            paint(g, p.xMm(), p.yMm(), pxMm);
        }
    }

    /** At the corner of what this item stands for, if it is locked. */
    static void paint(Graphics2D g, Drawing d, SceneItem i, double pxMm) {
        if (Locked.is(d, i.subject())) {
            paint(g, i.bounds().maxX() + Overlay.RIM_MM, i.bounds().minY() - Overlay.RIM_MM, pxMm);
        }
    }

    private static void paint(Graphics2D g, double x, double y, double px) {
        Color ink = Look.accent();
        g.setColor(Look.card());
        g.fill(new RoundRectangle2D.Double(x - 8 * px, y - 9 * px, 16 * px, 18 * px, 5 * px, 5 * px));
        g.setColor(ink);
        g.setStroke(new BasicStroke((float) (1.6 * px)));
        g.draw(new Arc2D.Double(x - 3.5 * px, y - 6.5 * px, 7 * px, 9 * px, 0, 180, Arc2D.OPEN));
        g.fill(new RoundRectangle2D.Double(x - 5.5 * px, y - 2 * px, 11 * px, 8.5 * px, 2 * px, 2 * px));
    }
}
