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
import orlop.drawing.Nature;
import orlop.drawing.Source;

/**
 * Seeded random alternating-current networks against a dense Newton of its own, in real and imaginary parts on EJML;
 * every second one three-phase.
 */
@SuppressWarnings("NullAway") // a null fails the test
class AcRandomNetworkTest {
    /** One element: kind c (cable), e (source), p, i, z (loads); x and y its values, of all loads for one phase. */
    private record Element(char kind, int a, int b, double x, double y) {}

    static IntStream seeds() {
        return IntStream.range(0, 100);
    }

    private static List<Element> network(int seed, int nodes) {
        Random random = new Random(seed);
        List<Element> all = new ArrayList<>();
        for (int v = 1; v < nodes; v++) {
            all.add(cable(random, random.nextInt(v), v));
        }
        for (int k = seed % 4; k > 0 && nodes > 2; k--) {
            int a = random.nextInt(nodes - 1);
            all.add(cable(random, a, nodes - 1));
        }
        all.add(new Element('e', 0, -1, 0.02 + 0.05 * random.nextDouble(), 0.1 * random.nextDouble()));
        if (seed % 5 == 0) {
            all.add(new Element('e', nodes - 1, -1, 0.2, 0.05));
        }
        for (int v = 0; v < nodes; v++) {
            double size = random.nextDouble();
            switch (random.nextInt(5)) {
                case 0 -> all.add(new Element('p', v, -1, 50 + 500 * size, 400 * random.nextDouble()));
                case 1 -> all.add(new Element('i', v, -1, 3 * size, 0.5 + 0.5 * random.nextDouble()));
                case 2 -> all.add(new Element('z', v, -1, 60 + 100 * size, 60 * random.nextDouble()));
                default -> {}
            }
        }
        return all;
    }

    private static Element cable(Random random, int a, int b) {
        return new Element('c', a, b, 0.005 + 0.1 * random.nextDouble(), 0.03 * random.nextDouble());
    }

    private static double emf(Element e) {
        return e.a() == 0 ? 235 : 231;
    }

    private static double angleDeg(Element e) {
        return e.a() == 0 ? 0 : 0.5;
    }

    private static Study study(List<Element> elements, int nodes, int phases) {
        Sketch s = phases == 3 ? AcSketch.of(Nature.AC3N, 400) : AcSketch.of(Nature.AC1, 230);
        for (int v = 0; v < nodes; v++) {
            s.bar("N" + v);
        }
        int n = 0;
        for (Element e : elements) {
            n++;
            String id = Character.toUpperCase(e.kind()) + "" + n;
            switch (e.kind()) {
                case 'c' -> AcSketch.impedance(s, id, "N" + e.a() + ".t" + n, "N" + e.b() + ".t" + n, e.x(), e.y());
                case 'e' -> s.add(id, new Source.Supply(emf(e), angleDeg(e), e.x(), e.y(), false));
                case 'p' -> s.add(id, AcSketch.power(phases * e.x(), phases * e.y()));
                case 'i' -> s.add(id, AcSketch.current(e.x(), e.y()));
                default -> s.add(id, AcSketch.impedance(e.x(), e.y()));
            }
            if (e.kind() != 'c') {
                s.link("N" + e.a() + ".t" + n, id + ".1");
            }
        }
        return s.study();
    }

    /** Current that an element takes at voltage (vr, vi): real and imaginary part. */
    private static double[] amps(Element e, double vr, double vi) {
        double m = vr * vr + vi * vi;
        switch (e.kind()) {
            case 'p' -> {
                return new double[] {(e.x() * vr + e.y() * vi) / m, (e.x() * vi - e.y() * vr) / m};
            }
            case 'i' -> {
                double cos = e.x() * e.y();
                double sin = e.x() * Math.sqrt(1 - e.y() * e.y());
                double v = Math.sqrt(m);
                return new double[] {(cos * vr + sin * vi) / v, (cos * vi - sin * vr) / v};
            }
            default -> {
                double angle = Math.toRadians(angleDeg(e));
                double er = e.kind() == 'e' ? emf(e) * Math.cos(angle) : 0;
                double ei = e.kind() == 'e' ? emf(e) * Math.sin(angle) : 0;
                double square = e.x() * e.x() + e.y() * e.y();
                double dr = vr - er;
                double di = vi - ei;
                return new double[] {(dr * e.x() + di * e.y()) / square, (di * e.x() - dr * e.y()) / square};
            }
        }
    }

