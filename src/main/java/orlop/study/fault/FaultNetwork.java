package orlop.study.fault;

import java.util.Arrays;
import orlop.study.flow.Circuit;
import orlop.study.flow.Part;
import orlop.study.flow.Potentials;
import orlop.study.linear.Elimination;

/**
 * The part of an island that is linear whatever happens: resistances and electromotive forces, factored once.
 *
 * <p>Limited sources and diodes are left out: {@link Switchers} puts them in as currents. Where that leaves parts of the
 * island without a way to the reference they <em>float</em>: one node of each is pinned to zero and the whole is lifted
 * by a voltage that the caller finds.
 */
final class FaultNetwork {
    private final Circuit circuit;
    private final int[] parts;
    private final int[] localA;
    private final int[] localB;
    private final boolean withLimited;
    private final Potentials potentials;
    private final int[] variable; // by local node; −1 where the voltage is fixed or pinned
    private final int[] floating; // by local node; 0 is the reference's part
    private final double[] injected; // by floating part: what current sources bring
    private final double reference;
    private final Elimination equations;
    private final boolean sound;
    private final double[] open;
    private final Elimination.Inverse inverse;
    private final double[][] columns; // by unknown; null where not asked for
    private final int ground;
    private int floatingCount;

    FaultNetwork(Circuit circuit, int[] parts, int[] localA, int[] localB, int nodes, boolean withLimited) {
        this.circuit = circuit;
        this.parts = parts;
        this.localA = localA;
        this.localB = localB;
        this.withLimited = withLimited;
        ground = nodes;
        potentials = new Potentials(nodes + 1);
        variable = new int[nodes + 1];
        floating = new int[nodes + 1];
        int unknowns = number();
        reference = -potentials.above(ground);
        injected = new double[floatingCount + 1];
        equations = matrix(unknowns);
        open = new double[unknowns];
        inject();
        sound = equations.factor();
        if (sound) {
            equations.solve(open);
        }
        inverse =
                sound ? equations.inverse() : new Elimination(circuit.patterns(), 0, new int[0], new int[0]).inverse();
        columns = new double[unknowns][];
    }

    /** False if the equations have no solution, which no drawing is known to bring about. */
    boolean sound() {
        return sound;
    }

    private boolean isLinear(int i) {
        Part p = circuit.part(parts[i]);
        return p == Part.RESISTOR || p == Part.EMF;
    }

    private boolean ties(int i) {
        return circuit.part(parts[i]) == Part.EMF && circuit.second(parts[i]) == 0;
    }

    private int number() {
        Potentials joined = new Potentials(ground + 1); // used as a plain union-find
        for (int i = 0; i < parts.length; i++) {
            if (ties(i)) {
                potentials.tie(localA[i], localB[i], circuit.first(parts[i]));
            }
            if (isLinear(i)) {
                joined.tie(localA[i], localB[i], 0);
            }
        }
        int[] floatingOf = new int[ground + 1];
        int[] ofRoot = new int[ground + 1];
        Arrays.fill(floatingOf, -1);
        Arrays.fill(ofRoot, -2);
        floatingOf[joined.root(ground)] = 0;
        ofRoot[potentials.root(ground)] = -1;
        int n = 0;
        for (int v = 0; v <= ground; v++) {
            int root = potentials.root(v);
            if (floatingOf[joined.root(v)] < 0) {
                floatingOf[joined.root(v)] = ++floatingCount;
                ofRoot[root] = -1; // pinned
            }
            floating[v] = floatingOf[joined.root(v)];
            if (ofRoot[root] == -2) {
                ofRoot[root] = n++;
            }
            variable[v] = ofRoot[root];
        }
        return n;
    }

