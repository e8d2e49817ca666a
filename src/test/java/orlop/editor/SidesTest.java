package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The parts around the sheet leave it the most of a narrow window, and cut nothing that is asked for. */
class SidesTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    private static int marginAt(HeadlessBench on, int width) throws Exception {
        HeadlessBench.onUi(() -> on.resize(width));
        HeadlessBench.onUi(on::paint); // the window tells of its size a moment later
        HeadlessBench.onUi(on::paint);
        return on.named("margin").map(JComponent::getWidth).orElseThrow();
    }

    @Test
    void margin_and_locker_are_narrow_in_a_narrow_window_and_wide_again_in_a_wide_one() throws Exception {
        HeadlessBench on = HeadlessBench.open(TestBoat.drawing());
        int letters = Look.px(60);

        assertThat(marginAt(on, Look.px(683))).isEqualTo(Look.px(Margin.LEAST));
        assertThat(on.bench().locker().rail().getWidth()).isLessThan(letters);
        assertThat(on.bench().canvas().getWidth()).isGreaterThan(Look.px(683) / 2);

        assertThat(marginAt(on, Look.px(1366))).isEqualTo(Look.px(Margin.WIDTH));
        assertThat(on.bench().locker().rail().getWidth()).isGreaterThan(letters);
        on.close();
    }

    @Test
    void a_width_that_was_chosen_is_found_again() throws Exception {
        Settings settings = new Settings(folder.resolve("settings.properties"));
        settings.rememberNumber("margin.width", 420);
        HeadlessBench on = HeadlessBench.open(TestBoat.drawing(), settings);

        assertThat(marginAt(on, Look.px(1366))).isEqualTo(Look.px(420));
        on.close();
    }

    @Test
    void an_edge_that_is_dragged_is_remembered_once_when_it_is_let_go() throws Exception {
        Path file = folder.resolve("settings.properties");
        Settings settings = new Settings(file);
        HeadlessBench on = HeadlessBench.open(TestBoat.drawing(), settings);
        int was = marginAt(on, Look.px(1366));
        JComponent edge = on.named("margin.edge").orElseThrow();

        HeadlessBench.onUi(() -> {
            mouse(edge, MouseEvent.MOUSE_PRESSED, 500);
            mouse(edge, MouseEvent.MOUSE_DRAGGED, 480);
            mouse(edge, MouseEvent.MOUSE_DRAGGED, 460);
        });
        assertThat(settings.number("margin.width", 0)).isZero();
        assertThat(marginAt(on, Look.px(1366))).isEqualTo(was + 40);
        HeadlessBench.onUi(() -> mouse(edge, MouseEvent.MOUSE_RELEASED, 460));

        assertThat(new Settings(file).number("margin.width", 0)).isEqualTo((int) ((was + 40) / Look.scale()));
        on.close();
    }

    private static void mouse(JComponent edge, int id, int xOnScreen) {
        edge.dispatchEvent(new MouseEvent(edge, id, 0, 0, 0, 0, xOnScreen, 300, 1, false, MouseEvent.BUTTON1));
    }

    @Test
    void systems_of_one_voltage_are_told_apart_by_their_short_names() {
        var d = TestBoat.drawing().with(orlop.drawing.ElectricalSystem.of("230", orlop.drawing.Nature.AC1, 230));
        var two = d.with(orlop.drawing.ElectricalSystem.of("24S", orlop.drawing.Nature.DC, 24));

        assertThat(ConditionsStrip.figure(d, new orlop.desk.Balance("24", -37.0, null)))
                .isEqualTo("24 V −37 A");
        assertThat(ConditionsStrip.figure(two, new orlop.desk.Balance("24", -37.0, null)))
                .isEqualTo("24 −37 A");
        assertThat(ConditionsStrip.figure(two, new orlop.desk.Balance("24S", null, 400.0)))
                .isEqualTo("24S 400 W");
        assertThat(ConditionsStrip.figure(two, new orlop.desk.Balance("230", null, 1500.0)))
                .isEqualTo("230 V 1.5 kW");
    }

    @Test
    void a_card_tells_as_many_balances_as_it_has_room_for_each_of_them_whole() {
        FontMetrics m = new JLabel().getFontMetrics(new Font(Font.SANS_SERIF, Font.PLAIN, 11));
        List<String> figures = List.of("24 V −106 A", "12 V 91.5 W", "230 V 0.4 kW");
        int two = m.stringWidth("24 V −106 A   12 V 91.5 W");

        assertThat(ConditionCard.whole(figures, m, 10 * two)).isEqualTo("24 V −106 A   12 V 91.5 W   230 V 0.4 kW");
        assertThat(ConditionCard.whole(figures, m, two)).isEqualTo("24 V −106 A   12 V 91.5 W");
        assertThat(ConditionCard.whole(figures, m, two - 1)).isEqualTo("24 V −106 A");
    }

    private static boolean shows(HeadlessBench on, String name) {
        JComponent c = on.named(name).orElseThrow();
        return c.isVisible() && c.getParent().isVisible();
    }

    private static void size(HeadlessBench on, int width, int height) throws Exception {
        HeadlessBench.onUi(() -> on.resize(Look.px(width), Look.px(height)));
        HeadlessBench.onUi(on::paint); // the window tells of its size a moment later
        HeadlessBench.onUi(on::paint);
    }

    /** A screen of 1366 by 768 dots at a scale of 200 % has 683 by 384 to give. */
    @Test
    void in_a_small_window_margin_and_fold_out_take_turns_and_leave_the_sheet_its_share() throws Exception {
        HeadlessBench on = HeadlessBench.open(TestBoat.drawing());
        size(on, 683, 384);
        assertThat(shows(on, "margin")).isTrue();

        on.run(CommandId.SHOW_FINDINGS);
        HeadlessBench.onUi(on::paint);

        assertThat(shows(on, "fold-out")).isTrue();
        assertThat(shows(on, "margin")).isFalse();
        double all = (double) Look.px(683) * Look.px(384);
        double sheet =
                (double) on.bench().canvas().getWidth() * on.bench().canvas().getHeight();
        assertThat(sheet / all).isGreaterThan(0.2);

        on.run(CommandId.SHOW_MARGIN); // it is asked for, so it comes, and the page gives way
        assertThat(shows(on, "margin")).isTrue();
        assertThat(shows(on, "fold-out")).isFalse();
        size(on, 1366, 740);
        assertThat(shows(on, "margin")).isTrue();
        assertThat(shows(on, "fold-out")).isTrue();
        on.close();
    }

    /** 1366 by 768 dots at 300 %. */
    @Test
    void in_a_very_small_window_the_margin_comes_when_it_is_asked_for() throws Exception {
        HeadlessBench on = HeadlessBench.open(TestBoat.drawing());
        size(on, 455, 256);
        assertThat(shows(on, "margin")).isFalse();

        on.run(CommandId.NEXT_FINDING);

        assertThat(shows(on, "margin")).isTrue();
        on.close();
    }

    @Test
    void the_strip_of_conditions_is_slim_in_a_low_window() throws Exception {
        HeadlessBench on = HeadlessBench.open(TestBoat.drawing());
        int high = on.named("conditions").orElseThrow().getHeight();
        size(on, 683, 384);

        assertThat(on.named("conditions").orElseThrow().getHeight()).isLessThan(high * 3 / 4);
        on.close();
    }
}
