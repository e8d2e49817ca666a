package orlop.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.drawing.RefitStatus;
import orlop.drawing.Sheet;
import orlop.layout.Rect;
import orlop.store.DrawingFile;
import orlop.study.Results;
import orlop.study.Study;

/** What a practitioner reads beside the symbols and in the lines, on the sheets of the main sample. */
class SaidOnSheetsTest {
    private static Drawing drawing = Drawing.empty("");
    private static Study study = Study.of(drawing);

    @BeforeAll
    static void load() throws Exception {
        drawing = DrawingFile.load(Path.of("sample-drawings", "pilot-cutter.orlop"));
        study = Study.of(drawing);
    }

    private static Scene scene(String sheet, String condition) {
        Results r =
                condition.isEmpty() ? study.governing() : study.byCondition().get(condition);
        return SceneBuilder.bundled().build(SceneRequest.paper(drawing, Objects.requireNonNull(r), List.of(), sheet));
    }

    private static List<String> texts(Scene scene, Role role, String id) {
        List<String> all = new ArrayList<>();
        for (Mark m : scene.item(role, id).orElseThrow().marks()) {
            if (m instanceof Mark.Text t) {
                all.add(t.text());
            }
        }
        return all;
    }

    private static List<Mark.Line> oblique(Scene scene, Role role, String id) {
        List<Mark.Line> all = new ArrayList<>();
        for (Mark m : scene.item(role, id).orElseThrow().marks()) {
            if (m instanceof Mark.Line l && l.points().size() == 2) {
                Point a = l.points().get(0);
                Point b = l.points().get(1);
                if (a.xMm() != b.xMm() && a.yMm() != b.yMm()) {
                    all.add(l);
                }
            }
        }
        return all;
    }

    /** Fields of A3 by ISO 5457 (from memory): 50 mm from the middle of the paper outwards, the outermost takes the rest. */
    private static String field(Point p) {
        int column = Math.max(1, Math.min(8, 5 + (int) Math.floor((p.xMm() - 210) / 50)));
        int row = Math.max(0, Math.min(5, 3 + (int) Math.floor((p.yMm() - 148.5) / 50)));
        return "ABCDEF".charAt(row) + Integer.toString(column);
    }

    @Test
    void a_sheet_link_names_the_other_sheet_and_the_field_of_its_other_end() {
        List<String> order = drawing.sheets().stream().map(Sheet::id).toList();
        int links = 0;
        for (Component c : drawing.components().values()) {
            if (c.particulars() instanceof Distribution.SheetLink link) {
                Component mate = drawing.components().require(link.mate());
                String number = Integer.toString(order.indexOf(mate.place().sheet()) + 1);
                Scene scene = scene(c.place().sheet(), "");
                List<String> said = texts(scene, Role.LABEL, c.id());
                said.addAll(texts(scene, Role.COMPONENT, c.id()));
                assertThat(said)
                        .as(c.id())
                        .contains("→ " + number + " / " + field(mate.place().at()));
                links++;
            }
        }
        assertThat(links).isEqualTo(6);
    }

    /** Each condition's positions stand in the sample's file; a breaker that is closed as normal says nothing. */
    @ParameterizedTest
    @CsvSource({
        "1, QB2, '', 'open, as normal'",
        "1, QB2, anchor, 'open, as normal'",
        "1, QB1, '', ''",
        "1, QB1, emergency, 'open, normally closed'",
        "3, QA1, motoring, 'closed, normally open'",
        "3, QA1, '', 'open, as normal'",
        "3, QC1, '', 'off, as normal'",
        "3, QC1, harbour, 'way 2, normally off'",
        "4, QC2, '', 'way 1, as normal'"
    })
    void a_switch_says_how_it_stands_and_how_it_normally_does(String sheet, String id, String condition, String said) {
        List<String> lines = texts(scene(sheet, condition), Role.LABEL, id);

        assertThat(lines.get(lines.size() - 1).contains("normal")).isEqualTo(!said.isEmpty());
        assertThat(lines.get(lines.size() - 1)).matches(l -> said.isEmpty() || l.equals(said), said);
    }

    @Test
    void lines_bear_as_many_strokes_as_the_cable_has_conductors() {
        int bearing = 0;
        for (Sheet s : drawing.sheets().values()) {
            Scene scene = scene(s.id(), "");
            for (Cable c : drawing.cables().values()) {
                if (scene.item(Role.CABLE, c.id()).isPresent() && c.refit() != RefitStatus.TO_BE_REMOVED) {
                    SceneItem item = scene.item(Role.CABLE, c.id()).orElseThrow();
                    int wanted =
                            Integer.parseInt(Objects.requireNonNull(item.data().get("conductors")));
                    int drawn = oblique(scene, Role.CABLE, c.id()).size();
                    assertThat(drawn).as(c.id()).isIn(0, wanted); // none where the line is too short
                    bearing += drawn > 0 ? 1 : 0;
                }
            }
        }
        assertThat(bearing).isGreaterThan(drawing.cables().size() * 9 / 10);
    }

    @Test
    void what_is_there_is_underlined_and_what_goes_is_crossed_out() {
        for (Sheet s : drawing.sheets().values()) {
            Scene scene = scene(s.id(), "");
            for (Component c : drawing.components().values()) {
                if (c.place().sheet().equals(s.id())) {
                    Rect label = scene.item(Role.LABEL, c.id()).orElseThrow().bounds();
                    boolean underlined = scene.item(Role.LABEL, c.id()).orElseThrow().marks().stream()
                            .filter(Mark.Line.class::isInstance)
                            .map(m -> ((Mark.Line) m).points())
                            .anyMatch(p -> p.size() == 2
                                    && p.get(0).yMm() == p.get(1).yMm()
                                    && p.get(0).yMm() < label.minY() + 3.5
                                    && label.contains(p.get(0).xMm(), p.get(0).yMm()));
                    assertThat(underlined).as(c.id()).isEqualTo(c.refit() == RefitStatus.EXISTING);
                    boolean going = c.refit() == RefitStatus.TO_BE_REMOVED;
                    Role role = scene.item(Role.BAR, c.id()).isPresent() ? Role.BAR : Role.COMPONENT;
                    assertThat(oblique(scene, role, c.id()).size() >= 2)
                            .as(c.id())
                            .isEqualTo(going);
                    assertThat(texts(scene, Role.LABEL, c.id()).contains("to be removed"))
                            .isEqualTo(going);
                }
            }
        }
    }

    @Test
    void a_bar_that_nothing_feeds_is_dead_in_every_condition_where_the_worst_of_all_is_shown() {
        Component bar = Component.of("WC9", new Distribution.Busbar(null, 60), Place.at("1", 200, 250), List.of("24"));
        Drawing with = drawing.with(bar);
        Study of = Study.of(with);
        for (Results r : of.byCondition().values()) {
            assertThat(barText(with, r)).contains("dead in this condition");
        }
        assertThat(barText(with, of.governing())).contains("dead in every condition");
    }

    private static List<String> barText(Drawing with, Results r) {
        Scene scene = SceneBuilder.bundled().build(SceneRequest.paper(with, r, List.of(), "1"));
        return scene.items().stream()
                .filter(i -> i.subject().equals("WC9"))
                .flatMap(i -> i.marks().stream())
                .filter(Mark.Text.class::isInstance)
                .map(m -> ((Mark.Text) m).text())
                .toList();
    }
}
