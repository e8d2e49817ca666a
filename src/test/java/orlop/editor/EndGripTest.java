package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Locks;
import orlop.desk.Same;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Point;
import orlop.scene.Route;
import orlop.scene.TerminalSpot;

/** The end of the selected cable led elsewhere by the mouse; without a screen. */
@Timeout(60)
class EndGripTest extends OnBench {
    private static final String CABLE = TestBoat.UNGUARDED;

    EndGripTest() {
        super(TestBoat.drawing());
    }

    private SheetCanvas canvas() {
        return on.bench().canvas();
    }

    private Drawing drawing() {
        return on.session().state().drawing();
    }

    private List<EndGrip> grips() {
        return EndGrip.all(canvas(), canvas().scene());
    }

    private Point terminal(String component, String terminal) {
        TerminalSpot t = canvas().scene().orElseThrow().terminals().stream()
                .filter(s -> s.terminal().component().equals(component)
                        && s.terminal().terminal().equals(terminal))
                .findFirst()
                .orElseThrow();
        return new Point(t.xMm(), t.yMm());
    }

    private Point middleOfTheBar() {
        TerminalSpot t = canvas().scene().orElseThrow().bars().stream()
                .filter(b -> b.component().equals("24MAIN"))
                .findFirst()
                .orElseThrow()
                .middle();
        return new Point(t.xMm(), t.yMm());
    }

    private void mouse(int id, Point mm) {
        Point2D p = canvas().viewport().toView(mm.xMm(), mm.yMm());
        canvas().dispatchEvent(new MouseEvent(
                canvas(),
                id,
                0,
                id == MouseEvent.MOUSE_RELEASED ? 0 : InputEvent.BUTTON1_DOWN_MASK,
                (int) Math.round(p.getX()),
                (int) Math.round(p.getY()),
                1,
                false,
                MouseEvent.BUTTON1));
    }

    /** Pulls the grip of the bar's end of the cable to here, and lets go unless it is to be kept. */
    private void pull(Point to, boolean letGo) {
        on.session().select(Set.of(CABLE));
        EndGrip grip = grips().stream()
                .filter(g -> g.now().component().equals("24MAIN"))
                .findFirst()
                .orElseThrow();
        mouse(MouseEvent.MOUSE_PRESSED, grip.at());
        mouse(MouseEvent.MOUSE_DRAGGED, grip.at().plus(6, 6));
        mouse(MouseEvent.MOUSE_DRAGGED, to);
        if (letGo) {
            mouse(MouseEvent.MOUSE_RELEASED, to);
        }
    }

    @Test
    void an_end_is_led_to_another_terminal_as_one_step_and_the_cable_keeps_all_else() throws Exception {
        HeadlessBench.onUi(() -> {
            Cable was = drawing().cables().require(CABLE);

            pull(terminal("FC1", "1"), true);

            Cable now = drawing().cables().require(CABLE);
            assertThat(List.of(now.from().toString(), now.to().toString())).contains("FC1.1");
            assertThat(now.lengthM()).isEqualTo(was.lengthM());
            assertThat(drawing().cables().size()).isEqualTo(start.cables().size());
            assertThat(on.session().state().selection()).containsExactly(CABLE);
            on.session().undo();
            assertThat(Same.object(drawing(), start)).isTrue();
        });
    }

    @Test
    void let_go_beside_everything_it_stays_and_so_it_does_where_it_cannot_end() throws Exception {
        HeadlessBench.onUi(() -> {
            pull(new Point(380, 30), true);
            assertThat(Same.object(drawing(), start)).isTrue();

            EndGrip far = grips().stream()
                    .filter(g -> !g.now().component().equals("24MAIN"))
                    .findFirst()
                    .orElseThrow();
            pull(terminal(far.now().component(), far.now().terminal()), true);
            assertThat(Same.object(drawing(), start)).isTrue();
            assertThat(on.session().state().undo()).isNull();
        });
    }

