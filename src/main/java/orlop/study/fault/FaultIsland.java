package orlop.study.fault;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import orlop.study.flow.Circuit;
import orlop.study.flow.Part;
import orlop.study.flow.Potentials;
import orlop.study.linear.Elimination;

/**
 * Fault currents at every node of one island: Thevenin's theorem, all nodes from one factorisation.
 *
 * <p>Limited sources and diodes have states. Nodes are treated in groups for which the same states hold; where a fault
 * at a node would put one into another state, the node moves on to the group of those states.
 */
final class FaultIsland {
    /** The slope of a diode that is given none, for faults only: of the order of a 100 A silicon diode (estimate). */
    private static final double DIODE_OHM = 1e-3;

    private static final char ON = '1';
    private static final char LIMIT = 'L';
    private static final char OFF = '0';

    private final Circuit circuit;
    private final int[] nodes;
    private final int[] parts;
    private final int[] localA;
    private final int[] localB;
    private final boolean limitedOff;
    private final double faultOhm;
    private final double[] fault;
    private final int[] switching; // positions of the parts that change state
    private final int[][] partsAt; // by local node: positions of the parts that end there
    /** By position: current into node a of the part while the fault is at a; NaN where there is none. */
    final double[] intoA;
    /** By position: current into node b of the part while the fault is at b; NaN where there is none. */
    final double[] intoB;

    private Potentials potentials;
    private final int[] variable;
    private double reference;

    /**
     * @param limitedOff whether sources that are limited are left out
     * @param faultOhm resistance of the fault itself
     */
    FaultIsland(Circuit circuit, int[] nodes, int[] parts, int[] localOf, boolean limitedOff, double faultOhm) {
        this.circuit = circuit;
        this.nodes = nodes;
        this.parts = parts;
        this.limitedOff = limitedOff;
        this.faultOhm = faultOhm;
        localA = new int[parts.length];
        localB = new int[parts.length];
        for (int i = 0; i < parts.length; i++) {
            localA[i] = circuit.a(parts[i]) < 0 ? nodes.length : localOf[circuit.a(parts[i])];
            localB[i] = circuit.b(parts[i]) < 0 ? nodes.length : localOf[circuit.b(parts[i])];
        }
        fault = new double[nodes.length];
        Arrays.fill(fault, Double.NaN);
        potentials = new Potentials(nodes.length + 1);
        variable = new int[nodes.length + 1];
        intoA = new double[parts.length];
        intoB = new double[parts.length];
        Arrays.fill(intoA, Double.NaN);
        Arrays.fill(intoB, Double.NaN);
        partsAt = PartEnds.byNode(localA, localB, nodes.length + 1);
        switching = java.util.stream.IntStream.range(0, parts.length)
                .filter(this::switches)
                .toArray();
    }

    /** By local node: amperes; NaN where nothing feeds the node, infinite where nothing limits the current. */
    double[] solve() {
        char[] start = new char[parts.length];
        for (int i = 0; i < parts.length; i++) {
            start[i] = startState(i);
        }
        Map<String, Deque<Integer>> groups = new LinkedHashMap<>();
        Deque<Integer> everybody = new ArrayDeque<>();
        for (int k = 0; k < nodes.length; k++) {
            everybody.add(k);
        }
        groups.put(new String(start), everybody);
        Map<Integer, Set<String>> seen = new LinkedHashMap<>();
        while (!groups.isEmpty()) {
            String states = groups.keySet().iterator().next();
            Deque<Integer> members = groups.remove(states);
            if (members != null) {
                treat(states, members, groups, seen);
            }
        }
        limitedAlone();
        return fault;
    }

    /**
     * Nodes that nothing feeds but limited sources without a slope: such a source gives its limit, or, where the way to
     * the fault is so long that it can hold its voltage, what that voltage drives through the way. With one source that
     * is exact; with several it is the greatest that they can give together.
     */
    private void limitedAlone() {
        double[] most = LimitedTogether.mostA(circuit, parts, localA, localB, nodes.length);
        char[] on = new char[parts.length];
        boolean any = false;
        for (int i = 0; i < parts.length; i++) {
            char start = startState(i);
            on[i] = start == LIMIT ? ON : start;
            any |= start == LIMIT;
        }
        if (!any) {
            return;
        }
        String states = new String(on);
        int unknowns = number(states);
        Elimination m = matrix(states, unknowns);
        double[] open = new double[unknowns];
        inject(states, open);
        if (!m.factor()) {
            return;
        }
        m.solve(open);
        Elimination.Inverse inverse = m.inverse();
        for (int k = 0; k < fault.length; k++) {
            if (Double.isNaN(fault[k]) && most[k] > 0) {
                fault[k] = Math.min(current(k, open, inverse), most[k]);
            }
        }
    }

