package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Kind;

/** Puts values of every wrong type at every key: the reader and, for itself, the schema must refuse each. */
class WrongTypesTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    /** What is wrong for a value of each codec, besides null. */
    private static final Map<Class<?>, List<String>> WRONG = Map.ofEntries(
            Map.entry(Codec.Text.class, List.of("7.5", "true", "[]", "{}")),
            Map.entry(Codec.Decimal.class, List.of("\"7\"", "true", "[7]", "{}")),
            Map.entry(Codec.Whole.class, List.of("7.5", "\"7\"", "false", "[]", "{}")),
            Map.entry(Codec.Flag.class, List.of("1", "\"true\"", "[]", "{}")),
            Map.entry(Codec.Word.class, List.of("\"no such word\"", "7", "true", "[]", "{}")),
            Map.entry(Codec.Area.class, List.of("\"large\"", "true", "[]", "{}")),
            Map.entry(Codec.Spot.class, List.of("[1]", "[1, 2, 3]", "[1, \"2\"]", "\"1,2\"", "7", "{}")),
            Map.entry(Codec.Steps.class, List.of("[]", "[1, 2]", "[[1]]", "[[1, \"2\"]]", "\"10:80\"", "7", "{}")),
            Map.entry(Codec.End.class, List.of("\"GB1\"", "\"GB1.\"", "\".1\"", "7", "[]", "{}")),
            Map.entry(Codec.Items.class, List.of("7", "\"x\"", "{}", "[true]")),
            Map.entry(Codec.Table.class, List.of("7", "\"x\"", "[]", "{\"K-load\": true}")));

    private static ObjectNode tree(byte[] bytes) {
        try {
            return (ObjectNode) MAPPER.readTree(bytes);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static JsonNode json(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            throw new AssertionError(text, e);
        }
    }

    private static void refusedByBoth(ObjectNode root, String key, String what) {
        byte[] bytes = root.toString().getBytes(StandardCharsets.UTF_8);
        FileProblem p = Objects.requireNonNull(
                catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(bytes, "a")), () -> "read: " + what);
        assertThat(p.place()).as(what).contains(key);
        assertThat(p.getMessage())
                .as(what)
                .doesNotContain("store.", "drawing.", "\n")
                .startsWith("a:1:");
        Trouble t = Objects.requireNonNull(
                catchThrowableOfType(Trouble.class, () -> SchemaGate.check(root)), () -> "passed the schema: " + what);
        assertThat(t.path()).as(what).contains(key);
        assertThat(t.reason().key()).as(what).startsWith("store.");
    }

    private static void spoil(ObjectNode root, ObjectNode object, Leaf leaf) {
        for (String key : leaf.keys()) {
            JsonNode sound = object.get(key);
            if (sound == null) {
                continue; // the other of "system" and "systems"
            }
            for (String wrong : wrong(leaf, key)) {
                object.set(key, json(wrong));
                refusedByBoth(root, key, key + " = " + wrong);
            }
            object.set(key, sound);
        }
    }

    private static List<String> wrong(Leaf leaf, String key) {
        List<String> wrong = new ArrayList<>();
        if (leaf instanceof Leaf.Single s) {
            wrong.addAll(Objects.requireNonNull(WRONG.get(s.codec().getClass()), () -> "no table for " + s.codec()));
            if (!s.nullable()) {
                wrong.add("null");
            }
        } else {
            wrong.addAll(key.equals("system") ? List.of("7", "[\"24\"]", "null") : List.of("\"24\"", "[]", "[7]"));
        }
        return wrong;
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void every_key_of_a_component(Kind kind) {
        ObjectNode root = tree(DrawingFile.write(Specimens.of(kind)));
        ObjectNode component = (ObjectNode) root.get("components").get(0);
        assertThat(component.get("kind").asText()).isEqualTo(kind.word());

        for (Leaf leaf : Shapes.component(kind).leaves()) {
            spoil(root, component, leaf);
        }

        for (String wrong : List.of("\"batery\"", "7", "null")) {
            component.set("kind", json(wrong));
            refusedByBoth(root, "kind", wrong);
        }
    }

    static Stream<Arguments> lists() {
        return Stream.of(
                Arguments.of("systems", Shapes.SYSTEM),
                Arguments.of("conditions", Shapes.CONDITION),
                Arguments.of("locations", Shapes.LOCATION),
                Arguments.of("sheets", Shapes.SHEET),
                Arguments.of("cables", Shapes.CABLE),
                Arguments.of("links", Shapes.LINK),
                Arguments.of("cableways", Shapes.CABLEWAY),
                Arguments.of("notes", Shapes.NOTE),
                Arguments.of("measurements", Shapes.MEASUREMENT),
                Arguments.of("accepted", Shapes.ACCEPTANCE),
                Arguments.of("dayPlans", Shapes.DAY_PLAN));
    }

    @ParameterizedTest
    @MethodSource("lists")
    void every_key_of_an_item(String list, Shape shape) {
        ObjectNode root = tree(DrawingFile.write(Specimens.everything()));
        ArrayNode items = (ArrayNode) root.get(list);
        ObjectNode item = (ObjectNode) items.get(list.equals("links") ? 1 : 0);

        for (Leaf leaf : shape.leaves()) {
            assertThat(item.has(leaf.name())).as(list + " " + leaf.name()).isTrue();
            spoil(root, item, leaf);
        }
        for (Leaf leaf : shape.leaves()) {
            if (leaf.required()) {
                JsonNode sound = item.remove(leaf.name());
                byte[] bytes = root.toString().getBytes(StandardCharsets.UTF_8);
                assertThat(catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(bytes, "a")))
                        .hasMessageContaining("the key \"" + leaf.name() + "\" is missing: add it");
                assertThat(catchThrowableOfType(Trouble.class, () -> SchemaGate.check(root))
                                .reason()
                                .key())
                        .isEqualTo("store.missing");
                item.set(leaf.name(), sound);
            }
        }
        for (String wrong : List.of("7", "null", "{}", "\"x\"", "[7]")) {
            root.set(list, json(wrong));
            refusedByBoth(root, list, list + " = " + wrong);
        }
    }

    @Test
    void every_key_of_the_vessel_and_of_what_lies_deeper() {
        ObjectNode root = tree(DrawingFile.write(Specimens.everything()));
        for (Leaf leaf : Shapes.VESSEL.leaves()) {
            spoil(root, (ObjectNode) root.get("vessel"), leaf);
        }
        for (Leaf leaf : Shapes.LOAD_STATE.leaves()) {
            spoil(root, (ObjectNode) root.at("/conditions/0/loads/K-load"), leaf);
        }
        for (Leaf leaf : Shapes.STEP.leaves()) {
            spoil(root, (ObjectNode) root.at("/dayPlans/0/steps/0"), leaf);
        }
        for (String wrong : List.of("\"1\"", "true", "null", "[1]", "2")) {
            root.set("orlop", json(wrong));
            refusedByBoth(root, "orlop", wrong);
        }
    }
}
