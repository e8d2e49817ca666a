package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.contentOf;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands over a copy of a small drawing with two faults. */
class CommandsTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void copy_the_drawing() throws IOException {
        file = folder.resolve("vessel.orlop");
        try (InputStream in =
                Objects.requireNonNull(CommandsTest.class.getResourceAsStream("/orlop/drawings/small-cutter.orlop"))) {
            Files.copy(in, file);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"governing", "anchor", "At anchor, evening"})
    void the_study_as_json_obeys_its_schema(String condition) throws IOException {
        assertThat(run("study", file.toString(), "--format", "json", "--condition", condition))
                .isZero();

        JsonNode root = new ObjectMapper().readTree(printed());
        assertThat(schema().validate(printed(), InputFormat.JSON)).isEmpty();
        assertThat(root.path("condition").asText()).isEqualTo(condition.equals("governing") ? "governing" : "anchor");
        assertThat(root.path("converged").asBoolean()).isTrue();
        assertThat(root.path("residualA").asDouble()).isBetween(0.0, 1e-6);
        assertThat(root.path("cables")).hasSize(14);
        assertThat(root.path("components")).hasSize(26);
    }

    @ParameterizedTest
    @CsvSource({"dc, 24, dc, 24", "ac1, 230, ln, 230", "ac3, 400, 3ph, 230.9401"})
    void a_point_says_which_fault_it_is_and_its_voltage_to_neutral(
            String nature, double nominalV, String fault, double voltageV) throws IOException {
        Files.writeString(file, """
                {"orlop": 1, "vessel": {"name": "Plain", "ruleSet": "iec60364", "faultMethod": "plain"},
                 "systems": [{"id": "S", "nature": "%s", "nominalV": %s}],
                 "sheets": [{"id": "1", "number": "1", "title": "One", "size": "A3"}],
                 "components": [
                  {"id": "G1", "kind": "supply", "sheet": "1", "at": [70, 55], "system": "S", "resistanceOhm": 0.5},
                  {"id": "N1", "kind": "busbar", "sheet": "1", "at": [90, 55], "system": "S"}],
                 "links": [{"from": "G1.1", "to": "N1.a"}]}
                """.formatted(nature, nominalV));
        assertThat(run("study", file.toString(), "--format", "json")).isZero();

        JsonNode point = new ObjectMapper().readTree(printed()).path("points").path(0);
        assertThat(schema().validate(printed(), InputFormat.JSON)).isEmpty();
        assertThat(point.path("voltageV").asDouble()).isCloseTo(voltageV, within(1e-3));
        assertThat(point.path("angleDeg").isNumber()).isEqualTo(!nature.equals("dc"));
        assertThat(point.path("faults").path(fault).path("maxA").asDouble()).isCloseTo(voltageV / 0.5, within(1e-2));
    }

    @Test
    void the_findings_name_the_circuit_without_its_fuse_and_end_with_exit_code_1() throws IOException {
        assertThat(run("findings", file.toString(), "--format", "json")).isEqualTo(1);

        JsonNode first = new ObjectMapper().readTree(printed()).path(0);
        assertThat(first.path("rule").asText()).isEqualTo("missing-fuse");
        assertThat(first.path("severity").asText()).isEqualTo("danger");
        assertThat(first.path("place").path("cable").asText()).isEqualTo("W7");
        assertThat(first.path("place").path("end").asText()).isEqualTo("from");
        assertThat(first.path("proposed").path("ratingA").asDouble()).isBetween(3.0, 20.0);
    }

    @Test
    void the_same_command_prints_the_same_bytes_twice() {
        assertThat(run("study", file.toString(), "--format", "json")).isZero();
        String first = printed();
        out.reset();

        assertThat(run("study", file.toString(), "--format", "json")).isZero();

        assertThat(printed()).isEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"table", "csv", "json"})
    void a_study_goes_to_a_file_that_is_named(String format) {
        Path result = folder.resolve("result.txt");

        assertThat(run("study", file.toString(), "--format", format, "-o", result.toString()))
                .isZero();

        assertThat(contentOf(result.toFile(), StandardCharsets.UTF_8)).contains("W7", "WC1.f");
        assertThat(out.size()).isZero();
    }

    @Test
    void the_working_of_a_cable_is_told_with_formulas_values_and_sources() {
        assertThat(run("study", file.toString(), "--working", "W7", "--condition", "anchor"))
                .isZero();

        assertThat(printed())
                .contains("ΔU = I · R = ", "Iz = ", "33 CFR 183.425", "Ik max = ", "IEC 60228", "θ = ", "Ib = ");
    }

    @Test
    void a_sheet_is_exported_as_svg_and_as_png() throws IOException {
        for (String ending : new String[] {"svg", "png"}) {
            Path sheet = folder.resolve("sheet." + ending);
            assertThat(run("export", file.toString(), "-o", sheet.toString(), "--condition", "motoring"))
                    .isZero();
            assertThat(Files.size(sheet)).isGreaterThan(10_000);
        }
        assertThat(contentOf(folder.resolve("sheet.svg").toFile(), StandardCharsets.UTF_8))
                .contains("Motoring, night", "bilge pump", "licensed");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "study %s --condition nowhere | there is no such condition",
                "export %s -o %s.svg --sheet 99 | there is no such sheet",
                "export %s -o %s.doc | the file's name says the form",
                "export %s -o /nowhere/at/all.svg | there is no folder to write to",
                "study %s --working W99 | no cable and no fed load of this tag",
                "study %s --fault-ohm -1 | the resistance of a fault is 0 or more",
                "study %s.missing | no such file",
            })
    void bad_input_gets_one_line_and_exit_code_2(String typed, String expected) {
        assertThat(run(typed.strip().replace("%s", file.toString()).split(" "))).isEqualTo(2);

        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains(expected.strip())
                .hasLineCount(1);
        assertThat(out.size()).isZero();
    }

    @Test
    void a_broken_file_is_told_with_its_line_and_place() throws IOException {
        Files.writeString(file, Files.readString(file).replace("\"lengthM\": 16,", "\"lengthM\": -16,"));

        assertThat(run("study", file.toString())).isEqualTo(2);

        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("vessel.orlop:", "W5", "lengthM", "-16".replace('-', '−'))
                .hasLineCount(1);
    }

    @Test
    void an_unknown_rule_set_is_refused_with_those_there_are() throws IOException {
        Files.writeString(file, Files.readString(file).replace("\"abyc\"", "\"abcy\""));

        assertThat(run("study", file.toString())).isEqualTo(2);

        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("vessel · ruleSet", "abcy", "abyc", "iec60364")
                .hasLineCount(1);
    }

    private static Schema schema() throws IOException {
        try (InputStream in = Objects.requireNonNull(StudyJson.class.getResourceAsStream("study-1.schema.json"))) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
        }
    }

    private String printed() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private int run(String... args) {
        return Main.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> Display.State.NONE);
    }
}
