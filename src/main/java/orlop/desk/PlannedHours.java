package orlop.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import orlop.drawing.DayPlan;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Ledger;
import orlop.drawing.Message;

/** What becomes of the hours that day plans have in a condition when it goes: they stay hours of the same day. */
final class PlannedHours {
    private PlannedHours() {}

    /**
     * The drawing whose day plans do without a condition: its hours pass to the condition before it in the plan, those at
     * the beginning of a day to the one after it.
     *
     * @throws Edit.Refusal that names the plan, if it knows no other condition
     */
    static Drawing passedOn(Drawing d, String condition) {
        Ledger<DayPlan> plans = d.dayPlans();
        for (DayPlan p : using(d, condition)) {
            List<DayPlan.Step> left = without(p, condition);
            if (left.isEmpty()) {
                throw new Edit.Refusal(Message.of("desk.condition.planned", name(p)));
            }
            plans = plans.with(p.id(), new DayPlan(p.id(), p.name(), left, p.extras()));
        }
        return RecordParts.with(d, "dayPlans", plans);
    }

    /** What is to be said of it; empty where no plan uses the condition. */
    static Optional<Message> said(Drawing d, String condition) {
        String plans = using(d, condition).stream().map(PlannedHours::name).collect(Collectors.joining(", "));
        return plans.isEmpty() ? Optional.empty() : Optional.of(Message.of("desk.condition.hours", plans));
    }

    private static List<DayPlan> using(Drawing d, String condition) {
        return d.dayPlans().stream()
                .filter(p -> p.steps().stream().anyMatch(s -> s.condition().equals(condition)))
                .toList();
    }

    private static String name(DayPlan p) {
        return Message.quote(p.name().isEmpty() ? p.id() : p.name());
    }

    private static List<DayPlan.Step> without(DayPlan p, String condition) {
        List<DayPlan.Step> left = new ArrayList<>();
        double early = 0;
        for (DayPlan.Step s : p.steps()) {
            if (!s.condition().equals(condition)) {
                left.add(longer(s, early));
                early = 0;
            } else if (left.isEmpty()) {
                early += s.hours();
            } else {
                left.add(longer(left.remove(left.size() - 1), s.hours()));
            }
        }
        return left;
    }

    /** A plan of more than a day, which is a fault of its own, stays one of its steps' hours at most. */
    private static DayPlan.Step longer(DayPlan.Step s, double hours) {
        return new DayPlan.Step(s.condition(), Math.min(24, s.hours() + hours), s.extras());
    }
}
