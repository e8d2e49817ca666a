package orlop.study.flow;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import orlop.study.linear.Elimination;

/**
 * One galvanic island of a circuit and its operating point: Newton's method on the nodal equations, ideal sources as
 * ties between potentials, limited sources and diodes by an active set around it.
 *
 * <p>It starts from the voltages without load, which lie above those with load; from there Newton's steps fall
 * monotonically onto the upper operating point of constant-power loads if there is one. Where the matrix stops being
 * positive definite there is none.
 */
final class Island {
    /** How a solution ended. */
    enum Outcome {
        SOLVED,
        /** No operating point. */
        COLLAPSED,
        /** Ideal sources that contradict each other. */
        CONTRADICTED
    }

    private static final int NEWTON_STEPS = 60;

    private final Circuit circuit;
    private final int[] nodes;
    private final int[] parts;
    private final int[] localA;
    private final int[] localB;
    private final Laws.State[] state;
    private final boolean[] tied;
    private final boolean[] redundant;
    private Potentials potentials;
    private final int[] variable; // by local node; −1 reference or fixed, −2 floating
    private @Nullable Elimination elimination;
    private int[] slots = {};
    private double[] x = {};
    private double[] fall = {};
    private boolean warm;
    private double gentleV; // see Laws; 0 for what is drawn
    private boolean cold; // whether the last attempt started from the voltages without load
    final double[] voltage; // by local node, NaN where floating
    final double[] current; // by position in parts
    double residualA;

    Island(Circuit circuit, int[] nodes, int[] parts, int[] localOf) {
        this.circuit = circuit;
        this.nodes = nodes;
        this.parts = parts;
        localA = new int[parts.length];
        localB = new int[parts.length];
        state = new Laws.State[parts.length];
        Arrays.fill(state, Laws.State.ON);
        for (int i = 0; i < parts.length; i++) {
            localA[i] = circuit.a(parts[i]) < 0 ? nodes.length : localOf[circuit.a(parts[i])];
            localB[i] = circuit.b(parts[i]) < 0 ? nodes.length : localOf[circuit.b(parts[i])];
        }
        tied = new boolean[parts.length];
        redundant = new boolean[parts.length];
        potentials = new Potentials(nodes.length + 1);
        variable = new int[nodes.length + 1];
        voltage = new double[nodes.length + 1];
        current = new double[parts.length];
    }

    int[] nodes() {
        return nodes;
    }

    int[] parts() {
        return parts;
    }

    /** Where the loads find no operating point on the way, the states that they would have as resistances come first. */
    Outcome solve() {
        int switching = 0;
        for (int part : parts) {
            switching += circuit.part(part).switches() ? 1 : 0;
        }
        gentleV = 0;
        Outcome found = elimination == null && !structure() ? Outcome.CONTRADICTED : rounds(switching);
        if (found != Outcome.COLLAPSED || switching == 0) {
            return found;
        }
        gentleV = Laws.greatestV(circuit, parts);
        boolean gently = structure() && rounds(switching) == Outcome.SOLVED;
        gentleV = 0;
        return gently && structure() ? rounds(switching) : found;
    }

    private Outcome rounds(int switching) {
        for (int round = 0; round < 30 + 6 * switching; round++) {
            if (!newton() && !fromTheTop()) {
                return Outcome.COLLAPSED;
            }
            currents();
            if (switching == 0 || !switchOver(round < 15 ? switching : 1)) {
                return gentleV > 0 || loadsHaveVoltage() ? Outcome.SOLVED : Outcome.COLLAPSED;
            }
            if (!structure()) {
                return Outcome.CONTRADICTED;
            }
        }
        return Outcome.COLLAPSED;
    }

    /** What a failed attempt leaves in x is no place to start from: once more from the voltages without load. */
    private boolean fromTheTop() {
        boolean wasCold = cold;
        warm = false;
        boolean found = !wasCold && newton();
        warm &= found;
        return found;
    }

    private boolean loadsHaveVoltage() {
        for (int i = 0; i < parts.length; i++) {
            if (Laws.needsVoltage(circuit, parts[i]) && !(v(i) > 0)) {
                return false;
            }
        }
        return true;
    }

    private double v(int i) {
        return voltage[localA[i]] - voltage[localB[i]];
    }

    // ---- structure -------------------------------------------------------------------------------------------

