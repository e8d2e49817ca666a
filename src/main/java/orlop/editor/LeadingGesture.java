package orlop.editor;

import orlop.desk.CableEnds;
import orlop.drawing.Message;
import orlop.drawing.TerminalRef;
import orlop.scene.TerminalSpot;

/** Leads an end of a cable to another terminal. */
final class LeadingGesture extends TerminalGesture {
    private final EndGrip led;

    LeadingGesture(SheetCanvas canvas, EndGrip end, Spot at) {
        super(canvas, end.stays(), at);
        this.led = end;
    }

    @Override
    boolean isBeginning(TerminalSpot t) {
        TerminalRef now = led.now();
        return t.terminal().equals(now)
                || (isTap(now) && t.terminal().component().equals(now.component()));
    }

    /** Which tap of a bar it is at is the layout's choice. */
    private boolean isTap(TerminalRef end) {
        return session.state()
                .drawing()
                .components()
                .require(end.component())
                .kind()
                .isOnePiece();
    }

    @Override
    String hint(TerminalSpot over) {
        return Texts.of("editor.hint.lead-to", led.cable().id(), name(over));
    }

    @Override
    void away(Spot spot) {
        canvas.hover(null);
        canvas.hint(Texts.of("editor.hint.leading", led.cable().id()));
    }

    @Override
    void dropped(Spot spot) {
        session.say(Message.of("editor.say.not-led", led.cable().id()));
    }

    @Override
    void join(TerminalSpot end, boolean direct) {
        session.apply(CableEnds.move(session.state().drawing(), led.cable().id(), led.atFrom(), end.terminal()));
    }
}
