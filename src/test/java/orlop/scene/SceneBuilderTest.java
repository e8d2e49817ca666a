package orlop.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Point;
import orlop.drawing.Words;
import orlop.layout.Rect;
import orlop.study.CableResult;

class SceneBuilderTest {
    private static final SceneRequest REQUEST = SampleSheet.request();
    private static final Scene SCENE = SceneBuilder.bundled().build(REQUEST);

    static java.util.stream.LongStream seeds() {
        return java.util.stream.LongStream.rangeClosed(1, 50);
    }

    private static List<String> texts(Scene scene, Role role, String subject) {
        return scene.items().stream()
                .filter(i -> i.role() == role && i.subject().equals(subject))
                .flatMap(i -> i.marks().stream())
                .filter(m -> m instanceof Mark.Text)
                .map(m -> ((Mark.Text) m).text())
                .toList();
    }

    @Test
    void the_same_request_gives_the_same_scene() {
        assertThat(SceneBuilder.bundled().build(SampleSheet.request())).isEqualTo(SCENE);
    }

    @Test
    void a_cable_reads_as_the_design_says() {
        assertThat(texts(SCENE, Role.LABEL, "W6"))
                .containsExactly("W6", "2×6 mm² · 16 m", "11.5 A · 5.6 % · Ik 0.24 kA");
        assertThat(texts(SCENE, Role.LABEL, "W18"))
                .containsExactly("W18", "3G4 mm² · 3 m", "1.7 A · 0.1 % · Ik 26.2 A");
        assertThat(texts(SCENE, Role.LABEL, "W20")).containsExactly("W20", "3G2.5 mm² · 9 m", "dead in this condition");
        assertThat(texts(SCENE, Role.CABLE, "W6")).containsExactly("24");
    }

