package orlop.study.sizing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;

/** Thickens the path to a load where a kilogram of copper saves most volts. Currents are held as they are. */
final class DropGrowth {
    private final Plan plan;
    private final Operation operation;
    private final double[] area;
    private final IntToDoubleFunction amps;
    private final IntPredicate mayGrow;

    /**
     * @param area by cable, what was calculated with; copied
     * @param amps by cable, the current to reckon with; NaN or negative values count as they should
     */
    DropGrowth(Plan plan, Operation operation, double[] area, IntToDoubleFunction amps, IntPredicate mayGrow) {
        this.plan = plan;
        this.operation = operation;
        this.area = area.clone();
        this.amps = amps;
        this.mayGrow = mayGrow;
    }

    double area(int cable) {
        return area[cable];
    }

    /** Whether the thickest cables would save so many volts on a path. */
    boolean canSave(List<Integer> cables, double excessV) {
        double most = 0;
        for (int cable : cables) {
            boolean grows = mayGrow.test(cable) && !plan.cables().get(cable).stated();
            most += grows && area[cable] < Series.greatestMm2() ? saved(cable, Series.greatestMm2()) : 0;
        }
        return most >= excessV;
    }

    /**
     * Grows cables of a path until so many volts are saved, or none can grow; returns those that grew.
     *
     * @param steps most steps to the next standard area
     */
    Set<Integer> cure(List<Integer> cables, double excessV, int steps) {
        Set<Integer> grown = new LinkedHashSet<>();
        double excess = excessV;
        for (int cable : cables) { // what an earlier load has brought already
            excess -= saved(cable, area[cable]);
        }
        for (int n = 0; n < steps && excess > 1e-9; n++) {
            int best = best(cables);
            if (best < 0) {
                break;
            }
            double before = saved(best, area[best]);
            area[best] = Series.nextMm2(area[best]);
            excess -= saved(best, area[best]) - before;
            grown.add(best);
        }
        return grown;
    }

    private int best(List<Integer> cables) {
        int best = -1;
        double most = 0;
        for (int cable : cables) {
            double bigger = Series.nextMm2(area[cable]);
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
        double current = Math.abs(amps.applyAsDouble(cable));
        if (Double.isNaN(current)) {
            return 0;
        }
        double ohm = plan.cables().get(cable).loopOhm(areaMm2, operation.conductorC(cable));
        return current * (operation.ohm(cable) - ohm);
    }
}
