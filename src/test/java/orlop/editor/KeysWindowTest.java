package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.findings.Cure;
import orlop.testing.WindowTest;

/** Where the keys are in a real window: in the drawers, at the terminals, in the parts of the window and its tables. */
@WindowTest
@Timeout(180)
class KeysWindowTest {
    @SuppressWarnings("NullAway.Init") // set before each test
    private OpenWindow on;

    private final Drawing start = TestBoat.drawing();

    @BeforeEach
    void open(Robot robot) {
        on = new OpenWindow(robot, start, new Settings(null));
        on.untilFocused(on.canvas());
    }

    @AfterEach
    void close() {
        on.close();
    }

    private boolean focusedIn(String name) {
        Component c = on.focused();
        return c != null && name.equals(c.getName());
    }

    private void select(String id) {
        GuiActionRunner.execute(() -> on.canvas().session().select(id.isEmpty() ? Set.of() : Set.of(id)));
    }

    @Test
    void a_drawer_is_opened_by_its_letter_walked_by_arrows_and_left_by_escape() {
        select("GB1");
        on.press(KeyEvent.VK_G);
        on.until("the drawer is open", () -> on.window().bench().locker().opened());
        on.press(KeyEvent.VK_ESCAPE);
        on.untilFocused(on.canvas());
        assertThat(on.state().selection())
                .as("Escape leaves the drawer and nothing else")
                .containsExactly("GB1");

        on.press(KeyEvent.VK_G);
        on.until("the drawer is open again", () -> on.window().bench().locker().opened());
        on.press(KeyEvent.VK_DOWN);
        on.press(KeyEvent.VK_ENTER);
        on.until("its second row is taken", () -> on.canvas().tool() instanceof PlaceTool);
        Kind second = LockerKeys.rows(Kind.BATTERY.group()).get(1).kind();
        assertThat(((PlaceTool) on.canvas().tool()).kind()).isEqualTo(second);
        on.untilFocused(on.canvas());
        on.press(KeyEvent.VK_ENTER);
        on.until(
                "it is set down",
                () -> on.drawing().components().size() == start.components().size() + 1);
    }

    @Test
    void a_cable_is_run_by_tag_and_the_keys_go_on_to_its_length() {
        select("GA1");
        on.press(KeyEvent.VK_F3);
        on.until("the end is asked for", () -> on.canvas().tool() instanceof RunTool);
        on.type("qb1");
        on.press(KeyEvent.VK_ENTER);
        on.until(
                "one more cable",
                () -> on.drawing().cables().size() == start.cables().size() + 1);
        on.press(KeyEvent.VK_ENTER);
        on.until("its length is asked for", () -> focusedIn("field.lengthM"));
        on.type("4,5");
        on.press(KeyEvent.VK_ENTER);
        String made = on.state().soleSelection().orElseThrow();
        on.until(
                "it has its length",
                () -> Objects.equals(on.drawing().cables().require(made).lengthM(), 4.5));
        Cable w = on.drawing().cables().require(made);
        assertThat(w.from().component()).isEqualTo("GA1");
        assertThat(w.to().component()).isEqualTo("QB1");
        on.press(KeyEvent.VK_ESCAPE);
        on.untilFocused(on.canvas());
        assertThat(on.state().selection()).as("the cable stays selected").containsExactly(made);
    }

    @Test
    void one_key_goes_round_the_parts_of_the_window_and_escape_comes_back_from_each() {
        select("W1");
        on.press(KeyEvent.VK_F, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        on.until("the findings have the keys", () -> focusedIn("findings"));
        List<String> met = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Component before = on.focused();
            on.press(KeyEvent.VK_F6);
            on.until("the keys are elsewhere", () -> on.focused() != before && on.focused() != null);
            met.add(part());
        }
        assertThat(met).containsExactly("conditions", "locker", "sheet", "margin", "margin", "fold-out");

        on.press(KeyEvent.VK_ESCAPE);
        on.untilFocused(on.canvas());
        assertThat(on.state().selection()).containsExactly("W1");
        on.press(KeyEvent.VK_ESCAPE);
        on.until("and then lets go", () -> on.state().selection().isEmpty());
    }

