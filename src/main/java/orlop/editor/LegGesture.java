package orlop.editor;

import java.awt.Graphics2D;
import orlop.desk.Bends;
import orlop.desk.HandSet;
import orlop.drawing.Edit;
import orlop.drawing.Point;
import orlop.scene.Route;

/** Moves one leg of a cable aside, on the grid and in line with the cable's other legs. At release it is one edit. */
final class LegGesture extends EditGesture {
    private static final double CATCH_MM = 0.9;

    private final Route route;
    private final int leg;
    private final boolean lying;
    private final double was;
    private double to;

    LegGesture(SheetCanvas canvas, Route route, Spot from) {
        super(canvas);
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
        follow(() -> Texts.of("editor.hint.leg"));
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

    @Override
    Edit edit() {
        return HandSet.moveLeg(session.state().drawing(), route, leg, to, key);
    }

    @Override
    boolean changes() {
        return to != was;
    }

    /** A line shows where the leg will lie. */
    @Override
    void paintOver(Graphics2D g) {
        line(g, moved(route.points().get(leg)), moved(route.points().get(leg + 1)));
    }

    private Point moved(Point p) {
        return lying ? new Point(p.xMm(), to) : new Point(to, p.yMm());
    }
}