    /** A leg is dragged aside there: nobody has seen a ring. */
    @Test
    void where_the_cable_is_not_selected_there_is_nothing_to_lead() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(CABLE));
            Point at = grips().get(0).at();
            on.session().select(Set.of());

            mouse(MouseEvent.MOUSE_PRESSED, at);
            mouse(MouseEvent.MOUSE_DRAGGED, at.plus(6, 6));
            mouse(MouseEvent.MOUSE_RELEASED, terminal("FC1", "1"));

            assertThat(drawing().cables().require(CABLE).from())
                    .isEqualTo(start.cables().require(CABLE).from());
            assertThat(drawing().cables().require(CABLE).to())
                    .isEqualTo(start.cables().require(CABLE).to());
        });
    }

    @Test
    void let_go_on_the_bar_where_it_is_it_stays_and_says_so() throws Exception {
        HeadlessBench.onUi(() -> {
            pull(middleOfTheBar(), true);

            assertThat(Same.object(drawing(), start)).isTrue();
            assertThat(on.session().state().undo()).isNull();
            assertThat(Texts.title(java.util.Objects.requireNonNull(
                            on.session().state().notice())))
                    .contains(CABLE, "stays as it is");
        });
    }

    @Test
    void escape_gives_it_up() throws Exception {
        HeadlessBench.onUi(() -> {
            pull(terminal("FC1", "1"), false);
            canvas().backOut();
            mouse(MouseEvent.MOUSE_RELEASED, terminal("FC1", "1"));

            assertThat(Same.object(drawing(), start)).isTrue();
        });
    }

    @Test
    void a_locked_cable_and_more_than_one_have_no_grips() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(CABLE, "W1"));
            assertThat(grips()).isEmpty();

            on.session().select(Set.of(CABLE));
            assertThat(grips()).hasSize(2);
            on.session().apply(Locks.set(Set.of(CABLE), true));
            assertThat(grips()).isEmpty();
        });
    }

    private Route way() {
        return java.util.Objects.requireNonNull(
                canvas().scene().orElseThrow().routes().get(CABLE));
    }

    /** So that the cable is so many pixels long on the screen. */
    private void seenSoLong(double px) {
        double mm = way().lengthMm();
        canvas().view(canvas().viewport().zoomed(px / mm / canvas().viewport().pxPerMm(), 200, 200));
    }

    private String hinted(Point mm) {
        List<String> said = new java.util.ArrayList<>();
        canvas().onHint(said::add);
        mouse(MouseEvent.MOUSE_MOVED, mm);
        return said.get(said.size() - 1);
    }

    @Test
    void a_short_cable_has_its_rings_too_apart_from_each_other_and_from_its_terminals() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(CABLE));
            seenSoLong(40);

            List<EndGrip> both = grips();
            assertThat(both).hasSize(2);
            Point one = both.get(0).at();
            Point other = both.get(1).at();
            double px = canvas().viewport().pxPerMm();
            assertThat(Math.hypot(one.xMm() - other.xMm(), one.yMm() - other.yMm()) * px)
                    .isGreaterThan(13);
            List<Point> way = way().points();
            for (EndGrip g : both) {
                Point end = g.atFrom() ? way.get(0) : way.get(way.size() - 1);
                assertThat(Math.hypot(end.xMm() - g.at().xMm(), end.yMm() - g.at().yMm()) * px)
                        .isGreaterThan(7);
            }

            pull(terminal("FC1", "1"), true);
            Cable now = drawing().cables().require(CABLE);
            assertThat(List.of(now.from().toString(), now.to().toString())).contains("FC1.1");
        });
    }

    @Test
    void where_a_cable_is_too_short_for_rings_it_is_said_how_to_come_to_them() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(CABLE));
            seenSoLong(20);

            assertThat(grips()).isEmpty();
            Route r = way();
            Point a = r.points().get(0);
            Point b = r.points().get(1);
            Point on = new Point((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
            assertThat(hinted(on)).startsWith("Zoom in").contains(CABLE);
        });
    }

    @Test
    void over_a_ring_the_mouse_is_a_hand() throws Exception {
        HeadlessBench.onUi(() -> {
            on.session().select(Set.of(CABLE));
            Point ring = grips().get(0).at();

            assertThat(hinted(ring)).startsWith("Drag this ring");
            assertThat(canvas().getCursor().getType()).isEqualTo(java.awt.Cursor.HAND_CURSOR);
            mouse(MouseEvent.MOUSE_MOVED, new Point(380, 30));
            assertThat(canvas().getCursor().getType()).isEqualTo(java.awt.Cursor.DEFAULT_CURSOR);
        });
    }
}
