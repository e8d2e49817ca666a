package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Cable;
import orlop.drawing.Conductors;
import orlop.drawing.Consumer;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Source;

/**
 * Seeded random four-wire networks with unequal phases, trees and rings, two-wire taps among them, against a dense Newton
 * of its own over all nodes of all conductors, in real and imaginary parts on EJML.
 */
@SuppressWarnings("NullAway") // a null fails the test
class FourWireRandomTest {
    private static final List<Phase> PHASES =
            List.of(Phase.L1, Phase.L2, Phase.L3, Phase.L1_L2, Phase.L2_L3, Phase.L3_L1, Phase.ALL);

    /** Between two nodes (−1 is the neutral of the source): c, e (with its angle), p, i, z; x and y its values. */
    private record Piece(char kind, int a, int b, double x, double y, double angleDeg) {}

    /** A bus is four nodes; what is drawn and what is solved densely are made side by side. */
    private static final class Network {
        final Random random;
        final int buses;
        final Sketch sketch = AcSketch.of(Nature.AC3N, 400);
        final List<Piece> pieces = new ArrayList<>();
        final int[] tapOf; // by bus: −1 for a bus of all conductors, else its only phase
        int n;

        Network(int seed) {
            random = new Random(seed);
            buses = 3 + seed % 8;
            tapOf = new int[buses];
            for (int v = 0; v < buses; v++) {
                sketch.bar("N" + v);
                tapOf[v] = -1;
            }
            source();
            for (int v = 1; v < buses; v++) {
                int up = random.nextInt(v);
                boolean tap = v > 1 && random.nextInt(3) == 0;
                tapOf[v] = tapOf[up] >= 0 ? tapOf[up] : tap ? random.nextInt(3) : -1;
                cable(up, v, tapOf[v]);
                if (tapOf[v] >= 0) {
                    load(v, PHASES.get(tapOf[v])); // names the phase
                }
            }
            if (seed % 3 == 0 && tapOf[buses - 1] < 0) {
                cable(0, buses - 1, -1); // a ring
            }
            for (int k = 0; k < 2 * buses; k++) {
                int v = random.nextInt(buses);
                load(v, tapOf[v] >= 0 ? PHASES.get(tapOf[v]) : PHASES.get(random.nextInt(7)));
            }
            load(0, Phase.L1);
        }

        static int node(int bus, int wire) {
            return bus == 0 && wire == 3 ? -1 : 4 * bus + wire;
        }

        private double between(double low, double high) {
            return low + (high - low) * random.nextDouble();
        }

        private void source() {
            double r = between(0.01, 0.05);
            double x = between(0.01, 0.1);
            sketch.add("G", new Source.Supply(233.0, 5, r, x, false)).link("N0.g", "G.1");
            for (int wire = 0; wire < 3; wire++) {
                pieces.add(new Piece('e', node(0, wire), -1, r, x, 5 - 120 * wire));
            }
        }

        private void cable(int a, int b, int phase) {
            n++;
            double r = between(0.01, 0.1);
            double x = between(0, 0.02);
            double rn = between(0.01, 0.15);
            Cable.Measured m = new Cable.Measured(null, null, r, x, rn, x / 2, null);
            Conductors c = phase >= 0 ? Conductors.L_N_PE : Conductors.L3_N_PE;
            FourWireTest.cable(sketch, "W" + n, "N" + a + ".c" + n, "N" + b + ".c" + n, c, m);
            for (int wire = 0; wire < 4; wire++) {
                if (phase < 0 || wire == phase || wire == 3) {
                    double ohm = wire == 3 ? rn : r;
                    pieces.add(new Piece('c', node(a, wire), node(b, wire), ohm, wire == 3 ? x / 2 : x, 0));
                }
            }
        }

        private void load(int bus, Phase phase) {
            n++;
            char kind = "piz".charAt(random.nextInt(3));
            double x = kind == 'p' ? between(100, 900) : kind == 'i' ? between(0.3, 4) : between(50, 300);
            double y = kind == 'p' ? between(-100, 500) : kind == 'i' ? between(0.5, 1) : between(0, 80);
            int all = phase == Phase.ALL ? 3 : 1;
            sketch.add("E" + n, consumer(kind, x * (kind == 'p' ? all : 1), y * (kind == 'p' ? all : 1), phase));
            sketch.link("N" + bus + ".e" + n, "E" + n + ".1");
            int[][] pairs = switch (phase) {
                case L1 -> new int[][] {{0, 3}};
                case L2 -> new int[][] {{1, 3}};
                case L3 -> new int[][] {{2, 3}};
                case L1_L2 -> new int[][] {{0, 1}};
                case L2_L3 -> new int[][] {{1, 2}};
                case L3_L1 -> new int[][] {{2, 0}};
                case ALL -> new int[][] {{0, 1}, {1, 2}, {2, 0}};
            };
            boolean delta = phase == Phase.ALL;
            for (int[] pair : pairs) { // the equivalent delta of a star: 3 Z, I / √3, the same power
                double first = !delta || kind == 'p' ? x : kind == 'z' ? 3 * x : x / Math.sqrt(3);
                double second = delta && kind == 'z' ? 3 * y : y;
                pieces.add(new Piece(kind, node(bus, pair[0]), node(bus, pair[1]), first, second, 0));
            }
        }

        private static Consumer consumer(char kind, double x, double y, Phase phase) {
            return switch (kind) {
                case 'p' -> new Consumer.PlainLoad(LoadBehaviour.POWER, x, y, null, null, null, null, phase, false);
                case 'i' -> new Consumer.PlainLoad(LoadBehaviour.CURRENT, null, null, x, y, null, null, phase, false);
                default -> FourWireTest.load(x, y, phase);
            };
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 120);
    }

