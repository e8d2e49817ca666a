package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.desk.CableRuns;
import orlop.desk.Session;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/**
 * A line pulled from a fixed end to a terminal. Terminals that can take it light up; over the others the status line says
 * why not.
 */
abstract class TerminalGesture implements Gesture {
    private static final double REACH = 1.6;

    final SheetCanvas canvas;
    final Session session;
    /** The end that stays. */
    final TerminalSpot from;

    private Spot at;
    private @Nullable TerminalSpot to;
    private @Nullable TerminalLights lights;
    private boolean refused;

    TerminalGesture(SheetCanvas canvas, TerminalSpot from, Spot at) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.from = from;
        this.at = at;
    }

    /** Whether it is where the drag began: nothing comes of being let go there. */
    abstract boolean isBeginning(TerminalSpot t);

    /** What the status line says over a terminal that can take it. */
    abstract String hint(TerminalSpot over);

    /** Over no terminal, or over that where the drag began. */
    abstract void away(Spot spot);

    /** Let go over no terminal, or over that where the drag began. */
    abstract void dropped(Spot spot);

    /** @param direct whether the two are joined without a cable */
    abstract void join(TerminalSpot end, boolean direct);

    @Override
    public final void dragged(Spot spot) {
        at = spot;
        to = null;
        refused = false;
        Optional<TerminalSpot> over = terminal(spot);
        if (over.isEmpty() || isBeginning(over.get())) {
            away(spot);
        } else {
            over(over.get());
        }
        canvas.repaint();
    }

    final Optional<TerminalSpot> terminal(Spot spot) {
        return canvas.scene().flatMap(s -> s.terminalNear(spot.xMm(), spot.yMm(), REACH * spot.nearMm()));
    }

    private void over(TerminalSpot t) {
        canvas.hover(null);
        Optional<Message> refusal = refusal(t);
        refused = refusal.isPresent();
        if (!refused) {
            to = t;
        }
        canvas.hint(refusal.map(Texts::of).orElseGet(() -> hint(t)));
    }

    /** Why it can't end there. */
    final Optional<Message> refusal(TerminalSpot t) {
        return CableRuns.refusal(session.state().drawing(), from.terminal(), t.terminal());
    }

    @Override
    public final void released(Spot spot) {
        dragged(spot);
        canvas.hover(null);
        TerminalSpot end = to;
        if (end != null) {
            canvas.hint(""); // before it is done: what is refused must stay readable
            join(end, spot.alt());
        } else if (!refused) { // why it was refused stays readable
            canvas.hint("");
            dropped(spot);
        }
        canvas.repaint();
    }

    /** Leads it to this terminal by keys; says why it can't end there. */
    final Optional<Message> point(TerminalSpot end, Spot spot) {
        at = spot;
        Optional<Message> refusal = refusal(end);
        to = refusal.isEmpty() ? end : null;
        return refusal;
    }

    final String name(TerminalSpot t) {
        return NaturalEnds.name(session.state().drawing(), t.terminal());
    }

    @Override
    public final void backOut() {
        canvas.hover(null);
        canvas.repaint();
    }

    @Override
    public final void paint(Graphics2D g) {
        double px = canvas.viewport().mm(1);
        canvas.seen().ifPresent(s -> lights(s).paint(g, px));
        TerminalSpot end = to;
        Point b = end == null ? new Point(at.xMm(), at.yMm()) : new Point(end.xMm(), end.yMm());
        g.setColor(Look.accent());
        g.setStroke(new BasicStroke((float) Math.max(0.5, 2 * px), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(Overlay.path(Elbow.between(from, b)));
        Overlay.terminal(g, from, true, px);
        if (end != null) {
            Overlay.terminal(g, end, true, px);
        }
    }

    private TerminalLights lights(Scene scene) {
        TerminalLights l = lights;
        if (l == null || !l.of(scene)) {
            l = new TerminalLights(scene, t -> refusal(t).isEmpty());
            lights = l;
        }
        return l;
    }
}
