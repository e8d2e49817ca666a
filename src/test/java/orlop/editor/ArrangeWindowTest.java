package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import orlop.desk.Same;
import orlop.testing.WindowTest;

/** Menus on the sheet, by mouse and by keyboard, in a real window. */
@WindowTest
class ArrangeWindowTest extends InWindow {
    ArrangeWindowTest() {
        super(TestBoat.drawing());
    }

    private Point at(String component) {
        orlop.drawing.Point p =
                on.state().drawing().components().require(component).place().at();
        Point2D at = GuiActionRunner.execute(() -> on.canvas().viewport().toView(p.xMm(), p.yMm() + 1));
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
        on.until("the menu is open", () -> opened() != null);
        JPopupMenu menu = opened();
        assertThat(menu).isNotNull();
        for (Component c : menu.getComponents()) {
            if (name.equals(c.getName()) && c instanceof JMenuItem item) {
                on.robot().click(item);
                on.robot().waitForIdle();
                return;
            }
        }
        throw new AssertionError("no " + name);
    }

    @Test
    void the_right_button_opens_the_menu_of_what_lies_there_and_escape_closes_it() {
        on.robot().click(on.canvas(), at("QB1"), MouseButton.RIGHT_BUTTON, 1);

        assertThat(on.state().selection()).containsExactly("QB1");
        choose("context.lock");
        assertThat(on.state().drawing().components().require("QB1").locked()).isTrue();

        on.robot().click(on.canvas(), at("QB1"), MouseButton.RIGHT_BUTTON, 1);
        on.until("the menu is open", () -> opened() != null);
        on.press(KeyEvent.VK_ESCAPE);
        on.until("the menu is closed", () -> opened() == null);
        assertThat(on.state().selection()).containsExactly("QB1");
    }

    @Test
    void shift_f10_opens_the_menu_of_what_is_selected() {
        on.robot().click(on.canvas(), at("EA1"));
        on.press(KeyEvent.VK_F10, KeyEvent.VK_SHIFT);
        choose("context.select-kind");

        assertThat(on.state().selection()).containsExactlyInAnyOrder("EA1", "EA2");
        on.press(KeyEvent.VK_K, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
        assertThat(on.state().selection()).hasSizeGreaterThan(20).contains("24MAIN", "W1", "GB1");
    }

    @Test
    void the_menu_key_opens_the_menu_of_the_sheet_where_nothing_is_selected() {
        on.robot().click(on.canvas(), new Point(on.canvas().getWidth() / 2, 8));
        // The toolkit's robot has no code for this key on every system: the event comes from the test.
        GuiActionRunner.execute(() -> on.canvas()
                .dispatchEvent(new KeyEvent(
                        on.canvas(), KeyEvent.KEY_PRESSED, 0, 0, KeyEvent.VK_CONTEXT_MENU, KeyEvent.CHAR_UNDEFINED)));
        choose("context.select-all");

        assertThat(on.state().selection()).hasSizeGreaterThan(20);
        on.press(KeyEvent.VK_L, KeyEvent.VK_CONTROL);
        on.press(KeyEvent.VK_DELETE);
        assertThat(on.state().drawing().components().size())
                .isEqualTo(start.components().size());
        on.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
        assertThat(Same.object(on.state().drawing(), start)).isTrue();
    }

    @Test
    void the_right_button_during_a_drag_backs_out_of_it_and_opens_nothing() {
        Point from = at("P1");
        on.robot().pressMouse(on.canvas(), from, MouseButton.LEFT_BUTTON);
        on.robot().moveMouse(on.canvas(), new Point(from.x + 20, from.y + 20));
        on.robot().moveMouse(on.canvas(), new Point(from.x + 40, from.y + 40));
        on.robot().pressMouse(MouseButton.RIGHT_BUTTON);
        on.robot().releaseMouseButtons();
        on.robot().waitForIdle();

        assertThat(opened()).isNull();
        assertThat(Same.object(on.state().drawing(), start)).isTrue();
    }
}