    private static double[] amps(Piece p, double vr, double vi) {
        double m = vr * vr + vi * vi;
        switch (p.kind()) {
            case 'p' -> {
                return new double[] {(p.x() * vr + p.y() * vi) / m, (p.x() * vi - p.y() * vr) / m};
            }
            case 'i' -> {
                double cos = p.x() * p.y();
                double sin = p.x() * Math.sqrt(1 - p.y() * p.y());
                double v = Math.sqrt(m);
                return new double[] {(cos * vr + sin * vi) / v, (cos * vi - sin * vr) / v};
            }
            default -> {
                double emf = p.kind() == 'e' ? 233 : 0;
                double dr = vr - emf * Math.cos(Math.toRadians(p.angleDeg()));
                double di = vi - emf * Math.sin(Math.toRadians(p.angleDeg()));
                double square = p.x() * p.x() + p.y() * p.y();
                return new double[] {(dr * p.x() + di * p.y()) / square, (di * p.x() - dr * p.y()) / square};
            }
        }
    }

    private static double at(SimpleMatrix v, int node, int part) {
        return node < 0 ? 0 : v.get(2 * node + part, 0);
    }

    private static SimpleMatrix leaving(List<Piece> pieces, SimpleMatrix v) {
        SimpleMatrix f = new SimpleMatrix(v.getNumRows(), 1);
        for (Piece p : pieces) {
            double[] i = amps(p, at(v, p.a(), 0) - at(v, p.b(), 0), at(v, p.a(), 1) - at(v, p.b(), 1));
            for (int part = 0; part < 2; part++) {
                if (p.a() >= 0) {
                    f.set(2 * p.a() + part, 0, f.get(2 * p.a() + part, 0) + i[part]);
                }
                if (p.b() >= 0) {
                    f.set(2 * p.b() + part, 0, f.get(2 * p.b() + part, 0) - i[part]);
                }
            }
        }
        return f;
    }

    private static SimpleMatrix dense(Network network) {
        int size = 8 * network.buses;
        boolean[] used = new boolean[size];
        for (Piece p : network.pieces) {
            for (int node : new int[] {p.a(), p.b()}) {
                if (node >= 0) {
                    used[2 * node] = true;
                    used[2 * node + 1] = true;
                }
            }
        }
        SimpleMatrix v = new SimpleMatrix(size, 1);
        for (int bus = 0; bus < network.buses; bus++) {
            for (int wire = 0; wire < 3; wire++) {
                v.set(8 * bus + 2 * wire, 0, 233 * Math.cos(Math.toRadians(5 - 120 * wire)));
                v.set(8 * bus + 2 * wire + 1, 0, 233 * Math.sin(Math.toRadians(5 - 120 * wire)));
            }
        }
        for (int step = 0; step < 10; step++) {
            SimpleMatrix f = leaving(network.pieces, v);
            SimpleMatrix j = new SimpleMatrix(size, size);
            for (int k = 0; k < size; k++) {
                if (!used[k]) {
                    j.set(k, k, 1);
                    continue;
                }
                SimpleMatrix moved = v.copy();
                moved.set(k, 0, v.get(k, 0) + 1e-3);
                SimpleMatrix column = leaving(network.pieces, moved).minus(f).divide(1e-3);
                for (int row = 0; row < size; row++) {
                    j.set(row, k, column.get(row, 0));
                }
            }
            v = v.minus(j.solve(f));
        }
        return v;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_conductor_equals_a_dense_solution_and_energy_is_kept(int seed) {
        Network network = new Network(seed);
        Results r = network.sketch.study().governing();
        SimpleMatrix expected = dense(network);

        assertThat(r.converged()).isTrue();
        assertThat(r.residualA()).isLessThanOrEqualTo(1e-6);
        assertThat(r.remarks())
                .noneMatch(x -> x.kind() == Remark.Kind.NOT_CALCULATED
                        && !x.message().key().contains("ampacity"));
        for (int bus = 0; bus < network.buses; bus++) {
            Map<String, PhaseResult> at = r.points().get("N" + bus).phases();
            int n = Network.node(bus, 3);
            for (int wire = 0; wire < 4; wire++) {
                if (network.tapOf[bus] >= 0 && wire != 3 && wire != network.tapOf[bus]) {
                    assertThat(at).doesNotContainKey("L" + (wire + 1));
                    continue;
                }
                int node = Network.node(bus, wire);
                double re = at(expected, node, 0) - (wire == 3 ? 0 : at(expected, n, 0));
                double im = at(expected, node, 1) - (wire == 3 ? 0 : at(expected, n, 1));
                PhaseResult p = at.get(wire == 3 ? "N" : "L" + (wire + 1));
                assertThat(p.voltageV()).as("bus " + bus + " " + wire).isCloseTo(Math.hypot(re, im), within(1e-6));
                double angle = Math.toRadians(p.angleDeg());
                assertThat(p.voltageV() * Math.cos(angle)).isCloseTo(re, within(1e-6));
                assertThat(p.voltageV() * Math.sin(angle)).isCloseTo(im, within(1e-6));
            }
        }
        double given = r.components().get("G").terminals().get(0).powerW();
        double taken = 0;
        for (CableResult w : r.cables().values()) {
            taken += w.lossW();
        }
        for (ComponentResult c : r.components().values()) {
            taken += c.kind() == orlop.drawing.Kind.LOAD ? c.terminals().get(0).powerW() : 0;
        }
        assertThat(given).as("energy").isCloseTo(taken, within(1e-5 * Math.max(1, taken)));
    }
}
