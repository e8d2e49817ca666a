package orlop.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.study.Study;

/** Goes over a study as an electrician would, with every rule. */
public final class Checker {
    private static final List<Rule> RULES = List.of(
            GapRule.missingFuse(),
            GapRule.fuseTooLarge(),
            GapRule.cannotBreak(),
            new DeviceRules.NegativeOnly(),
            new CableRules.TooThin(),
            RemarkRule.noOperatingPoint(),
            RemarkRule.contradictorySources(),
            GapRule.deviceVoltage(),
            new CableRules.CannotBearFault(),
            new CableRules.NoneFits(),
            new DropRule(),
            new LoadRules.WithoutSource(),
            new DeviceRules.NoRating(),
            new CableRules.NoLength(),
            RemarkRule.assumed(),
            RemarkRule.notCalculated(),
            new LoadRules.NeverRuns());

    private Checker() {}

    /** The ids of all rules. */
    public static List<String> rules() {
        return RULES.stream().map(Rule::id).toList();
    }

    /** All findings, the gravest first, then in the order of the drawing. Accepted ones are marked, not left out. */
    public static List<Finding> check(Study study) {
        Case c = new Case(study);
        List<Finding> all = new ArrayList<>();
        for (Rule r : RULES) {
            all.addAll(r.check(c));
        }
        Map<String, Integer> order = new HashMap<>();
        for (Component k : study.drawing().components().values()) {
            order.put(k.id(), order.size());
        }
        for (Cable w : study.drawing().cables().values()) {
            order.put(w.id(), order.size());
        }
        all.sort(Comparator.comparing(Finding::severity)
                .thenComparing(f -> order.getOrDefault(f.place().item(), -1)));
        return all;
    }
}
