package orlop.editor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import orlop.desk.CableRuns;
import orlop.desk.Insertions;
import orlop.desk.TerminalNames;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.TerminalRef;
import orlop.scene.BarSpan;
import orlop.scene.Scene;
import orlop.scene.TerminalSpot;

/**
 * Between which terminals of two components a cable most likely runs, and what those terminals are. Of a device that
 * stands in a line both ends are alike, and the nearer one is meant; of others the first that is free and can take it: the
 * positive of a battery, the output of an inverter, unless a source is to feed its input.
 * A source feeds through switches, fuses and bars too.
 */
final class NaturalEnds {
    private final Drawing d;

    NaturalEnds(Drawing d) {
        this.d = d;
    }

    /** Two terminals. */
    record Pair(TerminalSpot from, TerminalSpot to) {}

    /** Where a cable of this component can begin or end; a bar counts once. */
    static List<TerminalSpot> spots(Scene s, String component) {
        List<TerminalSpot> bar = s.bars().stream()
                .filter(b -> b.component().equals(component))
                .map(BarSpan::middle)
                .toList();
        return bar.isEmpty()
                ? s.terminals().stream()
                        .filter(t -> t.terminal().component().equals(component))
                        .toList()
                : bar;
    }

    /** The best pair of these; empty if no cable can run between any. */
    Optional<Pair> best(List<TerminalSpot> froms, List<TerminalSpot> tos) {
        return froms.stream()
                .flatMap(a -> tos.stream().map(b -> new Pair(a, b)))
                .filter(p -> CableRuns.refusal(d, p.from().terminal(), p.to().terminal())
                        .isEmpty())
                .min(order());
    }

    /** Of terminals of many components the one that a cable from here would most likely go to: the nearest that is meant for it. */
    Optional<TerminalSpot> nearest(TerminalSpot from, List<TerminalSpot> tos) {
        return tos.stream()
                .map(to -> new Pair(from, to))
                .filter(p -> CableRuns.refusal(d, p.from().terminal(), p.to().terminal())
                        .isEmpty())
                .min(meant().thenComparingDouble(NaturalEnds::apart))
                .map(Pair::to);
    }

    private Comparator<Pair> order() {
        return meant().thenComparingInt(p -> rank(p.from().terminal(), p.to().terminal())
                        + rank(p.to().terminal(), p.from().terminal()))
                .thenComparingDouble(NaturalEnds::apart);
    }

    private Comparator<Pair> meant() {
        return Comparator.<Pair>comparingInt(p -> odd(p.from().terminal(), p.to().terminal())
                        + odd(p.to().terminal(), p.from().terminal()))
                .thenComparingInt(p -> taken(p.from()) + taken(p.to()))
                .thenComparing(
                        p -> !system(p.from()).equals(system(p.to()))); // what has no system of its own yet follows
    }

    private static double apart(Pair p) {
        return Math.hypot(p.from().xMm() - p.to().xMm(), p.from().yMm() - p.to().yMm());
    }

    private String system(TerminalSpot t) {
        return d.components()
                .require(t.terminal().component())
                .systemOf(t.terminal().terminal());
    }

    private static int taken(TerminalSpot t) {
        return t.connected() ? 1 : 0;
    }

    private int rank(TerminalRef t, TerminalRef other) {
        Component c = d.components().require(t.component());
        int at = c.particulars().terminals().indexOf(t.terminal());
        if (at < 0 || Insertions.inline(c.kind())) {
            return 0;
        }
        boolean last = c.kind() == Kind.INVERTER_CHARGER
                && at > 0
                && !way(other)
                && new FedBy(d, c.id()).source(other.component());
        return last ? c.particulars().terminals().size() - at : at;
    }

    /** Whether it is one of the ways of a changeover switch, into which something feeds. */
    private boolean way(TerminalRef t) {
        Component c = d.components().require(t.component());
        List<String> all = c.particulars().terminals();
        return c.kind() == Kind.CHANGEOVER_SWITCH && !t.terminal().equals(all.get(all.size() - 1));
    }

    /** 1 for a terminal that is meant for something else: the negative of a bank, the outer side of an inlet. */
    private int odd(TerminalRef t, TerminalRef other) {
        Kind kind = d.components().require(t.component()).kind();
        Kind far = d.components().require(other.component()).kind();
        boolean ashore = kind == Kind.SHORE_INLET && far == Kind.SHORE_PEDESTAL;
        return second(t) != ashore ? 1 : 0;
    }

    /** Whether it is the second terminal of a source: the negative of a bank, the outer side of an inlet. */
    boolean second(TerminalRef t) {
        Kind kind = d.components().require(t.component()).kind();
        return t.terminal().equals("2") && (kind == Kind.BATTERY || kind == Kind.SHORE_INLET);
    }

    /** A terminal by its name, and what it is where that isn't plain: {@code TB1.3 (AC in)}. */
    static String name(Drawing d, TerminalRef t) {
        return Texts.of(TerminalNames.of(d, t));
    }
}
