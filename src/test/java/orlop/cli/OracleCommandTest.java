package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The networks of {@code orlop/checks/oracle} (ngspice 39 and a second solver, see SOURCE.txt there) as ordinary files
 * through {@code orlop study --format json}: to 1e-4 of the value, or 1 mV, 1 mA, 1 mW.
 */
@SuppressWarnings("NullAway") // a null fails the test
class OracleCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Results that the study has no figure for. */
    private static final Set<String> NOT_GIVEN = Set.of(
            "i_a_angle_deg",
            "q_terminal_var",
            "q_var",
            "q_from_source_terminals_var",
            "v_across_v",
            "p_loss_resistive_and_diode_w");

    @TempDir
    private Path folder;

    private final Map<String, JsonNode> points = new HashMap<>();
    private final Map<String, JsonNode> cables = new HashMap<>();
    private final Map<String, JsonNode> components = new HashMap<>();

    private JsonNode read(String name) throws IOException {
        try (InputStream in = OracleCommandTest.class.getResourceAsStream("/orlop/checks/oracle/" + name)) {
            return JSON.readTree(Objects.requireNonNull(in, name));
        }
    }

    private JsonNode study(JsonNode network, boolean statedOhm, String... more) throws IOException {
        Path file = folder.resolve("network.orlop");
        Files.writeString(file, NetworkTranslator.file(network, statedOhm));
        List<String> args = new ArrayList<>(List.of("study", file.toString(), "--format", "json"));
        args.addAll(List.of(more));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.run(
                args.toArray(String[]::new),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> Display.State.NONE);
        assertThat(exit).as(err.toString(StandardCharsets.UTF_8)).isZero();
        JsonNode root = JSON.readTree(out.toString(StandardCharsets.UTF_8));
        index(root.get("points"), points);
        index(root.get("cables"), cables);
        index(root.get("components"), components);
        return root;
    }

    private static void index(JsonNode list, Map<String, JsonNode> into) {
        list.forEach(n -> into.put(n.get("id").asText(), n));
    }

    @ParameterizedTest
    @CsvSource({
        "O01, false", "O02, false", "O03, false", "O04, false", "O05, false", "O06, false", "O07, false", "O08, false",
        "O08b, false", "O10, false", "O11, false", "O12, false", "O01, true", "O02, true", "O03, true", "O04, true",
        "O05, true", "O06, true", "O07, true", "O08, true", "O08b, true", "O10, true", "O11, true", "O12, true",
        "O15, true"
    })
    void the_command_agrees_with_ngspice(String id, boolean statedOhm) throws IOException {
        JsonNode network = read(id + ".json");
        JsonNode root = study(network, statedOhm);

        assertThat(root.get("converged").asBoolean()).isTrue();
        assertThat(root.get("residualA").asDouble()).isLessThanOrEqualTo(1e-6);
        int phases = NetworkTranslator.phases(network);
        int compared = 0;
        for (JsonNode e : read(id + ".result.json").get("results")) {
            if (!NOT_GIVEN.contains(e.get("quantity").asText())) {
                Double ours = ours(e, phases);
                assertThat(ours).as("no figure for " + e).isNotNull();
                double expected = e.get("value").asDouble();
                if (!Double.isNaN(ours)) {
                    compared++;
                    assertThat(ours).as(e.toString()).isCloseTo(expected, near(expected));
                }
            }
        }
        assertThat(compared).isGreaterThan(2 * network.get("nodes").size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"O09a", "O09b", "O09c", "O09d", "O14a", "O14b"})
    void the_command_agrees_with_ngspice_on_fault_currents(String id) throws IOException {
        JsonNode network = read(id + ".json");
        JsonNode fault = null;
        for (JsonNode e : network.get("elements")) {
            fault = e.get("type").asText().equals("fault") ? e : fault;
        }
        String node = fault.get("node").asText();
        for (boolean statedOhm : new boolean[] {false, true}) {
            study(network, statedOhm, "--fault-ohm", fault.get("r_ohm").asText());
            double expected = Double.NaN;
            for (JsonNode e : read(id + ".result.json").get("results")) {
                boolean amps = e.get("quantity").asText().startsWith("i_a")
                        && !e.get("quantity").asText().endsWith("deg");
                expected = amps && e.get("kind").asText().equals("fault")
                        ? e.get("value").asDouble()
                        : expected;
            }
            JsonNode point = points.get("N" + node);
            String sort = id.startsWith("O09") ? "dc" : "ln";
            assertThat(point.get("faultMaxA").asDouble()).isCloseTo(expected, near(expected));
            assertThat(point.get("faults").get(sort).get("maxA").asDouble()).isCloseTo(expected, near(expected));
            int ends = 0;
            for (JsonNode w : cables.values()) {
                for (String end : new String[] {"from", "to"}) {
                    if (w.get(end).asText().startsWith("N" + node + ".")) {
                        ends++;
                        String field = end.equals("from") ? "faultFrom" : "faultTo";
                        assertThat(w.get(field).get("maxA").asDouble()).isCloseTo(expected, near(expected));
                    }
                }
            }
            assertThat(ends).isPositive();
        }
    }

    private static Offset<Double> near(double expected) {
        return Offset.offset(Math.max(1e-3, 1e-4 * Math.abs(expected)));
    }

    private JsonNode terminal(String id, int n) {
        return components.get(id).get("terminals").get(n);
    }

    /** Our figure; null where there is none though there ought to be, NaN where there need not be one. */
    private @Nullable Double ours(JsonNode e, int phases) {
        String id = e.get("id").asText();
        String quantity = e.get("quantity").asText();
        return switch (e.get("kind").asText()) {
            case "node" ->
                quantity.endsWith("deg")
                        ? points.get("N" + id).get("angleDeg").asDouble()
                        : points.get("N" + id).get("voltageV").asDouble();
            case "cable" -> cable(cables.get(id), quantity, phases);
            case "total" -> total(quantity, phases);
            case "converter" ->
                terminal(id, quantity.contains("_in_") ? 0 : 1)
                        .get(quantity.startsWith("p") ? "powerW" : "currentA")
                        .asDouble();
            case "impedance" ->
                quantity.equals("i_a_abs")
                        ? (Double) Math.abs(terminal(id, 0).get("currentA").asDouble())
                        : (Double) Double.NaN;
            case "diode" ->
                quantity.equals("i_a")
                        ? (Double) terminal(id, 0).get("currentA").asDouble()
                        : (Double) Double.NaN;
            default -> attachment(terminal(id, 0), quantity, phases);
        };
    }

    private static @Nullable Double attachment(JsonNode t, String quantity, int phases) {
        return switch (quantity) {
            case "i_a" -> t.get("currentA").asDouble();
            case "i_a_abs" -> Math.abs(t.get("currentA").asDouble());
            case "v_across_abs_v" -> t.get("voltageV").asDouble();
            case "p_w", "p_terminal_w" -> t.get("powerW").asDouble() / phases;
            default -> null;
        };
    }

    private static @Nullable Double cable(JsonNode w, String quantity, int phases) {
        return switch (quantity) {
            case "i_a" -> w.get("currentA").asDouble();
            case "i_a_abs" -> Math.abs(w.get("currentA").asDouble());
            case "v_drop_v", "v_drop_abs_v" -> w.get("dropV").asDouble();
            case "p_loss_w" -> w.get("lossW").asDouble() / phases;
            default -> null;
        };
    }

    private @Nullable Double total(String quantity, int phases) {
        return switch (quantity) {
            case "p_loads_w" -> (Double) (sum("load", 0) / phases);
            case "p_loss_converters_w" -> (Double) (sum("converter", 0) - sum("converter", 1));
            case "p_loss_cables_w" ->
                cables.isEmpty()
                        ? (Double) Double.NaN
                        : (Double) (cables.values().stream()
                                        .mapToDouble(w -> w.get("lossW").asDouble())
                                        .sum()
                                / phases);
            case "p_from_source_terminals_w" -> sum("supply", 0) / phases;
            case "p_from_sources_w" -> Double.NaN; // behind their resistance, which a study doesn't give
            default -> null;
        };
    }

    private double sum(String kind, int terminal) {
        return components.values().stream()
                .filter(c -> c.get("kind").asText().equals(kind))
                .mapToDouble(c -> c.get("terminals").get(terminal).get("powerW").asDouble())
                .sum();
    }
}
