package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import orlop.testing.WindowTest;

@WindowTest
class TwoWindowsWindowTest extends InWindow {
    TwoWindowsWindowTest() {
        super(TestBoat.drawing());
    }

    @Test
    void a_second_window_does_not_lie_right_over_the_first() {
        MainWindow second = GuiActionRunner.execute(() -> {
            MainWindow w = EditorApp.window(start, null, new Settings(null));
            w.show();
            return w;
        });
        try {
            Point a = GuiActionRunner.execute(() -> on.window().frame().getLocationOnScreen());
            Point b = GuiActionRunner.execute(() -> second.frame().getLocationOnScreen());

            assertThat(a.distance(b)).isGreaterThan(15);
        } finally {
            GuiActionRunner.execute(() -> second.frame().dispose());
        }
    }
}
