package orlop.study.flow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import orlop.study.linear.Complex;

/**
 * Solves an alternating-current circuit: one factorisation, then the currents of constant-power and constant-current
 * loads are repeated at the voltages they make.
 *
 * <p>From the voltages without load this comes to rest on the upper operating point as long as the source's impedance is
 * less than the loads'; beyond that there is no stable one. Not safe for several threads.
 */
public final class PhasorFlow {
    private static final int SPAN = 150;

    private final PhasorCircuit circuit;
    private final PhasorEquations equations;
    private final int[] island; // by node, the reference last
    private final boolean[] failed; // by island
    private final Complex[] loads; // by part
    private final Complex[] current; // by part
    private final Complex[] through; // by pair of windings, in the second
    private Complex[] volts;
    private double residualA;
    private final boolean idle; // nothing to calculate

    public PhasorFlow(PhasorCircuit circuit) {
        this.circuit = circuit;
        equations = new PhasorEquations(circuit);
        idle = circuit.partCount() == 0 && circuit.windingsCount() == 0;
        int nodes = idle ? 0 : circuit.nodeCount();
        Potentials joined = new Potentials(nodes + 1); // used as a plain union-find
        for (int p = 0; p < circuit.partCount(); p++) {
            if (circuit.piece(p).a() >= 0 && circuit.piece(p).b() >= 0) {
                joined.tie(circuit.piece(p).a(), circuit.piece(p).b(), 0);
            }
        }
        for (int w = 0; w < circuit.windingsCount(); w++) {
            int[] v = circuit.windings(w).nodes();
            for (int k = 1; k < v.length; k++) {
                if (v[0] >= 0 && v[k] >= 0) {
                    joined.tie(v[0], v[k], 0);
                }
            }
        }
        through = new Complex[circuit.windingsCount()];
        Arrays.fill(through, Complex.ZERO);
        island = new int[nodes + 1];
        for (int v = 0; v <= nodes; v++) {
            island[v] = joined.root(v);
        }
        failed = new boolean[nodes + 1];
        loads = new Complex[circuit.partCount()];
        current = new Complex[circuit.partCount()];
        Arrays.fill(loads, Complex.ZERO);
        Arrays.fill(current, Complex.ZERO);
        volts = new Complex[nodes + 1];
        Arrays.fill(volts, new Complex(Double.NaN, Double.NaN));
    }

    /**
     * Finds the operating point for the circuit's present values.
     *
     * @param stale asked now and then
     * @throws java.util.concurrent.CancellationException if {@code stale} said so
     */
    public void solve(BooleanSupplier stale) {
        Arrays.fill(failed, !equations.prepare());
        for (int node : equations.contradictions()) {
            failed[island[node]] = true;
        }
        double[] before = new double[failed.length];
        Arrays.fill(before, Double.POSITIVE_INFINITY);
        double[] moved = before;
        for (int n = 0; !atRest(moved, n < SPAN ? 1e-11 : 1e-9); n++) {
            if (stale.getAsBoolean()) {
                throw new java.util.concurrent.CancellationException("superseded");
            }
            volts = equations.solve(loads);
            moved = follow();
            if (n % SPAN == SPAN - 1) {
                giveUp(before, moved);
                before = moved;
            }
        }
        volts = equations.solve(loads);
        currents();
    }

    private boolean atRest(double[] moved, double tolerance) {
        for (int i = 0; i < moved.length; i++) {
            if (!failed[i] && !(moved[i] <= tolerance)) {
                return false;
            }
        }
        return true;
    }

    /** Sets load currents to what they are at the present voltages; by island, by how much of the greatest they moved. */
    private double[] follow() {
        double[] moved = new double[failed.length];
        double[] most = new double[failed.length];
        Arrays.fill(most, 1);
        for (int p = 0; p < loads.length; p++) {
            PhasorCircuit.Piece piece = circuit.piece(p);
            int home = home(p);
            if (!piece.follows() || dead(p) || failed[home]) {
                continue;
            }
            Complex now = piece.current(across(p));
            double change = now.minus(loads[p]).magnitude();
            moved[home] = Double.isNaN(change) ? Double.NaN : Math.max(moved[home], change);
            most[home] = Math.max(most[home], now.magnitude());
            loads[p] = now;
            if (Double.isNaN(change)) {
                fail(home);
            }
        }
        for (int i = 0; i < moved.length; i++) {
            moved[i] /= most[i];
        }
        return moved;
    }

