package orlop.desk;

import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Link;
import orlop.drawing.Locked;
import orlop.drawing.Message;
import orlop.drawing.Place;
import orlop.drawing.TerminalRef;

/** Leads to a component's terminal 1 what is led to its terminal 2, and turns it, so that the lines stay. */
final class TurnedRound {
    private TurnedRound() {}

    /** @param id tag of a component of two terminals that stand opposite each other, the first of them free */
    static Edit edit(Message label, String id) {
        return Edit.of(label, before -> {
            Component k = before.components().get(id);
            if (k == null) {
                throw new Edit.Refusal(Message.of("drawing.refuse.gone", id));
            }
            Locked.refuse(before, id);
            Place p = k.place();
            Drawing d = before.with(k.withPlace(p.withRotationDegree((p.rotationDegree() + 180) % 360)));
            for (Cable w : before.cables().values()) {
                if (ends(w.from(), w.to(), id)) {
                    Locked.refuse(before, w.id());
                    d = d.with(w.withEnds(led(w.from(), id), led(w.to(), id)));
                }
            }
            for (Link l : before.links().values()) {
                if (ends(l.from(), l.to(), id)) {
                    Link led = l.withEnds(led(l.from(), id), led(l.to(), id));
                    d = d.withLinks(d.links().without(l.id())).with(led);
                }
            }
            return Edits.sound(before, d);
        });
    }

    private static boolean ends(TerminalRef from, TerminalRef to, String id) {
        return from.component().equals(id) || to.component().equals(id);
    }

    private static TerminalRef led(TerminalRef t, String id) {
        return t.component().equals(id) && t.terminal().equals("2") ? new TerminalRef(id, "1") : t;
    }
}
