package orlop.desk;

import java.util.Map;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Drawing;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Nature;
import orlop.drawing.Phase;

/**
 * Which particulars mean something where an item stands: a load on direct current has no power factor.
 *
 * <p>An optional particular that has been given a value is shown all the same: what stands in the file must be seen.
 */
final class Meaning {
    private static final Set<String> ALTERNATING = Set.of("powerFactor", "reactiveVar", "reactanceOhm", "angleDeg");
    private static final Set<String> THREE_PHASE =
            Set.of("conductorResistanceOhm", "conductorReactanceOhm", "returnResistanceOhm", "returnReactanceOhm");
    private static final Map<LoadBehaviour, Set<String>> OTHER_BEHAVIOURS = Map.of(
            LoadBehaviour.POWER, Set.of("currentA", "powerFactor", "resistanceOhm", "reactanceOhm"),
            LoadBehaviour.CURRENT, Set.of("powerW", "reactiveVar", "resistanceOhm", "reactanceOhm"),
            LoadBehaviour.RESISTANCE, Set.of("powerW", "reactiveVar", "currentA", "powerFactor"));

    private Meaning() {}

    /** Whether this particular of a component says anything. */
    static boolean has(Drawing d, Component c, String part) {
        if (c.particulars() instanceof Consumer.PlainLoad l
                && OTHER_BEHAVIOURS.getOrDefault(l.behaviour(), Set.of()).contains(part)) {
            return given((Record) c.particulars(), part);
        }
        if (part.equals("phase")) {
            return !(c.particulars() instanceof Consumer load) || load.phase() != Phase.ALL || any(d, c, true);
        }
        if (ALTERNATING.contains(part) && !any(d, c, false)) {
            return given((Record) c.particulars(), part);
        }
        return true;
    }

    /** Whether one of a component's systems is alternating, or has three phases. One that is unknown may be. */
    private static boolean any(Drawing d, Component c, boolean threePhase) {
        return c.systems().stream().anyMatch(s -> {
            Nature n = d.systems().find(s).map(e -> e.nature()).orElse(Nature.AC3N);
            return threePhase ? n.isThreePhase() : !n.isDc();
        });
    }

    /** Whether this one of a cable's measured resistances says anything. */
    static boolean has(Drawing d, Cable w, String part) {
        Component c = d.components().get(w.from().component());
        if (c == null || given(w.measured(), part)) {
            return true;
        }
        Nature n = d.systems()
                .find(c.systemOf(w.from().terminal()))
                .map(s -> s.nature())
                .orElse(Nature.AC3N);
        if (THREE_PHASE.contains(part)) {
            return n.isThreePhase();
        }
        return !part.equals("loopReactanceOhm") || !n.isDc();
    }

    /** An optional particular with a value; one that always has a value counts as not given. */
    private static boolean given(Record r, String part) {
        boolean optional =
                RecordParts.of(r.getClass()).stream().anyMatch(p -> p.name().equals(part) && p.optional());
        return optional && RecordParts.get(r, part) != null;
    }
}
