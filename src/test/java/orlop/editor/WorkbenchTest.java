package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.util.Set;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.scene.Role;
import orlop.scene.Scene;

/** The window's contents without a screen: laid out, painted into an image, worked with made-up mouse events. */
@Timeout(60)
class WorkbenchTest extends OnBench {

    WorkbenchTest() {
        super(TestBoat.drawing());
    }

    private SheetCanvas canvas() {
        return on.bench().canvas();
    }

    private Scene scene() {
        return canvas().scene().orElseThrow();
    }

    private Point2D px(double xMm, double yMm) {
        return canvas().viewport().toView(xMm, yMm);
    }

    private void mouse(int id, double x, double y, int modifiers, int clicks) {
        int button = id == MouseEvent.MOUSE_MOVED ? 0 : MouseEvent.BUTTON1;
        canvas().dispatchEvent(new MouseEvent(
                canvas(), id, 0, modifiers, (int) Math.round(x), (int) Math.round(y), clicks, false, button));
    }

    private void drag(Point2D from, Point2D to, int modifiers) {
        int down = InputEvent.BUTTON1_DOWN_MASK | modifiers;
        mouse(MouseEvent.MOUSE_PRESSED, from.getX(), from.getY(), down, 1);
        mouse(MouseEvent.MOUSE_DRAGGED, (from.getX() + to.getX()) / 2, (from.getY() + to.getY()) / 2, down, 1);
        mouse(MouseEvent.MOUSE_DRAGGED, to.getX(), to.getY(), down, 1);
        mouse(MouseEvent.MOUSE_RELEASED, to.getX(), to.getY(), modifiers, 1);
    }

    private Point2D component(String id) {
        var at = on.session().state().drawing().components().require(id).place().at();
        return px(at.xMm(), at.yMm());
    }

    @Test
    void the_sheet_is_painted_in_the_middle() throws Exception {
        HeadlessBench.onUi(() -> {
            Point2D bar = component("24MAIN");
            int x = (int) bar.getX();
            int y = (int) bar.getY();
            java.awt.Point at =
                    SwingUtilities.convertPoint(canvas(), x, y, on.bench().panel());

            assertThat(new java.awt.Color(on.image().getRGB(at.x, at.y)))
                    .as("the ink of the first system on its bar")
                    .isEqualTo(Look.ink(orlop.scene.Ink.SYSTEM_1));
        });
    }

    @Test
    void a_click_selects_and_shows_the_card_and_the_notes_stand_below() throws Exception {
        HeadlessBench.onUi(() -> {
            Point2D p = component("MA2");
            drag(p, p, 0);

            assertThat(on.session().state().selection()).containsExactly("MA2");
            assertThat(on.named("card.MA2")).isPresent();
            assertThat(on.named("field.particulars.shaftW")).isPresent();
            assertThat(on.named("note.1")).isPresent();
        });
    }

    @Test
    void a_drag_moves_on_the_grid_as_one_step_and_undo_gives_the_first_drawing_back() throws Exception {
        HeadlessBench.onUi(() -> {
            Point2D p = component("P1");
            double mm = canvas().viewport().pxPerMm();

            drag(p, new Point2D.Double(p.getX() + 11 * mm, p.getY() + 4 * mm), 0);

            var before = start.components().require("P1").place().at();
            var after = on.session()
                    .state()
                    .drawing()
                    .components()
                    .require("P1")
                    .place()
                    .at();
            assertThat(after.xMm() - before.xMm()).isEqualTo(10);
            assertThat(after.yMm() - before.yMm()).isEqualTo(5);
            on.bench().commands().get(CommandId.UNDO).run();
            assertThat(Same.object(on.session().state().drawing(), start)).isTrue();
        });
    }

    @Test
    void escape_during_a_drag_leaves_everything_as_it_was() throws Exception {
        HeadlessBench.onUi(() -> {
            Point2D p = component("P1");
            int down = InputEvent.BUTTON1_DOWN_MASK;
            mouse(MouseEvent.MOUSE_PRESSED, p.getX(), p.getY(), down, 1);
            mouse(MouseEvent.MOUSE_DRAGGED, p.getX() + 60, p.getY() + 60, down, 1);
            assertThat(canvas().hand().busy()).isTrue();

            on.bench().commands().get(CommandId.BACK_OUT).run();
            mouse(MouseEvent.MOUSE_RELEASED, p.getX() + 60, p.getY() + 60, 0, 1);

            assertThat(Same.object(on.session().state().shown(), start)).isTrue();
            assertThat(on.session().state().undo()).isNull();
        });
    }

