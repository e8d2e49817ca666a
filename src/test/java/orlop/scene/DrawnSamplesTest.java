package orlop.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Sheet;
import orlop.drawing.Words;
import orlop.findings.Checker;
import orlop.findings.Finding;
import orlop.store.DrawingFile;
import orlop.study.Results;
import orlop.study.Study;

/** The samples' sheets: what is explained on them, and what must be read at first glance. */
class DrawnSamplesTest {
    private static Drawing sample(String name) throws Exception {
        return DrawingFile.load(Path.of("sample-drawings", name + ".orlop"));
    }

    private static List<Scene> pages(Drawing d, String condition, String sheet) {
        Study study = Study.of(d);
        List<Finding> findings = Checker.check(study);
        Results r =
                condition.isEmpty() ? study.governing() : study.byCondition().get(condition);
        return SceneBuilder.bundled().pages(SceneRequest.paper(d, Objects.requireNonNull(r), findings, sheet));
    }

    private static List<SceneItem> items(Scene scene, Role role) {
        return scene.items().stream().filter(i -> i.role() == role).toList();
    }

    private static List<Mark.Text> texts(SceneItem item) {
        List<Mark.Text> all = new ArrayList<>();
        for (Mark m : item.marks()) {
            if (m instanceof Mark.Text t) {
                all.add(t);
            }
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(strings = {"pilot-cutter", "pilot-cutter-first-sketch", "coastal-sloop", "harbour-workboat"})
    void the_legend_of_each_sheet_is_whole_on_it(String name) throws Exception {
        Drawing d = sample(name);
        for (Sheet s : d.sheets().values()) {
            List<Scene> pages = pages(d, "", s.id());
            Set<String> wanted = new TreeSet<>();
            for (Component c : d.components().values()) {
                if (c.place().sheet().equals(s.id())) {
                    wanted.add(Words.english().text(c.kind().term().key()));
                }
            }
            Set<String> explained = new TreeSet<>();
            items(pages.get(0), Role.LEGEND).forEach(i -> texts(i).forEach(t -> explained.add(t.text())));
            assertThat(explained).as(name + " " + s.id()).containsAll(wanted);
            for (Scene more : pages.subList(1, pages.size())) {
                assertThat(items(more, Role.LEGEND)).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "anchor", "harbour"})
    void a_protective_conductor_is_named_so_and_never_drawn_as_dead(String condition) throws Exception {
        Scene scene = pages(sample("pilot-cutter"), condition, "3").get(0);

        for (String id : List.of("W47", "W48", "W49")) {
            SceneItem cable = scene.item(Role.CABLE, id).orElseThrow();
            assertThat(texts(cable)).extracting(Mark.Text::text).containsExactly("PE");
            assertThat(cable.marks()).allSatisfy(m -> {
                if (m instanceof Mark.Line l) {
                    assertThat(l.ink()).isEqualTo(Ink.PROTECTIVE);
                }
            });
        }
        SceneItem fed = scene.item(Role.CABLE, "W42").orElseThrow();
        assertThat(texts(fed)).extracting(Mark.Text::text).containsExactly("230");
        boolean dead = condition.equals("anchor");
        assertThat(texts(fed).get(0).ink() == Ink.DEAD).isEqualTo(dead);
    }

    @Test
    void findings_without_a_place_stand_in_a_row() throws Exception {
        Scene scene = pages(sample("pilot-cutter-first-sketch"), "", "1").get(0);
        double top = scene.drawable().minY() + 10;

        List<SceneItem> row = items(scene, Role.FINDING).stream()
                .filter(i -> i.bounds().maxY() < top)
                .toList();

        assertThat(row).hasSize(3);
        assertThat(row.stream().map(i -> i.bounds().centreY()).distinct()).hasSize(1);
        double first = row.get(0).bounds().centreX();
        assertThat(row.get(1).bounds().centreX() - first).isEqualTo(8);
        assertThat(row.get(2).bounds().centreX() - first).isEqualTo(16);
    }

    private static Drawing moved(Drawing d, String id, double x, double y) {
        Component c = d.components().require(id);
        return d.with(c.withPlace(c.place().withAt(new orlop.drawing.Point(x, y))));
    }

    private static List<String> rules(Scene scene) {
        return scene.items().stream()
                .filter(i -> i.role() == Role.MARGIN)
                .map(i -> i.data().getOrDefault("rule", ""))
                .filter(r -> r.startsWith("scene-"))
                .toList();
    }

    @Test
    void where_something_stands_in_the_margin_the_notes_go_on_a_sheet_of_their_own() throws Exception {
        Drawing d = moved(sample("coastal-sloop"), "MA4", 380, 130);

        List<Scene> pages = pages(d, "", "1");
        List<SceneItem> margin = pages.get(0).items().stream()
                .filter(i -> i.role() == Role.MARGIN)
                .toList();

        assertThat(rules(pages.get(0))).isEmpty();
        assertThat(margin).singleElement().satisfies(i -> {
            assertThat(i.title()).contains("notes: sheet 1/F1");
            assertThat(pages.get(0).items().stream()
                            .filter(j -> j.role() == Role.COMPONENT || j.role() == Role.LABEL)
                            .filter(j -> j.bounds().overlaps(i.bounds())))
                    .isEmpty();
        });
        assertThat(pages.get(1).sheet()).isEqualTo("1/F1");
        assertThat(pages.get(1).items().stream().filter(i -> i.role() == Role.MARGIN))
                .hasSizeGreaterThan(1);
        assertThat(pages.get(0).drawable().maxX()).isEqualTo(410);
        assertThat(pages(sample("coastal-sloop"), "", "1").get(0).drawable().maxX())
                .isEqualTo(334);
    }

    @Test
    void what_stands_over_another_or_outside_the_field_is_drawn_there_and_it_is_said() throws Exception {
        Drawing d = sample("coastal-sloop");
        Component pump = d.components().require("MA2");
        Drawing over =
                moved(d, "EA1", pump.place().at().xMm() + 2.5, pump.place().at().yMm());
        Drawing off = moved(d, "MA4", 500, 230);
        Drawing title = moved(d, "MA4", 287.5, 270);

        assertThat(rules(pages(d, "", "1").get(0))).isEmpty();
        assertThat(rules(pages(over, "", "1").get(0))).containsExactly("scene-drawn-over");
        for (Drawing outside : List.of(off, title)) {
            Scene scene = pages(outside, "", "1").get(0);
            assertThat(rules(scene)).containsExactly("scene-outside");
            assertThat(scene.item(Role.COMPONENT, "MA4")).isPresent();
        }
        SceneItem label = pages(over, "", "1").get(0).item(Role.LABEL, "MA2").orElseThrow();
        assertThat(label.title()).contains("drawn over EA1");
    }
}
