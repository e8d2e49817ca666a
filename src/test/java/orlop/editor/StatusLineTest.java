package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.util.List;
import java.util.Set;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import orlop.desk.CardEdits;
import orlop.desk.CardFields;
import orlop.drawing.Message;

/** What was told gives way to what can be done: after it could be read, and when the keys go elsewhere. */
class StatusLineTest extends OnBench {
    private static final String REST = "what can be done";

    @SuppressWarnings("NullAway.Init") // set before each test
    private StatusLine line;

    StatusLineTest() {
        super(TestBoat.drawing());
    }

    @BeforeEach
    void hangUp() throws Exception {
        HeadlessBench.onUi(() -> line = new StatusLine(on.session(), () -> REST));
    }

    private String said() {
        return label(line.panel());
    }

    private static String label(Container in) {
        for (java.awt.Component c : in.getComponents()) {
            if (c instanceof JLabel l && "status".equals(l.getName())) {
                return l.getText();
            }
        }
        throw new AssertionError("no line");
    }

    private void change(double lengthM) {
        on.session().apply(CardEdits.set("W10", "lengthM", lengthM, ""));
    }

    private void timeGoesBy() {
        assertThat(line.reading().isRunning()).as("it has its time").isTrue();
        List.of(line.reading().getActionListeners()).forEach(l -> l.actionPerformed(null));
    }

    @Test
    void what_was_done_gives_way_when_it_could_be_read_and_is_said_again_when_it_is_done_again() throws Exception {
        HeadlessBench.onUi(() -> {
            change(7);
            assertThat(said()).isEqualTo("Change W10");

            timeGoesBy();
            assertThat(said()).isEqualTo(REST);

            change(8);
            assertThat(said()).isEqualTo("Change W10");
        });
    }

    @Test
    void a_longer_text_has_more_time() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().say(Message.of("editor.say.no-clip"));
            int shorter = line.reading().getInitialDelay();
            on.session().say(Message.of("editor.say.refused", "x".repeat(90)));
            assertThat(line.reading().getInitialDelay()).isGreaterThan(shorter + 1000);
        });
    }

    /** After a choice in a menu the mouse lies over the sheet, and a passing mouse must not wipe out what was done. */
    @Test
    void a_mouse_that_comes_over_the_empty_sheet_displaces_nothing_one_over_an_item_does() throws Exception {
        HeadlessBench.onUi(() -> {
            change(7);
            line.hint(REST);
            assertThat(said()).isEqualTo("Change W10");
            line.hint("what can be done with W10");
            assertThat(said()).isEqualTo("what can be done with W10");
        });
    }

    @Test
    void it_gives_way_to_what_the_keys_do_in_the_part_where_they_are() throws Exception {
        HeadlessBench.onUi(() -> {
            line.hint("the card");
            change(7);
            timeGoesBy();
            assertThat(said()).isEqualTo("the card");
        });
    }

    @Test
    void it_gives_way_when_the_keys_go_on_but_what_their_going_brought_about_stays() throws Exception {
        HeadlessBench.onUi(() -> {
            line.keysLeave("a field");
            change(7); // the field is left, and what was typed in it is taken
            line.keysCame("the sheet");
            assertThat(said()).isEqualTo("Change W10");

            line.keysLeave("a field");
            line.keysCame("the sheet");
            assertThat(said()).isEqualTo(REST);
        });
    }

    /** Choosing in a menu takes the keys away for a moment. */
    @Test
    void it_does_not_give_way_when_the_keys_come_back_to_where_they_were() throws Exception {
        HeadlessBench.onUi(() -> {
            change(7);
            line.keysLeave("the sheet");
            line.keysCame("the sheet");
            assertThat(said()).isEqualTo("Change W10");
        });
    }

    @Test
    void what_is_still_being_written_is_said_until_it_is_written() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().say(Message.of("editor.say.exporting", "sheet.pdf"));
            timeGoesBy();
            line.keysLeave("a field");
            line.keysCame("the sheet");
            assertThat(said()).contains("sheet.pdf");

            on.session().say(Message.of("editor.say.exported", "sheet.pdf"));
            timeGoesBy();
            assertThat(said()).isEqualTo(REST);
        });
    }

    @Test
    void the_same_thing_told_twice_is_told_twice() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().say(Message.of("editor.say.no-clip"));
            String once = said();
            line.hint("under the mouse");
            on.session().say(Message.of("editor.say.no-clip"));
            assertThat(said()).isEqualTo(once);
        });
    }

    @Test
    void a_refusal_speaks_of_a_particular_by_its_label() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().apply(CardEdits.set("W10", "areaMm2", -3.0, ""));
            assertThat(said()).startsWith("Area must be above 0");
        });
    }

    @Test
    void a_number_that_was_taken_by_enter_is_replaced_by_what_is_typed_next() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("W10"));
            JTextField field = (JTextField) on.named("field.lengthM").orElseThrow();
            field.setText("2,5");
            field.postActionEvent();
            assertThat(field.getSelectedText()).isEqualTo("2.5 m");
        });
    }

    @Test
    void the_card_says_what_the_terminals_are_where_a_cable_may_end() throws Exception {
        HeadlessBench.onUi(() -> {
            var field = CardFields.of(on.session().state().drawing(), "W1", "").stream()
                    .filter(f -> f.path().equals("from") || f.path().equals("to"))
                    .flatMap(f -> f.choices().stream())
                    .map(c -> Texts.of(c.label()))
                    .toList();
            assertThat(field).contains("GB1.2 (negative)");
        });
    }

    @Test
    void what_has_no_room_in_one_line_goes_on_in_the_next_and_nothing_of_it_is_cut() throws Exception {
        String hint = Texts.of("editor.hint.keys.rest");
        JPanel foot = line.panel();
        HeadlessBench.onUi(() -> {
            line.hint("short");
            foot.setSize(Look.px(455), 100); // a screen of 1366 px at 300 %
        });
        HeadlessBench.onUi(
                () -> { // it has been told of its width
                    layOut(foot);
                    int low = foot.getPreferredSize().height;

                    line.hint(hint);
                    layOut(foot);

                    java.awt.Component text = java.util.Arrays.stream(foot.getComponents())
                            .filter(c -> "status".equals(c.getName()))
                            .findFirst()
                            .orElseThrow();
                    int lines = text.getPreferredSize().height
                            / text.getFontMetrics(text.getFont()).getHeight();
                    assertThat(foot.getPreferredSize().height).isGreaterThan(low);
                    assertThat(lines * text.getWidth())
                            .as("px in a row for %s", hint)
                            .isGreaterThan(text.getFontMetrics(text.getFont()).stringWidth(hint));
                    assertThat(said()).isEqualTo(hint);

                    int high = foot.getPreferredSize().height;
                    line.hint("short");
                    assertThat(foot.getPreferredSize().height)
                            .as("what lies above it stays")
                            .isEqualTo(high);
                });
    }

    private static void layOut(JPanel foot) {
        foot.setSize(foot.getWidth(), foot.getPreferredSize().height);
        foot.doLayout();
        foot.setSize(foot.getWidth(), foot.getPreferredSize().height);
        foot.doLayout();
    }
}
