package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.layout.Rect;

/** A bar pulled by the mouse, the marks under the mouse, and the ways of the wheel; without a screen. */
@Timeout(60)
class StretchGestureTest extends OnBench {
    StretchGestureTest() {
        super(TestBoat.drawing());
    }

    private SheetCanvas canvas() {
        return on.bench().canvas();
    }

    private Drawing drawing() {
        return on.session().state().drawing();
    }

    private Rect bar() {
        return canvas().scene().orElseThrow().bars().stream()
                .filter(b -> b.component().equals("24MAIN"))
                .findFirst()
                .orElseThrow()
                .rect();
    }

    private void mouse(int id, double xMm, double yMm) {
        Point2D p = canvas().viewport().toView(xMm, yMm);
        boolean up = id == MouseEvent.MOUSE_RELEASED || id == MouseEvent.MOUSE_MOVED;
        canvas().dispatchEvent(new MouseEvent(
                canvas(),
                id,
                0,
                up ? 0 : InputEvent.BUTTON1_DOWN_MASK,
                (int) Math.round(p.getX()),
                (int) Math.round(p.getY()),
                1,
                false,
                id == MouseEvent.MOUSE_MOVED ? 0 : MouseEvent.BUTTON1));
    }

    @Test
    void the_end_of_the_selected_bar_is_pulled_as_one_step() throws Exception {
        HeadlessBench.onUi(() -> {
            Rect was = bar();
            on.session().select(Set.of("24MAIN"));
            mouse(MouseEvent.MOUSE_MOVED, was.maxX(), was.centreY());
            assertThat(canvas().getCursor().getType()).isEqualTo(Cursor.E_RESIZE_CURSOR);

            mouse(MouseEvent.MOUSE_PRESSED, was.maxX(), was.centreY());
            mouse(MouseEvent.MOUSE_DRAGGED, was.maxX() + 15, was.centreY());
            mouse(MouseEvent.MOUSE_DRAGGED, was.maxX() + 30, was.centreY() + 3);
            mouse(MouseEvent.MOUSE_RELEASED, was.maxX() + 30, was.centreY() + 3);

            assertThat(bar().maxX()).isBetween(was.maxX() + 27, was.maxX() + 33);
            assertThat(bar().minX()).isBetween(was.minX() - 1.3, was.minX() + 1.3);
            assertThat(on.session().state().selection()).containsExactly("24MAIN");
            on.session().undo();
            assertThat(Same.object(drawing(), start)).isTrue();
            assertThat(on.session().state().undo()).isNull();
        });
    }

    @Test
    void a_new_bar_is_drawn_from_where_the_mouse_is_pressed_to_where_it_is_let_go() throws Exception {
        HeadlessBench.onUi(() -> {
            canvas().use(new PlaceTool(canvas(), Kind.BUSBAR));
            mouse(MouseEvent.MOUSE_PRESSED, 60, 180);
            mouse(MouseEvent.MOUSE_DRAGGED, 100, 180);
            mouse(MouseEvent.MOUSE_DRAGGED, 140, 181);
            mouse(MouseEvent.MOUSE_RELEASED, 140, 181);

            String id = on.session().state().soleSelection().orElseThrow();
            Rect drawn = canvas().scene().orElseThrow().bars().stream()
                    .filter(b -> b.component().equals(id))
                    .findFirst()
                    .orElseThrow()
                    .rect();
            assertThat(drawn.minX()).isBetween(58.0, 62.0);
            assertThat(drawn.maxX()).isBetween(137.0, 143.0);
            on.session().undo();
            assertThat(Same.object(drawing(), start)).isTrue();
        });
    }

