package orlop.editor;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import orlop.drawing.Drawing;

/** A test at a workbench of its own, without a screen. */
abstract class OnBench {
    final Drawing start;

    @SuppressWarnings("NullAway.Init") // set before each test
    HeadlessBench on;

    /** @param start the drawing that lies on it */
    OnBench(Drawing start) {
        this.start = start;
    }

    @BeforeEach
    final void openTheBench() throws Exception {
        on = HeadlessBench.open(start);
    }

    @AfterEach
    final void closeTheBench() throws Exception {
        on.close();
    }
}
