package orlop.editor;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.MouseEvent;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * The page of the margin. While the mouse is among the notes they keep their height on the screen, whatever grows or
 * shrinks above them; when it leaves, everything closes up.
 */
final class StillPage {
    private final JViewport viewport;
    private final JPanel page;
    private final JPanel card;
    private final JPanel notes;
    private final Runnable onLeft;
    private final AWTEventListener leaving = this::happened;
    private @Nullable Point left;
    private boolean holds;

    /** @param onLeft what stands in the page is to be shown anew */
    StillPage(JScrollPane scroll, JPanel page, JPanel card, JPanel notes, Runnable onLeft) {
        this.viewport = scroll.getViewport();
        this.page = page;
        this.notes = notes;
        this.onLeft = onLeft;
        this.card = card;
    }

    /** Whether the notes are to keep their places. */
    boolean holds() {
        return holds;
    }

    /** Changes the page; if the mouse is among the notes, so that they stay where they are on the screen. */
    void keep(Runnable change) {
        if (!holds && pointed()) {
            holds = true;
            Toolkit.getDefaultToolkit()
                    .addAWTEventListener(leaving, AWTEvent.MOUSE_EVENT_MASK | AWTEvent.MOUSE_MOTION_EVENT_MASK);
        }
        int y = begin() - viewport.getViewPosition().y;
        change.run();
        if (holds && !typing()) {
            hold(y);
        }
    }

    /** Whoever types in the card looks there. */
    private boolean typing() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, card);
    }

    /** @param y where the notes begin, below the upper edge of what is seen */
    private void hold(int y) {
        rim(0, 0);
        int lower = Math.max(0, y - notes.getY());
        rim(lower, 0);
        int top = begin() - y;
        rim(lower, Math.max(0, top + viewport.getHeight() - page.getPreferredSize().height));
        viewport.setViewPosition(new Point(0, top));
    }

    /** Makes room above and below the notes. */
    private void rim(int above, int below) {
        notes.setBorder(BorderFactory.createEmptyBorder(above, 0, below, 0));
        page.invalidate();
        viewport.validate();
    }

    /** Where the first note stands on the page. */
    private int begin() {
        return notes.getY() + notes.getInsets().top;
    }

    /** Whether what lies here is among the notes. */
    private boolean among(Point inViewport) {
        return viewport.contains(inViewport) && inViewport.y >= begin() - viewport.getViewPosition().y;
    }

    /** The page is to go where something else is seen. */
    void go() {
        left = pointed() ? viewport.getMousePosition(true) : null;
    }

    /** Whether the mouse is still where it was when the page went from under it. */
    boolean gone() {
        Point p = left;
        Point now = p == null ? null : viewport.getMousePosition(true);
        return now != null && p != null && now.distance(p) < Look.px(4);
    }

    private boolean pointed() {
        if (GraphicsEnvironment.isHeadless() || !viewport.isShowing()) {
            return false;
        }
        Point p = viewport.getMousePosition(true);
        return p != null && among(p);
    }

    private void happened(AWTEvent e) {
        if (e instanceof MouseEvent m && !over(m)) {
            release();
            onLeft.run();
        }
    }

    private boolean over(MouseEvent m) {
        if (!SwingUtilities.isDescendingFrom(m.getComponent(), SwingUtilities.getWindowAncestor(viewport))) {
            return false;
        }
        return among(SwingUtilities.convertPoint(m.getComponent(), m.getPoint(), viewport));
    }

    /** The notes needn't keep their places any longer. */
    void release() {
        if (holds) {
            holds = false;
            Toolkit.getDefaultToolkit().removeAWTEventListener(leaving);
            notes.setBorder(null);
            page.revalidate();
        }
    }
}
