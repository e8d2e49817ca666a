package orlop.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Link;
import orlop.drawing.Locked;
import orlop.drawing.Message;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;

/** Leads an end of a cable to another terminal; the cable keeps its tag, length, area and all else. */
public final class CableEnds {
    private CableEnds() {}

    /** The end as it stands on a card: {@code QB1.2}; of a bar, its tag alone. */
    static String name(Drawing d, TerminalRef end) {
        return isBar(d.components().require(end.component())) ? end.component() : end.toString();
    }

    /** Where this end could be instead, with where it is, in the order of the drawing: on the same sheet. */
    static List<String> choices(Drawing d, Cable w, boolean atFrom) {
        TerminalRef end = atFrom ? w.from() : w.to();
        TerminalRef other = atFrom ? w.to() : w.from();
        String now = name(d, end);
        String sheet = d.components().require(end.component()).place().sheet();
        String system = d.components().require(other.component()).systemOf(other.terminal());
        Set<String> connected = null; // what nothing leads to yet takes the system of what it is joined to
        List<String> choices = new ArrayList<>();
        for (Component c : d.components().values()) {
            if (!c.place().sheet().equals(sheet) || c.id().equals(other.component())) {
                continue;
            }
            boolean one = c.systems().size() == 1 && !c.kind().spansSystems();
            if (one && !c.systems().get(0).equals(system)) {
                connected = connected == null ? connected(d) : connected;
                if (connected.contains(c.id())) {
                    continue;
                }
            }
            for (String t : isBar(c) ? List.of("") : c.particulars().terminals()) {
                String name = t.isEmpty() ? c.id() : c.id() + "." + t;
                if (one || name.equals(now) || c.systemOf(t).equals(system)) {
                    choices.add(name);
                }
            }
        }
        return choices;
    }

    /** The components to which a cable or a direct connection leads. */
    static Set<String> connected(Drawing d) {
        Set<String> ids = new HashSet<>();
        for (Cable w : d.cables().values()) {
            ids.add(w.from().component());
            ids.add(w.to().component());
        }
        for (Link l : d.links().values()) {
            ids.add(l.from().component());
            ids.add(l.to().component());
        }
        return ids;
    }

    /**
     * Leads an end elsewhere. Corners and the place of the label that were set by hand belonged to the old way.
     *
     * @param to as {@link #choices} names it; a free tap of a bar
     */
    static Edit move(Drawing d, String cable, boolean atFrom, String to) {
        Cable w = d.cables().require(cable);
        Component bar = d.components().get(to);
        if (to.equals(name(d, atFrom ? w.from() : w.to()))) {
            return Edit.of(Message.of("drawing.edit.change", cable), before -> before);
        }
        TerminalRef end = bar != null ? new TerminalRef(to, Tags.freeTap(d, to)) : TerminalRef.parse(to, "to");
        TerminalRef other = atFrom ? w.to() : w.from();
        return CableRuns.joined(
                d,
                other,
                end,
                () -> Edit.of(Message.of("desk.run.end", cable, to), before -> {
                    Locked.refuse(before, cable);
                    Cable moved = w.withEnds(atFrom ? end : w.from(), atFrom ? w.to() : end)
                            .withBends(List.of())
                            .withLabelAt(null);
                    return Edits.sound(before, before.with(moved));
                }));
    }

    /** The same, to this terminal. Where it is one of a bar, any free tap will do. */
    public static Edit move(Drawing d, String cable, boolean atFrom, TerminalRef to) {
        return move(d, cable, atFrom, name(d, to));
    }

    private static boolean isBar(Component c) {
        return c.kind().isOnePiece();
    }
}
