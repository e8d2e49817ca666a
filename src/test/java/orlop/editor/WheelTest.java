package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class WheelTest {
    private static final int X = 300;
    private static final int Y = 200;

    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private HeadlessBench on;

    @BeforeEach
    void open() throws Exception {
        on = HeadlessBench.open(TestBoat.drawing(), new Settings(folder.resolve("settings.properties")));
        HeadlessBench.onUi(() -> canvas().view(canvas().viewport().zoomed(4, X, Y))); // so that there is where to move
    }

    @AfterEach
    void close() throws Exception {
        on.close();
        HeadlessBench.onUi(() -> new Preferences(new Settings(null)).install());
    }

    private SheetCanvas canvas() {
        return on.bench().canvas();
    }

    /** What one step does: how much larger it gets, and how far the sheet moves to the right and down, in pixels. */
    private double[] step(long whenMs, int modifiers, double turned) throws Exception {
        Viewport before = canvas().viewport();
        int whole = (int) turned;
        HeadlessBench.onUi(() -> canvas().dispatchEvent(new MouseWheelEvent(
                canvas(), MouseEvent.MOUSE_WHEEL, whenMs, modifiers, X, Y, X, Y, 0, false, 0, 1, whole, turned)));
        Viewport after = canvas().viewport();
        var was = before.toSheet(X, Y);
        var now = after.toView(was.getX(), was.getY());
        return new double[] {
            after.pxPerMm() / before.pxPerMm(), 0.0 + Math.rint(now.getX() - X), 0.0 + Math.rint(now.getY() - Y)
        };
    }

    @Test
    void a_wheel_zooms_and_moves_the_sheet_aside_with_shift() throws Exception {
        assertThat(step(0, 0, -1)).containsExactly(1.15, 0, 0);
        assertThat(step(10, InputEvent.SHIFT_DOWN_MASK, 1)).containsExactly(1, -48, 0);
    }

    /** In a quick stroke some steps are whole ones by chance. */
    @Test
    void a_stroke_on_a_trackpad_moves_the_sheet_throughout() throws Exception {
        assertThat(step(1_000, 0, 0.5)).containsExactly(1, 0, -24);
        assertThat(step(1_020, 0, 1)).containsExactly(1, 0, -48);
        assertThat(step(1_040, InputEvent.CTRL_DOWN_MASK, -1)[0]).isEqualTo(1.15);
        assertThat(step(9_000, 0, -1)[0]).isEqualTo(1.15);
    }

    @Test
    void where_it_is_preferred_a_wheel_moves_the_sheet_and_zooms_with_ctrl() throws Exception {
        on.answers().agree = true;
        on.answers().filling = form ->
                FormParts.named(form, javax.swing.JComboBox.class, "form.wheel").setSelectedIndex(1);
        on.run(CommandId.PREFERENCES);

        assertThat(step(0, 0, 1)).containsExactly(1, 0, -48);
        assertThat(step(10, InputEvent.CTRL_DOWN_MASK, -1)[0]).isEqualTo(1.15);
        assertThat(new Preferences(new Settings(folder.resolve("settings.properties"))).wheel())
                .isEqualTo("pan");
    }

    @Test
    void buttons_beyond_the_third_are_a_stroke_aside() {
        assertThat(Wheel.aside(4)).isEqualTo(48);
        assertThat(Wheel.aside(5)).isEqualTo(-48);
        assertThat(Wheel.aside(MouseEvent.BUTTON2)).isZero();
    }
}
