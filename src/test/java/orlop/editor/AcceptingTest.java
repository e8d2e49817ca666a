package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JMenuItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.CardEdits;
import orlop.desk.Same;
import orlop.findings.Finding;

/** A person lives with a finding, sees that again, and takes it back: all from the notes in the margin. */
@Timeout(60)
class AcceptingTest extends OnBench {
    AcceptingTest() {
        super(TestBoat.drawing());
    }

    private FindingPlaces.Numbered first() {
        return FindingPlaces.all(on.session().state()).get(0);
    }

    private void click(String name) throws Exception {
        HeadlessBench.onUi(() -> ((AbstractButton) on.named(name).orElseThrow()).doClick());
        HeadlessBench.onUi(on::paint);
    }

    @Test
    void a_reason_is_given_seen_and_taken_back() throws Exception {
        Finding f = first().finding();
        int open = FindingPlaces.all(on.session().state()).size();
        String place = f.rule() + "." + f.place().item();
        on.answers().line = "guarded ashore";

        click("accept." + place);

        assertThat(FindingPlaces.all(on.session().state())).hasSize(open - 1);
        var scene = on.bench().canvas().scene().orElseThrow();
        List<FindingPlaces.Numbered> accepted =
                FindingPlaces.acceptedOfSheet(on.session().state(), scene);
        assertThat(accepted).hasSize(1);
        NoteView note = (NoteView) on.named("note." + accepted.get(0).number()).orElseThrow();
        assertThat(FormParts.named(note, AbstractButton.class, "reopen." + place))
                .isNotNull();
        assertThat(words(note)).contains("guarded ashore");
        assertThat(on.named("accept." + place)).isEmpty();

        click("reopen." + place);

        assertThat(FindingPlaces.all(on.session().state())).hasSize(open);
        assertThat(on.session().state().drawing()).isEqualTo(start);
        on.run(CommandId.UNDO);
        on.run(CommandId.UNDO);
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }

    @Test
    void the_finding_that_is_gone_to_by_its_key_says_what_the_keys_do_with_it() throws Exception {
        on.run(CommandId.NEXT_FINDING);
        Finding f = FindingPlaces.ofSheet(
                        on.session().state(), on.bench().canvas().scene().orElseThrow())
                .get(0)
                .finding();
        String said = ((javax.swing.JLabel) on.named("status").orElseThrow()).getText();

        assertThat(said).startsWith(Texts.title(f.title())).contains("Ctrl+Shift+A", "F8");
    }

    private String status() {
        return ((javax.swing.JLabel) on.named("status").orElseThrow()).getText();
    }

    @Test
    void the_line_at_the_foot_says_in_words_what_was_accepted_and_opened_again() throws Exception {
        Finding f = first().finding();
        String place = f.rule() + "." + f.place().item();
        HeadlessBench.onUi(() -> on.session().select(java.util.Set.of(f.place().item())));
        on.answers().line = "guarded ashore";

        click("accept." + place);
        assertThat(status())
                .containsIgnoringCase(Texts.of(f.title()))
                .contains(f.place().item())
                .doesNotContain(f.rule());

        on.run(CommandId.UNDO);
        assertThat(status()).containsIgnoringCase(Texts.of(f.title())).doesNotContain(f.rule());
        on.run(CommandId.REDO);

        click("reopen." + place);
        assertThat(status()).containsIgnoringCase(Texts.of(f.title())).doesNotContain(f.rule());
    }

    @Test
    void an_accepted_finding_is_found_in_the_table_by_its_reason() throws Exception {
        Finding f = first().finding();
        on.answers().line = "guarded ashore";
        click("accept." + f.rule() + "." + f.place().item());
        on.run(CommandId.SHOW_FINDINGS);

        HeadlessBench.onUi(() -> ((javax.swing.JTextField) on.named("filter").orElseThrow()).setText("ashore"));

        assertThat(((javax.swing.JTable) on.named("findings").orElseThrow()).getRowCount())
                .isEqualTo(1);
    }