    /** Ties potentials and numbers the unknowns; false if ideal sources contradict each other. */
    private boolean structure() {
        potentials = new Potentials(nodes.length + 1);
        Arrays.fill(tied, false);
        Arrays.fill(redundant, false);
        if (!tieAll(Part.EMF) || !tieAll(Part.LIMITED) || !tieAll(Part.DIODE)) {
            return false;
        }
        int unknowns = number();
        int[] a = new int[parts.length];
        int[] b = new int[parts.length];
        int pairs = 0;
        for (int i = 0; i < parts.length; i++) {
            if (isPair(i)) {
                a[pairs] = variable[localA[i]];
                b[pairs++] = variable[localB[i]];
            }
        }
        Elimination made =
                new Elimination(circuit.patterns(), unknowns, Arrays.copyOf(a, pairs), Arrays.copyOf(b, pairs));
        slots = new int[parts.length];
        for (int i = 0; i < parts.length; i++) {
            slots[i] = isPair(i) ? made.slot(variable[localA[i]], variable[localB[i]]) : -1;
        }
        elimination = made;
        x = new double[unknowns];
        fall = new double[unknowns];
        warm = false;
        return true;
    }

    private boolean isPair(int i) {
        int a = variable[localA[i]];
        int b = variable[localB[i]];
        return !tied[i] && !redundant[i] && a >= 0 && b >= 0 && a != b;
    }

    /** Sources with the higher voltage come first: they take over from the lower ones. */
    private boolean tieAll(Part kind) {
        Integer[] which = java.util.stream.IntStream.range(0, parts.length)
                .filter(i -> circuit.part(parts[i]) == kind && Laws.ties(circuit, parts[i], state[i]))
                .boxed()
                .toArray(Integer[]::new);
        if (kind == Part.LIMITED) {
            Arrays.sort(which, (p, q) -> Double.compare(circuit.first(parts[q]), circuit.first(parts[p])));
        }
        for (int i : which) {
            if (!tie(i, kind)) {
                return false;
            }
        }
        return true;
    }

    private boolean tie(int i, Part kind) {
        double volts = circuit.first(parts[i]);
        if (potentials.tie(localA[i], localB[i], volts)) {
            tied[i] = true;
            return true;
        }
        double there = potentials.difference(localA[i], localB[i]);
        if (Math.abs(there - volts) <= 1e-9 * Math.max(1, Math.abs(volts))) {
            redundant[i] = true;
            return true;
        }
        if (kind == Part.LIMITED) {
            state[i] = there > volts ? Laws.State.OFF : Laws.State.LIMIT;
            return true;
        }
        if (kind == Part.DIODE && there < volts) {
            state[i] = Laws.State.OFF;
            return true;
        }
        return false;
    }

    private int number() {
        int reference = nodes.length;
        Potentials joined = new Potentials(nodes.length + 1); // used as a plain union-find
        for (int i = 0; i < parts.length; i++) {
            if (Laws.conducts(circuit, parts[i], state[i])) {
                joined.tie(localA[i], localB[i], 0);
            }
        }
        int home = joined.root(reference);
        int homePotential = potentials.root(reference);
        int[] ofRoot = new int[nodes.length + 1];
        Arrays.fill(ofRoot, -1);
        int n = 0;
        for (int v = 0; v <= nodes.length; v++) {
            int root = potentials.root(v);
            if (root == homePotential) {
                variable[v] = -1;
            } else if (joined.root(v) != home) {
                variable[v] = -2;
            } else {
                if (ofRoot[root] < 0) {
                    ofRoot[root] = n++;
                }
                variable[v] = ofRoot[root];
            }
        }
        return n;
    }

    // ---- Newton ----------------------------------------------------------------------------------------------

    private Elimination equations() {
        if (elimination == null) {
            throw new IllegalStateException("structure comes first");
        }
        return elimination;
    }

    private boolean newton() {
        cold = !warm;
        if (!warm) {
            place();
            assemble(false); // without load everything is linear: one step is exact
            if (!step(false)) {
                return false;
            }
            warm = true;
        }
        double last = Double.POSITIVE_INFINITY;
        for (int n = 0; n < NEWTON_STEPS; n++) {
            place();
            double scale = assemble(true);
            residualA = Laws.greatest(fall);
            boolean fine = residualA <= 1e-12 * scale;
            boolean stuck = residualA <= Math.max(1e-7, 1e-11 * scale) && residualA >= last * 0.5;
            if (Double.isNaN(residualA)) {
                return false;
            }
            if (fine || stuck) {
                return !(Laws.greatest(fall) > 0) || equations().factor();
            }
            last = residualA;
            if (!step(true)) {
                return false;
            }
        }
        return false;
    }

