package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Set;
import javax.swing.JComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Group;

/** What stands aside where there is little room. A screen of 1366 by 768 dots has 683 by 384 to give at 200 %, 455 by 256 at 300 %. */
@Timeout(60)
class GivingWayTest extends OnBench {
    GivingWayTest() {
        super(TestBoat.drawing());
    }

    private void size(int width, int height) throws Exception {
        HeadlessBench.onUi(() -> on.resize(Look.px(width), Look.px(height)));
        settle();
    }

    /** The window tells of its size a moment later, and what is shown or goes is laid out after that. */
    private void settle() throws Exception {
        for (int i = 0; i < 3; i++) {
            HeadlessBench.onUi(on::paint);
        }
    }

    private void run(CommandId id) throws Exception {
        on.run(id);
        settle();
    }

    private boolean shows(String name) {
        JComponent c = on.named(name).orElseThrow();
        return c.isVisible() && c.getParent().isVisible();
    }

    private int high(String name) {
        return on.named(name).orElseThrow().getHeight();
    }

    private SheetCanvas canvas() {
        return on.bench().canvas();
    }

    @Test
    void in_a_low_window_a_page_has_half_of_the_room_and_the_strip_goes_for_it() throws Exception {
        size(683, 370);
        assertThat(shows("conditions")).isTrue();

        run(CommandId.SHOW_PATH);

        assertThat(shows("conditions")).isFalse();
        assertThat(high("fold-out")).isBetween(Look.px(100), canvas().getHeight() + 1);
        run(CommandId.SHOW_STRIP); // it is asked for, so it comes
        assertThat(shows("conditions")).isTrue();
        run(CommandId.SHOW_PATH);
        run(CommandId.SHOW_STRIP);
        assertThat(shows("conditions")).as("nobody else wants its room").isFalse();
    }

    @Test
    void a_page_does_not_make_the_sheet_too_small_to_be_read() throws Exception {
        size(683, 370);
        run(CommandId.SHOW_MARGIN); // as wide without the page as with it
        double before = canvas().viewport().pxPerMm();

        run(CommandId.SHOW_FINDINGS);
        HeadlessBench.onUi(() -> canvas().session().select(Set.of("P1")));
        assertThat(canvas().viewport().pxPerMm()).isGreaterThan(0.9 * before);

        run(CommandId.FIT);
        double whole =
                canvas().scene().orElseThrow().heightMm() * canvas().viewport().pxPerMm();
        assertThat(whole).as("unless the whole of it is asked for").isLessThanOrEqualTo(canvas().getHeight());

        run(CommandId.SHOW_FINDINGS);
        assertThat(canvas().viewport().pxPerMm())
                .as("and as before when it goes")
                .isEqualTo(before);
    }

    @Test
    void in_a_roomy_window_the_sheet_stays_whole_beside_a_page() throws Exception {
        size(1366, 740);
        run(CommandId.SHOW_FINDINGS);

        double whole =
                canvas().scene().orElseThrow().heightMm() * canvas().viewport().pxPerMm();
        assertThat(whole).isLessThan(canvas().getHeight());
        assertThat(shows("conditions")).isTrue();
        assertThat(shows("margin")).isTrue();
    }

    @Test
    void in_a_very_low_window_sheet_and_page_take_turns() throws Exception {
        size(455, 240);
        int alone = canvas().getHeight();

        run(CommandId.SHOW_FINDINGS);
        assertThat(high("fold-out")).isGreaterThanOrEqualTo(alone);
        assertThat(canvas().getHeight()).isZero();

        run(CommandId.BACK_OUT);
        assertThat(canvas().getHeight()).isGreaterThan(Look.px(90));
        assertThat(high("fold-out")).as("its tabs").isBetween(Look.px(16), Look.px(40));

        HeadlessBench.onUi(
                () -> ((javax.swing.AbstractButton) on.named("tab.path").orElseThrow()).doClick());
        settle();
        assertThat(canvas().getHeight()).isZero();
        assertThat(((javax.swing.AbstractButton) on.named("tab.path").orElseThrow()).isSelected())
                .isTrue();
    }

