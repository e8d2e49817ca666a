package orlop.editor;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.desk.Branches;
import orlop.desk.CableEnds;
import orlop.desk.CableRuns;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Point;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;
import orlop.scene.Route;
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
    /** The end that is led elsewhere; null for a new cable. */
    private final @Nullable EndGrip led;

    private Spot at;
    private @Nullable TerminalSpot to;
    private @Nullable TerminalLights lights;
    private boolean refused;

    CableGesture(SheetCanvas canvas, TerminalSpot from, Spot at) {
        this(canvas, from, at, null);
    }

    private CableGesture(SheetCanvas canvas, TerminalSpot from, Spot at, @Nullable EndGrip led) {
        this.canvas = canvas;
        this.session = canvas.session();
        this.from = from;
        this.at = at;
        this.led = led;
    }

    /** Leads an end of a cable to another terminal. */
    static CableGesture leading(SheetCanvas canvas, EndGrip end, Spot at) {
        return new CableGesture(canvas, end.stays(), at, end);
    }

    @Override
    public void dragged(Spot spot) {
        at = spot;
        to = null;
        refused = false;
        Optional<TerminalSpot> over =
                canvas.scene().flatMap(s -> s.terminalNear(spot.xMm(), spot.yMm(), 1.6 * spot.nearMm()));
        Optional<Branches.Branch> branch = over.isEmpty() ? branch(spot) : Optional.empty();
        canvas.hover(branch.isPresent() ? cable(spot).map(Route.Spot::id).orElse(null) : null);
        if (branch.isPresent()) {
            canvas.hint(Texts.of(
                    "editor.hint.branch",
                    name(from),
                    cable(spot).map(Route.Spot::id).orElse("")));
        } else if (over.isEmpty() || isBeginning(over.get())) {
            canvas.hint(
                    led != null
                            ? Texts.of("editor.hint.leading", led.cable().id())
                            : Texts.of(spot.alt() ? "editor.hint.link" : "editor.hint.cable", name(from)));
        } else {
            Optional<Message> refusal = refusal(over.get());
            refused = refusal.isPresent();
            if (refusal.isEmpty()) {
                to = over.get();
            }
            canvas.hint(refusal.map(Texts::of).orElseGet(() -> {
                return led != null
                        ? Texts.of("editor.hint.lead-to", led.cable().id(), name(over.get()))
                        : Texts.of("editor.hint.cable-to", name(from), name(over.get()));
            }));
        }
        canvas.repaint();
    }

    /** Whether it is where the drag began: nothing comes of being let go there. */
    private boolean isBeginning(TerminalSpot t) {
        TerminalRef begun = led != null ? led.now() : from.terminal();
        boolean sameBar = led != null
                && t.terminal().component().equals(begun.component())
                && session.state()
                                .drawing()
                                .components()
                                .require(begun.component())
                                .kind()
                                .terminals()
                        == Kind.Terminals.ANY; // which tap is the layout's choice
        return sameBar || t.terminal().equals(begun);
    }

    private Optional<Route.Spot> cable(Spot spot) {
        return canvas.scene().flatMap(s -> s.cableAt(spot.xMm(), spot.yMm(), spot.nearMm()));
    }

    /** It can end in the middle of a cable, too; joined directly it can't. */
    private Optional<Branches.Branch> branch(Spot spot) {
        return spot.alt() || led != null
                ? Optional.empty()
                : cable(spot).flatMap(c -> Branches.of(session.state().drawing(), c, from.terminal()));
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
        canvas.hover(null);
        TerminalSpot end = to;
        Optional<Branches.Branch> branch = end == null && !refused ? branch(spot) : Optional.empty();
        if (end != null) {
            join(end, spot.alt());
        } else if (branch.isPresent()) {
            canvas.hint("");
            if (session.apply(branch.get().edit(), Set.of(branch.get().cable())).isEmpty()) {
                session.say(branch.get().said());
            }
        } else if (!refused) { // why it was refused stays readable
            canvas.hint("");
            session.say(
                    led != null
                            ? Message.of("editor.say.not-led", led.cable().id())
                            : Message.of("editor.say.no-cable", name(from)));
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
        if (led != null) {
            session.apply(CableEnds.move(d, led.cable().id(), led.atFrom(), b));
        } else if (direct) {
            session.apply(CableRuns.link(d, a, b), Set.of(Link.idOf(a, b)));
        } else {
            session.apply(CableRuns.cable(d, a, b), Set.of(Tags.nextCable(d)));
        }
    }

    @Override
    public void backOut() {
        canvas.hover(null);
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
