package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import orlop.desk.Bends;
import orlop.desk.HandSet;
import orlop.desk.Session;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.scene.Route;

/** Moves one leg of a cable aside, on the grid and in line with the cable's other legs. At release it is one edit. */
final class LegGesture implements Gesture {
    private static final double CATCH_MM = 0.9;

    private final SheetCanvas canvas;
    private final Session session;
    private final Route route;
    private final int leg;
    private final boolean lying;
    private final double was;
    private final Object key = new Object();
    private double to;

    LegGesture(SheetCanvas canvas, Route route, Spot from) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.route = route;
        this.leg = route.nearest(from.xMm(), from.yMm()).segment();
        this.lying = Bends.lying(route.points(), leg);
        this.was = across(route.points().get(leg));
        this.to = was;
    }

    private double across(Point p) {
        return lying ? p.yMm() : p.xMm();
    }

    @Override
    public void dragged(Spot at) {
        double wanted = caught(lying ? at.yMm() : at.xMm());
        if (wanted == to) {
            return;
        }
        to = wanted;
        if (canvas.shown().fast()) {
            Optional<Message> refusal = session.preview(edit());
            canvas.hint(refusal.map(Texts::of).orElseGet(() -> Texts.of("editor.hint.leg")));
        }
        canvas.repaint();
    }

    /** In line with another corner or end of the cable if it is near, which makes the line straighter; else on the grid. */
    private double caught(double wanted) {
        double best = MoveGesture.onGrid(wanted);
        double nearest = CATCH_MM;
        for (Point p : route.points()) {
            double d = Math.abs(across(p) - wanted);
            if (d < nearest) {
                nearest = d;
                best = across(p);
            }
        }
        return best;
    }

    private Edit edit() {
        return HandSet.moveLeg(session.state().drawing(), route, leg, to, key);
    }

    @Override
    public void released(Spot at) {
        session.endPreview();
        if (to != was) {
            session.apply(edit());
            session.seal();
        }
    }

    @Override
    public void backOut() {
        session.endPreview();
    }

    /** Where a big sheet would be too slow to be made anew at every step, a line shows where the leg will lie. */
    @Override
    public void paint(Graphics2D g) {
        if (session.state().preview() != null || to == was) {
            return;
        }
        Point a = route.points().get(leg);
        Point b = route.points().get(leg + 1);
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke((float) Math.max(0.5, 2 * canvas.viewport().mm(1))));
        g.draw(Overlay.path(List.of(moved(a), moved(b))));
    }

    private Point moved(Point p) {
        return lying ? new Point(p.xMm(), to) : new Point(to, p.yMm());
    }
}
