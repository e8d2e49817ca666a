package orlop.editor;

import org.assertj.swing.core.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Drawing;

/** A {@link orlop.testing.WindowTest} in a window of its own. */
@Timeout(120)
abstract class InWindow {
    final Drawing start;

    @SuppressWarnings("NullAway.Init") // set before each test
    OpenWindow on;

    /** @param start the drawing that is open in it */
    InWindow(Drawing start) {
        this.start = start;
    }

    @BeforeEach
    final void openTheWindow(Robot robot) {
        on = new OpenWindow(robot, start, new Settings(null));
    }

    @AfterEach
    final void closeTheWindow() {
        on.close();
    }
}
