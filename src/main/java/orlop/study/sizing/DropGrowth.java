package orlop.study.sizing;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.IntPredicate;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;

/** Thickens the path to a load where a kilogram of copper saves most volts. Currents are held as they are. */
final class DropGrowth {
    private final Plan plan;
    private final Operation operation;
    private final double[] area;
    private final IntPredicate mayGrow;

    DropGrowth(Plan plan, Operation operation, double[] area, IntPredicate mayGrow) {
        this.plan = plan;
        this.operation = operation;
        this.area = area.clone();
        this.mayGrow = mayGrow;
    }

    double area(int cable) {
        return area[cable];
    }

    /** Grows cables until the load is within its limit or none can grow; returns those that grew. */
    Set<Integer> cure(LoadDrop d) {
        Set<Integer> grown = new LinkedHashSet<>();
        double excess = d.excessV();
        for (int cable : d.cables()) { // what an earlier load has brought already
            excess -= saved(cable, area[cable]);
        }
        while (excess > 1e-9) {
            int best = best(d);
            if (best < 0) {
                break;
            }
            double before = saved(best, area[best]);
            area[best] = Sizing.next(area[best]);
            excess -= saved(best, area[best]) - before;
            grown.add(best);
        }
        return grown;
    }

    private int best(LoadDrop d) {
        int best = -1;
        double most = 0;
        for (int cable : d.cables()) {
            double bigger = Sizing.next(area[cable]);
            CableModel w = plan.cables().get(cable);
            if (!mayGrow.test(cable) || w.stated() || bigger == Double.POSITIVE_INFINITY) {
                continue;
            }
            double volts = saved(cable, bigger) - saved(cable, area[cable]);
            double worth = volts / (w.copperKg(bigger) - w.copperKg(area[cable]));
            if (worth > most) {
                most = worth;
                best = cable;
            }
        }
        return best;
    }

    /** Volts saved on the path by this area instead of the one calculated with. */
    private double saved(int cable, double areaMm2) {
        double amps = Math.abs(operation.currentOfCable(cable));
        if (Double.isNaN(amps)) {
            return 0;
        }
        double ohm = plan.cables().get(cable).loopOhm(areaMm2, operation.conductorC(cable));
        return amps * (operation.ohm(cable) - ohm);
    }
}