    @Test
    void every_component_cable_and_link_of_the_sheet_is_there_with_its_tag() {
        for (Component c : REQUEST.drawing().components().values()) {
            if (c.place().sheet().equals("1")) {
                assertThat(texts(SCENE, Role.LABEL, c.id())).as(c.id()).contains(c.id());
                assertThat(SCENE.item(Role.COMPONENT, c.id()).or(() -> SCENE.item(Role.BAR, c.id())))
                        .isPresent();
            }
        }
        for (Cable c : REQUEST.drawing().cables().values()) {
            assertThat(texts(SCENE, Role.LABEL, c.id())).contains(c.id());
            assertThat(SCENE.item(Role.CABLE, c.id())).isPresent();
        }
        REQUEST.drawing()
                .links()
                .values()
                .forEach(l -> assertThat(SCENE.item(Role.LINK, l.id())).isPresent());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_figure_is_the_studys_own_at_the_rounding_shown(long seed) {
        SceneRequest request = RandomSheet.request(seed);
        Scene scene = SceneBuilder.bundled().build(request);
        for (CableResult r : request.results().cables().values()) {
            List<String> lines = texts(scene, Role.LABEL, r.id());
            // Where room is narrow the figures stand in shorter lines.
            List<String> parts =
                    List.of(String.join(" · ", lines.subList(1, lines.size())).split(" · ", -1));
            assertThat(parts).as(r.id()).hasSize(r.live() ? 5 : 3);
            assertThat(parts.get(1)).isEqualTo(trimmed(r.lengthM(), 1) + " m");
            if (r.live()) {
                String[] figures = parts.subList(2, 5).toArray(new String[0]);
                shows(figures[0], " A", Objects.requireNonNull(r.currentA()), 0.005);
                shows(figures[1], " %", Objects.requireNonNull(r.dropPercent()), 0.05);
                double fault = Objects.requireNonNull(r.faultTo().maxA());
                String sign = fault < 99.95 ? " A" : " kA";
                shows(figures[2].substring(3), sign, fault < 99.95 ? fault : fault / 1000, 0.05);
            } else {
                assertThat(parts.get(2)).isEqualTo("dead in this condition");
            }
        }
    }

    private static String trimmed(double v, int digits) {
        String s = String.format(Locale.ROOT, "%." + digits + "f", v);
        return s.endsWith(".0") ? s.substring(0, s.length() - 2) : s;
    }

    /** The number before the sign is the value to half its last digit: never more than this share, or 0.05. */
    private static void shows(String text, String sign, double value, double share) {
        assertThat(text).endsWith(sign);
        double shown = Double.parseDouble(text.substring(0, text.length() - sign.length()));
        double most = Math.min(0.5, Math.max(0.05, share * value)) + 1e-9;
        assertThat(shown).isCloseTo(value, offset(most));
        if (value >= 1 && value < 9.5) {
            assertThat(shown).isCloseTo(value, offset(0.05 + 1e-9));
        }
    }

    @Test
    void each_part_of_an_annotation_can_be_switched_off() {
        Scene none = SceneBuilder.bundled().build(REQUEST.withAnnotations(Annotations.NONE));
        Scene drop = SceneBuilder.bundled()
                .build(REQUEST.withAnnotations(new Annotations(false, true, false, true, false, false)));

        assertThat(texts(none, Role.LABEL, "W6")).containsExactly("W6");
        assertThat(texts(drop, Role.LABEL, "W6")).containsExactly("W6", "16 m", "5.6 %");
    }

    /** ASTM B258, from memory: AWG 10 has 5.26 mm², AWG 8 has 8.37. */
    @Test
    void a_gauge_stands_beside_the_area_where_it_is_wished() {
        Scene gauges = SceneBuilder.bundled().build(REQUEST.withAnnotations(Annotations.ALL.withGauge(true)));
        String size = texts(SCENE, Role.LABEL, "W6").get(1).split(" · ", 2)[0];

        assertThat(size).isEqualTo("2×6 mm²");
        assertThat(texts(gauges, Role.LABEL, "W6").get(1)).startsWith("2×6 mm² (> AWG 10) · 16 m");
    }

    @Test
    void letters_are_at_least_1_8_mm_high() {
        double cap = orlop.layout.TextMeasure.bundled().capHeightEm(orlop.layout.TextMeasure.Weight.REGULAR);
        assertThat(SCENE.items())
                .flatExtracting(SceneItem::marks)
                .filteredOn(m -> m instanceof Mark.Text)
                .allSatisfy(m -> assertThat(((Mark.Text) m).sizeMm() * cap).isGreaterThanOrEqualTo(1.8));
    }

    @Test
    void a_missing_fuse_is_drawn_dashed_where_it_belongs_with_its_rating() {
        SceneItem fuse = SCENE.item(Role.PROPOSED, "1").orElseThrow();
        Mark.SymbolAt symbol = (Mark.SymbolAt) fuse.marks().get(0);
        Route w1 = Objects.requireNonNull(SCENE.routes().get("W1"));

        assertThat(symbol.name()).isEqualTo("proposed-fuse");
        assertThat(symbol.ink()).isEqualTo(Ink.DANGER);
        Route.Spot spot = w1.nearest(symbol.xMm(), symbol.yMm());
        assertThat(spot.distanceMm()).isLessThan(1e-6);
        assertThat(spot.share() * w1.lengthMm()).isLessThan(11);
        assertThat(texts(SCENE, Role.PROPOSED, "1")).containsExactly("200 A class T ?");
    }

    @Test
    void findings_stand_at_their_places_and_in_the_margin_in_order_of_height() {
        List<SceneItem> notes = SCENE.items().stream()
                .filter(i -> i.role() == Role.MARGIN && !i.subject().isEmpty())
                .toList();

        assertThat(notes).extracting(SceneItem::subject).containsExactly("1", "2", "3");
        for (int i = 1; i < notes.size(); i++) {
            assertThat(notes.get(i).bounds().minY())
                    .isGreaterThan(notes.get(i - 1).bounds().maxY());
        }
        for (String n : List.of("1", "2", "3")) {
            Rect marker = SCENE.item(Role.FINDING, n).orElseThrow().bounds();
            assertThat(texts(SCENE, Role.FINDING, n)).containsExactly(n);
            assertThat(marker.centreY())
                    .isCloseTo(notes.get(Integer.parseInt(n) - 1).bounds().minY() + 2.5, offset(10.0));
        }
        assertThat(SceneBuilder.bundled().build(REQUEST.withMargin(false)).items())
                .noneMatch(i -> i.role() == Role.MARGIN);
    }

    @Test
    void the_three_kinds_of_finding_differ_in_shape() {
        Mark danger = SCENE.item(Role.FINDING, "1").orElseThrow().marks().get(0);
        Mark defect = SCENE.item(Role.FINDING, "2").orElseThrow().marks().get(0);
        Mark advice = SCENE.item(Role.FINDING, "3").orElseThrow().marks().get(0);

        assertThat(((Mark.Area) danger).points()).hasSize(3);
        assertThat(((Mark.Area) defect).points()).hasSize(4);
        assertThat(advice).isInstanceOf(Mark.Disc.class);
    }

    @Test
    void the_title_block_says_what_is_shown() {
        assertThat(texts(SCENE, Role.TITLE_BLOCK, ""))
                .contains(
                        "Pilot cutter OSKERRIN",
                        "Main distribution, 24 V and 12 V",
                        "OSK-E-001",
                        "owner",
                        "2026-11-25",
                        "At anchor, evening",
                        "IEC 60364 · 45 °C",
                        "for check",
                        "B",
                        "1 of 3");
    }

    @Test
    void a_drawing_without_results_is_drawn_without_figures() {
        Drawing d = REQUEST.drawing();
        orlop.study.Results none = new orlop.study.Results(
                orlop.study.Results.GOVERNING,
                "",
                true,
                0,
                java.util.Map.of(),
                java.util.Map.of(),
                java.util.Map.of(),
                List.of());
        Scene scene = SceneBuilder.bundled().build(SceneRequest.screen(d, none, List.of(), "1"));

        assertThat(texts(scene, Role.LABEL, "W6")).containsExactly("W6", "2×6 mm² · 16 m");
        assertThat(scene.items()).hasSizeGreaterThan(50);
    }

    @Test
    void every_key_that_the_room_uses_has_a_text() throws Exception {
        Set<String> used = new HashSet<>();
        var pattern = java.util.regex.Pattern.compile("\"(scene\\.[a-z0-9.-]*[a-z0-9])\"");
        try (var files = java.nio.file.Files.walk(java.nio.file.Path.of("src/main/java/orlop/scene"))) {
            for (var f : files.filter(p -> p.toString().endsWith(".java")).toList()) {
                var m = pattern.matcher(java.nio.file.Files.readString(f));
                while (m.find()) {
                    used.add(m.group(1));
                }
            }
        }
        assertThat(used)
                .hasSizeGreaterThan(30)
                .allMatch(k -> Words.english().pattern(k).isPresent());
    }

    @Test
    void a_point_of_a_route_is_found_again() {
        Route w6 = Objects.requireNonNull(SCENE.routes().get("W6"));
        Point p = w6.at(0.25);

        assertThat(SCENE.cableAt(p.xMm() + 0.5, p.yMm(), 1).orElseThrow().id()).isEqualTo("W6");
        assertThat(SCENE.cableAt(p.xMm() + 0.5, p.yMm(), 1).orElseThrow().share())
                .isCloseTo(0.25, offset(1e-9));
        assertThat(SCENE.cableAt(p.xMm() + 3, p.yMm(), 1)).isEmpty();
        assertThat(SCENE.itemAt(p.xMm(), p.yMm(), 0.5).orElseThrow().id()).isEqualTo("cable-W6");
    }

    @Test
    void what_lies_at_a_point_is_found() {
        assertThat(SCENE.itemAt(62.5, 57.5, 0.5).orElseThrow().id()).isEqualTo("component-GB1");
        assertThat(SCENE.itemAt(60, 110, 0.5).orElseThrow().id()).isEqualTo("bar-24MAIN");
        assertThat(SCENE.itemAt(175, 41, 0.5).orElseThrow().role()).isEqualTo(Role.LINK);
        assertThat(SCENE.itemAt(300, 270, 0.5)).isEmpty();
        assertThat(SCENE.itemAt(30, 230, 0.5)).isEmpty();
        SceneItem marker = SCENE.item(Role.FINDING, "2").orElseThrow();
        assertThat(SCENE.itemAt(marker.bounds().centreX(), marker.bounds().centreY(), 0.5))
                .contains(marker);
    }

    @Test
    void a_rubber_band_takes_what_lies_wholly_in_it() {
        assertThat(SCENE.itemsIn(new Rect(30, 112, 60, 180)))
                .extracting(SceneItem::id)
                .containsExactlyInAnyOrder("component-F2", "component-M1", "cable-W4");
    }

    @Test
    void terminals_and_spots_on_bars_are_found() {
        assertThat(SCENE.terminalNear(62, 52, 2).orElseThrow().terminal()).hasToString("GB1.1");
        assertThat(SCENE.terminalNear(62, 52, 2).orElseThrow().connected()).isTrue();
        TerminalSpot bar = SCENE.terminalNear(61, 112, 3).orElseThrow();
        assertThat(bar.terminal()).hasToString("24MAIN.1");
        assertThat(bar.xMm()).isEqualTo(60);
        assertThat(bar.heading()).isEqualTo(orlop.layout.Heading.DOWN);
        assertThat(SCENE.terminalNear(30, 230, 3)).isEmpty();
    }
}