    /** In which part of the window the keys are; whatever has them is in sight. */
    private String part() {
        Component c = Objects.requireNonNull(on.focused());
        boolean seen = GuiActionRunner.execute(() -> c.isShowing() && c.getWidth() > 0);
        assertThat(seen).as(c.toString()).isTrue();
        for (String name : List.of("conditions", "locker", "sheet", "margin", "fold-out")) {
            for (Component up = c; up != null; up = up.getParent()) {
                if (name.equals(up.getName())) {
                    return name;
                }
            }
        }
        return "nowhere: " + c;
    }

    @Test
    void a_command_that_is_asked_for_in_a_table_changes_no_cell_of_it() {
        on.press(KeyEvent.VK_R, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        on.until("the register has the keys", () -> focusedIn("register.table"));
        JTable table = (JTable) Objects.requireNonNull(on.focused());

        on.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        on.until("one more sheet", () -> on.drawing().sheets().size() == 2);
        assertThat(GuiActionRunner.execute(table::isEditing)).isFalse();
        assertThat(on.drawing().sheets().require("1")).isEqualTo(start.sheets().require("1"));
        on.press(KeyEvent.VK_ESCAPE);
        on.untilFocused(on.canvas());
        assertThat(GuiActionRunner.execute(table::isEditing)).isFalse();
    }

    @Test
    void what_has_the_keys_is_scrolled_into_sight_in_the_margin() {
        select("W1");
        on.press(KeyEvent.VK_F6);
        on.until("the card has the keys", () -> part().equals("margin"));
        for (int i = 0; i < 30; i++) {
            Component c = on.focused();
            if (c != null && SwingUtilities.getAncestorOfClass(javax.swing.JViewport.class, c) != null) {
                java.awt.Rectangle seen = GuiActionRunner.execute(() -> ((javax.swing.JComponent) c).getVisibleRect());
                assertThat(seen.height).as(c.getName()).isGreaterThan(c.getHeight() / 2);
            }
            on.press(KeyEvent.VK_TAB);
        }
    }

    @Test
    void a_card_that_is_made_anew_leaves_the_keys_where_they_were() {
        select("W6");
        on.press(KeyEvent.VK_ENTER);
        on.until("the card has the keys", () -> part().equals("margin"));
        for (int i = 0; i < 20 && !focusedIn("card.more"); i++) {
            on.press(KeyEvent.VK_TAB);
        }
        on.press(KeyEvent.VK_SPACE);
        on.until("more of it is seen", () -> Texts.of("editor.card.less").equals(foldText()));
        on.until("the keys are at the fold still", () -> focusedIn("card.more"));

        for (int i = 0; i < 40 && !focusedIn("working.current"); i++) {
            on.press(KeyEvent.VK_TAB);
        }
        on.press(KeyEvent.VK_F5);
        on.until("it is worked out again", () -> on.state().fresh());
        on.until("the keys are at the figure still", () -> focusedIn("working.current"));
    }

    @Test
    void a_window_that_comes_to_the_front_has_the_keys_where_they_were() {
        GuiActionRunner.execute(() -> on.window().toFront());
        on.robot().waitForIdle();
        on.press(KeyEvent.VK_G);
        on.until("the sheet has heard it", () -> on.window().bench().locker().opened());
    }

    private String foldText() {
        return on.focused() instanceof javax.swing.AbstractButton b ? b.getText() : "";
    }

    @Test
    void the_notes_are_walked_by_arrows_and_cured_without_leaving_them() {
        on.press(KeyEvent.VK_F6);
        on.until("the notes have the keys", () -> on.focused() instanceof NoteView);
        NoteView first = (NoteView) Objects.requireNonNull(on.focused());
        on.press(KeyEvent.VK_DOWN);
        on.until("the next note", () -> on.focused() instanceof NoteView && on.focused() != first);
        for (int i = 0; i < 30 && !curable(); i++) {
            Component before = on.focused();
            on.press(KeyEvent.VK_DOWN);
            on.until("the next note", () -> on.focused() != before);
        }
        on.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
        on.until(
                "it is cured",
                () -> !Same.object(on.drawing(), start) && on.state().fresh());
        on.until("the keys are still among the notes", () -> on.focused() instanceof NoteView);
    }

    private boolean curable() {
        return on.focused() instanceof NoteView n && n.numbered().finding().cure() instanceof Cure.InsertDevice;
    }
}
