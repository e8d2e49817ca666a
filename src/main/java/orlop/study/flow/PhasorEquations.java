package orlop.study.flow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import orlop.study.linear.Complex;
import orlop.study.linear.ComplexElimination;

/**
 * The linear part of an alternating-current circuit: nodal equations with complex admittances. Nodes that an ideal
 * source holds are no unknowns; nodes that no source reaches are left out. Where nothing joins the return of a source to
 * the reference, that return is the reference.
 */
public final class PhasorEquations {
    private static final Complex NEARLY_IDEAL = new Complex(1e-6, 0);

    private final PhasorCircuit circuit;
    private final int nodes;
    private final Complex[] held; // by node, the reference last; where a source holds it
    private final boolean[] isHeld;
    private final boolean[] alive;
    private final int[] variable; // by node; −1 held, −2 dead
    private final double[] re;
    private final double[] im;
    private final ComplexElimination matrix;
    private final List<Integer> contradictions = new ArrayList<>();
    private final boolean[] works; // by pair of windings: whether its first is alive

    public PhasorEquations(PhasorCircuit circuit) {
        this.circuit = circuit;
        nodes = circuit.nodeCount();
        held = new Complex[nodes + 1];
        isHeld = new boolean[nodes + 1];
        alive = new boolean[nodes + 1];
        variable = new int[nodes + 1];
        works = new boolean[circuit.windingsCount()];
        Arrays.fill(held, Complex.ZERO);
        reach();
        hold();
        int unknowns = 0;
        for (int v = 0; v <= nodes; v++) {
            variable[v] = !alive[v] ? -2 : isHeld[v] ? -1 : unknowns++;
        }
        int[] a = new int[circuit.partCount() + 6 * works.length];
        int[] b = new int[a.length];
        int pairs = 0;
        for (int p = 0; p < circuit.partCount(); p++) {
            if (isPair(p)) {
                a[pairs] = variable[a(p)];
                b[pairs++] = variable[b(p)];
            }
        }
        for (int w = 0; w < works.length; w++) {
            int[] v = works[w] ? variables(circuit.windings(w)) : new int[0];
            for (int i = 0; i < v.length; i++) {
                for (int j = i + 1; j < v.length; j++) {
                    if (v[i] >= 0 && v[j] >= 0 && v[i] != v[j]) {
                        a[pairs] = v[i];
                        b[pairs++] = v[j];
                    }
                }
            }
        }
        matrix = new ComplexElimination(circuit.patterns(), unknowns, Arrays.copyOf(a, pairs), Arrays.copyOf(b, pairs));
        re = new double[unknowns];
        im = new double[unknowns];
    }

    int a(int part) {
        int node = circuit.piece(part).a();
        return node < 0 ? nodes : node;
    }

    int b(int part) {
        int node = circuit.piece(part).b();
        return node < 0 ? nodes : node;
    }

    private void reach() {
        Potentials joined = new Potentials(nodes + 1); // used as a plain union-find
        for (int p = 0; p < circuit.partCount(); p++) {
            Part kind = circuit.piece(p).kind();
            if (kind == Part.RESISTOR || kind == Part.EMF) {
                joined.tie(a(p), b(p), 0);
            }
        }
        isHeld[nodes] = true;
        for (int p = 0; p < circuit.partCount(); p++) {
            boolean afloat = joined.root(b(p)) != joined.root(nodes);
            if (circuit.piece(p).kind() == Part.EMF && afloat) {
                isHeld[b(p)] = true;
                joined.tie(b(p), nodes, 0);
            }
        }
        reachThroughWindings(joined);
        for (int v = 0; v <= nodes; v++) {
            alive[v] = joined.root(v) == joined.root(nodes);
        }
    }

    private int index(int node) {
        return node < 0 ? nodes : node;
    }

    private int[] variables(PhasorCircuit.Windings pair) {
        int[] v = pair.nodes();
        for (int k = 0; k < v.length; k++) {
            v[k] = variable[index(v[k])];
        }
        return v;
    }

    /** A second winding lives where its first does; where nothing joins it to the reference, its end is the reference. */
    private void reachThroughWindings(Potentials joined) {
        boolean more = true;
        while (more) {
            more = false;
            for (int w = 0; w < works.length; w++) {
                PhasorCircuit.Windings pair = circuit.windings(w);
                int reference = joined.root(nodes);
                boolean fed = joined.root(index(pair.a1())) == reference && joined.root(index(pair.b1())) == reference;
                if (!works[w] && fed) {
                    works[w] = true;
                    more = true;
                    joined.tie(index(pair.a2()), index(pair.b2()), 0);
                    if (joined.root(index(pair.b2())) != joined.root(nodes)) {
                        isHeld[index(pair.b2())] = true;
                        joined.tie(index(pair.b2()), nodes, 0);
                    }
                }
            }
        }
    }

