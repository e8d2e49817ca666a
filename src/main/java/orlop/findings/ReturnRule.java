package orlop.findings;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.RefitStatus;
import orlop.drawing.TerminalRef;
import orlop.network.Network;

/**
 * A source or load of two terminals that is wired at its return alone, as happens where it stands over the bar that it
 * feeds: nothing flows, and what a study says of such a network would lead astray.
 */
final class ReturnRule implements Rule {
    private static final Set<Kind> WITH_RETURN =
            Set.of(Kind.BATTERY, Kind.SUPPLY, Kind.CURRENT_SUPPLY, Kind.LIMITED_SUPPLY, Kind.POWER_SUPPLY, Kind.LOAD);

    @Override
    public String id() {
        return "return-alone";
    }

    @Override
    public List<Finding> check(Case c) {
        List<Finding> found = new ArrayList<>();
        for (String id : alone(c.drawing())) {
            Component k = c.drawing().components().require(id);
            ElectricalSystem s = c.system(k.systemOf("2"));
            boolean negative = s != null && s.nature().isDc();
            found.add(c.draft(id(), Severity.DEFECT, Finding.Place.component(id))
                    .says("findings.return-alone." + (negative ? "negative" : "why"), c.named(id))
                    .by("", "common practice")
                    .cure(
                            inSeries(c.drawing(), id)
                                    ? null
                                    : new Cure.TurnRound(Message.of("findings.cure.turn-round", id), id))
                    .done());
        }
        return found;
    }

    /** Whether another battery hangs on its negative: to turn one of a chain would set it against the others. */
    private static boolean inSeries(Drawing d, String id) {
        TerminalRef negative = new TerminalRef(id, "2");
        return d.links().stream().anyMatch(l -> joins(d, negative, l.from(), l.to()))
                || d.cables().stream().anyMatch(w -> joins(d, negative, w.from(), w.to()));
    }

    private static boolean joins(Drawing d, TerminalRef negative, TerminalRef a, TerminalRef b) {
        return (a.equals(negative) && isBattery(d, b)) || (b.equals(negative) && isBattery(d, a));
    }

    private static boolean isBattery(Drawing d, TerminalRef t) {
        Component k = d.components().get(t.component());
        return k != null && k.kind() == Kind.BATTERY;
    }

    /** Whether there is anything of this kind. */
    static boolean any(Drawing d) {
        return !alone(d).isEmpty();
    }

    /** Whether a part without operating point, seen at this item, is one that no source reaches but by its return. */
    static boolean explains(Drawing d, String item) {
        Component k = d.components().get(item);
        if (k == null) {
            return false;
        }
        Network reach = StrayRules.reach(d);
        return alone(d).contains(item) || !StrayRules.fed(reach, k);
    }

    /** Tags of what is wired at terminal 2 alone, in the order of what leads there. */
    private static List<String> alone(Drawing d) {
        Set<String> first = new HashSet<>();
        List<String> second = new ArrayList<>();
        for (Cable w : d.cables().values()) {
            if (w.refit() != RefitStatus.TO_BE_REMOVED) {
                note(w.from(), first, second);
                note(w.to(), first, second);
            }
        }
        for (Link l : d.links().values()) {
            note(l.from(), first, second);
            note(l.to(), first, second);
        }
        return second.stream()
                .filter(id -> !first.contains(id))
                .distinct()
                .filter(id -> withReturn(d.components().get(id)))
                .toList();
    }

    private static void note(TerminalRef t, Set<String> first, List<String> second) {
        if (t.terminal().equals("1")) {
            first.add(t.component());
        } else if (t.terminal().equals("2")) {
            second.add(t.component());
        }
    }

    private static boolean withReturn(@Nullable Component k) {
        return k != null && WITH_RETURN.contains(k.kind()) && k.refit() != RefitStatus.TO_BE_REMOVED;
    }
}
