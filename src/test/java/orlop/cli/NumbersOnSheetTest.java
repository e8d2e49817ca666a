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
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

/** Every figure of a cable, source, load or bar on an exported sheet is that of the study's JSON; the SVG is read with nothing known of scenes. */
class NumbersOnSheetTest {
    private static final Pattern SOURCE = Pattern.compile("([0-9.]+) V · ([^0-9]?[0-9.]+) A");
    private static final Pattern BAR = Pattern.compile("(?:.* · )?([0-9.]+) V");
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
        int components = 0;
        int bars = 0;
        for (String condition : conditions) {
            JsonNode study = study(file, condition);
            Map<String, JsonNode> cables = byId(study.path("cables"));
            for (JsonNode sheet : drawing.path("sheets")) {
                Document svg = svg(file, condition, sheet.path("id").asText());
                compared += compare(svg, cables);
                components += components(svg, byId(study.path("components")));
                bars += bars(svg, byId(study.path("points")));
            }
        }
        assertThat(compared).isGreaterThan(20);
        assertThat(components).isGreaterThan(10);
        assertThat(bars).isPositive();
    }

    /** Sources and loads: the figures for machines of both, and those in the labels of sources. */
    private static int components(Document svg, Map<String, JsonNode> components) {
        int compared = 0;
        for (Element g : groups(svg, "component")) {
            JsonNode first = first(components, g);
            data(g, "data-voltage-v", first.path("voltageV"));
            data(g, "data-current-a", first.path("currentA"));
            compared += g.hasAttribute("data-current-a") ? 1 : 0;
        }
        for (Element g : groups(svg, "label")) {
            JsonNode c = components.get(g.getAttribute("data-subject"));
            boolean bar = c != null
                    && List.of("busbar", "distribution-board")
                            .contains(c.path("kind").asText());
            if (c != null && !bar) {
                compared += source(g, first(components, g));
            }
        }
        return compared;
    }

    private static JsonNode first(Map<String, JsonNode> components, Element g) {
        JsonNode c = components.get(g.getAttribute("data-subject"));
        assertThat(c).as(g.getAttribute("id")).isNotNull();
        return c.path("terminals").path(0);
    }

    /** The voltage at a bar; its rating stands beside it. */
    private static int bars(Document svg, Map<String, JsonNode> points) {
        int compared = 0;
        Set<String> bars = new HashSet<>();
        groups(svg, "bar").forEach(g -> bars.add(g.getAttribute("data-subject")));
        for (Element g : groups(svg, "label")) {
            JsonNode point = points.get(g.getAttribute("data-subject"));
            if (point != null && bars.contains(g.getAttribute("data-subject"))) {
                compared += bar(g, point);
            }
        }
        return compared;
    }

    /** Voltage and current of a source, which stand in a line of their own: {@code 26 V · −123 A}. */
    private static int source(Element label, JsonNode terminal) {
        int compared = 0;
        for (String text : texts(label)) {
            Matcher m = SOURCE.matcher(text);
            if (m.matches()) {
                close(label, m.group(1), terminal.path("voltageV"));
                close(label, m.group(2), terminal.path("currentA"));
                compared += 2;
            }
        }
        return compared;
    }

    /** The voltage of a bar ends the last line of its label. */
    private static int bar(Element label, JsonNode point) {
        List<String> texts = texts(label);
        Matcher m = BAR.matcher(texts.get(texts.size() - 1));
        if (!m.matches() || !point.path("voltageV").isNumber()) {
            return 0;
        }
        close(label, m.group(1), point.path("voltageV"));
        return 1;
    }

    private static void close(Element label, String shown, JsonNode exact) {
        String digits = shown.replaceAll("[^0-9.]", "");
        double value = Double.parseDouble(digits) * (shown.contains("\u2212") ? -1 : 1);
        assertThat(value)
                .as(label.getAttribute("id") + ": " + shown)
                .isCloseTo(exact.asDouble(Double.NaN), within(halfAStep(digits, exact.asDouble())));
    }

    private static List<String> texts(Element label) {
        List<String> all = new ArrayList<>();
        NodeList texts = label.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            all.add(texts.item(i).getTextContent().replace('\u00a0', ' ').replace('\u202f', ' '));
        }
        return all;
    }

    private static List<Element> groups(Document svg, String role) {
        List<Element> all = new ArrayList<>();
        NodeList groups = svg.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            Element g = (Element) groups.item(i);
            if (g.getAttribute("class").equals(role)) {
                all.add(g);
            }
        }
        return all;
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

    private JsonNode study(Path file, String condition) throws IOException {
        Path out = folder.resolve("study.json");
        run("study", file.toString(), "--format", "json", "--condition", condition, "-o", out.toString());
        return new ObjectMapper().readTree(Files.readString(out));
    }

    private static Map<String, JsonNode> byId(JsonNode list) {
        Map<String, JsonNode> all = new LinkedHashMap<>();
        list.forEach(n -> all.put(n.path("id").asText(), n));
        return all;
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
