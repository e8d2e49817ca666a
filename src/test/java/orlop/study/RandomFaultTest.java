package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.ejml.simple.SimpleMatrix;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/**
 * Fault currents of seeded random networks against open-circuit voltage over Thevenin impedance from dense solutions by
 * EJML. Every combination of states of the limited sources and diodes is tried there until one is in accord with itself:
 * nothing of the program's way of finding it is shared.
 */
@SuppressWarnings("NullAway") // a null fails the test
class RandomFaultTest {
    private static final double LEAK_S = 1e-11; // keeps the dense matrix regular where a part hangs on nothing

    /** c cable, e source, o source that cannot be charged, l limited source, i current source, d diode. */
    private record Element(char kind, int a, int b, double volts, double ohm, double limitA) {
        boolean switches() {
            return kind == 'o' || kind == 'l' || kind == 'd';
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 360);
    }

    private static List<Element> network(int seed, int nodes) {
        Random random = new Random(seed * 7_919L);
        List<Element> all = new ArrayList<>();
        boolean onlyLimited = seed % 5 == 4;
        for (int v = 1; v < nodes; v++) {
            all.add(new Element('c', random.nextInt(v), v, 0, 0.002 + 0.08 * random.nextDouble(), 0));
        }
        int rings = seed % 3 == 0 ? 0 : seed % 3 == 1 ? 1 : nodes / 2;
        for (int k = 0; k < rings; k++) {
            int a = random.nextInt(nodes);
            all.add(new Element(
                    'c', a, (a + 1 + random.nextInt(nodes - 1)) % nodes, 0, 0.002 + 0.08 * random.nextDouble(), 0));
        }
        for (int k = 1 + random.nextInt(2); k > 0 && !onlyLimited; k--) {
            double volts = 24 + 2 * random.nextDouble();
            all.add(new Element('e', random.nextInt(nodes), -1, volts, 0.001 + 0.02 * random.nextDouble(), 0));
        }
        int switching = seed % 4 == 0 ? 0 : 1 + random.nextInt(4);
        for (int k = switching + (onlyLimited ? 1 : 0); k > 0; k--) {
            all.add(switching(random, nodes, onlyLimited && k == 1));
        }
        if (random.nextInt(4) == 0) {
            all.add(new Element('i', random.nextInt(nodes), -1, 0, 0, 20 * random.nextDouble()));
        }
        return all;
    }

    private static Element switching(Random random, int nodes, boolean limited) {
        int node = random.nextInt(nodes);
        double slope = random.nextBoolean() ? 0 : 0.001 + 0.02 * random.nextDouble();
        return switch (limited ? 0 : random.nextInt(4)) {
            case 0, 1 -> new Element('l', node, -1, 23 + 6 * random.nextDouble(), slope, 5 + 200 * random.nextDouble());
            case 2 -> new Element('o', node, -1, 23 + 4 * random.nextDouble(), 0.005 + slope, 0);
            default ->
                new Element('d', node, (node + 1 + random.nextInt(nodes - 1)) % nodes, random.nextDouble(), slope, 0);
        };
    }

    /** Some of the cables of a network are taken out, so that diodes and limited sources stand alone. */
    private static List<Element> thinned(List<Element> all, int seed) {
        Random random = new Random(seed);
        List<Element> kept = new ArrayList<>(all);
        kept.removeIf(e -> e.kind() == 'c' && seed % 2 == 1 && random.nextInt(4) == 0);
        return kept;
    }

