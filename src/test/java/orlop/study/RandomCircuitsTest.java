package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.study.RandomCircuit.Element;
import orlop.study.RandomCircuit.Sort;

/** Two thousand random circuits against a dense Newton of their own; Kirchhoff's law; energy. */
@SuppressWarnings("NullAway") // a null fails the test
class RandomCircuitsTest {
    private static final int EACH = 100;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19})
    void voltages_equal_a_dense_solution_and_currents_keep_kirchhoff_and_energy(int batch) {
        int collapsed = 0;
        for (int seed = batch * EACH; seed < (batch + 1) * EACH; seed++) {
            RandomCircuit circuit = new RandomCircuit(seed);
            Results r = circuit.drawing().study().governing();

            if (!r.converged()) { // a converter that charges a bank out of a battery too weak for it
                collapsed++;
                assertThat(r.remarks()).extracting(Remark::kind).contains(Remark.Kind.COLLAPSE);
                DenseCircuit dense = new DenseCircuit(circuit);
                assertThatThrownBy(dense::solve).as("seed %d", seed).hasMessageContaining("no dense solution");
                continue;
            }
            assertThat(r.residualA()).isLessThanOrEqualTo(1e-6);
            double[] expected = new DenseCircuit(circuit).solve();
            for (int v = 0; v < circuit.nodes; v++) {
                assertThat(r.points().get("N" + v).voltageV())
                        .as("seed %d, N%d", seed, v)
                        .isCloseTo(expected[v], within(1e-7));
            }
            balance(seed, circuit, r);
        }
        assertThat(collapsed).isLessThanOrEqualTo(2);
    }

    private static void balance(int seed, RandomCircuit circuit, Results r) {
        double[] sum = new double[circuit.nodes];
        double given = 0;
        double taken = 0;
        for (int n = 0; n < circuit.elements.size(); n++) {
            Element e = circuit.elements.get(n);
            String id = RandomCircuit.id(n);
            if (e.sort() == Sort.CABLE) {
                CableResult w = r.cables().get(id);
                sum[e.a()] += w.currentA();
                sum[e.b()] -= w.currentA();
                taken += w.lossW();
                continue;
            }
            TerminalResult t = r.components().get(id).terminals().get(0);
            boolean source = switch (e.sort()) {
                case BATTERY, LIMITED, CURRENT_SOURCE, POWER_SOURCE -> true;
                default -> false;
            };
            sum[e.a()] += source ? -t.currentA() : t.currentA();
            given += source ? t.powerW() : 0;
            taken += source ? 0 : t.powerW();
            if (e.sort() == Sort.DIODE) {
                sum[e.b()] -= t.currentA();
                taken -= r.points().get("N" + e.b()).voltageV() * t.currentA();
            } else if (e.sort() == Sort.CONVERTER) {
                TerminalResult out = r.components().get(id).terminals().get(1);
                sum[e.b()] -= out.currentA();
                given += out.powerW();
            }
        }
        for (double s : sum) {
            assertThat(s).as("Kirchhoff, seed %d", seed).isCloseTo(0, within(1e-6));
        }
        assertThat(given).as("energy, seed %d", seed).isCloseTo(taken, within(1e-6 * Math.max(1, taken)));
    }

    @Test
    void every_kink_is_met_on_both_sides() {
        Map<Sort, Integer> elements = new EnumMap<>(Sort.class);
        int charged = 0;
        int atLimit = 0;
        int conducting = 0;
        int blocking = 0;
        int largest = 0;
        for (int seed = 0; seed < 20 * EACH; seed += 7) {
            RandomCircuit circuit = new RandomCircuit(seed);
            largest = Math.max(largest, circuit.nodes);
            Results r = circuit.nodes > 40 ? null : circuit.drawing().study().governing();
            for (int n = 0; n < circuit.elements.size(); n++) {
                Element e = circuit.elements.get(n);
                elements.merge(e.sort(), 1, Integer::sum);
                if (r != null && r.converged() && e.sort() != Sort.CABLE) {
                    double amps = r.components()
                            .get(RandomCircuit.id(n))
                            .terminals()
                            .get(0)
                            .currentA();
                    charged += e.sort() == Sort.BATTERY && amps < 0 ? 1 : 0;
                    atLimit += e.sort() == Sort.LIMITED && amps > 0.999 * e.z() ? 1 : 0;
                    conducting += e.sort() == Sort.DIODE && amps > 0 ? 1 : 0;
                    blocking += e.sort() == Sort.DIODE && amps == 0 ? 1 : 0;
                }
            }
        }
        assertThat(elements).hasSize(Sort.values().length);
        assertThat(largest).isGreaterThan(300);
        assertThat(charged).isGreaterThan(20);
        assertThat(atLimit).isGreaterThan(5);
        assertThat(conducting).isGreaterThan(5);
        assertThat(blocking).isGreaterThan(5);
    }
}
