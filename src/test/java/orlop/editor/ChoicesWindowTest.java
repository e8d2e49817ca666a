package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.Set;
import javax.swing.JComboBox;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import orlop.desk.Same;
import orlop.drawing.Laying;
import orlop.testing.WindowTest;

/** A list of the card that is open: going along it changes nothing until it is shut. */
@WindowTest
class ChoicesWindowTest extends InWindow {
    ChoicesWindowTest() {
        super(TestBoat.drawing());
    }

    private JComboBox<?> opened() {
        GuiActionRunner.execute(() -> on.canvas().session().select(Set.of("W1")));
        on.until("its card", () -> on.window().bench().panel().isShowing());
        JComboBox<?> box = on.frame().comboBox("field.construction.laying").target();
        GuiActionRunner.execute(() -> {
            box.requestFocusInWindow();
        });
        on.untilFocused(box);
        GuiActionRunner.execute(() -> box.setPopupVisible(true));
        on.until("the list is open", box::isPopupVisible);
        return box;
    }

    private Laying laying() {
        return on.drawing().cables().require("W1").construction().laying();
    }

    @Test
    void arrow_keys_go_along_it_and_enter_takes_what_is_marked_as_one_step() {
        Laying before = laying();
        JComboBox<?> box = opened();

        on.press(KeyEvent.VK_DOWN);
        on.press(KeyEvent.VK_DOWN);
        assertThat(Same.object(on.drawing(), start)).as("nothing is taken yet").isTrue();
        on.press(KeyEvent.VK_ENTER);
        on.until("the list is shut", () -> !box.isPopupVisible());

        assertThat(laying()).isNotEqualTo(before);
        GuiActionRunner.execute(() -> on.canvas().session().undo());
        assertThat(Same.object(on.drawing(), start)).as("one step").isTrue();
    }

    @Test
    void escape_leaves_all_as_it_was() {
        JComboBox<?> box = opened();
        Object shown = GuiActionRunner.execute(box::getSelectedItem);

        on.press(KeyEvent.VK_DOWN);
        on.press(KeyEvent.VK_ESCAPE);
        on.until("the list is shut", () -> !box.isPopupVisible());

        assertThat(Same.object(on.drawing(), start)).isTrue();
        assertThat(on.state().undo()).isNull();
        assertThat(GuiActionRunner.execute(box::getSelectedItem)).isEqualTo(shown);
    }

    @Test
    void a_click_takes_what_it_points_at() {
        Laying before = laying();
        GuiActionRunner.execute(() -> on.canvas().session().select(Set.of("W1")));

        on.frame().comboBox("field.construction.laying").selectItem(2);

        on.until("it is taken", () -> laying() != before);
    }
}
