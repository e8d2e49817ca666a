package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.store.DrawingFile;
import orlop.testing.WindowTest;

/** The main job from an empty sheet to an exported one, without a mouse. */
@WindowTest
@Timeout(1500) // against hanging for ever; how fast it goes is no matter here
class KeyboardJobWindowTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private OpenWindow on;

    @BeforeEach
    void open(Robot robot) {
        on = new OpenWindow(robot, TestBoat.drawing(), new Settings(null));
    }

    @AfterEach
    void close() {
        on.close();
    }

    @Test
    void a_new_system_is_drawn_studied_saved_and_exported_by_keys_alone() throws Exception {
        on.untilFocused(on.canvas());
        on.ctrl(KeyEvent.VK_N);
        on.until("the questions are asked", () -> focusedIn("form.vessel"));
        on.press(KeyEvent.VK_ENTER);
        on.until("an empty sheet", () -> on.drawing().components().isEmpty());
        on.untilFocused(on.canvas());

        place(Kind.BATTERY);
        place(Kind.BUSBAR);
        place(Kind.LIGHTING);
        run("GB1", "WC1", "1,5");
        run("WC1", "EA1", "8");
        protect("W1");
        theLampGetsItsPower();
        saved();
        exported();
    }

    private boolean focusedIn(String name) {
        Component c = on.focused();
        return c != null && name.equals(c.getName());
    }

    /** By the card that finds commands. */
    private void take(Kind kind) {
        on.ctrl(KeyEvent.VK_K);
        on.until("the card that finds", () -> focusedIn("lookup.command.field"));
        on.fill("locker: " + Texts.of(kind.term()));
        on.press(KeyEvent.VK_ENTER);
        on.until("it is in the hand", () -> on.canvas().tool() instanceof PlaceTool);
        on.untilFocused(on.canvas());
    }

    private void place(Kind kind) {
        int before = on.drawing().components().size();
        take(kind);
        on.press(KeyEvent.VK_DOWN);
        on.press(KeyEvent.VK_ENTER);
        on.until("one more component", () -> on.drawing().components().size() == before + 1);
    }

    /** Finds one end, adds the other, joins both and types a length. */
    private void run(String from, String to, String length) {
        int before = on.drawing().cables().size();
        find(from);
        on.press(KeyEvent.VK_PERIOD, KeyEvent.VK_SHIFT);
        on.until("the next is added", () -> on.state().selection().size() == 2);
        if (!on.state().selection().equals(Set.of(from, to))) {
            find(from);
            on.press(KeyEvent.VK_COMMA, KeyEvent.VK_SHIFT);
            on.until("the one before is added", () -> on.state().selection().size() == 2);
        }
        assertThat(on.state().selection()).containsExactlyInAnyOrder(from, to);
        on.ctrl(KeyEvent.VK_J);
        on.until("one more cable", () -> on.drawing().cables().size() == before + 1);
        type("field.lengthM", length);
    }

    private void type(String field, String value) {
        on.press(KeyEvent.VK_ENTER);
        on.until("the card has the keys", () -> on.focusedNow() != null && on.focusedNow() != on.canvas());
        for (int i = 0; i < 12 && !focusedIn(field); i++) {
            Component before = on.focused();
            on.press(KeyEvent.VK_TAB);
            on.until("the next field", () -> on.focusedNow() != null && on.focusedNow() != before);
        }
        assertThat(focusedIn(field)).as(field).isTrue();
        on.fill(value);
        on.press(KeyEvent.VK_ENTER);
        on.press(KeyEvent.VK_ESCAPE);
        on.untilFocused(on.canvas());
        on.press(KeyEvent.VK_ESCAPE);
        on.until("nothing is selected", () -> on.state().selection().isEmpty());
    }

    private void find(String item) {
        on.ctrl(KeyEvent.VK_F);
        on.until("the card that finds", () -> focusedIn("lookup.item.field"));
        on.fill(item);
        on.press(KeyEvent.VK_ENTER);
        on.untilFocused(on.canvas());
        on.until("it is selected", () -> on.state().selection().equals(Set.of(item)));
    }

    private void protect(String cable) {
        find(cable);
        int before = on.drawing().cables().size();
        take(Kind.FUSE);
        on.press(KeyEvent.VK_ENTER);
        on.until("the cable is parted by a fuse", () -> on.drawing().cables().size() == before + 1);
        assertThat(on.drawing().components().contains("FC1")).isTrue();
    }

    private void theLampGetsItsPower() {
        on.until("figures", () -> on.state().fresh());
        String cable = on.drawing().cables().stream()
                .filter(w ->
                        w.from().component().equals("EA1") || w.to().component().equals("EA1"))
                .findFirst()
                .orElseThrow()
                .id();
        assertThat(on.drawing().cables().require(cable).lengthM()).isEqualTo(8);
        assertThat(on.state().results().orElseThrow().cables().get(cable))
                .satisfies(r -> assertThat(r.live()).isTrue());
    }

    private void saved() throws Exception {
        Path file = folder.resolve("petrel.orlop");
        on.ctrl(KeyEvent.VK_S);
        chosen(file);
        on.until("it is saved", () -> file.equals(on.state().file()));
        Drawing inFile = DrawingFile.load(file);
        assertThat(inFile.components().size()).isEqualTo(4);
        assertThat(on.state().dirty()).isFalse();
        on.untilFocused(on.canvas());
    }

    private void exported() {
        Path file = folder.resolve("petrel.svg");
        on.ctrl(KeyEvent.VK_E);
        chosen(file);
        on.until("it is exported", () -> Files.exists(file));
    }

    /** The name's field has the focus when the chooser opens. */
    private void chosen(Path file) {
        on.until(
                "a file is asked for",
                () -> on.focused() instanceof javax.swing.JTextField f
                        && javax.swing.SwingUtilities.getAncestorOfClass(javax.swing.JFileChooser.class, f) != null);
        on.fill(file.toString());
        on.press(KeyEvent.VK_ENTER);
    }
}