    private Elimination matrix(int unknowns) {
        int[] a = new int[parts.length];
        int[] b = new int[parts.length];
        int pairs = 0;
        for (int i = 0; i < parts.length; i++) {
            int va = variable[localA[i]];
            int vb = variable[localB[i]];
            if (isLinear(i) && !ties(i) && va >= 0 && vb >= 0 && va != vb) {
                a[pairs] = va;
                b[pairs++] = vb;
            }
        }
        Elimination m = new Elimination(circuit.patterns(), unknowns, Arrays.copyOf(a, pairs), Arrays.copyOf(b, pairs));
        m.clear();
        for (int i = 0; i < parts.length; i++) {
            if (isLinear(i) && !ties(i)) {
                m.addBetween(variable[localA[i]], variable[localB[i]], conductance(i));
            }
        }
        return m;
    }

    private double conductance(int i) {
        boolean resistor = circuit.part(parts[i]) == Part.RESISTOR;
        return resistor ? circuit.first(parts[i]) : 1 / circuit.second(parts[i]);
    }

    /** What flows into each unknown while all unknowns are at zero. */
    private void inject() {
        for (int i = 0; i < parts.length; i++) {
            double toA = 0;
            if (isLinear(i) && !ties(i)) {
                double emf = circuit.part(parts[i]) == Part.EMF ? circuit.first(parts[i]) : 0;
                toA = conductance(i) * (emf - (fixed(localA[i]) - fixed(localB[i])));
            } else if (circuit.part(parts[i]) == Part.CURRENT && withLimited) {
                toA = circuit.first(parts[i]);
                injected[floating[localA[i]]] += toA;
                injected[floating[localB[i]]] -= toA;
            }
            if (variable[localA[i]] >= 0) {
                open[variable[localA[i]]] += toA;
            }
            if (variable[localB[i]] >= 0) {
                open[variable[localB[i]]] -= toA;
            }
        }
    }

    /** The part of a node's voltage that does not depend on the unknowns. */
    private double fixed(int local) {
        return (variable[local] < 0 && floating[local] == 0 ? reference : 0) + potentials.above(local);
    }

    /** Voltage of a node without fault and without switching parts; of one that floats, above its pinned node. */
    double openV(int local) {
        return fixed(local) + (variable[local] < 0 ? 0 : open[variable[local]]);
    }

    /** Whether nothing can move a node's voltage. */
    boolean isFixed(int local) {
        return floating[local] == 0 && variable[local] < 0;
    }

    /** Number of the floating part in which a node lies; 0 if it has a way to the reference. */
    int floating(int local) {
        return floating[local];
    }

    /** How many parts float. */
    int floatingCount() {
        return floatingCount;
    }

    /** What current sources bring into a floating part. */
    double injectedA(int floatingPart) {
        return injected[floatingPart];
    }

    /** Rise of a node's voltage for one ampere into another one, of which all rises are kept. */
    double ohm(int local, int terminal) {
        int v = variable[local];
        int t = variable[terminal];
        if (v < 0 || t < 0 || floating[local] != floating[terminal]) {
            return 0;
        }
        double[] column = columns[t];
        if (column == null) {
            column = new double[open.length];
            column[t] = 1;
            equations.solve(column);
            columns[t] = column;
        }
        return column[v];
    }

    /** Rise of a node's voltage for one ampere into itself. */
    double ownOhm(int local) {
        return variable[local] < 0 ? 0 : inverse.diagonal(variable[local]);
    }

    /** As {@link #ohm}, for two nodes that a resistance or electromotive force joins. */
    double neighbourOhm(int local, int other) {
        int v = variable[local];
        int w = variable[other];
        if (v < 0 || w < 0) {
            return 0;
        }
        return v == w ? inverse.diagonal(v) : inverse.pair(equations.slot(v, w));
    }

    /** Current that a linear part brings from b to a at these voltages; infinite for one without resistance. */
    double linearA(int i, double voltsA, double voltsB) {
        if (ties(i)) {
            return Double.POSITIVE_INFINITY;
        }
        double emf = circuit.part(parts[i]) == Part.EMF ? circuit.first(parts[i]) : 0;
        return conductance(i) * (emf - (voltsA - voltsB));
    }
}
