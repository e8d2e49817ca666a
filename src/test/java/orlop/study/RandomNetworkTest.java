package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Seeded random networks against a dense nodal Newton of its own, on EJML; Kirchhoff's law and energy. */
@SuppressWarnings("NullAway") // a null fails the test
class RandomNetworkTest {
    /** One element of a network: kind c (cable), e (source), r, i, p (loads); x and y its values. */
    private record Element(char kind, int a, int b, double x, double y) {}

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    private static List<Element> network(int seed, int nodes) {
        Random random = new Random(seed);
        List<Element> all = new ArrayList<>();
        for (int v = 1; v < nodes; v++) {
            all.add(new Element('c', random.nextInt(v), v, ohm(random), 0));
        }
        int rings = seed % 3 == 0 ? 0 : seed % 3 == 1 ? 1 : nodes / 2;
        for (int k = 0; k < rings; k++) {
            int a = random.nextInt(nodes);
            int b = random.nextInt(nodes);
            if (a != b) {
                all.add(new Element('c', a, b, ohm(random), 0));
            }
        }
        all.add(new Element('e', 0, -1, 25.5, 0.002 + 0.01 * random.nextDouble()));
        for (int k = random.nextInt(3); k > 0; k--) {
            all.add(new Element('e', random.nextInt(nodes), -1, 24.5 + random.nextDouble(), 0.01));
        }
        for (int v = 0; v < nodes; v++) {
            switch (random.nextInt(5)) {
                case 0 -> all.add(new Element('p', v, -1, 5 + 40 * random.nextDouble(), 0));
                case 1 -> all.add(new Element('i', v, -1, 0.2 + 2 * random.nextDouble(), 0));
                case 2 -> all.add(new Element('r', v, -1, 10 + 50 * random.nextDouble(), 0));
                default -> {}
            }
        }
        return all;
    }

    private static double ohm(Random random) {
        return 0.001 + 0.05 * random.nextDouble();
    }

    private static Study study(List<Element> elements, int nodes) {
        Sketch s = Sketch.dc(24);
        for (int v = 0; v < nodes; v++) {
            s.bar("N" + v);
        }
        int n = 0;
        for (Element e : elements) {
            n++;
            String id = Character.toUpperCase(e.kind()) + "" + n;
            switch (e.kind()) {
                case 'c' -> s.ohm("W" + n, "N" + e.a() + ".t" + n, "N" + e.b() + ".t" + n, e.x());
                case 'e' -> s.supply(id, e.x(), e.y());
                case 'r' -> s.resistance(id, e.x());
                case 'i' -> s.current(id, e.x());
                default -> s.power(id, e.x());
            }
            if (e.kind() != 'c') {
                s.link("N" + e.a() + ".t" + n, id + ".1");
            }
        }
        return s.study();
    }

    /** Newton on the full conductance matrix, dense LU: nothing of it is shared with the program. */
    private static double[] dense(List<Element> elements, int nodes) {
        double[] v = new double[nodes];
        java.util.Arrays.fill(v, 25.5);
        for (int step = 0; step < 50; step++) {
            SimpleMatrix j = new SimpleMatrix(nodes, nodes);
            SimpleMatrix f = new SimpleMatrix(nodes, 1);
            for (Element e : elements) {
                double va = v[e.a()];
                double g = 0;
                double i = 0;
                switch (e.kind()) {
                    case 'c' -> {
                        g = 1 / e.x();
                        i = (va - v[e.b()]) * g;
                        j.set(e.b(), e.b(), j.get(e.b(), e.b()) + g);
                        j.set(e.a(), e.b(), j.get(e.a(), e.b()) - g);
                        j.set(e.b(), e.a(), j.get(e.b(), e.a()) - g);
                        f.set(e.b(), 0, f.get(e.b(), 0) - i);
                    }
                    case 'e' -> {
                        g = 1 / e.y();
                        i = (va - e.x()) * g;
                    }
                    case 'r' -> {
                        g = 1 / e.x();
                        i = va * g;
                    }
                    case 'i' -> i = e.x();
                    default -> {
                        i = e.x() / va;
                        g = -i / va;
                    }
                }
                j.set(e.a(), e.a(), j.get(e.a(), e.a()) + g);
                f.set(e.a(), 0, f.get(e.a(), 0) + i);
            }
            SimpleMatrix fall = j.solve(f);
            for (int k = 0; k < nodes; k++) {
                v[k] -= fall.get(k, 0);
            }
        }
        return v;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void flow_equals_a_dense_solution_and_keeps_kirchhoff_and_energy(int seed) {
        int nodes = 2 + seed % 24;
        List<Element> elements = network(seed, nodes);
        Results r = study(elements, nodes).governing();
        double[] expected = dense(elements, nodes);

        assertThat(r.converged()).isTrue();
        assertThat(r.residualA()).isLessThanOrEqualTo(1e-6);
        for (int v = 0; v < nodes; v++) {
            assertThat(r.points().get("N" + v).voltageV()).as("N" + v).isCloseTo(expected[v], within(1e-8));
        }
        double[] sum = new double[nodes];
        double given = 0;
        double taken = 0;
        int n = 0;
        for (Element e : elements) {
            n++;
            if (e.kind() == 'c') {
                CableResult w = r.cables().get("W" + n);
                sum[e.a()] -= w.currentA();
                sum[e.b()] += w.currentA();
                taken += w.lossW();
            } else {
                TerminalResult t = r.components()
                        .get(Character.toUpperCase(e.kind()) + "" + n)
                        .terminals()
                        .get(0);
                boolean source = e.kind() == 'e';
                sum[e.a()] += source ? t.currentA() : -t.currentA();
                given += source ? t.powerW() : 0;
                taken += source ? 0 : t.powerW();
            }
        }
        for (double s : sum) {
            assertThat(s).as("Kirchhoff").isCloseTo(0, within(1e-6));
        }
        assertThat(given).as("energy").isCloseTo(taken, within(1e-6 * Math.max(1, taken)));
    }

    /** Thevenin by the dense inverse of the conductance matrix, sources at zero. */
    @ParameterizedTest
    @MethodSource("seeds")
    void fault_currents_equal_a_dense_solution(int seed) {
        int nodes = 2 + seed % 24;
        List<Element> elements = network(seed, nodes);
        Results r = study(elements, nodes).governing();
        SimpleMatrix g = new SimpleMatrix(nodes, nodes);
        SimpleMatrix injected = new SimpleMatrix(nodes, 1);
        for (Element e : elements) {
            if (e.kind() == 'c') {
                g.set(e.a(), e.a(), g.get(e.a(), e.a()) + 1 / e.x());
                g.set(e.b(), e.b(), g.get(e.b(), e.b()) + 1 / e.x());
                g.set(e.a(), e.b(), g.get(e.a(), e.b()) - 1 / e.x());
                g.set(e.b(), e.a(), g.get(e.b(), e.a()) - 1 / e.x());
            } else if (e.kind() == 'e') {
                g.set(e.a(), e.a(), g.get(e.a(), e.a()) + 1 / e.y());
                injected.set(e.a(), 0, injected.get(e.a(), 0) + e.x() / e.y());
            }
        }
        SimpleMatrix z = g.invert();
        SimpleMatrix open = z.mult(injected);
        for (int v = 0; v < nodes; v++) {
            assertThat(r.points().get("N" + v).fault().maxA())
                    .isCloseTo(open.get(v, 0) / z.get(v, v), within(1e-6 * open.get(v, 0) / z.get(v, v)));
        }
    }
}
