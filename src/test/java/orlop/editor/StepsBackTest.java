package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Sheet;
import orlop.drawing.TerminalRef;

/** What is selected, shown and said after a step back or on, so that the work goes on from there. */
@Timeout(60)
class StepsBackTest extends OnBench {
    StepsBackTest() {
        super(TestBoat.drawing()
                .with(Sheet.of("2", "Second sheet"))
                .with(Component.of("EA9", Kind.LIGHTING, Place.at("2", 100, 100), List.of("24"))));
    }

    private void select(String... ids) throws Exception {
        HeadlessBench.onUi(() -> on.session().select(Set.of(ids)));
    }

    private Set<String> selected() {
        return on.session().state().selection();
    }

    private void run(String id, String from, String to) throws Exception {
        HeadlessBench.onUi(() -> on.session()
                .apply(
                        Edits.runCable(Cable.of(id, TerminalRef.parse(from, "from"), TerminalRef.parse(to, "to"))),
                        Set.of(id)));
    }

    @Test
    void a_cable_that_is_taken_back_leaves_selected_what_was_before_it_and_is_selected_when_it_comes_again()
            throws Exception {
        select("QB1");
        run("W88", "QB1.1", "EA1.1");
        assertThat(selected()).containsExactly("W88");
        on.run(CommandId.UNDO);
        assertThat(selected()).containsExactly("QB1");
        select();
        on.run(CommandId.REDO);
        assertThat(selected()).containsExactly("W88");
    }

    @Test
    void what_was_moved_is_selected_again_whatever_was_selected_since() throws Exception {
        HeadlessBench.onUi(() -> on.session().apply(Edits.move(Set.of("GB1"), 10, 0, "moved")));
        select("EA1");
        on.run(CommandId.UNDO);

        assertThat(selected()).containsExactly("GB1");
    }

    @Test
    void a_step_on_another_sheet_is_shown_there() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().showSheet("2");
            on.session().apply(Edits.move(Set.of("EA9"), 10, 0, "moved"));
            on.session().showSheet("1");
        });
        on.run(CommandId.UNDO);

        assertThat(on.session().state().sheet()).isEqualTo("2");
        assertThat(selected()).containsExactly("EA9");
    }

    @Test
    void a_sheet_and_a_condition_that_come_back_are_shown() throws Exception {
        HeadlessBench.onUi(() -> on.session().showCondition("laid-up"));
        on.answers().choice = 0;
        on.run(CommandId.DELETE_CONDITION);
        assertThat(on.session().state().condition()).isNotEqualTo("laid-up");
        on.run(CommandId.UNDO);
        assertThat(on.session().state().condition()).isEqualTo("laid-up");
    }

    @Test
    void it_is_said_which_step_was_taken_back_or_made_again() throws Exception {
        select("GB1");
        HeadlessBench.onUi(() -> on.session().apply(Edits.move(Set.of("GB1"), 10, 0, "moved")));
        String what =
                Texts.of(java.util.Objects.requireNonNull(on.session().state().undo()));
        on.run(CommandId.UNDO);
        assertThat(said()).isEqualTo("Taken back: " + what);
        on.run(CommandId.REDO);
        assertThat(said()).isEqualTo("Made again: " + what);
    }

    private String said() {
        return ((javax.swing.JLabel) on.named("status").orElseThrow()).getText();
    }
}
