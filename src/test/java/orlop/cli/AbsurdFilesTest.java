package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Values that no vessel has, but that a file may hold: results or findings, never an exception, NaN or infinity. */
class AbsurdFilesTest {
    private static final String[] VALUES = {
        "0", "1e-300", "1e-150", "1e-9", "0.5", "1", "24", "1e3", "1e9", "1e12", "1e150", "1e300", "1.7e308"
    };

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private String json = "";

    private static String file(String components, String cables, String links) {
        return """
                {"orlop": 1, "vessel": {"name": "Absurd", "ruleSet": "iec60364"},
                 "systems": [{"id": "S", "nature": "dc", "nominalV": 24}, {"id": "T", "nature": "dc", "nominalV": 12}],
                 "sheets": [{"id": "1", "number": "1", "title": "One", "size": "A3"}],
                 "components": [%s], "cables": [%s], "links": [%s]}
                """.formatted(components, cables, links);
    }

    private static String component(String id, String kind, String fields) {
        String system = kind.equals("converter") || kind.equals("dc-dc-converter")
                ? "\"systems\": [\"S\", \"T\"]"
                : "\"system\": \"S\"";
        return "{\"id\": \"%s\", \"kind\": \"%s\", \"sheet\": \"1\", \"at\": [50, 50], %s%s}"
                .formatted(id, kind, system, fields.isEmpty() ? "" : ", " + fields);
    }

    private static String cable(String id, String from, String to, String fields) {
        return "{\"id\": \"%s\", \"from\": \"%s\", \"to\": \"%s\", %s}".formatted(id, from, to, fields);
    }

    private int run(String... args) {
        out.reset();
        err.reset();
        return Main.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> Display.State.NONE);
    }

    /** Runs the study in two forms, the findings with it; whether the file was taken at all. */
    private boolean sound(String text) throws IOException {
        Path path = folder.resolve("absurd.orlop");
        Files.writeString(path, text);
        int exit = run("study", path.toString(), "--format", "json");
        String said = err.toString(StandardCharsets.UTF_8);
        assertThat(said).as(text).doesNotContain("unexpected", "Exception");
        if (exit == 2) {
            assertThat(said).contains("absurd.orlop").hasLineCount(1);
            return false;
        }
        assertThat(exit).as(said).isZero();
        json = out.toString(StandardCharsets.UTF_8);
        finite(new ObjectMapper().readTree(json), text);
        String format = text.hashCode() % 2 == 0 ? "table" : "csv";
        assertThat(run("study", path.toString(), "--format", format)).as(text).isZero();
        clean(text);
        return true;
    }

    private void clean(String text) {
        assertThat(err.toString(StandardCharsets.UTF_8)).as(text).isEmpty();
        assertThat(out.toString(StandardCharsets.UTF_8)).as(text).doesNotContain("NaN", "Infinity", "∞");
    }

    private static void finite(JsonNode n, String text) {
        if (n.isNumber()) {
            assertThat(n.asDouble()).as(text).isFinite();
        } else if (n.isTextual()) {
            assertThat(n.asText()).as(text).doesNotContain("NaN", "Infinity", "∞");
        }
        n.forEach(e -> finite(e, text));
    }

    @ParameterizedTest
    @CsvSource({"1e300, 10", "10, 1e-300", "1e300, 1e-300", "1e-300, 1e300", "1.7e308, 1e-300"})
    void a_cable_of_no_sense(String lengthM, String areaMm2) throws IOException {
        String fields = "\"lengthM\": " + lengthM + ", \"areaMm2\": " + areaMm2;

        sound(file(
                component("G", "supply", "\"emfV\": 25, \"resistanceOhm\": 0.01") + ","
                        + component("E1", "load", "\"behaviour\": \"power\", \"powerW\": 100"),
                cable("W1", "G.1", "E1.1", fields),
                ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e12", "1e100", "1e300"})
    void a_load_of_no_sense_has_no_operating_point(String powerW) throws IOException {
        boolean taken = sound(file(
                component("G", "supply", "\"emfV\": 25, \"resistanceOhm\": 0.01") + ","
                        + component("E1", "load", "\"behaviour\": \"power\", \"powerW\": " + powerW),
                cable("W1", "G.1", "E1.1", "\"lengthM\": 5, \"areaMm2\": \"auto\""),
                ""));

        assertThat(taken).isTrue();
        assertThat(json).contains("No operating point");
    }

    private static String random(Random r, String... fields) {
        StringBuilder all = new StringBuilder();
        for (String field : fields) {
            if (r.nextInt(4) > 0) {
                all.append(all.length() == 0 ? "" : ", ")
                        .append('"')
                        .append(field)
                        .append("\": ")
                        .append(r.nextInt(3) > 0 ? "24" : VALUES[r.nextInt(VALUES.length)]);
            }
        }
        return all.toString();
    }

    private static String load(Random r, String behaviour, String field) {
        String value = random(r, field);
        return "\"behaviour\": \"" + behaviour + "\"" + (value.isEmpty() ? "" : ", " + value);
    }

    private static String randomFile(int seed) {
        Random r = new Random(seed);
        String converter = r.nextBoolean() ? "converter" : "dc-dc-converter";
        String components = String.join(
                ",",
                component("G1", "supply", random(r, "emfV", "resistanceOhm")),
                component("G2", "limited-supply", random(r, "setV", "resistanceOhm", "limitA")),
                component("G3", r.nextBoolean() ? "battery" : "power-supply", ""),
                component("B1", "busbar", ""),
                component("D1", "diode", random(r, "dropV", "resistanceOhm")),
                component("E1", "load", load(r, "power", "powerW")),
                component("E2", "load", load(r, "current", "currentA")),
                component("E3", "load", load(r, "resistance", "resistanceOhm")),
                component("Z1", "impedance", random(r, "resistanceOhm")),
                component("T1", converter, random(r, "setV", "outputResistanceOhm", "idleW")),
                component("E4", "load", load(r, "power", "powerW")).replace("\"S\"", "\"T\""));
        String cables = String.join(
                ",",
                cable("W1", "G1.1", "B1.a", area(r)),
                cable("W2", "B1.b", "Z1.1", area(r)),
                cable("W3", "Z1.2", "E1.1", area(r)),
                cable("W4", "B1.c", "E2.1", area(r)),
                cable("W5", "B1.d", "B1.e", area(r)),
                cable("W6", "T1.2", "E4.1", area(r)),
                cable("W7", "D1.2", "E3.1", area(r)));
        String links = """
                {"from": "B1.f", "to": "G2.1"}, {"from": "B1.g", "to": "D1.1"}, {"from": "B1.h", "to": "T1.1"},
                {"from": "B1.i", "to": "G3.1"}""";
        return file(components, cables, links);
    }

    private static String area(Random r) {
        String measured = r.nextInt(4) == 0 ? random(r, "loopResistanceOhm") : "";
        String length = random(r, "lengthM");
        String area = r.nextInt(3) == 0 ? "\"areaMm2\": \"auto\"" : "\"areaMm2\": " + positive(r);
        return area + (measured.isEmpty() ? "" : ", " + measured) + (length.isEmpty() ? "" : ", " + length);
    }

    private static String positive(Random r) {
        return r.nextInt(3) > 0 ? "10" : VALUES[1 + r.nextInt(VALUES.length - 1)];
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void whatever_a_file_may_hold(int batch) throws IOException {
        int taken = 0;
        for (int seed = 25 * batch; seed < 25 * batch + 25; seed++) {
            taken += sound(randomFile(seed)) ? 1 : 0;
        }
        assertThat(taken).as("files that were not refused").isGreaterThan(10);
    }
}
