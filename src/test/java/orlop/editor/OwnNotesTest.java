package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.util.List;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import orlop.drawing.Kind;
import orlop.findings.Finding;

/** What the checker says of the selected item is told at the head of its card, however far below its note may stand. */
class OwnNotesTest extends OnBench {
    OwnNotesTest() {
        super(TestBoat.drawing());
    }

    private List<FindingPlaces.Numbered> notesOf(String item) {
        return FindingPlaces.ofSheet(on.session().state()).stream()
                .filter(n -> n.finding().place().item().equals(item))
                .toList();
    }

    private AbstractButton line(FindingPlaces.Numbered n) {
        return (AbstractButton) on.named("card.note." + n.number()).orElseThrow();
    }

    @Test
    void a_selected_item_names_its_own_notes_above_its_first_field() throws Exception {
        HeadlessBench.onUi(() -> {
            List<FindingPlaces.Numbered> own = notesOf(TestBoat.UNGUARDED);
            assertThat(own).isNotEmpty();

            on.session().select(Set.of(TestBoat.UNGUARDED));

            for (FindingPlaces.Numbered n : own) {
                assertThat(line(n).getText()).isEqualTo(Texts.title(n.finding().title()));
            }
            JComponent lines = on.named("card.notes").orElseThrow();
            List<Component> card = List.of(lines.getParent().getComponents());
            JComponent field = on.named("field.areaMm2").orElseThrow();
            int first = (int) card.stream()
                    .takeWhile(c -> !SwingUtilities.isDescendingFrom(field, c))
                    .count();
            assertThat(card.indexOf(lines)).isBetween(0, first - 1);
        });
    }

    @Test
    void a_click_on_it_points_at_the_note() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(TestBoat.UNGUARDED));
            FindingPlaces.Numbered own = notesOf(TestBoat.UNGUARDED).get(0);

            line(own).doClick();

            Finding pointed = on.bench().pointing().finding();
            assertThat(pointed).isEqualTo(own.finding());
        });
    }

    @Test
    void an_item_without_a_note_has_no_such_lines() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(TestBoat.UNGUARDED));
            String clean = on.session().state().drawing().cables().stream()
                    .map(w -> w.id())
                    .filter(id -> notesOf(id).isEmpty())
                    .findFirst()
                    .orElseThrow();

            on.session().select(Set.of(clean));

            assertThat(on.named("card.notes").orElseThrow().isVisible()).isFalse();
        });
    }

    @Test
    void several_items_are_counted_before_their_kind() throws Exception {
        HeadlessBench.onUi(() -> {
            Set<String> both = Set.of("FC1", "GB1");
            on.session().select(both);

            List<String> said = AcceptedNotesTest.texts(on.bench().panel());
            String count = "1\u00a0×\u00a0" + Texts.of(Kind.FUSE.term());
            assertThat(said).anyMatch(t -> t.contains(count));
        });
    }
}
