package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Each entry of a menu is reached by a letter of its own. */
@Timeout(60)
class MenuLettersTest extends OnBench {
    MenuLettersTest() {
        super(TestBoat.drawing());
    }

    @Test
    void no_two_entries_of_a_menu_have_the_same_letter_and_no_menu_of_the_bar_is_without_one() throws Exception {
        HeadlessBench.onUi(() -> {
            JMenuBar bar = Menus.bar(on.bench().commands(), List::of, p -> {}, k -> {});
            List<Integer> menus = new ArrayList<>();
            for (int i = 0; i < bar.getMenuCount(); i++) {
                menus.add(bar.getMenu(i).getMnemonic());
                letters(bar.getMenu(i));
            }
            assertThat(menus).doesNotHaveDuplicates().doesNotContain(0);
        });
    }

    private static void letters(JMenu menu) {
        List<Integer> letters = new ArrayList<>();
        for (java.awt.Component c : menu.getMenuComponents()) {
            if (c instanceof AbstractButton b && b.getMnemonic() != 0) {
                letters.add(b.getMnemonic());
            }
            if (c instanceof JMenu m) {
                letters(m);
            }
        }
        assertThat(letters).as(menu.getText()).doesNotHaveDuplicates().isNotEmpty();
    }
}
