package orlop.drawing;

import java.util.List;

/**
 * Operating conditions strung over a day.
 *
 * @param id short name
 * @param name in words
 * @param steps in order; their hours are meant to add up to 24, which the energy study checks
 * @param extras keys that this version does not know
 */
public record DayPlan(String id, String name, List<Step> steps, Extras extras) {
    public DayPlan {
        Checks.id(id, "id");
        Checks.text(name, "name");
        steps = List.copyOf(steps);
    }

    /**
     * Some hours in one condition.
     *
     * @param condition id of the condition
     * @param hours above 0 to 24
     * @param extras keys that this version does not know
     */
    public record Step(String condition, double hours, Extras extras) {
        /** Some hours in one condition and nothing else. */
        public Step(String condition, double hours) {
            this(condition, hours, Extras.NONE);
        }

        public Step {
            Checks.id(condition, "condition");
            Checks.positive(hours, "hours");
            Checks.between(hours, 0, 24, "hours");
        }
    }
}
