package orlop.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import orlop.study.Study;

/** Goes over a study as an electrician would, with every rule. */
public final class Checker {
    private static final List<Rule> RULES = List.of(
            new MeetingRules.TwoSources(),
            new MeetingRules.OwnInput(),
            GapRule.missingFuse(),
            GapRule.fuseTooLarge(),
            GapRule.cannotBreak(),
            GapRule.doesNotOpen(),
            new DeviceRules.NegativeOnly(),
            new CableRules.TooThin(),
            new RatingRules.DeviceBelowLoad(),
            new SupplyRule(),
            new ReturnRule(),
            RemarkRule.noOperatingPoint(),
            RemarkRule.contradictorySources(),
            RemarkRule.beyondRating(),
            GapRule.deviceVoltage(),
            new CableRules.CannotBearFault(),
            new CableRules.NoneFits(),
            new DropRule(),
            new LoadRules.WithoutSource(),
            new StrayRules.UnfedBar(),
            new StrayRules.CableToItself(),
            new DeviceRules.NoRating(),
            new CableRules.NoLength(),
            new CableRules.EstimatedLengths(),
            RemarkRule.assumed(),
            GatheredRule.heatUnknown(),
            GatheredRule.shortRuns(),
            RemarkRule.notCalculated(),
            new LoadRules.NeverRuns(),
            new StrayRules.OnRemoved());

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
        long[] keys = new long[all.size()]; // severity, place, position: sorted as numbers, so stable
        long places =
                study.drawing().components().size() + study.drawing().cables().size() + 1L;
        for (int i = 0; i < keys.length; i++) {
            Finding f = all.get(i);
            long place = f.severity().rank() * places + c.order(f.place().item()) + 1;
            keys[i] = place * keys.length + i;
        }
        Arrays.sort(keys);
        List<Finding> sorted = new ArrayList<>(keys.length);
        for (long key : keys) {
            sorted.add(all.get((int) (key % keys.length)));
        }
        return sorted;
    }
}