    /** Sum of the currents that leave each node: real parts, then imaginary parts. */
    private static SimpleMatrix leaving(List<Element> elements, SimpleMatrix v, int nodes) {
        SimpleMatrix f = new SimpleMatrix(2 * nodes, 1);
        for (Element e : elements) {
            double vr = v.get(e.a(), 0) - (e.b() < 0 ? 0 : v.get(e.b(), 0));
            double vi = v.get(nodes + e.a(), 0) - (e.b() < 0 ? 0 : v.get(nodes + e.b(), 0));
            double[] i = amps(e, vr, vi);
            for (int part = 0; part < 2; part++) {
                int a = part * nodes + e.a();
                f.set(a, 0, f.get(a, 0) + i[part]);
                if (e.b() >= 0) {
                    int b = part * nodes + e.b();
                    f.set(b, 0, f.get(b, 0) - i[part]);
                }
            }
        }
        return f;
    }

    private static SimpleMatrix dense(List<Element> elements, int nodes) {
        SimpleMatrix v = new SimpleMatrix(2 * nodes, 1);
        for (int k = 0; k < nodes; k++) {
            v.set(k, 0, 235);
        }
        for (int step = 0; step < 12; step++) {
            SimpleMatrix f = leaving(elements, v, nodes);
            SimpleMatrix j = new SimpleMatrix(2 * nodes, 2 * nodes);
            for (int k = 0; k < 2 * nodes; k++) {
                SimpleMatrix moved = v.copy();
                moved.set(k, 0, v.get(k, 0) + 1e-3);
                SimpleMatrix column = leaving(elements, moved, nodes).minus(f).divide(1e-3);
                for (int row = 0; row < 2 * nodes; row++) {
                    j.set(row, k, column.get(row, 0));
                }
            }
            v = v.minus(j.solve(f));
        }
        return v;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void flow_equals_a_dense_solution_and_keeps_energy(int seed) {
        int nodes = 2 + seed % 19;
        int phases = seed % 2 == 0 ? 1 : 3;
        List<Element> elements = network(seed, nodes);
        Results r = study(elements, nodes, phases).governing();
        SimpleMatrix expected = dense(elements, nodes);

        assertThat(r.converged()).isTrue();
        assertThat(r.residualA()).isLessThanOrEqualTo(1e-6);
        for (int v = 0; v < nodes; v++) {
            double re = expected.get(v, 0);
            double im = expected.get(nodes + v, 0);
            PointResult p = r.points().get("N" + v);
            assertThat(p.voltageV()).as("N" + v).isCloseTo(Math.hypot(re, im), within(1e-6));
            assertThat(p.angleDeg()).isCloseTo(Math.toDegrees(Math.atan2(im, re)), within(1e-6));
        }
        double given = 0;
        double taken = 0;
        int n = 0;
        for (Element e : elements) {
            n++;
            String id = Character.toUpperCase(e.kind()) + "" + n;
            double watts = e.kind() == 'c'
                    ? r.cables().get(id).lossW()
                    : r.components().get(id).terminals().get(0).powerW();
            given += e.kind() == 'e' ? watts : 0;
            taken += e.kind() == 'e' ? 0 : watts;
        }
        assertThat(given).as("energy").isCloseTo(taken, within(1e-5 * Math.max(1, taken)));
    }

    /** Thevenin by a dense matrix in real and imaginary parts, one ampere into each node in turn. */
    @ParameterizedTest
    @MethodSource("seeds")
    void fault_currents_equal_a_dense_solution(int seed) {
        int nodes = 2 + seed % 19;
        List<Element> elements = network(seed, nodes);
        Results r = study(elements, nodes, seed % 2 == 0 ? 1 : 3).governing();
        elements.removeIf(e -> "piz".indexOf(e.kind()) >= 0);
        SimpleMatrix open = dense(elements, nodes);
        SimpleMatrix none = leaving(elements, open, nodes);
        SimpleMatrix g = new SimpleMatrix(2 * nodes, 2 * nodes);
        for (int k = 0; k < 2 * nodes; k++) {
            SimpleMatrix moved = open.copy();
            moved.set(k, 0, open.get(k, 0) + 1);
            SimpleMatrix column = leaving(elements, moved, nodes).minus(none);
            for (int row = 0; row < 2 * nodes; row++) {
                g.set(row, k, column.get(row, 0));
            }
        }
        SimpleMatrix z = g.invert();
        for (int v = 0; v < nodes; v++) {
            double volts = Math.hypot(open.get(v, 0), open.get(nodes + v, 0));
            double ohm = Math.hypot(z.get(v, v), z.get(nodes + v, v));
            FaultResult fault = r.points()
                    .get("N" + v)
                    .faults()
                    .get(seed % 2 == 0 ? FaultKind.LINE_NEUTRAL : FaultKind.THREE_PHASE);
            assertThat(fault.maxA()).isCloseTo(volts / ohm, within(1e-6 * volts / ohm));
            assertThat(fault.minA()).isCloseTo(volts / ohm, within(1e-6 * volts / ohm));
        }
    }
}
