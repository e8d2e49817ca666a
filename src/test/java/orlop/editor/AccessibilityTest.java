package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javax.swing.JButton;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.Sample;
import orlop.drawing.Drawing;

/** Whoever does not see the window is told what everything in it is. */
@Timeout(120)
class AccessibilityTest {
    @ParameterizedTest
    @ValueSource(strings = {"SHOW_PATH", "SHOW_WORKING", "SHOW_FINDINGS", "SHOW_CONDITIONS", "SHOW_REGISTER"})
    void no_part_of_the_window_and_no_item_of_the_sheet_is_without_name_or_role(String page) throws Exception {
        Drawing start = Sample.of("pilot-cutter");
        HeadlessBench on = HeadlessBench.open(start);
        on.run(CommandId.valueOf(page));
        for (String item : new String[] {"", "GB1", "W1"}) {
            HeadlessBench.onUi(() -> on.session().select(item.isEmpty() ? Set.of() : Set.of(item)));
            HeadlessBench.onUi(on::paint);
            HeadlessBench.onUi(() -> {
                Unnamed u = Unnamed.in(on.bench().panel());
                assertThat(u.found()).as(item).isEmpty();
                assertThat(u.met()).isGreaterThan(100);
            });
        }
        on.close();
    }

    @Test
    void no_item_of_the_menus_and_of_the_cards_that_find_is_without_name_or_role() throws Exception {
        HeadlessBench on = HeadlessBench.open(TestBoat.drawing());
        HeadlessBench.onUi(() -> {
            JMenuBar bar = Menus.bar(on.bench().commands(), java.util.List::of, p -> {}, k -> {});
            Unnamed u = Unnamed.in(bar);
            assertThat(u.found()).isEmpty();
            assertThat(u.met()).isGreaterThan(CommandId.values().length);
            assertThat(Unnamed.in(on.bench().finds().commands().panel()).found())
                    .isEmpty();
            assertThat(Unnamed.in(on.bench().finds().items().panel()).found()).isEmpty();
        });
        on.close();
    }

    @Test
    void a_nameless_button_would_be_found() throws Exception {
        HeadlessBench.onUi(() -> {
            JPanel p = new JPanel();
            p.add(new JButton());
            assertThat(Unnamed.in(p).found()).hasSize(1);
        });
    }
}
