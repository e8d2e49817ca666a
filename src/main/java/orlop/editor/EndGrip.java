package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import orlop.drawing.Cable;
import orlop.drawing.Locked;
import orlop.drawing.Point;
import orlop.drawing.TerminalRef;
import orlop.layout.Heading;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/**
 * A small ring on the selected cable, a little inside each of its ends, by which that end is led to another terminal: at
 * the terminal itself a drag begins a new cable.
 *
 * @param cable its tag
 * @param atFrom whether it is the end where the cable begins
 * @param at where the ring is
 * @param stays the other end
 */
record EndGrip(Cable cable, boolean atFrom, Point at, TerminalSpot stays) {
    /** Beyond what a terminal takes of the mouse. */
    private static final double INSIDE_PX = 15;

    /** Of a shorter cable the rings would lie over each other or over the terminals. */
    private static final double SHORTEST_PX = 28;

    private static final double RADIUS_PX = 4.5;
    private static final double REACH_PX = 6.5;

    /** The grips of the one cable that is selected; none where it is locked, or too short on the screen. */
    static List<EndGrip> all(SheetCanvas canvas, Optional<Scene> scene) {
        List<EndGrip> grips = new ArrayList<>();
        canvas.session().state().soleSelection().ifPresent(id -> {
            Cable w = canvas.session().state().drawing().cables().get(id);
            Route r = scene.map(s -> s.routes().get(id)).orElse(null);
            double length = r == null ? 0 : r.lengthMm();
            double inside = Math.min(canvas.viewport().mm(INSIDE_PX), length / 4);
            if (w != null
                    && r != null
                    && length >= canvas.viewport().mm(SHORTEST_PX)
                    && !Locked.is(canvas.session().state().drawing(), id)) {
                grips.add(of(w, r, true, inside));
                grips.add(of(w, r, false, inside));
            }
        });
        return grips;
    }

    private static EndGrip of(Cable w, Route r, boolean atFrom, double insideMm) {
        int last = r.points().size() - 1;
        Point far = r.points().get(atFrom ? last : 0);
        Heading leaving = heading(far, r.points().get(atFrom ? last - 1 : 1));
        TerminalSpot stays = new TerminalSpot(atFrom ? w.to() : w.from(), far.xMm(), far.yMm(), leaving, true);
        return new EndGrip(w, atFrom, along(r.points(), atFrom, insideMm), stays);
    }

    private static Heading heading(Point from, Point to) {
        double dx = to.xMm() - from.xMm();
        double dy = to.yMm() - from.yMm();
        if (Math.abs(dx) > Math.abs(dy)) {
            return dx > 0 ? Heading.RIGHT : Heading.LEFT;
        }
        return dy > 0 ? Heading.DOWN : Heading.UP;
    }

    /** The point so far along the line from one of its ends. */
    private static Point along(List<Point> points, boolean fromStart, double mm) {
        double left = mm;
        int count = points.size();
        for (int i = 1; i < count; i++) {
            Point a = points.get(fromStart ? i - 1 : count - i);
            Point b = points.get(fromStart ? i : count - 1 - i);
            double leg = Math.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
            if (leg >= left && leg > 0) {
                double share = left / leg;
                return new Point(a.xMm() + share * (b.xMm() - a.xMm()), a.yMm() + share * (b.yMm() - a.yMm()));
            }
            left -= leg;
        }
        return points.get(fromStart ? count - 1 : 0);
    }

    /** The terminal that this end is at. */
    TerminalRef now() {
        return atFrom ? cable.from() : cable.to();
    }

    /** The grip under the mouse. */
    static Optional<EndGrip> under(SheetCanvas canvas, Optional<Scene> scene, Spot spot) {
        double reach = canvas.viewport().mm(REACH_PX);
        return all(canvas, scene).stream()
                .filter(g -> Math.hypot(g.at.xMm() - spot.xMm(), g.at.yMm() - spot.yMm()) <= reach)
                .findFirst();
    }

    static void paint(Graphics2D g, SheetCanvas canvas, Scene scene, double pxMm) {
        if (canvas.busy()) {
            return; // what lights up now are the terminals
        }
        double r = RADIUS_PX * pxMm;
        g.setStroke(new BasicStroke((float) (1.6 * pxMm)));
        for (EndGrip e : all(canvas, Optional.of(scene))) {
            Ellipse2D ring = new Ellipse2D.Double(e.at.xMm() - r, e.at.yMm() - r, 2 * r, 2 * r);
            g.setColor(Look.card());
            g.fill(ring);
            g.setColor(Look.accent());
            g.draw(ring);
        }
    }
}
