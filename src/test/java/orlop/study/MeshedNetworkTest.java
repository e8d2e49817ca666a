package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Large meshed networks keep Kirchhoff's law at every node and Ohm's in every cable; nothing in them is sparse any more. */
@SuppressWarnings("NullAway") // a null fails the test
class MeshedNetworkTest {
    private record Wire(String id, int a, int b, double ohm) {}

    /** A tree of bars with closing cables between any two of them. */
    private static List<Wire> wires(int bars, int closing, Random random) {
        List<Wire> all = new ArrayList<>();
        for (int v = 1; v < bars + closing; v++) {
            int a = v < bars ? v : random.nextInt(bars);
            int b = v < bars ? Math.max(0, v - 1 - random.nextInt(5)) : (a + 1 + random.nextInt(bars - 1)) % bars;
            all.add(new Wire("W" + v, a, b, 0.001 + 0.02 * random.nextDouble()));
        }
        return all;
    }

    @ParameterizedTest
    @CsvSource({"3000, 600", "2000, 2000"})
    void kirchhoff_and_ohm_hold_all_over_a_large_mesh(int bars, int closing) {
        Random random = new Random(bars + closing);
        List<Wire> wires = wires(bars, closing, random);
        double[] loadA = new double[bars];
        Sketch s = Sketch.dc(24);
        for (int v = 0; v < bars; v++) {
            s.bar("N" + v);
            if (v % 10 == 9) {
                loadA[v] = 0.01 + 0.1 * random.nextDouble();
                s.current("I" + v, loadA[v]).link("N" + v + ".load", "I" + v + ".1");
            }
        }
        for (Wire w : wires) {
            s.ohm(w.id(), "N" + w.a() + "." + w.id(), "N" + w.b() + "." + w.id(), w.ohm());
        }
        s.supply("E0", 25.5, 0.002).link("E0.1", "N0.source");
        s.supply("E1", 25.2, 0.005).link("E1.1", "N" + bars / 2 + ".source");

        Results r = s.study().governing();

        assertThat(r.converged()).isTrue();
        double[] out = loadA.clone();
        for (Wire w : wires) {
            CableResult c = r.cables().get(w.id());
            double across = volts(r, w.a()) - volts(r, w.b());
            assertThat(c.currentA()).as(w.id()).isCloseTo(across / w.ohm(), within(1e-7));
            out[w.a()] += c.currentA();
            out[w.b()] -= c.currentA();
        }
        out[0] -= (25.5 - volts(r, 0)) / 0.002;
        out[bars / 2] -= (25.2 - volts(r, bars / 2)) / 0.005;
        for (int v = 0; v < bars; v++) {
            assertThat(out[v]).as("N" + v).isCloseTo(0, within(1e-6));
        }
    }

    private static double volts(Results r, int bar) {
        return r.points().get("N" + bar).voltageV();
    }
}