    @Test
    void no_terminal_stays_marked_where_the_bar_under_the_mouse_has_been_deleted() throws Exception {
        HeadlessBench.onUi(() -> {
            Rect was = bar();
            mouse(MouseEvent.MOUSE_MOVED, was.centreX(), was.centreY());
            int marked = pixel(was);
            on.session().apply(Edits.delete(Set.of("24MAIN")), Set.of());
            canvas().blink().end();

            assertThat(pixel(was)).isNotEqualTo(marked).isEqualTo(Color.WHITE.getRGB());
        });
    }

    private int pixel(Rect middle) {
        BufferedImage shown = new BufferedImage(canvas().getWidth(), canvas().getHeight(), BufferedImage.TYPE_INT_RGB);
        canvas().paint(shown.getGraphics());
        Point2D p = canvas().viewport().toView(middle.centreX(), middle.centreY());
        return shown.getRGB((int) Math.round(p.getX()), (int) Math.round(p.getY()));
    }

    @Test
    void the_sheet_cannot_be_pushed_out_of_sight() throws Exception {
        HeadlessBench.onUi(() -> {
            for (int[] push : new int[][] {{9_000, 0}, {-9_000, 0}, {0, 9_000}, {0, -9_000}, {9_000, -9_000}}) {
                canvas().view(canvas().viewport().moved(push[0], push[1]));

                Point2D corner = canvas().viewport().toView(0, 0);
                Point2D far = canvas().viewport().toView(420, 297);
                assertThat(corner.getX()).isLessThanOrEqualTo(canvas().getWidth() - 40);
                assertThat(corner.getY()).isLessThanOrEqualTo(canvas().getHeight() - 40);
                assertThat(far.getX()).isGreaterThanOrEqualTo(40);
                assertThat(far.getY()).isGreaterThanOrEqualTo(40);
            }
        });
    }

    @Test
    void a_window_made_smaller_leaves_some_of_the_sheet_in_sight_and_made_larger_again_shows_what_it_did()
            throws Exception {
        HeadlessBench.onUi(() -> {
            int w = canvas().getWidth();
            int h = canvas().getHeight();
            canvas().view(canvas().viewport().moved(9_000, 9_000)); // a corner of the sheet at the lower right
            Viewport was = canvas().viewport();

            canvas().setSize(w / 2, h / 2);

            Point2D corner = canvas().viewport().toView(0, 0);
            assertThat(corner.getX()).isLessThanOrEqualTo(w / 2.0 - 40);
            assertThat(corner.getY()).isLessThanOrEqualTo(h / 2.0 - 40);
            canvas().setSize(w, h);
            assertThat(canvas().viewport()).isEqualTo(was);
        });
    }

    @Test
    void escape_gives_the_bar_its_length_back() throws Exception {
        HeadlessBench.onUi(() -> {
            Rect was = bar();
            on.session().select(Set.of("24MAIN"));
            mouse(MouseEvent.MOUSE_PRESSED, was.minX(), was.centreY());
            mouse(MouseEvent.MOUSE_DRAGGED, was.minX() - 20, was.centreY());
            canvas().backOut();
            mouse(MouseEvent.MOUSE_RELEASED, was.minX() - 20, was.centreY());

            assertThat(bar()).isEqualTo(was);
            assertThat(Same.object(drawing(), start)).isTrue();
        });
    }

    @Test
    void a_bar_that_is_not_selected_gives_a_cable_at_its_end_as_elsewhere() throws Exception {
        HeadlessBench.onUi(() -> {
            Rect was = bar();
            mouse(MouseEvent.MOUSE_MOVED, was.maxX() - 1, was.centreY());
            assertThat(canvas().getCursor().getType()).isEqualTo(Cursor.DEFAULT_CURSOR);
            mouse(MouseEvent.MOUSE_PRESSED, was.maxX() - 1, was.centreY());
            mouse(MouseEvent.MOUSE_DRAGGED, was.maxX() + 20, was.centreY() + 20);
            assertThat(canvas().hand().busy()).isTrue();
            mouse(MouseEvent.MOUSE_RELEASED, was.maxX() + 20, was.centreY() + 20);

            assertThat(bar()).isEqualTo(was);
        });
    }

