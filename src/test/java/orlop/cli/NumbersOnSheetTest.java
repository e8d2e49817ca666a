package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Every figure of a cable on an exported sheet is that of the study's JSON; the SVG is read with nothing known of scenes. */
class NumbersOnSheetTest {
    private static final Pattern FIGURE = Pattern.compile("(Ik )?([0-9.]+) (A|kA|%)");

    @TempDir
    private Path folder;

    static Stream<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sample-drawings"))) {
            return files.filter(f -> f.toString().endsWith(".orlop")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_number_on_the_sheets_is_the_studys_at_the_rounding_shown(Path file) throws Exception {
        JsonNode drawing = new ObjectMapper().readTree(Files.readString(file));
        List<String> conditions = new ArrayList<>(List.of("governing"));
        drawing.path("conditions").forEach(c -> conditions.add(c.path("id").asText()));
        int compared = 0;
        for (String condition : conditions.subList(0, Math.min(2, conditions.size()))) {
            Map<String, JsonNode> cables = study(file, condition);
            for (JsonNode sheet : drawing.path("sheets")) {
                compared += compare(svg(file, condition, sheet.path("id").asText()), cables);
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    /** It is there for faults and carries nothing in service: common practice, no source. */
    @ParameterizedTest
    @MethodSource("samples")
    void a_protective_conductor_is_never_called_dead(Path file) throws Exception {
        JsonNode drawing = new ObjectMapper().readTree(Files.readString(file));
        List<String> called = new ArrayList<>();
        int cables = 0;
        for (JsonNode sheet : drawing.path("sheets")) {
            NodeList groups = svg(file, "governing", sheet.path("id").asText()).getElementsByTagName("g");
            for (int i = 0; i < groups.getLength(); i++) {
                Element g = (Element) groups.item(i);
                boolean label = g.getAttribute("class").equals("label");
                cables += label ? 1 : 0;
                if (label && isProtective(drawing, g.getAttribute("data-subject"))) {
                    called.add(g.getTextContent());
                }
            }
        }
        assertThat(cables).isPositive();
        assertThat(called).noneMatch(t -> t.contains("dead"));
        assertThat(called).hasSize(file.endsWith("pilot-cutter.orlop") ? 3 : 0); // W47, W48, W49
    }

    private static boolean isProtective(JsonNode drawing, String cable) {
        for (JsonNode w : drawing.path("cables")) {
            if (w.path("id").asText().equals(cable)) {
                return w.path("conductors").asText().equals("pe");
            }
        }
        return false;
    }

    private static int compare(Document svg, Map<String, JsonNode> cables) {
        int compared = 0;
        NodeList groups = svg.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            Element g = (Element) groups.item(i);
            JsonNode cable = cables.get(g.getAttribute("data-subject"));
            if (cable == null) {
                continue;
            }
            if (g.getAttribute("class").equals("label")) {
                compared += label(g, cable);
            } else if (g.getAttribute("class").equals("cable")) {
                data(g, "data-current-a", cable.path("currentA"));
                data(g, "data-drop-percent", cable.path("dropPercent"));
                data(g, "data-ampacity-a", cable.path("ampacityA"));
                data(g, "data-area-mm2", cable.path("areaMm2"));
            }
        }
        return compared;
    }

    private static void data(Element g, String attribute, JsonNode value) {
        assertThat(g.hasAttribute(attribute))
                .as(g.getAttribute("id") + " " + attribute)
                .isEqualTo(value.isNumber());
        if (value.isNumber()) {
            assertThat(Double.parseDouble(g.getAttribute(attribute))).isCloseTo(value.asDouble(), within(2e-6));
        }
    }

    private static int label(Element g, JsonNode cable) {
        StringBuilder text = new StringBuilder();
        NodeList texts = g.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            text.append(texts.item(i).getTextContent().replace(' ', ' ').replace(' ', ' '))
                    .append(" · ");
        }
        int compared = 0;
        for (String part : text.toString().split(" · ", -1)) {
            Matcher m = FIGURE.matcher(part);
            if (m.matches()) {
                double shown = Double.parseDouble(m.group(2));
                boolean kilo = m.group(3).equals("kA");
                double exact = m.group(1) != null
                        ? fault(cable) / (kilo ? 1000 : 1)
                        : Math.abs(cable.path(kilo || m.group(3).equals("A") ? "currentA" : "dropPercent")
                                .asDouble(Double.NaN));
                assertThat(shown)
                        .as(cable.path("id").asText() + ": " + part)
                        .isCloseTo(exact, within(halfAStep(m.group(2), exact)));
                compared++;
            }
        }
        return compared;
    }

    private static double fault(JsonNode cable) {
        double from = cable.path("faultFrom").path("maxA").asDouble(Double.POSITIVE_INFINITY);
        return Math.min(from, cable.path("faultTo").path("maxA").asDouble(Double.POSITIVE_INFINITY));
    }

    /** Half of the last digit: of those shown, or of the second significant one where zeros behind the point are left out. */
    private static double halfAStep(String shown, double exact) {
        int point = shown.indexOf('.');
        double last = Math.pow(10, point < 0 ? 0 : point + 1 - shown.length());
        double second = exact == 0 ? last : Math.pow(10, Math.floor(Math.log10(Math.abs(exact))) - 1);
        return 0.5 * Math.max(Math.min(last, Math.max(second, 0.1)), 1e-9) * (1 + 1e-6);
    }

    private Map<String, JsonNode> study(Path file, String condition) throws IOException {
        Path out = folder.resolve("study.json");
        run("study", file.toString(), "--format", "json", "--condition", condition, "-o", out.toString());
        Map<String, JsonNode> cables = new LinkedHashMap<>();
        for (JsonNode c : new ObjectMapper().readTree(Files.readString(out)).path("cables")) {
            cables.put(c.path("id").asText(), c);
        }
        return cables;
    }

    private Document svg(Path file, String condition, String sheet) throws Exception {
        Path out = folder.resolve("sheet.svg");
        run("export", file.toString(), "-o", out.toString(), "--sheet", sheet, "--condition", condition);
        return DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(Files.readAllBytes(out)));
    }

    static void run(String... args) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(
                args,
                new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> Display.State.NONE);
        assertThat(code).as(err.toString(StandardCharsets.UTF_8)).isZero();
    }
}
