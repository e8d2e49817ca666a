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
import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Drawings of {@code orlop/checks/drawn} through {@code orlop study --format json} against ngspice 39 and dense solutions
 * by numpy (see SOURCE.txt there): to 1e-4 of the value, or 1 mV, 1 mA.
 */
@SuppressWarnings("NullAway") // a null fails the test
class DrawnNetworksTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private int compared;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dc-mesh", "diode-isolator", "diodes-in-a-ring", "converters-in-parallel", "limited-sources",
                "many-sources", "nearly-ideal-supplies", "a-nanometre", "changeover", "conditions",
                "single-phase", "four-wire", "ac-to-ac", "dc-to-three-phase", "neutral-without-resistance",
                "ac-mesh", "ac-dc-ac"
            })
    void the_command_agrees_with_an_independent_solver(String name) throws IOException {
        Path file = folder.resolve(name + ".orlop");
        Files.write(file, read(name + ".orlop"));
        for (var c :
                JSON.readTree(read(name + ".result.json")).get("conditions").properties()) {
            JsonNode study = study(file, c.getKey());
            assertThat(study.get("converged").asBoolean()).isTrue();
            assertThat(study.get("residualA").asDouble()).isLessThanOrEqualTo(1e-6);
            int before = compared;
            for (var w : c.getValue().get("cables").properties()) {
                compare(w.getKey(), find(study.get("cables"), w.getKey()), "currentA", w.getValue());
            }
            for (var p : c.getValue().get("points").properties()) {
                compare(p.getKey(), terminal(study, p.getKey()), "voltageV", p.getValue());
            }
            assertThat(compared - before).isGreaterThan(1);
        }
    }

    private static byte[] read(String name) throws IOException {
        try (InputStream in = DrawnNetworksTest.class.getResourceAsStream("/orlop/checks/drawn/" + name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        }
    }

    private static JsonNode study(Path file, String condition) throws IOException {
        List<String> args = new ArrayList<>(List.of("study", file.toString(), "--format", "json"));
        if (!condition.isEmpty()) {
            args.addAll(List.of("--condition", condition));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.run(
                args.toArray(String[]::new),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> Display.State.NONE);
        assertThat(exit).as(err.toString(StandardCharsets.UTF_8)).isZero();
        return JSON.readTree(out.toByteArray());
    }

    private static JsonNode find(JsonNode list, String id) {
        for (JsonNode n : list) {
            if (n.get("id").asText().equals(id)) {
                return n;
            }
        }
        throw new AssertionError("nothing has the id " + id);
    }

    /** A terminal, {@code E1.1}, or any of those of a bar, {@code B}. */
    private static JsonNode terminal(JsonNode study, String name) {
        int dot = name.indexOf('.');
        JsonNode all = find(study.get("components"), dot < 0 ? name : name.substring(0, dot))
                .get("terminals");
        return dot < 0 ? all.get(0) : find(all, name.substring(dot + 1));
    }

    private void compare(String what, JsonNode ours, String field, JsonNode expected) {
        if (expected.isNumber()) {
            close(what, ours.get(field), expected.asDouble());
            return;
        }
        for (var phase : expected.properties()) {
            JsonNode own = ours.has(phase.getKey()) ? ours.get(phase.getKey()) : ours; // equal phases are given once
            close(what + " " + phase.getKey(), own.get(field), phase.getValue().asDouble());
        }
    }

    /** A reference of alternating current has no sign; ours has that of the power. What is dead has no figure. */
    private void close(String what, JsonNode ours, double expected) {
        if (Math.abs(expected) < 1e-6 && ours.isNull()) {
            return;
        }
        compared++;
        assertThat(ours.isNumber()).as(what).isTrue();
        double value = expected >= 0 && ours.asDouble() < 0 && expected > 1e-3 ? -ours.asDouble() : ours.asDouble();
        assertThat(value).as(what).isCloseTo(expected, Offset.offset(Math.max(1e-3, 1e-4 * Math.abs(expected))));
    }
}