    /** An island that has not come half as near to rest in so many steps has no stable operating point. */
    private void giveUp(double[] before, double[] moved) {
        for (int i = 0; i < moved.length; i++) {
            if (!failed[i] && moved[i] > 1e-9 && !(moved[i] < before[i] / 2)) {
                fail(i);
            }
        }
    }

    private void fail(int home) {
        failed[home] = true;
        for (int p = 0; p < loads.length; p++) {
            if (home(p) == home) {
                loads[p] = Complex.ZERO;
            }
        }
    }

    private int home(int part) {
        return island[circuit.piece(part).a() >= 0 ? equations.a(part) : equations.b(part)];
    }

    private boolean dead(int part) {
        return !equations.alive(equations.a(part)) || !equations.alive(equations.b(part));
    }

    private Complex across(int part) {
        return volts[equations.a(part)].minus(volts[equations.b(part)]);
    }

    private void currents() {
        Complex[] leaving = new Complex[volts.length];
        Arrays.fill(leaving, Complex.ZERO);
        int[] ideal = new int[volts.length];
        for (int p = 0; p < current.length; p++) {
            PhasorCircuit.Piece piece = circuit.piece(p);
            ideal[equations.a(p)] += piece.ideal() ? 1 : 0;
            if (!piece.ideal()) {
                current[p] = dead(p) ? Complex.ZERO : piece.current(across(p));
                leaving[equations.a(p)] = leaving[equations.a(p)].plus(current[p]);
                leaving[equations.b(p)] = leaving[equations.b(p)].minus(current[p]);
            }
        }
        for (int w = 0; w < through.length; w++) {
            windings(w, leaving);
        }
        for (int p = 0; p < current.length; p++) {
            if (circuit.piece(p).ideal()) { // equal sources side by side share their current
                current[p] = leaving[equations.a(p)].times(-1.0 / ideal[equations.a(p)]);
            }
        }
        residualA = 0;
        for (int v = 0; v + 1 < volts.length; v++) {
            if (equations.alive(v) && !equations.holds(v) && !failed[island[v]]) {
                residualA = Math.max(residualA, leaving[v].magnitude());
            }
        }
    }

    private void windings(int w, Complex[] leaving) {
        PhasorCircuit.Windings pair = circuit.windings(w);
        int[] node = pair.nodes();
        double[] weight = pair.weights();
        Complex drive = Complex.ZERO;
        for (int k = 0; equations.works(w) && k < node.length; k++) {
            drive = drive.plus(volts[node[k] < 0 ? volts.length - 1 : node[k]].times(weight[k]));
        }
        through[w] = drive.times(pair.z().inverse());
        for (int k = 0; k < node.length; k++) {
            int v = node[k] < 0 ? volts.length - 1 : node[k];
            leaving[v] = leaving[v].plus(through[w].times(weight[k]));
        }
    }

    /** Current of a pair of windings, from a2 through the second to b2; NaN where it is dead. */
    public Complex windings(int number) {
        PhasorCircuit.Windings pair = circuit.windings(number);
        boolean none = !equations.works(number) || failed[island[pair.a1() >= 0 ? pair.a1() : volts.length - 1]];
        return none ? new Complex(Double.NaN, Double.NaN) : through[number];
    }

    /** Voltage of a node against the reference (−1: 0); NaN where it is dead or has no operating point. */
    public Complex voltage(int node) {
        boolean none = node >= 0 && (idle || failed[island[node]]);
        return none ? new Complex(Double.NaN, Double.NaN) : volts[node < 0 ? volts.length - 1 : node];
    }

    /** Current of a part from a to b; NaN where it is dead or has no operating point. */
    public Complex current(int part) {
        boolean none = dead(part) || failed[home(part)];
        return none ? new Complex(Double.NaN, Double.NaN) : current[part];
    }

    /** Greatest sum of currents at any node that no ideal source holds. */
    public double residualA() {
        return residualA;
    }

    /** Islands without operating point. */
    public List<Flow.Trouble> troubles() {
        if (idle) {
            return List.of();
        }
        List<Flow.Trouble> found = new ArrayList<>();
        boolean[] said = new boolean[failed.length];
        for (int node : equations.contradictions()) {
            if (!said[island[node]]) {
                found.add(new Flow.Trouble(node, true));
            }
            said[island[node]] = true;
        }
        for (int v = 0; v < circuit.nodeCount(); v++) {
            if (failed[island[v]] && equations.alive(v) && !said[island[v]]) {
                said[island[v]] = true;
                found.add(new Flow.Trouble(v, false));
            }
        }
        return found;
    }
}