    private char startState(int i) {
        Part p = circuit.part(parts[i]);
        boolean limited = p == Part.LIMITED && circuit.third(parts[i]) < Double.POSITIVE_INFINITY;
        if (limitedOff && (limited || p == Part.CURRENT)) {
            return OFF;
        }
        return limited ? LIMIT : ON;
    }

    private boolean switches(int i) {
        Part p = circuit.part(parts[i]);
        return p == Part.DIODE || (p == Part.LIMITED && !(limitedOff && startState(i) == OFF));
    }

    private double ohm(int i) {
        double ohm = circuit.second(parts[i]);
        return circuit.part(parts[i]) == Part.DIODE && ohm == 0 ? DIODE_OHM : ohm;
    }

    private void treat(
            String states, Deque<Integer> members, Map<String, Deque<Integer>> groups, Map<Integer, Set<String>> seen) {
        int unknowns = number(states);
        Elimination m = matrix(states, unknowns);
        double[] open = new double[unknowns];
        inject(states, open);
        if (!m.factor()) {
            return; // no source with a resistance: nothing to say
        }
        m.solve(open);
        Elimination.Inverse inverse = m.inverse();
        double[][] columns = columns(m, unknowns);
        for (int k : members) {
            fault[k] = current(k, open, inverse);
            shares(states, k, open, m, inverse);
            if (switching.length == 0) {
                continue;
            }
            String wanted = wanted(states, k, open, columns);
            Set<String> been = seen.computeIfAbsent(k, x -> new HashSet<>());
            been.add(states);
            if (!wanted.equals(states) && !been.contains(wanted)) {
                groups.computeIfAbsent(wanted, x -> new ArrayDeque<>()).add(k);
            }
        }
    }

    private double current(int k, double[] open, Elimination.Inverse inverse) {
        if (variable[k] == -2) {
            return Double.NaN;
        }
        double volts = voltage(k, open);
        double ohm = (variable[k] < 0 ? 0 : inverse.diagonal(variable[k])) + faultOhm;
        return volts > 0 ? volts / ohm : Double.NaN;
    }

    /** What each part at a node brings into a fault there. */
    private void shares(String states, int k, double[] open, Elimination m, Elimination.Inverse inverse) {
        if (Double.isNaN(fault[k])) {
            return;
        }
        for (int i : partsAt[k]) {
            boolean atA = localA[i] == k;
            int other = atA ? localB[i] : localA[i];
            char state = states.charAt(i);
            double amps = 0; // from b to a
            if (hasConductance(i, state)) {
                double there = voltage(other, open);
                if (variable[other] >= 0 && variable[k] >= 0) {
                    double z = variable[other] == variable[k]
                            ? inverse.diagonal(variable[k])
                            : inverse.pair(m.slot(variable[other], variable[k]));
                    there -= z * fault[k];
                }
                double here = fault[k] * faultOhm;
                double emf = circuit.part(parts[i]) == Part.RESISTOR ? 0 : circuit.first(parts[i]);
                amps = conductance(i) * (emf - (atA ? here - there : there - here));
            } else if (ties(i, state)) {
                amps = Double.POSITIVE_INFINITY;
            } else if (state == LIMIT) {
                amps = circuit.third(parts[i]);
            } else if (state != OFF && circuit.part(parts[i]) == Part.CURRENT) {
                amps = circuit.first(parts[i]);
            }
            if (atA) {
                intoA[i] = amps;
            } else {
                intoB[i] = -amps;
            }
        }
    }

    private double voltage(int local, double[] x) {
        double base = variable[local] == -2 ? Double.NaN : variable[local] < 0 ? reference : x[variable[local]];
        return base + potentials.above(local);
    }

    /** For each terminal of a part that switches: what one ampere there does everywhere. */
    private double[][] columns(Elimination m, int unknowns) {
        double[][] columns = new double[unknowns][];
        for (int i : switching) {
            column(variable[localA[i]], m, columns);
            column(variable[localB[i]], m, columns);
        }
        return columns;
    }

    private static void column(int v, Elimination m, double[][] columns) {
        if (v >= 0 && columns[v] == null) {
            double[] unit = new double[m.count()];
            unit[v] = 1;
            m.solve(unit);
            columns[v] = unit;
        }
    }

    private String wanted(String states, int k, double[] open, double[][] columns) {
        char[] want = states.toCharArray();
        boolean any = false;
        for (int i : switching) {
            want[i] = want(i, states.charAt(i), k, open, columns);
            any |= want[i] != states.charAt(i);
        }
        return any ? new String(want) : states;
    }

    /** Voltage of a terminal while node k is faulted. */
    private double faulted(int local, int k, double[] open, double[][] columns) {
        if (variable[local] == -2) {
            return local == k || (variable[k] == -2) ? 0 : Double.NaN; // it hangs on the fault, or on nothing
        }
        double volts = voltage(local, open);
        boolean moves = variable[local] >= 0 && variable[k] >= 0 && !Double.isNaN(fault[k]);
        return moves ? volts - columns[variable[local]][variable[k]] * fault[k] : volts;
    }

