package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.drawing.Point;

@Timeout(60)
@SuppressWarnings("NullAway") // a null fails the test
class ContextPasteTest extends OnBench {
    ContextPasteTest() {
        super(TestBoat.drawing());
    }

    @Test
    void what_was_copied_comes_where_the_menu_was_opened() throws Exception {
        HeadlessBench.onUi(() -> on.session().select(Set.of("MA1")));
        on.run(CommandId.COPY);
        HeadlessBench.onUi(() -> on.session().select(Set.of()));

        HeadlessBench.onUi(() -> {
            SheetCanvas canvas = on.bench().canvas();
            JPopupMenu menu = on.bench().menus().menu(Spot.at(251, 163.5, canvas.viewport()));
            for (java.awt.Component c : menu.getComponents()) {
                if ("context.paste-here".equals(c.getName())) {
                    ((JMenuItem) c).doClick(0);
                }
            }
        });

        String copy = on.session().state().soleSelection().orElseThrow();
        assertThat(copy).isNotEqualTo("MA1");
        assertThat(on.session()
                        .state()
                        .drawing()
                        .components()
                        .require(copy)
                        .place()
                        .at())
                .isEqualTo(new Point(250, 162.5)); // the nearest of the grid of 2.5 mm
        HeadlessBench.onUi(on.session()::undo);
        assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
    }
}