    @Test
    void the_wheel_zooms_at_the_pointer() throws Exception {
        HeadlessBench.onUi(() -> {
            Point2D p = component("MA2");
            Point2D mm = canvas().viewport().toSheet(p.getX(), p.getY());
            double before = canvas().viewport().pxPerMm();

            canvas().dispatchEvent(new MouseWheelEvent(
                    canvas(), MouseEvent.MOUSE_WHEEL, 0, 0, (int) p.getX(), (int) p.getY(), 0, false, 0, 1, -3));

            assertThat(canvas().viewport().pxPerMm()).isGreaterThan(1.3 * before);
            Point2D after = canvas().viewport().toSheet((int) p.getX(), (int) p.getY());
            assertThat(after.distance(mm)).isLessThan(1.5 / before);
        });
    }

    @Test
    void the_rubber_band_selects_what_lies_wholly_within() throws Exception {
        HeadlessBench.onUi(() -> {
            drag(px(200, 170), px(300, 205), 0);

            assertThat(on.session().state().selection())
                    .contains("P1", "MA3", "EB1")
                    .doesNotContain("MA2", "24MAIN");
        });
    }

    @Test
    void a_screen_reader_meets_as_many_children_as_there_are_components_cables_links_and_notes() throws Exception {
        HeadlessBench.onUi(() -> {
            AccessibleContext c = canvas().getAccessibleContext();

            assertThat(c.getAccessibleChildrenCount())
                    .isEqualTo(start.components().size()
                            + start.cables().size()
                            + start.links().size()
                            + start.notes().size());
            AccessibleContext first = c.getAccessibleChild(0).getAccessibleContext();
            assertThat(first.getAccessibleName()).isNotBlank();
            first.getAccessibleAction().doAccessibleAction(0);
            assertThat(on.session().state().selection()).hasSize(1);
        });
    }

    @Test
    void every_control_has_a_name_for_those_who_do_not_see_it() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("MA2"));
            on.paint();
            allNamed(on.bench().panel());
        });
    }

    private static void allNamed(Container in) {
        for (java.awt.Component c : in.getComponents()) {
            boolean control = c instanceof javax.swing.AbstractButton
                    || (c instanceof javax.swing.text.JTextComponent t && t.isEditable())
                    || c instanceof javax.swing.JComboBox;
            boolean part =
                    c.getParent() instanceof javax.swing.JComboBox || c.getParent() instanceof javax.swing.JScrollBar;
            if (control && !part) {
                assertThat(c.getAccessibleContext().getAccessibleName())
                        .as("name of " + c)
                        .isNotBlank();
            }
            if (c instanceof Container k) {
                allNamed(k);
            }
        }
    }

    @Test
    void dark_turns_the_sheet_and_the_window() throws Exception {
        HeadlessBench.onUi(() -> {
            on.bench().commands().get(CommandId.DARK).run();
            on.paint();

            java.awt.Point at =
                    SwingUtilities.convertPoint(canvas(), 3, 3, on.bench().panel());
            assertThat(new java.awt.Color(on.image().getRGB(at.x, at.y))).isEqualTo(Look.desk());
            assertThat(Look.dark()).isTrue();
            assertThat(Look.palette()).isSameAs(orlop.scene.Palette.DARK);
        });
    }

    @Test
    void nothing_is_wider_than_its_place_in_a_small_window() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of("W10"));
            on.paint();
            JComponent margin = on.named("margin").orElseThrow();
            fits(margin);
        });
    }

    private static void fits(Container in) {
        for (java.awt.Component c : in.getComponents()) {
            if (c instanceof javax.swing.JButton b && b.isVisible() && b.getWidth() > 0) {
                assertThat(b.getPreferredSize().width).as(b.getText()).isLessThanOrEqualTo(b.getWidth());
            }
            if (c instanceof Container k) {
                fits(k);
            }
        }
    }

    @Test
    void findings_stand_on_the_sheet_as_well() throws Exception {
        HeadlessBench.onUi(() -> assertThat(scene().items().stream().filter(i -> i.role() == Role.FINDING))
                .isNotEmpty());
    }
}
