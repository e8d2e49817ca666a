package orlop.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.Sheet;
import orlop.drawing.Soundness;
import orlop.drawing.TerminalRef;

class RoundTripTest {
    private static Drawing load(String text) throws FileProblem {
        return DrawingFile.load(text.getBytes(UTF_8), "test.orlop");
    }

    private static String text(Drawing drawing) {
        return new String(DrawingFile.write(drawing), UTF_8);
    }

    /** Every key of the line that holds this id, outside nested objects, in order. */
    private static List<String> keysOf(String text, String id) {
        String line = text.lines()
                .filter(l -> l.contains("{ \"id\": \"" + id + "\""))
                .findFirst()
                .orElseThrow();
        String flat = line.replaceAll("\"zz-future\": \\{[^}]*}", "\"zz-future\": 0");
        List<String> keys = new ArrayList<>();
        Matcher m = Pattern.compile("[{,] \"([^\"\\\\]+)\": ").matcher(flat);
        while (m.find()) {
            keys.add(m.group(1));
        }
        return keys;
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void a_kind_with_nothing_at_its_default_comes_back_whole(Kind kind) throws FileProblem {
        Drawing before = Specimens.of(kind);
        String written = text(before);

        Drawing after = load(written);

        assertThat(after).isEqualTo(before);
        assertThat(text(after)).isEqualTo(written);
        List<String> expected =
                new ArrayList<>(List.of("id", "kind", "name", "sheet", "at", "rotationDegree", "mirrored"));
        expected.addAll(List.of("labelAt", kind.spansSystems() ? "systems" : "system"));
        expected.addAll(List.of("refit", "stage", "location", "locked"));
        for (var c : kind.defaults().getClass().getRecordComponents()) {
            expected.add(c.getName());
        }
        expected.addAll(List.of("zz-future", "aa-future"));
        assertThat(keysOf(written, "K1")).containsExactlyElementsOf(expected);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void a_kind_with_its_defaults_is_written_in_five_keys(Kind kind) throws FileProblem {
        List<String> systems = kind.spansSystems() ? List.of("24", "230") : List.of("24");
        Drawing before = Drawing.empty("")
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(ElectricalSystem.of("230", Nature.AC1, 230))
                .with(Sheet.of("1", ""))
                .with(Component.of("K1", kind, Place.at("1", 10, 20), systems));

        String written = text(before);

        assertThat(load(written)).isEqualTo(before);
        assertThat(keysOf(written, "K1"))
                .containsExactly("id", "kind", "sheet", "at", kind.spansSystems() ? "systems" : "system");
    }

    @Test
    void a_drawing_with_everything_in_it_comes_back_whole() throws FileProblem {
        Drawing before = Specimens.everything();
        assertThat(Soundness.flaws(before)).isEmpty();
        String written = text(before);

        Drawing after = load(written);

        assertThat(after).isEqualTo(before);
        assertThat(DrawingFile.write(after)).isEqualTo(DrawingFile.write(before));
    }

    @Test
    void a_realistic_drawing_comes_back_whole() throws FileProblem {
        Drawing before = RealisticDrawing.make();
        assertThat(before.components().size() + before.cables().size()).isBetween(36, 50);

        Drawing after = load(text(before));

        assertThat(after).isEqualTo(before);
        assertThat(DrawingFile.write(after)).isEqualTo(DrawingFile.write(before));
    }

    @Test
    void an_empty_drawing_comes_back_whole() throws FileProblem {
        DrawingFile.warmUp();
        assertThat(load(text(Drawing.empty("")))).isEqualTo(Drawing.empty(""));
    }

    @Test
    void lists_stand_in_fixed_order_and_each_item_on_a_line_of_its_own() {
        String written = text(Specimens.everything());

        List<String> outer = written.lines()
                .filter(l -> l.matches("  \"[^\"]+\": .*"))
                .map(l -> l.replaceAll("^  \"([^\"]+)\".*", "$1"))
                .toList();
        assertThat(outer)
                .containsExactly(
                        "orlop",
                        "vessel",
                        "systems",
                        "conditions",
                        "locations",
                        "sheets",
                        "components",
                        "cables",
                        "links",
                        "cableways",
                        "notes",
                        "measurements",
                        "accepted",
                        "dayPlans",
                        "zz-future",
                        "aa-future");
        assertThat(written.lines().filter(l -> l.startsWith("    { ")))
                .hasSize(2 + 2 + 1 + 1 + Kind.values().length + 1 + 2 + 2 + 1 + 1 + 1 + 1 + 1);
        assertThat(written).endsWith("\n}\n");
    }

    @Test
    void the_keys_of_a_cable_stand_flat_and_in_order() {
        assertThat(keysOf(text(Specimens.everything()), "W1"))
                .containsExactly(
                        "id",
                        "from",
                        "to",
                        "lengthM",
                        "lengthEstimated",
                        "areaMm2",
                        "parallel",
                        "conductors",
                        "conductorClass",
                        "finish",
                        "insulationC",
                        "laying",
                        "bunchedWith",
                        "engineSpace",
                        "ambientC",
                        "returnLengthM",
                        "returnAreaMm2",
                        "loopResistanceOhm",
                        "loopReactanceOhm",
                        "conductorResistanceOhm",
                        "conductorReactanceOhm",
                        "returnResistanceOhm",
                        "returnReactanceOhm",
                        "peResistanceOhm",
                        "conductorC",
                        "refit",
                        "stage",
                        "name",
                        "cableways",
                        "bends",
                        "labelAt",
                        "locked",
                        "zz-future",
                        "aa-future");
    }

    @Test
    void a_cable_at_its_defaults_says_only_its_ends_and_that_its_area_is_left_to_orlop() {
        assertThat(text(Specimens.everything()))
                .contains("{ \"id\": \"W2\", \"from\": \"K-busbar.b\", \"to\": \"K-fuse.1\", \"areaMm2\": \"auto\" }");
    }

    @Test
    void a_link_without_an_id_of_its_own_is_written_without_one() {
        assertThat(text(Specimens.everything()))
                .contains("    { \"from\": \"K-fuse.2\", \"to\": \"K-isolator.1\" }")
                .contains("    { \"id\": \"LK1\", \"from\": \"K-isolator.1\"");
    }

    @Test
    void the_keys_that_the_design_fixes_are_read() throws FileProblem {
        Drawing d = load("""
                { "orlop": 1,
                  "vessel": { "name": "Grey Heron", "ruleSet": "iec60092", "ambientC": 45, "faultMethod": "plain" },
                  "systems": [ { "id": "24", "nature": "dc", "nominalV": 24, "highestV": 28.8, "frequencyHz": 0,
                                 "earthing": "insulated" },
                               { "id": "400", "nature": "ac3n", "nominalV": 400 },
                               { "id": "PV", "nature": "pv", "nominalV": 40 } ],
                  "conditions": [ { "id": "a", "name": "A",
                      "loads": { "E1": { "running": true, "simultaneity": 1, "average": 0.5 } },
                      "sources": { "XD1": "off" }, "switches": { "QB1": "open", "QC1": "2" } } ],
                  "sheets": [ { "id": "1", "number": "001", "title": "t", "size": "A3" } ],
                  "components": [
                    { "id": "GB1", "kind": "battery", "sheet": "1", "at": [70, 55], "system": "24" },
                    { "id": "XD1", "kind": "shore-inlet", "system": "400" },
                    { "id": "QB1", "kind": "isolator", "system": "24" },
                    { "id": "QC1", "kind": "changeover-switch", "system": "24" },
                    { "id": "24MAIN", "kind": "busbar", "system": "24" },
                    { "id": "F2", "kind": "fuse", "system": "24" },
                    { "id": "G1", "kind": "supply", "system": "400", "emfV": 231, "angleDeg": 30,
                      "resistanceOhm": 0.1, "reactanceOhm": 0.2, "oneWay": true },
                    { "id": "G2", "kind": "current-supply", "system": "24", "currentA": 5 },
                    { "id": "G3", "kind": "limited-supply", "system": "24", "setV": 28, "resistanceOhm": 0.01, "limitA": 40 },
                    { "id": "G4", "kind": "power-supply", "system": "24", "powerW": 300, "limitA": 20 },
                    { "id": "E1", "kind": "load", "system": "400", "behaviour": "current", "powerW": 1, "reactiveVar": 2,
                      "currentA": 3, "powerFactor": 0.8, "resistanceOhm": 4, "reactanceOhm": 5, "phase": "L1-L2" },
                    { "id": "D1", "kind": "diode", "system": "24", "dropV": 0.6, "resistanceOhm": 0.01 },
                    { "id": "T1", "kind": "converter", "systems": ["24", "400"], "setV": 230,
                      "outputResistanceOhm": 0.1, "efficiency": 0.9, "idleW": 12 },
                    { "id": "R1", "kind": "impedance", "system": "24", "resistanceOhm": 0.5 } ],
                  "cables": [ { "id": "W1", "from": "GB1.1", "to": "QB1.1", "lengthM": 2.5, "areaMm2": 70, "parallel": 1,
                    "loopResistanceOhm": 0.001, "loopReactanceOhm": 0.0002, "conductorC": 25 },
                    { "id": "W2", "from": "G1.1", "to": "E1.1", "areaMm2": "auto", "conductorResistanceOhm": 0.1,
                      "conductorReactanceOhm": 0.2, "returnResistanceOhm": 0.3, "returnReactanceOhm": 0.4,
                      "peResistanceOhm": 0.5 } ],
                  "links": [ { "from": "24MAIN.a", "to": "F2.1", "lengthM": 0.1 } ] }
                """);

        assertThat(d.components().size()).isEqualTo(14);
        assertThat(d.cables().require("W1").areaMm2()).isEqualTo(70);
        assertThat(d.cables().require("W2").auto()).isTrue();
        assertThat(d.cables().require("W2").conductors()).isNull();
        assertThat(d.links().require("24MAIN.a~F2.1").lengthM()).isEqualTo(0.1);
        assertThat(d.systems().require("400")).isEqualTo(ElectricalSystem.of("400", Nature.AC3N, 400));
        assertThat(d.conditions().require("a").load("E1").average()).isEqualTo(0.5);
        assertThat(d.components().require("GB1").place()).isEqualTo(Place.at("1", 70, 55));
        assertThat(text(d)).doesNotContain("zz", "extras", "null");
    }

    @Test
    void a_network_translated_by_a_machine_needs_no_sheet_and_no_places() throws FileProblem {
        Drawing d = load("""
                {"orlop":1,"systems":[{"id":"s","nature":"ac1","nominalV":230}],
                 "components":[{"id":"G","kind":"supply","system":"s"},{"id":"E","kind":"load","system":"s","powerW":5}],
                 "cables":[{"id":"W","from":"G.1","to":"E.1"}]}
                """);

        assertThat(d.sheets().values()).containsExactly(Sheet.of("1", ""));
        Point source = d.components().require("G").place().at();
        Point load = d.components().require("E").place().at();
        assertThat(load.xMm()).as("straight below").isEqualTo(source.xMm());
        assertThat(load.yMm()).isGreaterThan(source.yMm());
        assertThat(d.cables().require("W"))
                .isEqualTo(Cable.of("W", new TerminalRef("G", "1"), new TerminalRef("E", "1")));
        assertThat(load(text(d))).isEqualTo(d);
    }

    @Test
    void ten_thousand_components_without_a_place_find_one_each() throws FileProblem {
        StringBuilder s =
                new StringBuilder("{\"orlop\":1,\"systems\":[{\"id\":\"s\",\"nature\":\"dc\",\"nominalV\":12}],");
        s.append("\"components\":[{\"id\":\"K\",\"kind\":\"hull\",\"system\":\"s\",\"at\":[3,100]}");
        for (int i = 0; i < 10_000; i++) {
            s.append(",{\"id\":\"K").append(i).append("\",\"kind\":\"hull\",\"system\":\"s\"}");
        }

        Drawing d = load(s.append("]}").toString());

        assertThat(d.components().stream().map(c -> c.place().at()).distinct()).hasSize(10_001);
        assertThat(d.components().require("K0").place()).isEqualTo(Place.at("1", 30, 150));
    }

    @Test
    void null_stands_for_not_known() throws FileProblem {
        Drawing d = load("""
                {"orlop":1,"systems":[{"id":"s","nature":"dc","nominalV":12,"vitalDropPercent":null}],
                 "components":[{"id":"G","kind":"supply","system":"s","emfV":null},{"id":"E","kind":"load","system":"s"}],
                 "cables":[{"id":"W","from":"G.1","to":"E.1","lengthM":null,"conductors":null,"areaMm2":null}]}
                """);

        assertThat(d.cables().require("W").lengthM()).isNull();
        assertThat(d.cables().require("W").auto()).isTrue();
    }

    @Test
    void unknown_keys_stay_with_their_object_in_order() throws FileProblem {
        String source = """
                {
                  "orlop": 1,
                  "vessel": { "name": "V", "sails": ["main", "jib"] },
                  "sheets": [
                    { "id": "1", "weather": { "wind": 1.50, "big": 12345678901234567890.5 } }
                  ],
                  "second": null,
                  "first": [1, true, "\\ud800"]
                }
                """;

        Drawing d = load(source);

        assertThat(d.extras().json().keySet()).containsExactly("second", "first");
        assertThat(text(d)).isEqualTo(source);
    }

    @Test
    void numbers_are_written_as_short_as_they_can_be() {
        assertThat(JsonOut.shortest(70)).isEqualTo("70");
        assertThat(JsonOut.shortest(2.5)).isEqualTo("2.5");
        assertThat(JsonOut.shortest(-0.0)).isEqualTo("0");
        assertThat(JsonOut.shortest(0.001)).isEqualTo("0.001");
        assertThat(JsonOut.shortest(0.1 + 0.2)).isEqualTo("0.30000000000000004");
        assertThat(JsonOut.shortest(2e-3)).isEqualTo("0.002");
        assertThat(JsonOut.shortest(1e15)).isEqualTo("1000000000000000");
        assertThat(JsonOut.shortest(Double.parseDouble("2e23"))).isEqualTo("2e23");
        assertThat(JsonOut.shortest(-1.7e308)).isEqualTo("-17e307");
        assertThat(JsonOut.shortest(Double.MIN_VALUE)).isEqualTo("49e-325");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void any_number_reads_back_as_itself(long seed) {
        java.util.Random random = new java.util.Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double v = i % 2 == 0 ? Double.longBitsToDouble(random.nextLong()) : random.nextInt(100_000) / 1000.0;
            if (Double.isFinite(v)) {
                assertThat(Double.parseDouble(JsonOut.shortest(v))).isEqualTo(v + 0.0);
            }
        }
    }

    @Test
    void a_byte_order_mark_is_passed_over() throws FileProblem {
        assertThat(load("\uFEFF{\"orlop\":1}")).isEqualTo(Drawing.empty(""));
    }

    @Test
    void a_key_of_the_common_part_is_no_particular_of_any_kind() {
        for (Kind kind : Kind.values()) {
            List<String> keys = Shapes.component(kind).leaves().stream()
                    .flatMap(l -> l.keys().stream())
                    .toList();
            assertThat(keys).as(kind.word()).doesNotHaveDuplicates().doesNotContain("kind", "orlop");
        }
    }

    @Test
    void a_condition_in_which_all_stands_as_drawn_says_its_id_alone() {
        Drawing d = Drawing.empty("").with(OperatingCondition.asDrawn("x", ""));
        assertThat(text(d)).contains("    { \"id\": \"x\" }\n");
        assertThat(Extras.NONE.json()).isEmpty();
    }
}
