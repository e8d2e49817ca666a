package orlop.study.sizing;

import java.util.List;
import java.util.function.DoublePredicate;
import orlop.standards.Conductors;

/** The standard metric areas, ascending. Areas to choose from are these under every rule set. */
final class Series {
    private static final List<Double> AREAS = Conductors.published().standardAreasMm2();
    private static final double[] ASCENDING = AREAS.stream().mapToDouble(a -> a).toArray();

    private Series() {}

    static List<Double> areasMm2() {
        return AREAS;
    }

    static double greatestMm2() {
        return ASCENDING[ASCENDING.length - 1];
    }

    /** The least standard area that is no less; infinite beyond the end. */
    static double ceilingMm2(double areaMm2) {
        for (double a : ASCENDING) {
            if (a >= areaMm2 * (1 - 1e-9)) {
                return a;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** The least standard area that will do, where with one every greater one does too; infinite if none does. */
    static double leastMm2(DoublePredicate willDo) {
        int low = 0;
        int high = ASCENDING.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (willDo.test(ASCENDING[middle])) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low == ASCENDING.length ? Double.POSITIVE_INFINITY : ASCENDING[low];
    }

    /** The next standard area; infinite at the end. */
    static double nextMm2(double areaMm2) {
        for (double a : ASCENDING) {
            if (a > areaMm2 * (1 + 1e-9)) {
                return a;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** All standard areas from one on. */
    static double[] from(double leastMm2) {
        return areasMm2().stream()
                .mapToDouble(a -> a)
                .filter(a -> a >= leastMm2 * (1 - 1e-9))
                .toArray();
    }
}
