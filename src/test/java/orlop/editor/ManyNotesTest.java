package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import orlop.desk.SessionState;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.findings.Finding;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** A sheet with more findings than anybody reads in a margin. */
class ManyNotesTest extends OnBench {
    ManyNotesTest() {
        super(unfed(Notes.MOST + 20));
    }

    /** Lamps that nothing feeds: each of them is found. */
    private static Drawing unfed(int lamps) {
        Drawing d = TestBoat.drawing();
        for (int i = 0; i < lamps; i++) {
            d = d.with(Component.of(
                    "E" + (500 + i),
                    Kind.LIGHTING,
                    Place.at("1", 30 + 10 * (i % 30), 150 + 20 * (i / 30)),
                    List.of("24")));
        }
        return d;
    }

    @Test
    void the_gravest_stand_in_the_margin_and_of_the_rest_it_is_said_where_they_are() throws Exception {
        HeadlessBench.onUi(() -> {
            List<FindingPlaces.Numbered> all =
                    FindingPlaces.ofSheet(on.session().state());
            assertThat(all).hasSizeGreaterThan(Notes.MOST);
            List<Integer> shown = new ArrayList<>();
            for (FindingPlaces.Numbered n : all) {
                if (on.named("note." + n.number()).isPresent()) {
                    shown.add(n.number());
                }
            }
            assertThat(shown)
                    .containsExactlyElementsOf(all.stream()
                            .limit(Notes.MOST)
                            .map(FindingPlaces.Numbered::number)
                            .toList());
            String said = Texts.of("editor.notes.more", all.size() - Notes.MOST);
            assertThat(all.size() - Notes.MOST).isPositive();
            assertThat(AcceptedNotesTest.texts(on.bench().panel())).contains(said);
        });
    }

    @Test
    void a_click_on_a_mark_without_a_note_opens_the_findings_at_its_line() throws Exception {
        HeadlessBench.onUi(() -> {
            SessionState s = on.session().state();
            Scene scene = on.bench().canvas().scene().orElseThrow();
            List<FindingPlaces.Numbered> all = FindingPlaces.ofSheet(s);
            FindingPlaces.Numbered unnoted = all.get(Notes.MOST + 10);

            click(mark(scene, unnoted));

            JTable table = table().orElseThrow();
            assertThat(table.getSelectedRow()).isNotNegative();
            assertThat(table.getValueAt(table.getSelectedRow(), 3))
                    .isEqualTo(unnoted.finding().place().item());
            assertThat(on.session().state().selection())
                    .containsExactly(unnoted.finding().place().item());
        });
    }

    @Test
    void a_click_on_a_mark_whose_note_stands_in_the_margin_opens_nothing() throws Exception {
        HeadlessBench.onUi(() -> {
            Scene scene = on.bench().canvas().scene().orElseThrow();
            FindingPlaces.Numbered noted =
                    FindingPlaces.ofSheet(on.session().state()).get(Notes.MOST - 1);

            click(mark(scene, noted));

            assertThat(on.session().state().selection())
                    .containsExactly(noted.finding().place().item());
            assertThat(table()).isEmpty();
        });
    }

    @Test
    void from_finding_to_finding_each_is_told_in_the_margin_or_in_the_table() throws Exception {
        int count = FindingPlaces.ofSheet(on.session().state()).size();
        for (int i = 0; i < count; i++) {
            on.run(CommandId.NEXT_FINDING);
            HeadlessBench.onUi(() -> {
                Finding f = Objects.requireNonNull(on.bench().pointing().finding());
                boolean line = table().map(t ->
                                f.place().item().equals(t.getValueAt(Math.max(0, t.getSelectedRow()), 3)))
                        .orElse(false);
                boolean note = FindingPlaces.noted(
                        on.session().state(), on.bench().canvas().scene().orElseThrow(), f);
                assertThat(note || line).as(f.place().item()).isTrue();
            });
        }
        assertThat(table()).as("some had no note").isPresent();
    }

    private Optional<JTable> table() {
        return on.named("findings").map(t -> (JTable) t);
    }

    private static SceneItem mark(Scene scene, FindingPlaces.Numbered n) {
        return scene.items().stream()
                .filter(i -> i.role() == Role.FINDING && i.subject().equals(Integer.toString(n.number())))
                .findFirst()
                .orElseThrow();
    }

    private void click(SceneItem item) {
        SheetCanvas canvas = on.bench().canvas();
        Point2D p =
                canvas.viewport().toView(item.bounds().centreX(), item.bounds().centreY());
        for (int id : new int[] {MouseEvent.MOUSE_MOVED, MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED}) {
            boolean moves = id == MouseEvent.MOUSE_MOVED;
            canvas.dispatchEvent(new MouseEvent(
                    canvas,
                    id,
                    0,
                    0,
                    (int) Math.round(p.getX()),
                    (int) Math.round(p.getY()),
                    moves ? 0 : 1,
                    false,
                    moves ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1));
        }
    }
}
