package orlop.editor;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import javax.swing.SwingUtilities;

/** Whether the boxes of a window are answered by keys or by mouse: afterwards the sheet speaks of what was used last. */
final class BoxAnswers {
    private BoxAnswers() {}

    /** @param within what lies in the window */
    static void follow(Component within, SheetCanvas canvas) {
        AWTEventListener watch = e -> {
            boolean key = e.getID() == KeyEvent.KEY_PRESSED;
            if ((key || e.getID() == MouseEvent.MOUSE_PRESSED)
                    && e.getSource() instanceof Component c
                    && box(c, SwingUtilities.getWindowAncestor(within))) {
                canvas.byKeys(key);
            }
        };
        within.addHierarchyListener(e -> {
            Toolkit kit = Toolkit.getDefaultToolkit();
            kit.removeAWTEventListener(watch);
            if (within.isDisplayable()) {
                kit.addAWTEventListener(watch, AWTEvent.KEY_EVENT_MASK | AWTEvent.MOUSE_EVENT_MASK);
            }
        });
    }

    /** Whether this lies in a box of the window, or in a box of such a box. */
    private static boolean box(Component c, Window window) {
        Window in = c instanceof Window w ? w : SwingUtilities.getWindowAncestor(c);
        if (in == window) {
            return false;
        }
        Window owner = in;
        while (owner != null && owner != window) {
            owner = owner.getOwner();
        }
        return owner != null;
    }
}
