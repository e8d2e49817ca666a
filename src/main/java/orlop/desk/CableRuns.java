package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Tags;
import orlop.drawing.TerminalRef;

/**
 * Cables and links that a person drags from terminal to terminal.
 *
 * <p>A component of one system to which nothing is connected yet takes the system of what it is joined to: nobody should
 * have to set it first.
 */
public final class CableRuns {
    private CableRuns() {}

    /** Why these two can't be joined; empty if they can. */
    public static Optional<Message> refusal(Drawing d, TerminalRef from, TerminalRef to) {
        if (from.component().equals(to.component())) {
            return Optional.of(Message.of("desk.run.same", from.component()));
        }
        String a = system(d, from);
        String b = system(d, to);
        if (a.equals(b) || adaptable(d, from) || adaptable(d, to)) {
            return Optional.empty();
        }
        return Optional.of(Message.of("desk.run.systems", from.toString(), a, to.toString(), b));
    }

    /** A new cable between the two, its length to be entered, its area left to Orlop. */
    public static Edit cable(Drawing d, TerminalRef from, TerminalRef to) {
        return joined(d, from, to, () -> Edits.runCable(Cable.of(Tags.nextCable(d), from, to)));
    }

    /** A direct connection of the two. */
    public static Edit link(Drawing d, TerminalRef from, TerminalRef to) {
        return joined(d, from, to, () -> Edits.joinDirectly(Link.of(from, to)));
    }

    /** Joins the two, or says why they can't be. */
    static Edit joined(Drawing d, TerminalRef from, TerminalRef to, Supplier<Edit> made) {
        Optional<Message> refusal = refusal(d, from, to);
        if (refusal.isPresent()) {
            return Edit.of(refusal.get(), before -> {
                throw new Edit.Refusal(refusal.get());
            });
        }
        Edit run = made.get();
        if (system(d, from).equals(system(d, to))) {
            return run;
        }
        List<Edit> steps = new ArrayList<>();
        boolean farEnd = adaptable(d, to);
        Component follows = d.components().require(farEnd ? to.component() : from.component());
        steps.add(Edits.change(PolesFit.fitted(d, follows.withSystems(List.of(system(d, farEnd ? from : to))))));
        steps.add(run);
        return Edits.all(run.label(), steps);
    }

    private static String system(Drawing d, TerminalRef t) {
        return d.components().require(t.component()).systemOf(t.terminal());
    }

    private static boolean adaptable(Drawing d, TerminalRef t) {
        Component c = d.components().require(t.component());
        return c.systems().size() == 1 && !c.kind().spansSystems() && !connected(d, c.id());
    }

    private static boolean connected(Drawing d, String component) {
        for (Cable w : d.cables().values()) {
            if (w.from().component().equals(component) || w.to().component().equals(component)) {
                return true;
            }
        }
        for (Link l : d.links().values()) {
            if (l.from().component().equals(component) || l.to().component().equals(component)) {
                return true;
            }
        }
        return false;
    }
}