    private static Study study(List<Element> elements, int nodes, double faultOhm) {
        Sketch s = Sketch.dc(24);
        for (int v = 0; v < nodes; v++) {
            s.bar("N" + v);
        }
        int n = 0;
        for (Element e : elements) {
            n++;
            String id = Character.toUpperCase(e.kind()) + "" + n;
            switch (e.kind()) {
                case 'c' -> s.ohm("W" + n, "N" + e.a() + ".t" + n, "N" + e.b() + ".t" + n, e.ohm());
                case 'e' -> s.add(id, new Source.Supply(e.volts(), 0, e.ohm(), 0, false));
                case 'o' -> s.add(id, new Source.Supply(e.volts(), 0, e.ohm(), 0, true));
                case 'l' -> s.add(id, new Source.LimitedSupply(e.volts(), e.ohm(), e.limitA()));
                case 'i' -> s.add(id, new Source.CurrentSupply(e.limitA()));
                default -> s.add(id, new Switching.Diode(e.volts(), e.ohm()));
            }
            if (e.kind() != 'c') {
                s.link("N" + e.a() + ".t" + n, id + ".1");
            }
            if (e.kind() == 'd') {
                s.link("N" + e.b() + ".t" + n, id + ".2");
            }
        }
        return Study.of(s.drawing(), new StudyOptions(faultOhm), () -> false);
    }

    // ---- dense ---------------------------------------------------------------------------------------------------

    /** 0 where nothing feeds the node. */
    private static double dense(List<Element> elements, int nodes, int faulted, double faultOhm) {
        List<Element> moving = elements.stream().filter(Element::switches).toList();
        int combinations = (int) Math.pow(3, moving.size());
        for (int c = 0; c < combinations; c++) {
            int[] states = new int[moving.size()]; // 0 off, 1 on, 2 at its limit
            int rest = c;
            boolean possible = true;
            for (int i = 0; i < states.length; i++) {
                states[i] = rest % 3;
                rest /= 3;
                possible &= states[i] < 2 || moving.get(i).kind() == 'l';
            }
            double[] v = possible ? voltages(elements, moving, states, nodes, faulted, faultOhm) : null;
            if (v != null && accords(moving, states, v, nodes)) {
                return thevenin(elements, moving, states, nodes, faulted, faultOhm);
            }
        }
        throw new AssertionError("no states are in accord with themselves");
    }

    /** Open-circuit voltage over impedance with these states. */
    private static double thevenin(
            List<Element> elements, List<Element> moving, int[] states, int nodes, int faulted, double faultOhm) {
        double[] open = solve(elements, moving, states, nodes, -1, 0, -1);
        double[] one = solve(elements, moving, states, nodes, -1, 0, faulted);
        if (open == null || one == null) {
            double[] shorted = voltages(elements, moving, states, nodes, faulted, faultOhm);
            return shorted[nodes + states.length];
        }
        double ohm = one[faulted] - open[faulted];
        return open[faulted] / (ohm + faultOhm);
    }

    private static double @Nullable [] voltages(
            List<Element> elements, List<Element> moving, int[] states, int nodes, int faulted, double faultOhm) {
        return solve(elements, moving, states, nodes, faulted, faultOhm, -1);
    }

    /** Unknowns: node voltages, current of each switching element, current into the fault. */
    private static double @Nullable [] solve(
            List<Element> elements,
            List<Element> moving,
            int[] states,
            int nodes,
            int faulted,
            double faultOhm,
            int oneAmpereInto) {
        int size = nodes + states.length + 1;
        SimpleMatrix m = new SimpleMatrix(size, size);
        SimpleMatrix b = new SimpleMatrix(size, 1);
        for (int v = 0; v < nodes; v++) {
            add(m, v, v, LEAK_S);
        }
        for (Element e : elements) {
            if (e.kind() == 'c' || e.kind() == 'e') {
                double g = 1 / e.ohm();
                add(m, e.a(), e.a(), g);
                add(b, e.a(), 0, e.volts() * g);
                if (e.b() >= 0) {
                    add(m, e.b(), e.b(), g);
                    add(m, e.a(), e.b(), -g);
                    add(m, e.b(), e.a(), -g);
                }
            } else if (e.kind() == 'i') {
                add(b, e.a(), 0, e.limitA());
            }
        }
        for (int i = 0; i < states.length; i++) {
            Element e = moving.get(i);
            int sign = e.kind() == 'd' ? -1 : 1; // a source's current flows into its node, a diode's out of its anode
            int row = nodes + i;
            add(m, e.a(), row, -sign);
            if (e.b() >= 0) {
                add(m, e.b(), row, sign);
            }
            if (states[i] == 1) {
                add(m, row, e.a(), 1);
                if (e.b() >= 0) {
                    add(m, row, e.b(), -1);
                }
                add(m, row, row, sign * e.ohm());
                b.set(row, 0, e.volts());
            } else {
                m.set(row, row, 1);
                b.set(row, 0, states[i] == 2 ? e.limitA() : 0);
            }
        }
        int last = size - 1;
        if (faulted >= 0) {
            add(m, faulted, last, 1);
            add(m, last, faulted, 1);
            add(m, last, last, -faultOhm);
        } else {
            m.set(last, last, 1);
        }
        if (oneAmpereInto >= 0) {
            add(b, oneAmpereInto, 0, 1);
        }
        try {
            SimpleMatrix x = m.solve(b);
            double[] result = new double[size];
            for (int k = 0; k < size; k++) {
                result[k] = x.get(k, 0);
                if (!Double.isFinite(result[k])) {
                    return null;
                }
            }
            return result;
        } catch (org.ejml.data.SingularMatrixException e) {
            return null;
        }
    }

