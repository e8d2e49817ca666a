package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.geom.Point2D;
import java.util.Set;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import orlop.desk.Same;
import orlop.drawing.Kind;
import orlop.layout.Rect;
import orlop.testing.WindowTest;

/** What the mouse does between the locker and the sheet, and with bars, in a real window. */
@WindowTest
class MouseWindowTest extends InWindow {
    MouseWindowTest() {
        super(TestBoat.drawing());
    }

    private Rect bar() {
        return GuiActionRunner.execute(() -> on.canvas().scene().orElseThrow().bars().stream()
                .filter(b -> b.component().equals("24MAIN"))
                .findFirst()
                .orElseThrow()
                .rect());
    }

    private Point onCanvas(double xMm, double yMm) {
        Point2D p = GuiActionRunner.execute(() -> on.canvas().viewport().toView(xMm, yMm));
        return new Point((int) Math.round(p.getX()), (int) Math.round(p.getY()));
    }

    @Test
    void what_is_dragged_out_of_a_drawer_can_be_let_go_where_the_drawer_lay() {
        on.frame().button("group.distribution").click();
        Component row = on.frame().button("kind.junction").target();
        Point from = new Point(row.getWidth() / 4, row.getHeight() / 2);
        Point to = GuiActionRunner.execute(
                () -> SwingUtilities.convertPoint(row, row.getWidth() * 3 / 4, row.getHeight() / 2, on.canvas()));
        assertThat(to.x).as("the drawer lies over the sheet").isPositive();
        int count = on.drawing().components().size();

        on.robot().pressMouse(row, from, MouseButton.LEFT_BUTTON);
        on.robot().moveMouse(row, new Point(from.x + 30, from.y));
        on.until("the mouse places a junction", () -> on.canvas().tool() instanceof PlaceTool);
        on.robot().moveMouse(on.canvas(), new Point(to.x - 5, to.y));
        on.robot().moveMouse(on.canvas(), to);
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);

        on.until("a junction", () -> on.drawing().components().size() == count + 1);
        String id = on.state().soleSelection().orElseThrow();
        assertThat(on.drawing().components().require(id).kind()).isEqualTo(Kind.JUNCTION);
        Point2D mm = GuiActionRunner.execute(() -> on.canvas().viewport().toSheet(to.x, to.y));
        var at = on.drawing().components().require(id).place().at();
        assertThat(Math.hypot(at.xMm() - mm.getX(), at.yMm() - mm.getY())).isLessThan(2.5);
        on.until("the hand again", () -> on.canvas().tool() == on.canvas().hand());
        on.untilFocused(on.canvas());
    }

    /** Its card went away with it; the keys went on to another card, where a letter or Delete did nothing. */
    @Test
    void a_condition_chosen_by_mouse_leaves_the_keys_with_the_sheet_also_when_it_is_deleted() {
        String last = on.drawing().conditions().stream()
                .reduce((a, b) -> b)
                .orElseThrow()
                .id();

        on.robot().click(on.frame().toggleButton("condition." + last).target());
        on.until("it is shown", () -> on.state().condition().equals(last));
        on.untilFocused(on.canvas());
        SwingUtilities.invokeLater(() ->
                on.window().bench().commands().get(CommandId.DELETE_CONDITION).run());

        on.until("it is gone", () -> !on.drawing().conditions().contains(last));
        on.untilFocused(on.canvas());
    }

    @Test
    void a_drawer_that_is_opened_by_mouse_says_what_the_mouse_does_there_and_leaves_the_keys_with_the_sheet() {
        on.frame().button("group.distribution").click();

        assertThat(on.frame().label("status").text()).isEqualTo(Texts.of("editor.hint.drawer"));
        on.frame().button("group.distribution").click();
        on.untilFocused(on.canvas());
        assertThat(on.frame().label("status").text()).isEqualTo(Texts.of("editor.hint.rest"));
    }

    @Test
    void escape_puts_back_what_is_being_dragged_out_of_a_drawer() {
        on.frame().button("group.distribution").click();
        Component row = on.frame().button("kind.junction").target();
        on.robot().pressMouse(row, new Point(40, 20), MouseButton.LEFT_BUTTON);
        on.robot().moveMouse(row, new Point(80, 20));
        on.until("the mouse places a junction", () -> on.canvas().tool() instanceof PlaceTool);

        on.robot().pressAndReleaseKeys(java.awt.event.KeyEvent.VK_ESCAPE);
        on.until("the hand again", () -> on.canvas().tool() == on.canvas().hand());
        on.robot().moveMouse(on.canvas(), new Point(400, 300));
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        on.robot().waitForIdle();

        assertThat(Same.object(on.drawing(), start)).isTrue();
        assertThat(on.state().undo()).isNull();
    }

    @Test
    void a_click_on_a_row_is_no_drag_though_the_hand_trembles() {
        on.frame().button("group.distribution").click();
        Component row = on.frame().button("kind.junction").target();

        on.robot().pressMouse(row, new Point(40, 20), MouseButton.LEFT_BUTTON);
        on.robot().moveMouse(row, new Point(43, 21));
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);

        on.until("a junction is in the hand", () -> on.canvas().tool() instanceof PlaceTool);
        assertThat(Same.object(on.drawing(), start)).isTrue();
    }

    @Test
    void the_end_of_a_selected_bar_is_pulled_and_let_go() {
        GuiActionRunner.execute(() -> on.canvas().session().select(Set.of("24MAIN")));
        Rect was = bar();
        Point from = onCanvas(was.maxX(), was.centreY());
        Point to = onCanvas(was.maxX() + 25, was.centreY());

        on.robot().pressMouse(on.canvas(), from, MouseButton.LEFT_BUTTON);
        on.robot().moveMouse(on.canvas(), new Point((from.x + to.x) / 2, from.y));
        on.robot().moveMouse(on.canvas(), to);
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);

        on.until("a longer bar", () -> !Same.object(on.drawing(), start));
        assertThat(bar().maxX()).isBetween(was.maxX() + 20, was.maxX() + 30);
        assertThat(bar().minX()).isBetween(was.minX() - 1.3, was.minX() + 1.3);
    }

    @Test
    void a_click_on_a_tab_leads_the_keys_into_its_page_and_says_what_they_do_there() {
        GuiActionRunner.execute(() ->
                on.window().bench().commands().get(CommandId.SHOW_REGISTER).run());
        on.frame().toggleButton("tab.conditions").click();
        on.untilFocused(on.frame().table("conditions.table").target());
        assertThat(on.frame().label("status").text()).isEqualTo(Texts.of("editor.hint.fold.conditions"));

        on.frame().toggleButton("tab.register").click();
        on.untilFocused(on.frame().table("register.table").target());
        assertThat(on.frame().label("status").text()).isEqualTo(Texts.of("editor.hint.fold.register"));
    }

    @Test
    void letters_open_no_drawer_while_a_note_is_in_the_hand() {
        GuiActionRunner.execute(() -> {
            on.canvas().requestFocusInWindow();
            on.window().bench().commands().get(CommandId.NOTE).run();
        });
        on.until("a note is in the hand", () -> on.canvas().tool() instanceof NoteTool);
        on.untilFocused(on.canvas());

        on.robot().pressAndReleaseKeys(java.awt.event.KeyEvent.VK_F);
        on.robot().waitForIdle();

        assertThat(GuiActionRunner.execute(() -> on.canvas().tool())).isInstanceOf(NoteTool.class);
        assertThat(on.robot()
                        .finder()
                        .findAll(c -> c.isShowing()
                                && c.getName() != null
                                && c.getName().startsWith("drawer.")))
                .isEmpty();
    }
}
