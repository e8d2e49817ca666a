package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.desk.CableRuns;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/**
 * Runs a cable from a terminal to another; with the Alt key, a direct connection. Terminals that can take it light up;
 * over the others the status line says why not.
 */
final class CableGesture implements Gesture {
    private final SheetCanvas canvas;
    private final Session session;
    private final TerminalSpot from;
    private Spot at;
    private @Nullable TerminalSpot to;
    private @Nullable TerminalLights lights;
    private boolean refused;

    CableGesture(SheetCanvas canvas, TerminalSpot from, Spot at) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.from = from;
        this.at = at;
    }

    @Override
    public void dragged(Spot spot) {
        at = spot;
        to = null;
        refused = false;
        Optional<TerminalSpot> over =
                canvas.scene().flatMap(s -> s.terminalNear(spot.xMm(), spot.yMm(), 1.6 * spot.nearMm()));
        if (over.isEmpty() || over.get().terminal().equals(from.terminal())) {
            canvas.hint(Texts.of(spot.alt() ? "editor.hint.link" : "editor.hint.cable", name(from)));
        } else {
            Optional<Message> refusal = refusal(over.get());
            refused = refusal.isPresent();
            if (refusal.isEmpty()) {
                to = over.get();
            }
            canvas.hint(refusal.map(Texts::of)
                    .orElseGet(() -> Texts.of("editor.hint.cable-to", name(from), name(over.get()))));
        }
        canvas.repaint();
    }

    private TerminalLights lights(Scene scene) {
        TerminalLights l = lights;
        if (l == null || !l.of(scene)) {
            l = new TerminalLights(scene, t -> refusal(t).isEmpty());
            lights = l;
        }
        return l;
    }

    private String name(TerminalSpot t) {
        return NaturalEnds.name(session.state().drawing(), t.terminal());
    }

    /** Why it can't end there. */
    Optional<Message> refusal(TerminalSpot t) {
        return CableRuns.refusal(session.state().drawing(), from.terminal(), t.terminal());
    }

    @Override
    public void released(Spot spot) {
        dragged(spot);
        TerminalSpot end = to;
        if (end != null) {
            join(end, spot.alt());
        } else if (!refused) { // why it was refused stays readable
            canvas.hint("");
            session.say(Message.of("editor.say.no-cable", name(from)));
        }
        canvas.repaint();
    }

    /** Leads it to this terminal by keys; says why it can't end there. */
    Optional<Message> point(TerminalSpot end, Spot spot) {
        at = spot;
        Optional<Message> refusal = refusal(end);
        to = refusal.isEmpty() ? end : null;
        return refusal;
    }

    /** @param direct whether the two are joined without a cable */
    void join(TerminalSpot end, boolean direct) {
        Drawing d = session.state().drawing();
        TerminalRef a = from.terminal();
        TerminalRef b = end.terminal();
        canvas.hint(""); // before it is done: what is refused must stay readable
        if (direct) {
            session.apply(CableRuns.link(d, a, b), Set.of(Link.idOf(a, b)));
        } else {
            session.apply(CableRuns.cable(d, a, b), Set.of(Tags.nextCable(d)));
        }
    }

    @Override
    public void backOut() {
        canvas.repaint();
    }

    @Override
    public void paint(Graphics2D g) {
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
}
