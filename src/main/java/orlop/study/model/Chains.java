package orlop.study.model;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.TerminalRef;
import orlop.network.Numbering;

/** How many batteries stand in series: blocks joined from the negative of one to the positive of the next. */
final class Chains {
    private final Map<String, String> nextBelow = new HashMap<>();
    private final Map<String, String> nextAbove = new HashMap<>();

    private final Set<String> batteries = new HashSet<>();

    Chains(Numbering numbering, Drawing drawing) {
        for (int i = 0; i < numbering.componentCount(); i++) {
            Component c = numbering.component(i);
            if (c.kind() == Kind.BATTERY) {
                batteries.add(c.id());
            }
        }
        if (batteries.size() > 1) {
            joinAll(drawing);
        }
    }

    private void joinAll(Drawing drawing) {
        for (Cable w : drawing.cables().values()) {
            join(w.from(), w.to());
        }
        for (Link l : drawing.links().values()) {
            join(l.from(), l.to());
        }
    }

    private void join(TerminalRef a, TerminalRef b) {
        if (a.terminal().equals(b.terminal()) || !isBattery(a) || !isBattery(b)) {
            return;
        }
        String above = a.terminal().equals("2") ? a.component() : b.component();
        String below = a.terminal().equals("2") ? b.component() : a.component();
        nextBelow.put(above, below);
        nextAbove.put(below, above);
    }

    private boolean isBattery(TerminalRef t) {
        return batteries.contains(t.component());
    }

    /** Number of batteries in the chain of this one, 1 if it stands alone. */
    int lengthAt(Component c) {
        Set<String> seen = new HashSet<>();
        seen.add(c.id());
        follow(nextBelow, c.id(), seen);
        follow(nextAbove, c.id(), seen);
        return seen.size();
    }

    private static void follow(Map<String, String> next, String from, Set<String> seen) {
        @Nullable String at = next.get(from);
        while (at != null && seen.add(at)) {
            at = next.get(at);
        }
    }
}