    @Test
    void the_terminal_under_the_mouse_is_marked_until_the_mouse_leaves() throws Exception {
        HeadlessBench.onUi(() -> {
            on.paint();
            var plain = on.image();
            var t = canvas().scene().orElseThrow().terminals().stream()
                    .filter(s -> s.terminal().component().equals("MA2"))
                    .findFirst()
                    .orElseThrow();
            Point2D p = canvas().viewport().toView(t.xMm(), t.yMm());
            var at = javax.swing.SwingUtilities.convertPoint(
                    canvas(),
                    (int) Math.round(p.getX()),
                    (int) Math.round(p.getY()),
                    on.bench().panel());

            mouse(MouseEvent.MOUSE_MOVED, t.xMm(), t.yMm());
            on.paint();
            assertThat(new java.awt.Color(on.image().getRGB(at.x + 2, at.y))).isEqualTo(Look.accent());

            canvas().dispatchEvent(new MouseEvent(canvas(), MouseEvent.MOUSE_EXITED, 0, 0, -1, -1, 0, false));
            on.paint();
            assertThat(on.image().getRGB(at.x + 2, at.y)).isEqualTo(plain.getRGB(at.x + 2, at.y));
        });
    }

    @Test
    void the_space_bar_that_is_let_go_elsewhere_pans_no_longer() throws Exception {
        HeadlessBench.onUi(() -> {
            var space = new java.awt.event.KeyEvent(
                    canvas(), java.awt.event.KeyEvent.KEY_PRESSED, 0, 0, java.awt.event.KeyEvent.VK_SPACE, ' ');
            for (var l : canvas().getKeyListeners()) {
                l.keyPressed(space);
            }
            assertThat(canvas().getCursor().getType()).isEqualTo(Cursor.MOVE_CURSOR);
            var lost = new java.awt.event.FocusEvent(canvas(), java.awt.event.FocusEvent.FOCUS_LOST, false);
            for (var l : canvas().getFocusListeners()) {
                l.focusLost(lost);
            }
            assertThat(canvas().getCursor().getType()).isEqualTo(Cursor.DEFAULT_CURSOR);

            Viewport was = canvas().viewport();
            mouse(MouseEvent.MOUSE_PRESSED, 330, 60);
            mouse(MouseEvent.MOUSE_DRAGGED, 350, 80);
            mouse(MouseEvent.MOUSE_RELEASED, 350, 80);
            assertThat(canvas().viewport()).isEqualTo(was);
        });
    }

    private void wheel(int modifiers, double precise) {
        canvas().dispatchEvent(new MouseWheelEvent(
                canvas(),
                MouseEvent.MOUSE_WHEEL,
                0,
                modifiers,
                200,
                200,
                0,
                0,
                0,
                false,
                MouseWheelEvent.WHEEL_UNIT_SCROLL,
                3,
                (int) precise,
                precise));
    }

    @Test
    void the_fine_steps_of_a_trackpad_pan_and_shift_turns_them_sideways() throws Exception {
        HeadlessBench.onUi(() -> {
            Viewport was = canvas().viewport();
            wheel(0, 0.5);
            Viewport down = canvas().viewport();
            assertThat(down.pxPerMm()).isEqualTo(was.pxPerMm());
            assertThat(down.toView(0, 0).getY()).isLessThan(was.toView(0, 0).getY());
            assertThat(down.toView(0, 0).getX()).isEqualTo(was.toView(0, 0).getX());

            wheel(InputEvent.SHIFT_DOWN_MASK, 1);
            assertThat(canvas().viewport().toView(0, 0).getX())
                    .isLessThan(down.toView(0, 0).getX());

            wheel(InputEvent.CTRL_DOWN_MASK, -0.5);
            assertThat(canvas().viewport().pxPerMm()).isGreaterThan(was.pxPerMm());
        });
    }
}
