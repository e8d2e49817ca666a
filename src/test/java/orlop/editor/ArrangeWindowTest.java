package orlop.editor;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.timing.Pause.pause;
import static org.assertj.swing.timing.Timeout.timeout;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.util.function.BooleanSupplier;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.testing.WindowTest;

/** Menus on the sheet, by mouse and by keyboard, in a real window. */
@WindowTest
@Timeout(120)
class ArrangeWindowTest {
    private final Drawing start = TestBoat.drawing();
    private @Nullable MainWindow window;
    private @Nullable Robot robot;

    @BeforeEach
    void open(Robot r) {
        robot = r;
        window = GuiActionRunner.execute(() -> {
            MainWindow w = EditorApp.window(start, null, new Settings(null));
            w.show();
            return w;
        });
        until("the first figures are there", () -> state().fresh());
    }

    @AfterEach
    void close() {
        MainWindow w = window;
        if (w != null) {
            GuiActionRunner.execute(() -> w.frame().dispose());
        }
    }

    private SheetCanvas canvas() {
        if (window == null) {
            throw new IllegalStateException("no window");
        }
        return window.bench().canvas();
    }

    private Robot robot() {
        if (robot == null) {
            throw new IllegalStateException("no robot");
        }
        return robot;
    }

    private SessionState state() {
        return canvas().session().state();
    }

    private static void until(String what, BooleanSupplier holds) {
        pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return Boolean.TRUE.equals(GuiActionRunner.execute(holds::getAsBoolean));
                    }
                },
                timeout(20, SECONDS));
    }

    private Point on(String component) {
        orlop.drawing.Point p =
                state().drawing().components().require(component).place().at();
        Point2D at = GuiActionRunner.execute(() -> canvas().viewport().toView(p.xMm(), p.yMm() + 1));
        return new Point((int) Math.round(at.getX()), (int) Math.round(at.getY()));
    }

    private @Nullable JPopupMenu opened() {
        for (MenuElement e : MenuSelectionManager.defaultManager().getSelectedPath()) {
            if (e instanceof JPopupMenu p && "menu.sheet".equals(p.getName())) {
                return p;
            }
        }
        return null;
    }

    private void choose(String name) {
        until("the menu is open", () -> opened() != null);
        JPopupMenu menu = opened();
        assertThat(menu).isNotNull();
        for (Component c : menu.getComponents()) {
            if (name.equals(c.getName()) && c instanceof JMenuItem item) {
                robot().click(item);
                robot().waitForIdle();
                return;
            }
        }
        throw new AssertionError("no " + name);
    }

    private void pressed(int key, int... with) {
        for (int w : with) {
            robot().pressKey(w);
        }
        robot().pressAndReleaseKeys(key);
        for (int w : with) {
            robot().releaseKey(w);
        }
        robot().waitForIdle();
    }

    @Test
    void the_right_button_opens_the_menu_of_what_lies_there_and_escape_closes_it() {
        robot().click(canvas(), on("QB1"), MouseButton.RIGHT_BUTTON, 1);

        assertThat(state().selection()).containsExactly("QB1");
        choose("context.lock");
        assertThat(state().drawing().components().require("QB1").locked()).isTrue();

        robot().click(canvas(), on("QB1"), MouseButton.RIGHT_BUTTON, 1);
        until("the menu is open", () -> opened() != null);
        pressed(KeyEvent.VK_ESCAPE);
        until("the menu is closed", () -> opened() == null);
        assertThat(state().selection()).containsExactly("QB1");
    }

    @Test
    void shift_f10_opens_the_menu_of_what_is_selected() {
        robot().click(canvas(), on("EA1"));
        pressed(KeyEvent.VK_F10, KeyEvent.VK_SHIFT);
        choose("context.select-kind");

        assertThat(state().selection()).containsExactlyInAnyOrder("EA1", "EA2");
        pressed(KeyEvent.VK_K, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        assertThat(state().selection()).hasSizeGreaterThan(20).contains("24MAIN", "W1", "GB1");
    }

    @Test
    void the_menu_key_opens_the_menu_of_the_sheet_where_nothing_is_selected() {
        robot().click(canvas(), new Point(canvas().getWidth() / 2, 8));
        // The toolkit's robot has no code for this key on every system: the event comes from the test.
        GuiActionRunner.execute(() -> canvas().dispatchEvent(new KeyEvent(
                canvas(), KeyEvent.KEY_PRESSED, 0, 0, KeyEvent.VK_CONTEXT_MENU, KeyEvent.CHAR_UNDEFINED)));
        choose("context.select-all");

        assertThat(state().selection()).hasSizeGreaterThan(20);
        pressed(KeyEvent.VK_L, KeyEvent.VK_CONTROL);
        pressed(KeyEvent.VK_DELETE);
        assertThat(state().drawing().components().size())
                .isEqualTo(start.components().size());
        pressed(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(Same.object(state().drawing(), start)).isTrue();
    }

    @Test
    void the_right_button_during_a_drag_backs_out_of_it_and_opens_nothing() {
        Point from = on("P1");
        robot().pressMouse(canvas(), from, MouseButton.LEFT_BUTTON);
        robot().moveMouse(canvas(), new Point(from.x + 20, from.y + 20));
        robot().moveMouse(canvas(), new Point(from.x + 40, from.y + 40));
        robot().pressMouse(MouseButton.RIGHT_BUTTON);
        robot().releaseMouseButtons();
        robot().waitForIdle();

        assertThat(opened()).isNull();
        assertThat(Same.object(state().drawing(), start)).isTrue();
    }
}
