package orlop.editor;

import java.util.List;
import java.util.Optional;
import orlop.desk.CardEdits;
import orlop.desk.HandSet;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.SceneItem;

/**
 * What is set by hand, by keys: Alt and an arrow move the label of what is selected; with Shift as well they move the
 * longest leg of a cable aside, and make a bar longer or shorter. Plus and minus do that too: many window managers keep
 * Alt, Shift and an arrow for themselves.
 */
final class HandKeys {
    private static final double LABEL_MM = 1;
    private static final String BAR_LENGTH = "particulars.drawnLengthMm";

    private final SheetCanvas canvas;
    private final Session session;

    HandKeys(SheetCanvas canvas) {
        this.canvas = canvas;
        this.session = canvas.session();
        arrow("LEFT", -1, 0);
        arrow("RIGHT", 1, 0);
        arrow("UP", 0, -1);
        arrow("DOWN", 0, 1);
        CanvasKeys.key(canvas, "typed +", () -> one().ifPresent(id -> shape(id, 1)));
        CanvasKeys.key(canvas, "typed -", () -> one().ifPresent(id -> shape(id, -1)));
    }

    private void arrow(String arrow, int dx, int dy) {
        CanvasKeys.key(canvas, "alt " + arrow, () -> one().ifPresent(id -> label(id, dx, dy)));
        CanvasKeys.key(canvas, "alt shift " + arrow, () -> one().ifPresent(id -> shape(id, dx, dy)));
    }

    private Optional<String> one() {
        return canvas.busy() ? Optional.empty() : session.state().soleSelection();
    }

    private void label(String id, int dx, int dy) {
        at(id).map(p -> p.plus(dx * LABEL_MM, dy * LABEL_MM))
                .ifPresent(p -> session.apply(HandSet.moveLabel(id, p, List.of("label", id))));
    }

    /** The upper left corner of a label: where a person has set it, else where the layout has. */
    private Optional<Point> at(String id) {
        SessionState s = session.state();
        Component c = s.drawing().components().get(id);
        Cable w = s.drawing().cables().get(id);
        Point own = c == null ? null : c.place().labelAt();
        if (c != null && own != null) {
            return Optional.of(c.place().at().plus(own.xMm(), own.yMm()));
        }
        if (w != null && w.labelAt() != null) {
            return Optional.ofNullable(w.labelAt());
        }
        return canvas.scene()
                .flatMap(scene -> scene.item(Role.LABEL, id))
                .map(SceneItem::bounds)
                .map(b -> new Point(Math.rint(b.minX()), Math.rint(b.minY())));
    }

    private void shape(String id, int dx, int dy) {
        Component c = session.state().drawing().components().get(id);
        Route route = canvas.scene().map(scene -> scene.routes().get(id)).orElse(null);
        if (c != null && c.particulars() instanceof Distribution.Bar bar) {
            stretch(id, bar, dx + dy);
        } else if (route != null && session.state().drawing().cables().contains(id)) {
            leg(route, dx, dy);
        }
    }

    /** The longest leg of all, to the right and down with plus. */
    private void shape(String id, int way) {
        Route route = canvas.scene().map(scene -> scene.routes().get(id)).orElse(null);
        boolean across = route != null && longest(route, false) >= longest(route, true);
        shape(id, across ? way : 0, across ? 0 : way);
    }

    /** Length of its longest leg, in millimetres. */
    private static double longest(Route route, boolean level) {
        double most = 0;
        List<Point> p = route.points();
        for (int i = 0; i + 1 < p.size(); i++) {
            most = Math.max(most, length(p.get(i), p.get(i + 1), level));
        }
        return most;
    }

    private static double length(Point a, Point b, boolean level) {
        return level ? Math.abs(b.xMm() - a.xMm()) : Math.abs(b.yMm() - a.yMm());
    }

    private void stretch(String id, Distribution.Bar bar, int way) {
        double to = bar.drawnLengthMm() + way * 2 * MoveGesture.GRID_MM;
        Edit edit = CardEdits.set(id, BAR_LENGTH, to, session.state().condition());
        session.apply(edit).ifPresent(session::say);
    }

    /** The longest leg that lies across the direction. */
    private void leg(Route route, int dx, int dy) {
        int longest = -1;
        double most = 0;
        List<Point> p = route.points();
        for (int i = 0; i + 1 < p.size(); i++) {
            double length = length(p.get(i), p.get(i + 1), dx == 0);
            if (length > most) {
                most = length;
                longest = i;
            }
        }
        if (longest < 0) {
            session.say(Message.of("editor.say.no-leg", route.id()));
            return;
        }
        double was = dx == 0 ? p.get(longest).yMm() : p.get(longest).xMm();
        double to = MoveGesture.onGrid(was + (dx + dy) * MoveGesture.GRID_MM);
        Object key = List.of("leg", route.id());
        session.apply(HandSet.moveLeg(session.state().drawing(), route, longest, to, key));
    }
}