    private static void add(SimpleMatrix m, int r, int c, double value) {
        m.set(r, c, m.get(r, c) + value);
    }

    private static boolean accords(List<Element> moving, int[] states, double[] x, int nodes) {
        for (int i = 0; i < states.length; i++) {
            Element e = moving.get(i);
            double v = x[e.a()] - (e.b() < 0 ? 0 : x[e.b()]);
            double amps = x[nodes + i];
            boolean fine = switch (states[i]) {
                case 0 -> e.kind() == 'd' ? v <= e.volts() + 1e-7 : v >= e.volts() - 1e-7;
                case 1 -> amps >= -1e-6 && (e.kind() != 'l' || amps <= e.limitA() + 1e-6);
                default -> v <= e.volts() - e.ohm() * e.limitA() + 1e-7;
            };
            if (!fine) {
                return false;
            }
        }
        return true;
    }

    // ---- comparison ----------------------------------------------------------------------------------------------

    @ParameterizedTest
    @MethodSource("seeds")
    void both_fault_currents_equal_a_dense_solution_at_points_and_at_both_ends_of_cables(int seed) {
        int nodes = 2 + seed % 9;
        double faultOhm = seed % 7 == 6 ? 0.05 : 0;
        List<Element> elements = thinned(network(seed, nodes), seed);
        List<Element> without = elements.stream()
                .filter(e -> e.kind() != 'l' && e.kind() != 'i')
                .toList();
        Results r = study(elements, nodes, faultOhm).governing();
        FaultRange[] expected = new FaultRange[nodes];
        for (int v = 0; v < nodes; v++) {
            double most = dense(elements, nodes, v, faultOhm);
            double least = dense(without, nodes, v, faultOhm);
            least = least > 1e-6 ? least : most;
            expected[v] = most > 1e-6 ? new FaultRange(most, least) : FaultRange.NONE;
            same(r.points().get("N" + v).fault(), expected[v], "N" + v);
        }
        for (int n = 1; n <= elements.size(); n++) {
            Element e = elements.get(n - 1);
            if (e.kind() == 'c' && r.cables().get("W" + n).live()) {
                same(r.cables().get("W" + n).faultFrom(), expected[e.a()], "W" + n + " from");
                same(r.cables().get("W" + n).faultTo(), expected[e.b()], "W" + n + " to");
            }
        }
    }

    private static void same(FaultRange ours, FaultRange expected, String what) {
        if (expected.maxA() == null) {
            assertThat(ours).as(what).isEqualTo(FaultRange.NONE);
            return;
        }
        assertThat(ours.maxA()).as(what + " max").isCloseTo(expected.maxA(), within(1e-5 * expected.maxA()));
        assertThat(ours.minA()).as(what + " min").isCloseTo(expected.minA(), within(1e-5 * expected.minA()));
    }
}
