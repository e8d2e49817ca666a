package orlop.editor;

import java.util.Optional;
import java.util.Set;
import orlop.desk.Branches;
import orlop.desk.CableRuns;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;
import orlop.scene.Route;
import orlop.scene.TerminalSpot;

/** Runs a new cable from a terminal to another, or to the middle of a cable; with the Alt key, a direct connection. */
final class CableGesture extends TerminalGesture {
    CableGesture(SheetCanvas canvas, TerminalSpot from, Spot at) {
        super(canvas, from, at);
    }

    @Override
    boolean isBeginning(TerminalSpot t) {
        return t.terminal().equals(from.terminal());
    }

    @Override
    String hint(TerminalSpot over) {
        return Texts.of("editor.hint.cable-to", name(from), name(over));
    }

    @Override
    void away(Spot spot) {
        Optional<String> branched = branch(spot).flatMap(b -> cable(spot)).map(Route.Spot::id);
        canvas.hover(branched.orElse(null));
        canvas.hint(branched.map(id -> Texts.of("editor.hint.branch", name(from), id))
                .orElseGet(() -> Texts.of(spot.alt() ? "editor.hint.link" : "editor.hint.cable", name(from))));
    }

    @Override
    void dropped(Spot spot) {
        branch(spot).ifPresentOrElse(this::join, () -> session.say(Message.of("editor.say.no-cable", name(from))));
    }

    private void join(Branches.Branch branch) {
        if (session.apply(branch.edit(), Set.of(branch.cable())).isEmpty()) {
            session.say(branch.said());
        }
    }

    @Override
    void join(TerminalSpot end, boolean direct) {
        Drawing d = session.state().drawing();
        TerminalRef a = from.terminal();
        TerminalRef b = end.terminal();
        if (direct) {
            session.apply(CableRuns.link(d, a, b), Set.of(Link.idOf(a, b)));
        } else {
            session.apply(CableRuns.cable(d, a, b), Set.of(Tags.nextCable(d)));
        }
    }

    private Optional<Route.Spot> cable(Spot spot) {
        return canvas.scene().flatMap(s -> s.cableAt(spot.xMm(), spot.yMm(), spot.nearMm()));
    }

    /** It can end in the middle of a cable, too; joined directly it can't. */
    private Optional<Branches.Branch> branch(Spot spot) {
        return spot.alt() || terminal(spot).isPresent()
                ? Optional.empty()
                : cable(spot).flatMap(c -> Branches.of(session.state().drawing(), c, from.terminal()));
    }
}
