package orlop.study.model;

import orlop.network.Network;
import orlop.study.flow.Potentials;

/**
 * Numbers for the nodes of an alternating-current circuit: one for each point of a system that is calculated as one
 * phase against neutral, one for each conductor of each point of a system that is calculated phase by phase.
 */
final class AcNodes {
    private final Plan plan;
    private final Network network;
    private final int[] first; // by point
    private final int count;
    private final Potentials joined; // used as a plain union-find

    AcNodes(Plan plan, Network network) {
        this.plan = plan;
        this.network = network;
        int points = plan.calculatesAnyAc() ? network.points().size() : 0;
        first = new int[points];
        int n = 0;
        for (int p = 0; p < points; p++) {
            first[p] = n;
            n += plan.hasUnequalPhases(plan.system(network.points().get(p).system())) ? Wires.COUNT : 1;
        }
        count = n;
        joined = new Potentials(n);
    }

    int count() {
        return count;
    }

    /** Whether the pin's system is calculated phase by phase. */
    boolean byPhase(int pin) {
        return plan.hasUnequalPhases() && plan.hasUnequalPhases(plan.system(pin));
    }

    /** How many conductors are told apart at a pin. */
    int wires(int pin) {
        return byPhase(pin) ? Wires.COUNT : 1;
    }

    /** The node of a conductor at a pin; −1 for the reference. In a system of one phase the conductor is 0. */
    int of(int pin, int wire) {
        int point = network.pointOf(pin);
        if (point < 0 || count == 0) {
            return -1;
        }
        boolean neutral = !byPhase(pin) || wire == Wires.N;
        return neutral && network.isCommonNegative(point) ? -1 : joined.root(first[point] + wire);
    }

    /** Joins a conductor of two pins without impedance. */
    void join(int a, int b, int wire) {
        if (of(a, wire) >= 0 && of(b, wire) >= 0) {
            joined.tie(of(a, wire), of(b, wire), 0);
        }
    }

    /** The point that a node belongs to. */
    int point(int node) {
        int low = 0;
        int high = first.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (first[middle] <= node) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
