package orlop.study.working;

import java.util.List;
import orlop.drawing.OperatingCondition;
import orlop.study.fault.AcFaults;
import orlop.study.fault.Faults;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.sizing.Sizing;

/**
 * A study's own objects after it has run; lists by condition.
 *
 * @param faultOhm resistance of the fault itself
 */
public record Solved(
        Plan plan,
        List<OperatingCondition> conditions,
        List<Operation> operations,
        List<Faults> faults,
        List<AcFaults> acFaults,
        Sizing sizing,
        double faultOhm) {
    public Solved {
        conditions = List.copyOf(conditions);
        operations = List.copyOf(operations);
        faults = List.copyOf(faults);
        acFaults = List.copyOf(acFaults);
    }

    /** By cable. */
    double[] areasMm2() {
        double[] areas = new double[plan.cables().size()];
        for (int i = 0; i < areas.length; i++) {
            areas[i] = sizing.areaMm2(i);
        }
        return areas;
    }
}
