package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;

/** Legs of cables and labels that are dragged on the sheet, without a screen. */
@Timeout(60)
class HandSetGesturesTest extends OnBench {
    private static final String CABLE = "W18";

    HandSetGesturesTest() {
        super(TestBoat.drawing());
    }

    private SheetCanvas canvas() {
        return on.bench().canvas();
    }

    private Drawing drawing() {
        return on.session().state().drawing();
    }

    private Cable cable() {
        return drawing().cables().require(CABLE);
    }

    private Scene scene() {
        return canvas().scene().orElseThrow();
    }

    private Route route() {
        return Objects.requireNonNull(scene().routes().get(CABLE));
    }

    private Rect label(String item) {
        return scene().items().stream()
                .filter(i -> i.role() == Role.LABEL && i.subject().equals(item))
                .map(SceneItem::bounds)
                .findFirst()
                .orElseThrow();
    }

    private void mouse(int id, double xMm, double yMm) {
        Point2D p = canvas().viewport().toView(xMm, yMm);
        int down = id == MouseEvent.MOUSE_RELEASED ? 0 : InputEvent.BUTTON1_DOWN_MASK;
        int x = (int) Math.round(p.getX());
        int y = (int) Math.round(p.getY());
        canvas().dispatchEvent(new MouseEvent(canvas(), id, 0, down, x, y, 1, false, MouseEvent.BUTTON1));
    }

    private void drag(Point from, double dx, double dy) {
        mouse(MouseEvent.MOUSE_PRESSED, from.xMm(), from.yMm());
        mouse(MouseEvent.MOUSE_DRAGGED, from.xMm() + dx / 2, from.yMm() + dy / 2);
        mouse(MouseEvent.MOUSE_DRAGGED, from.xMm() + dx, from.yMm() + dy);
    }

    /** A point of the cable's only leg where nothing else lies. */
    private Point grip() {
        List<Point> p = route().points();
        assertThat(p).hasSize(2);
        for (double share = 0.1; share < 0.9; share += 0.02) {
            Point at = route().at(share);
            if (scene().itemAt(at.xMm(), at.yMm(), 1)
                    .filter(i -> i.role() == Role.CABLE && i.subject().equals(CABLE))
                    .isPresent()) {
                return at;
            }
        }
        throw new AssertionError("no free piece of " + CABLE);
    }

    @Test
    void a_leg_that_is_dragged_aside_stays_there_and_undo_gives_the_line_back() throws Exception {
        HeadlessBench.onUi(() -> {
            List<Point> before = route().points();
            Point at = grip();
            drag(at, 10, 0);
            mouse(MouseEvent.MOUSE_RELEASED, at.xMm() + 10, at.yMm());

            double x = before.get(0).xMm() + 10;
            assertThat(cable().bends()).hasSize(4);
            assertThat(cable().bends().get(1).xMm()).isEqualTo(x);
            assertThat(route().points().subList(1, 5)).isEqualTo(cable().bends());

            on.session().undo();
            assertThat(drawing()).isSameAs(start);
            assertThat(route().points()).isEqualTo(before);
        });
    }

    @Test
    void when_a_component_has_been_dragged_nothing_is_said_any_more_of_what_the_mouse_was_doing() throws Exception {
        HeadlessBench.onUi(() -> {
            var at = drawing().components().require("EA2").place().at();
            Point from = new Point(at.xMm(), at.yMm() + 1);
            drag(from, 10, 5);
            assertThat(status()).isEqualTo(Texts.of("editor.hint.move"));
            mouse(MouseEvent.MOUSE_RELEASED, from.xMm() + 10, from.yMm() + 5);

            assertThat(drawing().components().require("EA2").place().at().xMm()).isEqualTo(at.xMm() + 10);
            assertThat(status()).isNotEqualTo(Texts.of("editor.hint.move"));
        });
    }

    private String status() {
        return ((JLabel) on.named("status").orElseThrow()).getText();
    }

    @Test
    void escape_during_a_drag_of_a_leg_leaves_everything_as_it_was() throws Exception {
        HeadlessBench.onUi(() -> {
            drag(grip(), 10, 0);
            canvas().backOut();

            assertThat(drawing()).isSameAs(start);
            assertThat(on.session().state().preview()).isNull();
        });
    }

    @Test
    void labels_of_cables_and_components_stay_where_they_are_dropped() throws Exception {
        HeadlessBench.onUi(() -> {
            for (String item : List.of(CABLE, "EA2")) {
                Rect was = label(item);
                drag(new Point(was.centreX(), was.centreY()), 20, 15);
                mouse(MouseEvent.MOUSE_RELEASED, was.centreX() + 20, was.centreY() + 15);

                Rect now = label(item);
                assertThat(now.minX()).isCloseTo(was.minX() + 20, within(0.5));
                assertThat(now.minY()).isCloseTo(was.minY() + 15, within(0.5));
            }
            assertThat(cable().labelAt()).isNotNull();
            assertThat(drawing().components().require("EA2").place().labelAt()).isNotNull();
        });
    }

    @Test
    void the_command_leaves_all_that_is_selected_to_the_layout_again() throws Exception {
        HeadlessBench.onUi(() -> {
            Rect was = label(CABLE);
            drag(new Point(was.centreX(), was.centreY()), 20, 15);
            mouse(MouseEvent.MOUSE_RELEASED, was.centreX() + 20, was.centreY() + 15);
            on.session().select(Set.of(CABLE));

            on.bench().commands().get(CommandId.AUTOMATIC).actionPerformed(new ActionEvent(canvas(), 0, ""));

            assertThat(cable().labelAt()).isNull();
            assertThat(label(CABLE)).isEqualTo(was);
        });
    }
}
