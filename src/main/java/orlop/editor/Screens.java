package orlop.editor;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;

/** How much room the screen has, in pixels as components count them. */
final class Screens {
    private static final Rectangle NONE = new Rectangle(0, 0, 1366, 768);

    private Screens() {}

    static int width() {
        return room().width;
    }

    static int height() {
        return room().height;
    }

    private static Rectangle room() {
        return GraphicsEnvironment.isHeadless()
                ? NONE
                : GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    }
}
