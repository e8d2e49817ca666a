package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Sheet;
import orlop.store.DrawingFile;
import orlop.study.RandomCircuit;

/** What may be changed in a file without changing the vessel: the study's JSON says the same of it, every field. */
@SuppressWarnings("NullAway") // a null fails the test
class StudyInvarianceTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Map<String, JsonNode> BASES = new HashMap<>();

    @TempDir
    private Path folder;

    static Stream<String> random() {
        return IntStream.range(0, 50).mapToObj(seed -> "random " + (10 * seed + seed % 9));
    }

    static Stream<String> samples() {
        try (InputStream in = StudyInvarianceTest.class.getResourceAsStream("/sample-drawings/index.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines().filter(l -> l.endsWith(".orlop")).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<String> all() {
        return Stream.concat(samples(), random());
    }

    private static JsonNode file(String name) throws IOException {
        if (name.startsWith("random ")) {
            RandomCircuit circuit = new RandomCircuit(Integer.parseInt(name.substring(7)));
            byte[] bytes = DrawingFile.write(circuit.drawing().drawing().with(Sheet.of("1", "One")));
            return JSON.readTree(bytes);
        }
        try (InputStream in = StudyInvarianceTest.class.getResourceAsStream("/sample-drawings/" + name)) {
            return JSON.readTree(Objects.requireNonNull(in, name));
        }
    }

    private JsonNode run(JsonNode file, String condition) throws IOException {
        Path path = folder.resolve("changed.orlop");
        Files.writeString(path, JSON.writeValueAsString(file));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.run(
                new String[] {"study", path.toString(), "--format", "json", "--condition", condition},
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> Display.State.NONE);
        assertThat(exit).as(err.toString(StandardCharsets.UTF_8)).isZero();
        return JSON.readTree(out.toString(StandardCharsets.UTF_8));
    }

    /** As {@link #run}, of a file as it is, which several tests ask for. */
    private JsonNode base(String name, String condition) throws IOException {
        String key = name + ", " + condition;
        JsonNode known = BASES.get(key);
        if (known == null) {
            known = run(file(name), condition);
            BASES.put(key, known);
        }
        return known;
    }

    private FlatStudy study(JsonNode file, String condition) throws IOException {
        return FlatStudy.of(run(file, condition));
    }

    /** The governing condition and the first and last of the drawing. */
    private static List<String> conditions(JsonNode file) {
        List<String> all = new ArrayList<>(List.of("governing"));
        FileChanges.list(file, "conditions").forEach(c -> all.add(c.get("id").asText()));
        return all.size() < 4 ? all : List.of(all.get(0), all.get(1), all.get(all.size() - 1));
    }

    @ParameterizedTest
    @MethodSource("all")
    void other_tags_say_the_same(String name) throws IOException {
        JsonNode file = file(name);
        Map<String, String> tags = FileChanges.newTags(file);
        JsonNode changed = FileChanges.renamed(file, tags);
        for (String condition : conditions(file)) {
            FlatStudy expected = FlatStudy.of(FileChanges.renamed(base(name, condition), tags));

            study(changed, condition)
                    .without(".*/(message|cure)")
                    .isSameAs(expected.without(".*/(message|cure)"), name + ", " + condition);
        }
    }

    /**
     * Which member names a point, and which of two conditions that ask the same is named, is a matter of order. So is, of two equal
     * sources, which one a message speaks of.
     */
    @ParameterizedTest
    @MethodSource("all")
    void another_order_says_the_same(String name) throws IOException {
        JsonNode file = file(name);
        for (String condition : conditions(file)) {
            FlatStudy expected = FlatStudy.of(base(name, condition));
            FlatStudy found =
                    study(FileChanges.shuffled(file, name.hashCode(), condition.equals("governing")), condition);
            String named = "/points.*|/islands.*/id|.*/governingCondition|/findings/.*/(conditions|message)"
                    + sheetLinks(file);

            found.without(named).isSameAs(expected.without(named), name + ", " + condition);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void cables_drawn_from_their_other_end_only_change_their_signs(String name) throws IOException {
        JsonNode file = file(name);
        for (String condition : conditions(file)) {
            FlatStudy expected = FlatStudy.of(base(name, condition));
            for (JsonNode w : FileChanges.list(file, "cables")) {
                String at = "/cables/" + w.get("id").asText();
                for (String field : List.of("/currentA", "/dropV", "/dropPercent")) {
                    expected.turn(at + field);
                }
                for (String wire : List.of("/L1", "/L2", "/L3")) {
                    expected.turn(at + wire + "/currentA");
                    expected.turn(at + wire + "/dropV");
                }
                expected.exchange(at + "/faultFrom/", at + "/faultTo/");
                expected.exchange(at + "/from", at + "/to");
            }
            FlatStudy turnedEnds = expected.renamed(k -> k.contains("\"end\":\"from\"")
                    ? k.replace("\"end\":\"from\"", "\"end\":\"to\"")
                    : k.replace("\"end\":\"to\"", "\"end\":\"from\""));
            for (String k : List.copyOf(turnedEnds.values.keySet())) {
                if (k.endsWith("/place/end")) {
                    turnedEnds.values.computeIfPresent(k, (path, v) -> v.equals("from") ? "to" : "from");
                }
            }
            String ours = ".*/(message|cure)|/findings/.*/place/distanceM";

            study(FileChanges.turned(file), condition)
                    .without(ours)
                    .isSameAs(turnedEnds.without(ours), name + ", " + condition);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void a_chain_of_links_is_one_link(String name) throws IOException {
        JsonNode file = file(name);
        String theirs = ".*/(message|cure)|.*XT-.*|.*/dependents|.*/dependentCount|/components|/points/.*";
        for (String condition : conditions(file)) {
            study(FileChanges.chained(file), condition)
                    .without(theirs)
                    .isSameAs(FlatStudy.of(base(name, condition)).without(theirs), name + ", " + condition);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void a_cable_in_two_halves_is_one_cable(String name) throws IOException {
        JsonNode file = file(name);
        JsonNode whole = base(name, "governing");
        Map<String, Double> areas = new HashMap<>();
        whole.get("cables").forEach(w -> {
            if (w.get("areaMm2").isNumber()) {
                areas.put(w.get("id").asText(), w.get("areaMm2").asDouble());
            }
        });
        JsonNode halved = FileChanges.halved(file, areas);
        for (String condition : conditions(file)) {
            FlatStudy one = FlatStudy.of(base(name, condition));
            FlatStudy two = study(halved, condition);
            for (String id : areas.keySet()) {
                if (two.values.containsKey("/cables/" + id + "-1/id")) {
                    halves("/cables/" + id, one, two);
                }
            }
            String theirs =
                    "/findings.*|/copper/.*|.*/J-.*|.*/dependents|.*/dependentCount|/cables.*|/components|/points|/islands.*/points";

            two.without(theirs).isSameAs(one.without(theirs), name + ", " + condition);
        }
    }

    private static void halves(String at, FlatStudy one, FlatStudy two) {
        for (String field : List.of("currentA", "conductorC", "designCurrentA", "ampacityA", "areaMm2")) {
            assertSame(at, field, one, two, at + "-1/" + field, 1);
            assertSame(at, field, one, two, at + "-2/" + field, 1);
        }
        for (String field : List.of("dropV", "dropPercent", "lossW", "lengthM")) {
            if (one.values.get(at + "/" + field) instanceof Double whole && !at.isEmpty()) {
                double sum = two.number(at + "-1/" + field) + two.number(at + "-2/" + field);
                assertThat(sum).as(at + "/" + field).isCloseTo(whole, within(Math.max(1e-7, 1e-6 * Math.abs(whole))));
            }
        }
        for (String field : List.of("maxA", "minA")) {
            assertSame(at, "faultFrom/" + field, one, two, at + "-1/faultFrom/" + field, 1);
            assertSame(at, "faultTo/" + field, one, two, at + "-2/faultTo/" + field, 1);
        }
    }

    private static void assertSame(String at, String field, FlatStudy one, FlatStudy two, String there, double factor) {
        Object expected = one.values.get(at + "/" + field);
        Object found = two.values.get(there);
        if (expected instanceof Double x && found instanceof Double y) {
            assertThat(y).as(there).isCloseTo(factor * x, within(Math.max(1e-7, 1e-6 * Math.abs(x))));
        } else {
            assertThat(found).as(there).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @MethodSource("random")
    void voltages_and_currents_scale_together(String name) throws IOException {
        JsonNode file = file(name);
        FlatStudy one = FlatStudy.of(base(name, "governing"));
        FlatStudy ten = study(FileChanges.scaled(file, 10), "governing");
        int compared = 0;
        for (Map.Entry<String, Object> e : one.values.entrySet()) {
            boolean scales = e.getKey()
                    .matches("/points/.*/(voltageV|faultMaxA|faultMinA)|/cables/.*/(currentA|dropV)"
                            + "|/components/.*/(voltageV|currentA)");
            if (scales && e.getValue() instanceof Double x) {
                compared++;
                assertThat(ten.number(e.getKey()))
                        .as(e.getKey())
                        .isCloseTo(10 * x, within(Math.max(1e-6, 1e-6 * Math.abs(x))));
            }
        }
        assertThat(compared).isGreaterThan(5);
    }

    /** Twice the length is twice the resistance; a load of a ten-thousandth of the voltage hardly feels it. */
    @SuppressWarnings("ReferenceEquality") // the very same one is meant
    @ParameterizedTest
    @MethodSource("samples")
    void twice_the_length_is_twice_the_drop_of_a_light_load(String name) throws IOException {
        ObjectNode file = FileChanges.copy(file(name));
        Map<String, Double> areas = new HashMap<>();
        base(name, "governing")
                .get("cables")
                .forEach(w -> areas.put(w.get("id").asText(), w.get("areaMm2").asDouble()));
        int lightened = 0;
        for (JsonNode c : FileChanges.list(file, "components")) {
            for (String field : List.of("powerW", "shaftW", "ratedA", "currentA", "chargeA")) {
                boolean charges = field.equals("ratedA") || field.equals("chargeA"); // a battery takes all of it
                if (c.has(field) && (charges || !c.has("systems")) && !c.has("family")) {
                    ((ObjectNode) c).put(field, c.get(field).asDouble() / 10_000);
                    lightened++;
                }
            }
        }
        assertThat(lightened).isPositive();
        ObjectNode twice = FileChanges.copy(file);
        withAreas(file, areas, 1);
        withAreas(twice, areas, 2);
        java.util.Set<String> direct = direct(file);
        FlatStudy one = study(file, "governing");
        FlatStudy two = study(twice, "governing");
        int compared = 0;
        for (Map.Entry<String, Object> e : one.values.entrySet()) {
            Object amps = one.values.get(e.getKey().replace("dropV", "currentA"));
            boolean light = direct.contains(e.getKey())
                    && amps instanceof Double i
                    && Math.abs(i) < 0.05; // not what banks exchange
            if (e.getKey().matches("/cables/.*/dropV") && light && e.getValue() instanceof Double drop && drop != 0) {
                compared++;
                assertThat(two.number(e.getKey()))
                        .as(e.getKey())
                        .isCloseTo(2 * drop, within(Math.max(1e-9, 0.01 * Math.abs(drop))));
            }
        }
        assertThat(compared).isPositive();
    }

    private static void withAreas(ObjectNode file, Map<String, Double> areas, double lengths) {
        for (JsonNode w : FileChanges.list(file, "cables")) {
            Double area = areas.get(w.get("id").asText());
            ((ObjectNode) w).put("areaMm2", area > 0 ? area : 10);
            if (w.has("lengthM")) {
                ((ObjectNode) w).put("lengthM", lengths * w.get("lengthM").asDouble());
            }
        }
    }

    /** The current over to another sheet is given at the first drawn of its two links. */
    private static String sheetLinks(JsonNode file) {
        StringBuilder paths = new StringBuilder();
        for (JsonNode c : FileChanges.list(file, "components")) {
            if (c.get("kind").asText().equals("sheet-link")) {
                paths.append("|/components/").append(c.get("id").asText()).append("/.*/(currentA|powerW)");
            }
        }
        return paths.toString();
    }

    /** In alternating current a drop is a difference of magnitudes, which turns with the angle of the load. */
    private static java.util.Set<String> direct(JsonNode file) {
        java.util.Set<String> systems = new java.util.HashSet<>();
        FileChanges.list(file, "systems").forEach(s -> {
            if (s.get("nature").asText().equals("dc")) {
                systems.add(s.get("id").asText());
            }
        });
        java.util.Set<String> cables = new java.util.HashSet<>();
        for (JsonNode w : FileChanges.list(file, "cables")) {
            String at = w.get("to").asText();
            for (JsonNode c : FileChanges.list(file, "components")) {
                boolean here = at.startsWith(c.get("id").asText() + ".");
                if (here && c.has("system") && systems.contains(c.get("system").asText())) {
                    cables.add("/cables/" + w.get("id").asText() + "/dropV");
                }
            }
        }
        return cables;
    }
}
