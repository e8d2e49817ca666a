package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.desk.SessionState;
import orlop.drawing.Point;
import orlop.findings.Finding;
import orlop.layout.Rect;
import orlop.render.SymbolPainter;
import orlop.scene.Ink;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.scene.TerminalSpot;
import orlop.symbols.Symbol;
import orlop.symbols.Turn;

/** What the window paints over the sheet: halos, ghosts, terminals, the rubber band. One unit is one millimetre. */
final class Overlay {
    /** Radius of a terminal that is lit up. */
    static final double TERMINAL_PX = 4;

    /** So far about a component its halo reaches: less than its label stands off. */
    static final double RIM_MM = 0.5;

    private Overlay() {}

    /** All that shows what is pointed at, and how what is selected can be stretched. */
    static void pointed(
            Graphics2D g,
            SheetCanvas canvas,
            Scene scene,
            @Nullable Finding finding,
            List<String> fedPath,
            @Nullable String hovered) {
        SessionState s = canvas.session().state();
        double px = canvas.viewport().mm(1);
        StretchGesture.grips(g, canvas, scene, px);
        EndGrip.paint(g, canvas, scene, px);
        for (String id : fedPath) {
            halo(g, scene, id, false);
        }
        if (hovered != null && !s.selection().contains(hovered)) {
            halo(g, scene, hovered, false);
        }
        if (finding != null) {
            FindingPlaces.bounds(s, scene, finding).ifPresent(r -> lit(g, r, Look.severity(finding.severity()), px));
        }
    }

    /** Halos and edges of all that is selected, which may be a thousand things: the scene is gone through once. */
    static void selected(Graphics2D g, SessionState s, Scene scene, double px) {
        for (String id : s.selection()) {
            Route route = scene.routes().get(id);
            if (route != null) {
                halo(g, route, true);
                LockMark.paint(g, s.drawing(), route, id, px);
            }
        }
        if (s.selection().isEmpty()) {
            return;
        }
        for (SceneItem i : scene.items()) {
            if (marked(i) && s.selection().contains(i.subject())) {
                g.setColor(halo(true));
                g.fill(rounded(i.bounds().grown(RIM_MM), 1.5));
                edge(g, i.bounds(), px);
                LockMark.paint(g, s.drawing(), i, px);
            }
        }
    }

    /** Whether an item stands for its thing as a whole, and not for a text or a mark beside it. */
    private static boolean marked(SceneItem i) {
        return i.role() == Role.COMPONENT || i.role() == Role.BAR || i.role() == Role.NOTE;
    }

    /**
     * The desk without a sheet, and whether one is being laid out. One unit is one pixel.
     *
     * @param before whether the sheet stands there as it was before
     */
    static void none(Graphics2D g, SheetCanvas canvas, boolean before) {
        int w = canvas.getWidth();
        int h = canvas.getHeight();
        if (!before) {
            g.setColor(Look.desk());
            g.fillRect(0, 0, w, h);
        }
        if (canvas.shown().awaited()) {
            StaticLayer.hints(g);
            String text = Texts.of("editor.laying-out");
            int wide = g.getFontMetrics().stringWidth(text);
            int high = g.getFontMetrics().getHeight();
            int y = before ? 2 * high : h / 2;
            if (before) {
                g.setColor(with(Look.desk(), 140));
                g.fillRect(0, 0, w, h);
                g.setColor(Look.card());
                g.fill(new RoundRectangle2D.Double(
                        (w - wide) / 2.0 - high, y - 1.4 * high, wide + 2 * high, 2 * high, high, high));
            }
            g.setColor(Look.text());
            g.drawString(text, (w - wide) / 2, y);
        }
    }

    private static Color with(Color c, int alpha) {
        return new Color(c.getRed(), c.getGreen(), c.getBlue(), alpha);
    }

    /** A halo around everything on the scene that stands for this id. */
    static void halo(Graphics2D g, Scene scene, String id, boolean strong) {
        Route route = scene.routes().get(id);
        if (route != null) {
            halo(g, route, strong);
            return;
        }
        g.setColor(halo(strong));
        for (SceneItem i : scene.items()) {
            if (i.subject().equals(id) && marked(i)) {
                g.fill(rounded(i.bounds().grown(RIM_MM), 1.5));
            }
        }
    }

    private static void halo(Graphics2D g, Route route, boolean strong) {
        g.setColor(halo(strong));
        g.setStroke(new BasicStroke(4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path(route.points()));
    }

    private static Color halo(boolean strong) {
        return with(Look.accent(), strong ? 70 : 34);
    }

    /** An edge around what is selected, so that it shows on any screen. */
    private static void edge(Graphics2D g, Rect bounds, double pxMm) {
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke((float) (1.4 * pxMm)));
        g.draw(rounded(bounds.grown(RIM_MM), 1.5));
    }

    /** Rings around the place of a finding. */
    static void lit(Graphics2D g, Rect bounds, Color color, double pxMm) {
        g.setColor(with(color, 40));
        g.fill(rounded(bounds.grown(2.5), 3));
        g.setColor(color);
        g.setStroke(new BasicStroke((float) (1.8 * pxMm)));
        g.draw(rounded(bounds.grown(2.5), 3));
    }

    static RoundRectangle2D rounded(Rect r, double arc) {
        return new RoundRectangle2D.Double(r.minX(), r.minY(), r.width(), r.height(), arc, arc);
    }

    static Path2D path(List<Point> points) {
        Path2D p = new Path2D.Double();
        p.moveTo(points.get(0).xMm(), points.get(0).yMm());
        for (Point q : points.subList(1, points.size())) {
            p.lineTo(q.xMm(), q.yMm());
        }
        return p;
    }

    /** A terminal that can take a cable: filled when it is the one that will. */
    static void terminal(Graphics2D g, TerminalSpot t, boolean chosen, double pxMm) {
        terminal(g, t.xMm(), t.yMm(), chosen, pxMm);
    }

    static void terminal(Graphics2D g, double xMm, double yMm, boolean chosen, double pxMm) {
        double r = (chosen ? 5.5 : TERMINAL_PX) * pxMm;
        Ellipse2D dot = new Ellipse2D.Double(xMm - r, yMm - r, 2 * r, 2 * r);
        g.setColor(chosen ? Look.accent() : Look.ink(Ink.PAPER));
        g.fill(dot);
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke((float) (1.6 * pxMm)));
        g.draw(dot);
    }

    static void rubber(Graphics2D g, Rect r, double pxMm) {
        Rectangle2D box = new Rectangle2D.Double(r.minX(), r.minY(), r.width(), r.height());
        g.setColor(with(Look.accent(), 26));
        g.fill(box);
        g.setColor(Look.accent());
        float dash = (float) (4 * pxMm);
        g.setStroke(new BasicStroke(
                (float) pxMm, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, new float[] {dash, dash}, 0));
        g.draw(box);
    }

    /** A symbol that isn't placed yet. */
    static void ghost(Graphics2D g, Symbol symbol, double xMm, double yMm, int rotationDegree, Color color) {
        g.setColor(color);
        SymbolPainter.paint(g, symbol, xMm, yMm, new Turn(rotationDegree, false), 1);
    }
}
