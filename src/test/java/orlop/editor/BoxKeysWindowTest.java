package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.testing.WindowTest;

/** Boxes by keys: typing begins where it should, Escape backs out, and the keys come back to where they were. */
@WindowTest
@Timeout(240)
class BoxKeysWindowTest {
    /** Every command that asks or tells something in a box, with a component selected and a finding pointed at. */
    private static final List<CommandId> ASKING = List.of(
            CommandId.NEW,
            CommandId.PREFERENCES,
            CommandId.RENAME,
            CommandId.REPEAT,
            CommandId.ACCEPT,
            CommandId.VESSEL,
            CommandId.SYSTEMS,
            CommandId.NEW_CONDITION,
            CommandId.SHEET_DETAILS,
            CommandId.KEYS,
            CommandId.ABOUT,
            CommandId.OPEN,
            CommandId.SAVE_AS,
            CommandId.EXPORT_SHEETS);

    @SuppressWarnings("NullAway.Init") // set before each test
    private OpenWindow on;

    @BeforeEach
    void open(Robot robot) {
        on = new OpenWindow(robot, TestBoat.drawing(), new Settings(null));
        on.untilFocused(on.canvas());
    }

    @AfterEach
    void close() {
        on.close();
    }

    private void select(String id) {
        GuiActionRunner.execute(() -> on.canvas().session().select(Set.of(id)));
    }

    private void ask(CommandId id) {
        SwingUtilities.invokeLater(() -> on.window().bench().commands().get(id).run());
        on.until(
                "the box of " + id + " has the keys",
                () -> on.focusedNow() != null && SwingUtilities.getWindowAncestor(on.focusedNow()) instanceof JDialog);
    }

    @Test
    void a_box_begins_in_a_field_and_escape_gives_the_keys_back() {
        for (CommandId id : ASKING) {
            select("GB1");
            if (id == CommandId.ACCEPT) {
                on.press(KeyEvent.VK_F8);
            }
            ask(id);
            on.until("what begins in it has settled", () -> begins(id));
            on.press(KeyEvent.VK_ESCAPE);
            on.until("it is gone", () -> boxes() == 0);
            on.untilFocused(on.canvas());
        }
    }

    /** A box with something to fill in begins there; one that only tells may begin at its button. */
    private boolean begins(CommandId id) {
        Component c = on.focusedNow();
        return (c instanceof JTextComponent t && t.isEditable())
                || c instanceof JComboBox
                || c instanceof JTable
                || (id == CommandId.ABOUT && c != null);
    }

    private static long boxes() {
        return java.util.Arrays.stream(Window.getWindows())
                .filter(w -> w instanceof JDialog && w.isShowing())
                .count();
    }

    @Test
    void the_answers_of_a_question_are_gone_through_by_arrows_and_taken_by_enter() {
        int[] answer = {-2};
        SwingUtilities.invokeLater(() -> answer[0] =
                new SwingPrompts(on.window().frame()).choose("a question", "which one?", "first", "second", "third"));
        on.until("the first has the keys", () -> answers("first"));
        on.press(KeyEvent.VK_RIGHT);
        on.until("the second", () -> answers("second"));
        on.press(KeyEvent.VK_RIGHT);
        on.press(KeyEvent.VK_RIGHT);
        on.until("round to the first", () -> answers("first"));
        on.press(KeyEvent.VK_LEFT);
        on.until("and back to the third", () -> answers("third"));
        on.press(KeyEvent.VK_ENTER);
        on.until("it is taken", () -> answer[0] == 2);
        on.untilFocused(on.canvas());
    }

    @Test
    void an_answer_is_taken_by_its_letter_and_escape_is_none() {
        int[] answer = {-2};
        SwingPrompts prompts = new SwingPrompts(on.window().frame());
        SwingUtilities.invokeLater(() -> answer[0] = prompts.choose("a question", "which one?", "first", "second"));
        on.until("the first has the keys", () -> answers("first"));
        on.press(KeyEvent.VK_S, KeyEvent.VK_ALT);
        on.until("the second is taken", () -> answer[0] == 1);

        SwingUtilities.invokeLater(() -> answer[0] = prompts.choose("a question", "which one?", "first", "second"));
        on.until("the first has the keys again", () -> answers("first"));
        on.press(KeyEvent.VK_ESCAPE);
        on.until("none is taken", () -> answer[0] == -1);
    }

    private String said() {
        return String.valueOf(on.frame().label("status").text());
    }

    @Test
    void whoever_fills_a_form_by_keys_is_told_what_the_keys_do_next() {
        GuiActionRunner.execute(() -> {
            on.canvas().session().select(Set.of());
            on.canvas().byKeys(false); // the mouse was used last
        });
        assertThat(said()).isEqualTo(Texts.of("editor.hint.rest"));

        ask(CommandId.VESSEL);
        on.press(KeyEvent.VK_ENTER);
        on.until("it is gone", () -> boxes() == 0);
        on.untilFocused(on.canvas());
        on.until("it speaks of keys", () -> said().equals(Texts.of("editor.hint.keys.rest")));
    }

    @Test
    void whoever_leaves_a_box_by_the_mouse_is_told_what_the_mouse_does_next(Robot robot) {
        GuiActionRunner.execute(() -> {
            on.canvas().session().select(Set.of());
            on.canvas().byKeys(true);
        });
        ask(CommandId.VESSEL);
        on.press(KeyEvent.VK_TAB);
        JDialog box = (JDialog) SwingUtilities.getWindowAncestor(Objects.requireNonNull(on.focusedNow()));
        robot.click(box.getRootPane().getDefaultButton());
        on.until("it is gone", () -> boxes() == 0);
        on.untilFocused(on.canvas());
        on.until("it speaks of the mouse", () -> said().equals(Texts.of("editor.hint.rest")));
    }

    private boolean answers(String text) {
        return on.focusedNow() instanceof JButton b && Objects.equals(b.getText(), text);
    }
}
