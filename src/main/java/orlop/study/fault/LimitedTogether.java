package orlop.study.fault;

import orlop.study.flow.Circuit;
import orlop.study.flow.Part;
import orlop.study.flow.Potentials;

/** What the limited sources of an island give together where conductors join them. */
final class LimitedTogether {
    private LimitedTogether() {}

    /** By local node: the sum of the limits of all limited sources that conductors or diodes join to it, in amperes. */
    static double[] mostA(Circuit circuit, int[] parts, int[] localA, int[] localB, int ground) {
        Potentials joined = new Potentials(ground + 1);
        for (int i = 0; i < parts.length; i++) {
            Part p = circuit.part(parts[i]);
            if (p == Part.RESISTOR || p == Part.DIODE) {
                joined.tie(localA[i], localB[i], 0);
            }
        }
        double[] byRoot = new double[ground + 1];
        for (int i = 0; i < parts.length; i++) {
            double limit = circuit.third(parts[i]);
            if (circuit.part(parts[i]) == Part.LIMITED && limit < Double.POSITIVE_INFINITY) {
                byRoot[joined.root(localA[i] == ground ? localB[i] : localA[i])] += limit;
            }
        }
        double[] most = new double[ground];
        for (int k = 0; k < ground; k++) {
            most[k] = byRoot[joined.root(k)];
        }
        return most;
    }
}
