package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.NoteEdits;
import orlop.desk.Same;
import orlop.drawing.Extras;
import orlop.drawing.Note;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

@Timeout(60)
@SuppressWarnings("NullAway") // a null fails the test
class ContextPasteTest extends OnBench {
    private static final Set<Role> THINGS = Set.of(Role.COMPONENT, Role.BAR, Role.NOTE);

    ContextPasteTest() {
        super(TestBoat.drawing());
    }

    @Test
    void a_duplicate_and_a_copied_note_lie_over_nothing_that_is_there() throws Exception {
        Note n = new Note("n1", on.session().state().sheet(), new Point(82.5, 90), "Mind the bilge", 3.5, Extras.NONE);
        HeadlessBench.onUi(() -> on.session().apply(NoteEdits.place(n)));
        for (String id : List.of("MA1", n.id())) {
            HeadlessBench.onUi(() -> on.session().select(Set.of(id)));
            on.run(CommandId.DUPLICATE);
            String copy = on.session().state().soleSelection().orElseThrow();
            assertThat(copy).isNotEqualTo(id);

            Scene scene = on.bench().canvas().scene().orElseThrow();
            Rect mine = scene.items().stream()
                    .filter(i -> THINGS.contains(i.role()) && i.subject().equals(copy))
                    .map(SceneItem::bounds)
                    .findFirst()
                    .orElseThrow();
            assertThat(scene.items())
                    .filteredOn(i -> THINGS.contains(i.role()) && !i.subject().equals(copy))
                    .isNotEmpty()
                    .noneMatch(i -> i.bounds().overlaps(mine));
        }
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