    @Test
    void no_reason_is_asked_for_again_and_backing_out_leaves_it_open() throws Exception {
        Finding f = first().finding();
        on.answers().line = " ";
        on.answers().patience = 2;

        click("accept." + f.rule() + "." + f.place().item());

        assertThat(on.answers().told).hasSize(2).allSatisfy(t -> assertThat(t).contains("eason"));
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }

    @Test
    void the_menu_of_a_note_offers_what_can_be_done_with_it() throws Exception {
        HeadlessBench.onUi(() -> {
            NoteView note = (NoteView) on.named("note." + first().number()).orElseThrow();
            var menu = note.menu(first().finding(), new NoteView.Deeds() {
                @Override
                public void cure(Finding f) {
                    throw new AssertionError("not chosen");
                }

                @Override
                public void accept(Finding f) {
                    on.session().select(java.util.Set.of("MA2"));
                }

                @Override
                public void reopen(Finding f) {
                    throw new AssertionError("it is open");
                }

                @Override
                public void place(Finding f) {
                    throw new AssertionError("not chosen");
                }
            });
            assertThat(java.util.Arrays.stream(menu.getComponents()).map(java.awt.Component::getName))
                    .contains("context.accept", "context.place")
                    .doesNotContain("context.reopen");
            FormParts.named(menu, JMenuItem.class, "context.accept").doClick();
            assertThat(on.session().state().selection()).containsExactly("MA2");
        });
    }

    @Test
    void a_note_that_says_the_same_after_an_edit_stays_and_knows_the_fresh_finding() throws Exception {
        List<NoteView> before = notes();
        Finding old = before.get(0).numbered().finding();

        HeadlessBench.onUi(() -> on.session().apply(CardEdits.set("W10", "lengthM", 3.3, "")));
        HeadlessBench.onUi(on::paint);
        List<NoteView> after = notes();

        assertThat(after.get(0)).isSameAs(before.get(0));
        assertThat(Same.object(after.get(0).numbered().finding(), old)).isFalse();

        on.answers().line = "it is looked after";
        click("accept." + old.rule() + "." + old.place().item());

        assertThat(notes()).doesNotContain(before.get(0));
        on.run(CommandId.UNDO);
        on.run(CommandId.UNDO);
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }

    private List<NoteView> notes() throws Exception {
        List<NoteView> all = new ArrayList<>();
        HeadlessBench.onUi(() -> {
            for (Component c : ((java.awt.Container) on.named("notes").orElseThrow()).getComponents()) {
                if (c instanceof NoteView v) {
                    all.add(v);
                }
            }
        });
        return all;
    }

    @Test
    void a_note_that_is_not_wholly_in_sight_does_not_move_away_from_under_the_mouse() throws Exception {
        javax.swing.JScrollBar[] bar = {null};
        HeadlessBench.onUi(() -> {
            on.paint();
            bar[0] = FormParts.find(on.named("margin").orElseThrow(), javax.swing.JScrollPane.class)
                    .getVerticalScrollBar();
            bar[0].setValue(120);
            NoteView note = (NoteView) on.named("note." + first().number()).orElseThrow();
            note.dispatchEvent(new java.awt.event.MouseEvent(
                    note, java.awt.event.MouseEvent.MOUSE_ENTERED, 0, 0, 30, note.getHeight() - 4, 0, false, 0));
            assertThat(note.under()).isTrue();
        });
        HeadlessBench.onUi(() -> {});
        HeadlessBench.onUi(() -> assertThat(bar[0].getValue()).isEqualTo(120));
    }

    private static String words(java.awt.Container in) {
        StringBuilder s = new StringBuilder();
        for (java.awt.Component c : in.getComponents()) {
            if (c instanceof WrapText t) {
                s.append(t.getText()).append(' ');
            } else if (c instanceof java.awt.Container k) {
                s.append(words(k));
            }
        }
        return s.toString();
    }
}
