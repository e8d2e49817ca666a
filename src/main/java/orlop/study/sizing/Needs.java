package orlop.study.sizing;

import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import orlop.standards.Provenance;
import orlop.standards.RuleLimit;
import orlop.study.CableSizing;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Plan;
import orlop.study.model.Rating;

/**
 * The least standard area that each thing but the voltage drop asks of a cable; 0 where it asks for nothing, infinite
 * where no standard area would do.
 */
final class Needs {
    private static final int MOST_RUNS = 20;

    private final Plan plan;
    private final Runs runs;
    private final IntToDoubleFunction designA;
    private final double[] fault;

    /** @param designA by cable, the current that it has to carry */
    Needs(Plan plan, Runs runs, IntToDoubleFunction designA) {
        this.plan = plan;
        this.runs = runs;
        this.designA = designA;
        fault = new double[plan.cables().size()];
    }

    /** For strength. */
    double mechanical(int i) {
        return Series.ceilingMm2(strength(i).value());
    }

    private RuleLimit strength(int i) {
        return plan.rules().leastAreaMm2(plan.cables().get(i).strength());
    }

    /** To carry the design current. */
    double ampacity(int i) {
        return ampacity(i, plan.cables().get(i));
    }

    private double ampacity(int i, CableModel w) {
        boolean any = false;
        for (double a : Series.areasMm2()) {
            Rating r = w.rating(a).orElse(null);
            any |= r != null;
            if (r != null && r.amps() >= designA.applyAsDouble(i) * (1 - 1e-9)) {
                return a;
            }
        }
        return any ? Double.POSITIVE_INFINITY : 0;
    }

    /** To be guarded by the device at the head of its run: In ≤ Iz, and what else the rule set asks. */
    double device(int i) {
        return device(i, plan.cables().get(i));
    }

    private double device(int i, CableModel w) {
        DeviceModel device = runs.head(i);
        if (device == null || device.ratingA() == null) {
            return 0;
        }
        boolean any = false;
        for (double a : Series.areasMm2()) {
            Rating r = w.rating(a).orElse(null);
            any |= r != null;
            if (r != null && device.guards(plan.rules(), r.amps())) {
                return a;
            }
        }
        return any ? Double.POSITIVE_INFINITY : 0;
    }

    /** The device at the head of its run; null where there is none. */
    @Nullable
    DeviceModel head(int i) {
        return runs.head(i);
    }

    /** To bear the heat of a fault until a device opens. */
    double fault(int i) {
        return fault[i];
    }

    /** The least area that the heat of a fault asks; null where it asks for none. */
    @Nullable
    Double faultMm2(int i) {
        return fault[i] > 0 ? (Double) fault[i] : null;
    }

    /** True if it had not been known to need as much. */
    boolean raiseFault(int i, double areaMm2) {
        boolean more = areaMm2 > fault[i];
        fault[i] = Math.max(fault[i], areaMm2);
        return more;
    }

    /** All of them. */
    double all(int i) {
        return Math.max(Math.max(ampacity(i), device(i)), Math.max(mechanical(i), fault(i)));
    }

    boolean strengthFromMemory(int i) {
        return strength(i).provenance().compareTo(Provenance.MEMORY) >= 0;
    }

    boolean deviceFromMemory(int i) {
        DeviceModel device = runs.head(i);
        return device != null
                && device.family()
                        .map(f -> plan.rules().maxDeviceA(1, f).provenance().compareTo(Provenance.MEMORY) >= 0)
                        .orElse(false);
    }

    /** Fewest runs side by side that carry the current and are guarded by the device; null if none would. */
    CableSizing.@Nullable ParallelRuns parallel(int i) {
        for (int n = 2; n <= MOST_RUNS; n++) {
            CableModel w = plan.withRuns(i, n);
            double area = Math.max(Math.max(ampacity(i, w), device(i, w)), mechanical(i));
            if (area < Double.POSITIVE_INFINITY) {
                return new CableSizing.ParallelRuns(n, area);
            }
        }
        return null;
    }
}
