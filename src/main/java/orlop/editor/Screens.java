package orlop.editor;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Window;

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

    /** A window that is larger than the screen gets as large as that, and lies within it. */
    static void keepWithin(Window w) {
        Rectangle room = room();
        Rectangle r = w.getBounds();
        r.setSize(Math.min(r.width, room.width), Math.min(r.height, room.height));
        r.setLocation(
                Math.max(room.x, Math.min(r.x, room.x + room.width - r.width)),
                Math.max(room.y, Math.min(r.y, room.y + room.height - r.height)));
        w.setBounds(r);
    }

    private static Rectangle room() {
        return GraphicsEnvironment.isHeadless()
                ? NONE
                : GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
    }
}
