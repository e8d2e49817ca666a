package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import orlop.drawing.Cable;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Source;
import orlop.study.linear.Complex;

/** A four-wire network whose phases differ against ngspice: ORACLE O13, solved there node by node. */
@SuppressWarnings("NullAway") // a null fails the test
class FourWireOracleTest {
    private static JsonNode read(String name) throws IOException {
        try (InputStream in = FourWireOracleTest.class.getResourceAsStream("/orlop/checks/oracle/" + name)) {
            return new ObjectMapper().readTree(Objects.requireNonNull(in, name));
        }
    }

    /** The four nodes of a bus are one bar, the four cores of a cable one cable, the three sources one supply. */
    private static Sketch oracle(JsonNode network) {
        Sketch s = AcSketch.of(Nature.AC3N, network.get("nominal_v").asDouble() * Math.sqrt(3));
        s.bar("gen").bar("db");
        for (JsonNode e : network.get("elements")) {
            String id = e.get("id").asText();
            switch (id) {
                case "G_L1" ->
                    s.add(
                                    "G",
                                    new Source.Supply(
                                            231.0,
                                            0,
                                            e.get("r_ohm").asDouble(),
                                            e.get("x_ohm").asDouble(),
                                            false))
                            .link("gen.g", "G.1");
                case "C1_L1" -> {
                    double x = e.get("x_ohm").asDouble();
                    s.cable(
                            "C1",
                            "gen.w",
                            "db.w",
                            e.get("length_m").asDouble(),
                            e.get("area_mm2").asDouble());
                    Cable w = s.drawing().cables().require("C1");
                    Cable.Measured m = new Cable.Measured(null, null, null, x, null, null, null);
                    double hotC = e.get("conductor_temp_c").asDouble();
                    s.change(d -> d.with(FourWireTest.remade(w, null, m, hotC)));
                }
                case "La", "Lb", "Lc", "Lab" -> {
                    Phase phase = Map.of("La", Phase.L1, "Lb", Phase.L2, "Lc", Phase.L3, "Lab", Phase.L1_L2)
                            .get(id);
                    s.add(
                                    id,
                                    FourWireTest.load(
                                            e.get("r_ohm").asDouble(),
                                            e.get("x_ohm").asDouble(),
                                            phase))
                            .link("db." + id, id + ".1");
                }
                default -> {}
            }
        }
        return s;
    }

    private static Offset<Double> near(double expected) {
        return within(Math.max(1e-3, 1e-4 * Math.abs(expected)));
    }

    private static Complex phasor(PhaseResult p) {
        return Complex.polar(p.voltageV(), p.angleDeg());
    }

    /** O13: the neutral of the source is the reference there; ours give lines against the neutral at the place. */
    @Test
    void an_unbalanced_four_wire_network_agrees_with_ngspice() throws IOException {
        Results r = oracle(read("O13.json")).study().governing();
        assertThat(r.converged()).isTrue();
        assertThat(r.residualA()).isLessThanOrEqualTo(1e-6);
        int compared = 0;
        for (JsonNode e : read("O13.result.json").get("results")) {
            Double ours = ours(r, e);
            double expected = e.get("value").asDouble();
            if (ours != null) {
                compared++;
                assertThat(ours).as(e.toString()).isCloseTo(expected, near(expected));
            }
        }
        assertThat(compared).isEqualTo(38);
    }

    private static Double ours(Results r, JsonNode e) {
        String id = e.get("id").asText();
        String quantity = e.get("quantity").asText();
        String wire = id.substring(id.indexOf('_') + 1);
        switch (e.get("kind").asText()) {
            case "node" -> {
                Map<String, PhaseResult> at =
                        r.points().get(id.substring(0, id.indexOf('_'))).phases();
                Complex n = phasor(at.get("N"));
                Complex v = wire.equals("N") ? n : n.plus(phasor(at.get(wire)));
                return quantity.equals("v_v_abs") ? (Double) v.magnitude() : (Double) v.angleDeg();
            }
            case "ac_source" -> {
                PhaseResult p = FourWireTest.terminal(r, "G", 0).phases().get(wire);
                return quantity.equals("i_a_abs") ? p.currentA() : null;
            }
            case "cable" -> {
                PhaseResult p = r.cables().get("C1").phases().get(wire);
                return quantity.equals("i_a_abs") ? p.currentA() : null;
            }
            case "load_z" -> {
                TerminalResult t = FourWireTest.terminal(r, id, 0);
                return switch (quantity) {
                    case "i_a_abs" -> t.currentA();
                    case "v_across_abs_v" -> t.voltageV();
                    case "p_w" -> t.powerW();
                    default -> null;
                };
            }
            case "total" -> {
                List<String> loads = List.of("La", "Lb", "Lc", "Lab");
                return switch (quantity) {
                    case "p_from_source_terminals_w" ->
                        FourWireTest.terminal(r, "G", 0).powerW();
                    case "p_loss_cables_w" -> r.cables().get("C1").lossW();
                    case "p_loads_w" ->
                        loads.stream()
                                .mapToDouble(x -> FourWireTest.terminal(r, x, 0).powerW())
                                .sum();
                    default -> null;
                };
            }
            default -> {
                return null;
            }
        }
    }
}