    @Test
    void escape_out_of_a_page_that_has_all_the_room_keeps_the_selection() throws Exception {
        HeadlessBench.onUi(() -> canvas().session().select(Set.of("W1")));
        run(CommandId.SHOW_PATH);
        int half = high("fold-out");
        run(CommandId.WHOLE_PAGE);
        assertThat(canvas().getHeight()).isZero();
        assertThat(high("fold-out")).isGreaterThan(2 * half);

        run(CommandId.BACK_OUT);

        assertThat(high("fold-out")).isEqualTo(half);
        assertThat(canvas().session().state().selection()).containsExactly("W1");
    }

    @Test
    void what_is_to_be_seen_while_a_page_has_all_the_room_leaves_the_sheet_as_it_lay() throws Exception {
        run(CommandId.SHOW_PATH);
        Viewport before = canvas().viewport();
        run(CommandId.WHOLE_PAGE);
        HeadlessBench.onUi(() -> canvas().view().reveal(orlop.layout.Rect.of(120, 190, 10, 10)));
        run(CommandId.WHOLE_PAGE);
        assertThat(canvas().viewport()).as("all of it is seen").isEqualTo(before);

        HeadlessBench.onUi(() -> canvas().view().zoom(6));
        run(CommandId.WHOLE_PAGE);
        HeadlessBench.onUi(() -> canvas().view().reveal(orlop.layout.Rect.of(400, 280, 10, 10)));
        run(CommandId.WHOLE_PAGE);
        var at = canvas().viewport().toView(405, 285);
        assertThat(at.getX()).as("in sight").isBetween(0.0, (double) canvas().getWidth());
        assertThat(at.getY()).isBetween(0.0, (double) canvas().getHeight());
    }

    @Test
    void a_double_click_on_the_edge_of_a_page_gives_it_all_the_room_and_takes_it_back() throws Exception {
        run(CommandId.SHOW_PATH);
        int half = high("fold-out");
        JComponent edge = on.named("fold-edge").orElseThrow();
        for (int wanted : new int[] {0, canvas().getHeight()}) {
            HeadlessBench.onUi(() -> edge.dispatchEvent(
                    new MouseEvent(edge, MouseEvent.MOUSE_CLICKED, 0, 0, 3, 2, 2, false, MouseEvent.BUTTON1)));
            settle();
            assertThat(canvas().getHeight()).isEqualTo(wanted);
        }
        assertThat(high("fold-out")).isEqualTo(half);
    }

    @Test
    void the_sheet_alone_has_all_the_room_until_something_else_is_asked_for() throws Exception {
        run(CommandId.SHOW_FINDINGS);
        List<String> others = List.of("conditions", "locker", "margin", "fold-out");
        run(CommandId.ALONE);
        assertThat(others).noneMatch(this::shows);
        assertThat(canvas().getWidth()).isEqualTo(on.bench().panel().getWidth());

        run(CommandId.ALONE);
        assertThat(others).allMatch(this::shows);

        run(CommandId.ALONE);
        run(CommandId.SHOW_LOCKER);
        assertThat(others).as("asking for one of them brings them back").allMatch(this::shows);
    }

    @Test
    void all_groups_of_the_locker_are_in_sight_in_a_very_low_window() throws Exception {
        size(455, 232);
        for (Group g : Group.values()) {
            JComponent b = on.named("group." + g.word()).orElseThrow();
            assertThat(b.getVisibleRect().height)
                    .as(g.word())
                    .isEqualTo(b.getHeight())
                    .isPositive();
        }
    }

    @Test
    void buttons_above_a_table_go_on_in_a_further_line() throws Exception {
        size(455, 240);
        run(CommandId.SHOW_CONDITIONS);

        JComponent b = on.named("button.delete-condition").orElseThrow();
        assertThat(b.getVisibleRect().getSize()).isEqualTo(b.getSize());
        assertThat(b.getHeight()).isPositive();
    }
}
