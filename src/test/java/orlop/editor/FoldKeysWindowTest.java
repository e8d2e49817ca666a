package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import javax.swing.Action;
import org.junit.jupiter.api.Test;
import orlop.testing.WindowTest;

/** The key of a page brings the keys there; only from within it does it fold the page away. */
@WindowTest
class FoldKeysWindowTest extends InWindow {
    FoldKeysWindowTest() {
        super(TestBoat.drawing());
    }

    private void findings() {
        on.press(KeyEvent.VK_F, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
    }

    @Test
    void a_page_that_lies_open_gets_the_keys_first_and_goes_with_the_next_press() {
        on.untilFocused(on.canvas());
        findings();
        on.untilFocused(on.frame().table("findings").target());
        on.press(KeyEvent.VK_ESCAPE);
        on.untilFocused(on.canvas());

        findings();
        on.untilFocused(on.frame().table("findings").target());
        assertThat(on.frame().table("findings").target().isShowing()).isTrue();

        findings();
        on.untilFocused(on.canvas());
        assertThat(on.window().bench().commands().get(CommandId.SHOW_FINDINGS).getValue(Action.SELECTED_KEY))
                .isEqualTo(false);
    }
}
