package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Networks solved by ngspice 39 and a second, independent solver (see {@code orlop/checks/oracle/SOURCE.txt}): node
 * voltages, currents, powers and losses to 1e-4 of their value, or 1 mV, 1 mA, 1 mW.
 */
@SuppressWarnings("NullAway") // a null fails the test
class OracleTest {
    @ParameterizedTest
    @ValueSource(strings = {"O01", "O02", "O03", "O04", "O05", "O06", "O07", "O08", "O08b"})
    void flow_agrees_with_ngspice(String id) {
        OracleNetwork oracle = new OracleNetwork(id);
        Results r = Study.of(oracle.drawing()).governing();

        assertThat(r.converged()).isTrue();
        assertThat(r.residualA()).isLessThanOrEqualTo(1e-6);
        int compared = 0;
        for (JsonNode e : oracle.results) {
            double expected = e.get("value").asDouble();
            Double ours = ours(r, e);
            if (ours != null) {
                compared++;
                assertThat(ours).as(e.toString()).isCloseTo(expected, within(expected));
            }
        }
        assertThat(compared).isGreaterThan(oracle.network.get("nodes").size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"O10", "O11", "O12", "O15"})
    void alternating_flow_agrees_with_ngspice(String id) {
        OracleNetwork oracle = new OracleNetwork(id);
        Results r = Study.of(oracle.drawing()).governing();

        assertThat(r.converged()).isTrue();
        assertThat(r.residualA()).isLessThanOrEqualTo(1e-6);
        int compared = 0;
        for (JsonNode e : oracle.results) {
            double expected = e.get("value").asDouble();
            Double ours = alternating(r, e, oracle.phases);
            if (ours != null) {
                compared++;
                assertThat(ours).as(e.toString()).isCloseTo(expected, within(expected));
            }
        }
        assertThat(compared).isGreaterThan(2 * oracle.network.get("nodes").size());
    }

    /** Powers and losses of ours are those of all phases; impedances have none. */
    private static Double alternating(Results r, JsonNode e, int phases) {
        String id = e.get("id").asText();
        String quantity = e.get("quantity").asText();
        boolean component =
                !List.of("node", "cable", "total").contains(e.get("kind").asText());
        return switch (quantity) {
            case "v_v_abs" -> r.points().get(OracleNetwork.bar(id)).voltageV();
            case "v_v_angle_deg" -> r.points().get(OracleNetwork.bar(id)).angleDeg();
            case "i_a_abs" ->
                component ? terminal(r, id, 0).currentA() : r.cables().get(id).currentA();
            case "v_across_abs_v" -> terminal(r, id, 0).voltageV();
            case "p_w", "p_terminal_w" -> terminal(r, id, 0).powerW() / phases;
            case "v_drop_abs_v" -> component ? null : r.cables().get(id).dropV();
            case "p_loss_w" -> component ? null : r.cables().get(id).lossW() / phases;
            default -> null;
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"O09a", "O09b", "O09c", "O09d", "O14a", "O14b"})
    void fault_currents_agree_with_ngspice(String id) {
        OracleNetwork oracle = new OracleNetwork(id);
        JsonNode fault = null;
        for (JsonNode e : oracle.network.get("elements")) {
            fault = e.get("type").asText().equals("fault") ? e : fault;
        }
        assertThat(fault).isNotNull();
        StudyOptions options = new StudyOptions(fault.get("r_ohm").asDouble());
        Results r = Study.of(oracle.drawing(), options, () -> false).governing();

        double expected = 0;
        for (JsonNode e : oracle.results) {
            boolean amps = List.of("i_a", "i_a_abs").contains(e.get("quantity").asText());
            expected = amps && e.get("kind").asText().equals("fault")
                    ? e.get("value").asDouble()
                    : expected;
        }
        FaultRange range =
                r.points().get(OracleNetwork.bar(fault.get("node").asText())).fault();
        assertThat(range.maxA()).isCloseTo(expected, within(expected));
    }

    private static Offset<Double> within(double expected) {
        return Offset.offset(Math.max(1e-3, 1e-4 * Math.abs(expected)));
    }

    private static Double ours(Results r, JsonNode e) {
        String id = e.get("id").asText();
        String quantity = e.get("quantity").asText();
        return switch (e.get("kind").asText()) {
            case "node" -> r.points().get(OracleNetwork.bar(id)).voltageV();
            case "cable" -> cable(r.cables().get(id), quantity);
            case "total" -> quantity.equals("p_loss_resistive_and_diode_w") ? null : total(r, quantity);
            case "diode" -> quantity.equals("i_a") ? terminal(r, id, 0).currentA() : null;
            case "converter" -> converter(r, id, quantity);
            default ->
                quantity.equals("i_a")
                        ? terminal(r, id, 0).currentA()
                        : terminal(r, id, 0).powerW();
        };
    }

    private static Double cable(CableResult w, String quantity) {
        return switch (quantity) {
            case "i_a" -> w.currentA();
            case "v_drop_v" -> w.dropV();
            default -> w.lossW();
        };
    }

    private static TerminalResult terminal(Results r, String component, int index) {
        return r.components().get(component).terminals().get(index);
    }

    private static Double converter(Results r, String id, String quantity) {
        return switch (quantity) {
            case "i_in_a" -> terminal(r, id, 0).currentA();
            case "i_out_a" -> terminal(r, id, 1).currentA();
            case "p_in_w" -> terminal(r, id, 0).powerW();
            default -> terminal(r, id, 1).powerW();
        };
    }

    private static Double total(Results r, String quantity) {
        if (!quantity.equals("p_loads_w")) {
            return null;
        }
        double sum = 0;
        for (ComponentResult c : r.components().values()) {
            if (c.kind() == orlop.drawing.Kind.LOAD) {
                sum += c.terminals().get(0).powerW();
            }
        }
        return sum;
    }
}