    private char want(int i, char now, int k, double[] open, double[][] columns) {
        double va = faulted(localA[i], k, open, columns);
        double vb = faulted(localB[i], k, open, columns);
        double v = va - vb;
        double first = circuit.first(parts[i]);
        double tolerance = 1e-9 * Math.max(1, Math.abs(first));
        if (Double.isNaN(v)) {
            return now;
        }
        if (circuit.part(parts[i]) == Part.DIODE) {
            return v > first + (now == ON ? -tolerance : tolerance) ? ON : OFF;
        }
        if (ohm(i) == 0) {
            return v < first - tolerance ? limitState(i) : v > first + tolerance ? OFF : now;
        }
        double amps = (first - v) / ohm(i);
        return amps <= 0 ? OFF : amps >= circuit.third(parts[i]) ? LIMIT : ON;
    }

    private char limitState(int i) {
        return circuit.third(parts[i]) < Double.POSITIVE_INFINITY ? LIMIT : ON;
    }

    private boolean conducts(int i, char state) {
        return switch (circuit.part(parts[i])) {
            case RESISTOR, EMF -> true;
            case LIMITED, DIODE -> state == ON;
            default -> false;
        };
    }

    private boolean ties(int i, char state) {
        Part p = circuit.part(parts[i]);
        return (p == Part.EMF || (p == Part.LIMITED && state == ON)) && ohm(i) == 0;
    }

    private int number(String states) {
        potentials = new Potentials(nodes.length + 1);
        Potentials joined = new Potentials(nodes.length + 1);
        for (int i = 0; i < parts.length; i++) {
            if (ties(i, states.charAt(i))) {
                potentials.tie(localA[i], localB[i], circuit.first(parts[i]));
            }
            if (conducts(i, states.charAt(i))) {
                joined.tie(localA[i], localB[i], 0);
            }
        }
        int ground = nodes.length;
        reference = -potentials.above(ground);
        int[] ofRoot = new int[nodes.length + 1];
        Arrays.fill(ofRoot, -1);
        int n = 0;
        for (int v = 0; v <= nodes.length; v++) {
            int root = potentials.root(v);
            if (root == potentials.root(ground)) {
                variable[v] = -1;
            } else if (joined.root(v) != joined.root(ground)) {
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

    private boolean hasConductance(int i, char state) {
        return conducts(i, state) && !ties(i, state) && variable[localA[i]] != -2 && variable[localB[i]] != -2;
    }

    private double conductance(int i) {
        return circuit.part(parts[i]) == Part.RESISTOR ? circuit.first(parts[i]) : 1 / ohm(i);
    }

    private Elimination matrix(String states, int unknowns) {
        int[] a = new int[parts.length];
        int[] b = new int[parts.length];
        int pairs = 0;
        for (int i = 0; i < parts.length; i++) {
            int va = variable[localA[i]];
            int vb = variable[localB[i]];
            if (hasConductance(i, states.charAt(i)) && va >= 0 && vb >= 0 && va != vb) {
                a[pairs] = va;
                b[pairs++] = vb;
            }
        }
        Elimination m = new Elimination(unknowns, Arrays.copyOf(a, pairs), Arrays.copyOf(b, pairs));
        m.clear();
        for (int i = 0; i < parts.length; i++) {
            if (hasConductance(i, states.charAt(i))) {
                m.addBetween(variable[localA[i]], variable[localB[i]], conductance(i));
            }
        }
        return m;
    }

    /** Fills the right-hand side: what flows into each unknown while all unknowns are at zero. */
    private void inject(String states, double[] into) {
        for (int i = 0; i < parts.length; i++) {
            int part = parts[i];
            char state = states.charAt(i);
            double toA = 0;
            if (hasConductance(i, state)) {
                double fixed = fixed(localA[i]) - fixed(localB[i]);
                double emf = circuit.part(part) == Part.RESISTOR ? 0 : circuit.first(part);
                toA = conductance(i) * (emf - fixed);
            } else if (state != OFF && circuit.part(part) == Part.CURRENT) {
                toA = circuit.first(part);
            } else if (state == LIMIT) {
                toA = circuit.third(part);
            }
            if (variable[localA[i]] >= 0) {
                into[variable[localA[i]]] += toA;
            }
            if (variable[localB[i]] >= 0) {
                into[variable[localB[i]]] -= toA;
            }
        }
    }

    /** The part of a node's voltage that does not depend on the unknowns. */
    private double fixed(int local) {
        return (variable[local] < 0 ? reference : 0) + potentials.above(local);
    }
}
