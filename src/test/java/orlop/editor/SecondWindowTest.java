package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Frame;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.swing.JFrame;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.OpenFile;
import orlop.desk.Review;
import orlop.store.DrawingFile;
import orlop.testing.WindowTest;

/** A second window, asked for by keys in the first one, has the keys and lies where it says it lies. */
@WindowTest
@Timeout(120)
class SecondWindowTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    private static <T extends Window> List<T> shown(Class<T> type) {
        return GuiActionRunner.execute(() -> Arrays.stream(Window.getWindows())
                .filter(w -> type.isInstance(w) && w.isShowing())
                .map(type::cast)
                .toList());
    }

    private static void until(String what, java.util.function.BooleanSupplier done) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return done.getAsBoolean();
                    }
                },
                TimeUnit.SECONDS.toMillis(20));
    }

    @AfterEach
    void away() {
        GuiActionRunner.execute(() -> Arrays.stream(Frame.getFrames()).forEach(Window::dispose));
    }

    @Test
    void a_drawing_begun_by_keys_is_where_the_keys_go_and_where_the_mouse_finds_it(Robot robot) throws Exception {
        Settings mine = new Settings(folder.resolve("settings.properties"));
        Path file = folder.resolve("boat.orlop");
        DrawingFile.save(file, TestBoat.drawing());
        OpenFile claimed = OpenFile.claim(file, mine.home()).orElseThrow();
        GuiActionRunner.execute(() -> new Windows(mine, Review::of)
                .window(TestBoat.drawing(), claimed, true)
                .show());
        JFrame first = shown(JFrame.class).get(0);
        SheetCanvas sheet = robot.finder().findByType(first, SheetCanvas.class);
        until("the first window has the keys", sheet::isFocusOwner);

        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(KeyEvent.VK_N);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        until(
                "the box is there",
                () -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof JTextComponent);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("there are two windows", () -> shown(JFrame.class).size() == 2);
        JFrame second =
                shown(JFrame.class).stream().filter(f -> f != first).findFirst().orElseThrow();

        until(
                "the second window has the keys",
                () -> KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow() == second);
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        Rectangle lies = GuiActionRunner.execute(() -> second.getBounds());
        assertThat(screen.contains(lies)).as("%s on %s", lies, screen).isTrue();

        // What the mouse meets at the middle of the sheet, by the screen, is the sheet: both say the same place.
        SheetCanvas begun = robot.finder().findByType(second, SheetCanvas.class);
        Point[] met = new Point[1];
        begun.addMouseMotionListener(new java.awt.event.MouseMotionAdapter() {
            @Override
            public void mouseMoved(java.awt.event.MouseEvent e) {
                met[0] = e.getPoint();
            }
        });
        Point corner = GuiActionRunner.execute(begun::getLocationOnScreen);
        robot.moveMouse(corner.x + 201, corner.y + 100);
        robot.moveMouse(corner.x + 200, corner.y + 100);
        until("the mouse is on the sheet", () -> met[0] != null);
        robot.waitForIdle();
        assertThat(met[0]).isEqualTo(new Point(200, 100));
    }
}