    private void place() {
        double reference = -potentials.above(nodes.length);
        for (int v = 0; v <= nodes.length; v++) {
            double base = variable[v] == -2 ? Double.NaN : variable[v] < 0 ? reference : x[variable[v]];
            voltage[v] = base + potentials.above(v);
        }
    }

    /** Fills matrix and right-hand side; returns the sum of all currents as a scale for rounding. */
    private double assemble(boolean loaded) {
        Elimination m = equations();
        m.clear();
        Arrays.fill(fall, 0);
        double scale = 1;
        for (int i = 0; i < parts.length; i++) {
            int part = parts[i];
            int va = variable[localA[i]];
            int vb = variable[localB[i]];
            if (tied[i] || redundant[i] || va == -2 || vb == -2 || (!loaded && Laws.follows(circuit, part))) {
                continue;
            }
            double volts = v(i);
            double amps = Laws.current(circuit, part, state[i], volts, gentleV);
            double slope = Laws.slope(circuit, part, state[i], volts, gentleV);
            scale = Math.max(scale, Math.abs(amps) + Math.abs(slope * volts));
            stamp(m, i, va, vb, amps, slope);
        }
        return scale;
    }

    private void stamp(Elimination m, int i, int va, int vb, double amps, double slope) {
        if (va == vb) {
            return; // both ends tied together: its current circulates
        }
        if (va >= 0) {
            fall[va] -= amps;
            m.addDiagonal(va, slope);
        }
        if (vb >= 0) {
            fall[vb] += amps;
            m.addDiagonal(vb, slope);
        }
        if (slots[i] >= 0) {
            m.add(slots[i], -slope);
        }
    }

    private boolean step(boolean damped) {
        if (x.length == 0) {
            return true;
        }
        if (!equations().factor()) {
            return false;
        }
        equations().solve(fall);
        double share = damped ? damping() : 1;
        for (int k = 0; k < x.length; k++) {
            x[k] += share * fall[k];
        }
        return true;
    }

    /** No constant-power load may lose more than two thirds of its voltage in one step. */
    private double damping() {
        double share = 1;
        for (int i = 0; i < parts.length; i++) {
            Part p = circuit.part(parts[i]);
            if (p == Part.LOAD_POWER || p == Part.POWER_SOURCE) {
                double change = change(localA[i]) - change(localB[i]);
                double volts = v(i);
                if (volts > 0 && change < 0) {
                    share = Math.min(share, 0.667 * volts / -change);
                }
            }
        }
        return share;
    }

    private double change(int local) {
        return variable[local] >= 0 ? fall[variable[local]] : 0;
    }

    // ---- currents of ties, states ----------------------------------------------------------------------------

    private void currents() {
        double[] leaving = new double[nodes.length + 1];
        int[] ties = new int[nodes.length + 1];
        for (int i = 0; i < parts.length; i++) {
            boolean floats = variable[localA[i]] == -2 || variable[localB[i]] == -2;
            if (tied[i]) {
                ties[localA[i]]++;
                ties[localB[i]]++;
            } else {
                current[i] = redundant[i] || floats ? 0 : Laws.current(circuit, parts[i], state[i], v(i), gentleV);
                leaving[localA[i]] += current[i];
                leaving[localB[i]] -= current[i];
            }
        }
        new TieCurrents(localA, localB, tied, ties, leaving, nodes.length).into(current);
        new Likes(circuit, parts, localA, localB, tied, redundant, current).share();
    }

    /** Puts up to {@code most} parts into the state they ought to have; true if any changed. */
    private boolean switchOver(int most) {
        int changed = 0;
        for (int i = 0; i < parts.length && changed < most; i++) {
            if (!circuit.part(parts[i]).switches()) {
                continue;
            }
            int part = parts[i];
            Laws.State want = Laws.wanted(circuit, part, state[i], voltage[localA[i]], voltage[localB[i]], current[i]);
            if (want != state[i]) {
                state[i] = want;
                changed++;
            }
        }
        return changed > 0;
    }
}