    private void hold() {
        for (int p = 0; p < circuit.partCount(); p++) {
            PhasorCircuit.Piece piece = circuit.piece(p);
            if (!piece.ideal()) {
                continue;
            }
            Complex volts = held[b(p)].plus(piece.value());
            if (!isHeld[b(p)]) {
                circuit.setImpedance(p, NEARLY_IDEAL);
            } else if (!isHeld[a(p)]) {
                isHeld[a(p)] = true;
                held[a(p)] = volts;
            } else if (held[a(p)].minus(volts).magnitude() > 1e-9 * Math.max(1, volts.magnitude())) {
                contradictions.add(a(p));
            }
        }
    }

    private boolean isLinear(int part) {
        PhasorCircuit.Piece piece = circuit.piece(part);
        boolean dead = variable[a(part)] == -2 || variable[b(part)] == -2;
        return !piece.follows() && !piece.ideal() && !dead && a(part) != b(part);
    }

    private boolean isPair(int part) {
        return isLinear(part) && variable[a(part)] >= 0 && variable[b(part)] >= 0;
    }

    /** Takes over the circuit's present values; false if they make a singular system. */
    public boolean prepare() {
        matrix.clear();
        Arrays.fill(re, 0);
        Arrays.fill(im, 0);
        for (int p = 0; p < circuit.partCount(); p++) {
            if (isLinear(p)) {
                stamp(circuit.piece(p), variable[a(p)], variable[b(p)], held[a(p)], held[b(p)]);
            }
        }
        for (int w = 0; w < works.length; w++) {
            if (works[w]) {
                stamp(circuit.windings(w));
            }
        }
        return matrix.factor();
    }

    private void stamp(PhasorCircuit.Windings pair) {
        Complex y = pair.z().inverse();
        int[] node = pair.nodes();
        int[] v = variables(pair);
        double[] weight = pair.weights();
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; v[i] >= 0 && j < v.length; j++) {
                Complex value = y.times(weight[i] * weight[j]);
                if (v[j] < 0) {
                    inject(re, im, v[i], held[index(node[j])].times(value).times(-1));
                } else if (v[i] == v[j]) {
                    matrix.addDiagonal(v[i], value);
                } else if (i < j) {
                    matrix.addPair(v[i], v[j], value);
                }
            }
        }
    }

    /** Whether a pair of windings carries current. */
    boolean works(int windings) {
        return works[windings];
    }

    private void stamp(PhasorCircuit.Piece piece, int va, int vb, Complex heldA, Complex heldB) {
        Complex y = piece.admittance();
        Complex drive = piece.kind() == Part.EMF ? piece.value().times(y) : Complex.ZERO; // into a, out of b
        if (va >= 0) {
            matrix.addDiagonal(va, y);
            inject(re, im, va, vb < 0 ? drive.plus(heldB.times(y)) : drive);
        }
        if (vb >= 0) {
            matrix.addDiagonal(vb, y);
            inject(re, im, vb, va < 0 ? heldA.times(y).minus(drive) : drive.times(-1));
        }
        if (va >= 0 && vb >= 0) {
            matrix.addPair(va, vb, y.times(-1));
        }
    }

    private static void inject(double[] re, double[] im, int unknown, Complex amps) {
        re[unknown] += amps.re();
        im[unknown] += amps.im();
    }

    /**
     * Node voltages, the reference last; NaN where no source reaches.
     *
     * @param loads current from a to b by part, for the loads that follow no impedance
     */
    public Complex[] solve(Complex[] loads) {
        double[] x = re.clone();
        double[] y = im.clone();
        for (int p = 0; p < loads.length; p++) {
            if (variable[a(p)] >= 0) {
                inject(x, y, variable[a(p)], loads[p].times(-1));
            }
            if (variable[b(p)] >= 0) {
                inject(x, y, variable[b(p)], loads[p]);
            }
        }
        matrix.solve(x, y);
        Complex[] volts = new Complex[nodes + 1];
        for (int v = 0; v <= nodes; v++) {
            int n = variable[v];
            volts[v] = n == -2 ? new Complex(Double.NaN, Double.NaN) : n < 0 ? held[v] : new Complex(x[n], y[n]);
        }
        return volts;
    }

    /** Impedances with all sources at zero. */
    public final class Impedances {
        private final ComplexElimination.Inverse inverse = matrix.inverse();

        private Impedances() {}

        /** Of a node (−1: the reference) against the reference: 0 where a source holds it, NaN where it is dead. */
        public Complex at(int node) {
            int n = variable[node < 0 ? nodes : node];
            return n == -2 ? new Complex(Double.NaN, Double.NaN) : n < 0 ? Complex.ZERO : inverse.at(n);
        }

        /** From one end of a part to the other: volts at one for an ampere at the other. */
        public Complex across(int part) {
            return isPair(part) ? inverse.between(variable[a(part)], variable[b(part)]) : Complex.ZERO;
        }
    }

    /** Impedances for the values that {@link #prepare} took over. */
    public Impedances impedances() {
        return new Impedances();
    }

    boolean alive(int node) {
        return alive[node];
    }

    boolean holds(int node) {
        return isHeld[node];
    }

    /** Nodes at which ideal sources contradict each other. */
    List<Integer> contradictions() {
        return contradictions;
    }
}
