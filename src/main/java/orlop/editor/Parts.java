package orlop.editor;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.beans.PropertyChangeListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTree;
import javax.swing.SwingUtilities;

/**
 * The parts of a window between which a key goes: sheet, card, notes, fold-out, conditions, locker. What gets the keys is
 * brought into sight, and the status line says what they do there.
 */
final class Parts {
    private record Part(JComponent within, Supplier<Optional<Component>> focus, Supplier<String> hint, Runnable room) {}

    static final String OWNER = "permanentFocusOwner";

    private final List<Part> parts = new ArrayList<>();
    private int last = -1;
    private final SheetCanvas canvas;
    private final Consumer<String> hints;
    private final Runnable rest;

    /**
     * @param window all that lies in it
     * @param hints shows in the status line what the keys do
     * @param rest shows what they do on the sheet, unless something has just been said
     */
    Parts(JComponent window, SheetCanvas canvas, Consumer<String> hints, Runnable rest) {
        this.rest = rest;
        this.canvas = canvas;
        this.hints = hints;
        parts.add(new Part(canvas, () -> Optional.of(canvas), () -> "", () -> {}));
        PropertyChangeListener watch = e -> {
            if (e.getNewValue() instanceof JComponent c && SwingUtilities.isDescendingFrom(c, window)) {
                came(c);
            }
        };
        window.addHierarchyListener(e -> {
            KeyboardFocusManager all = KeyboardFocusManager.getCurrentKeyboardFocusManager();
            all.removePropertyChangeListener(OWNER, watch);
            if (window.isDisplayable()) {
                all.addPropertyChangeListener(OWNER, watch);
            }
        });
    }

    /**
     * @param within what the part lies in
     * @param focus what gets the keys; empty while there is nothing in it
     * @param hint what the keys do there
     * @param room makes room for it, where it has had to stand aside
     */
    void add(JComponent within, Supplier<Optional<Component>> focus, Supplier<String> hint, Runnable room) {
        parts.add(new Part(within, focus, hint, room));
    }

    /** Goes to the next part in which something can have the keys, or to the one before. */
    void go(int by) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        int now = Math.max(0, index(owner));
        for (int i = 1; i <= parts.size(); i++) {
            Part p = parts.get(Math.floorMod(now + by * i, parts.size()));
            Optional<Component> to = p.focus().get();
            if (to.isPresent()) {
                p.room().run();
            }
            if (to.isPresent() && to.get().isShowing()) {
                canvas.byKeys(true);
                to.get().requestFocusInWindow();
                return;
            }
        }
    }

    private int index(Component c) {
        for (int i = 0; c != null && i < parts.size(); i++) {
            if (SwingUtilities.isDescendingFrom(c, parts.get(i).within())) {
                return i;
            }
        }
        return -1;
    }

    /** What lies in a part is another now: if it has the keys, the status line says what they do in it. */
    void changed(JComponent within) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        int i = index(owner);
        if (i > 0 && parts.get(i).within() == within) {
            last = i;
            hints.accept(parts.get(i).hint().get());
        }
    }

    private void came(JComponent c) {
        boolean scrolls = c instanceof JTable || c instanceof JTree;
        if (c != canvas && !scrolls) {
            int rim = Look.px(6);
            c.scrollRectToVisible(new java.awt.Rectangle(-rim, -rim, c.getWidth() + 2 * rim, c.getHeight() + 2 * rim));
        }
        int i = index(c);
        boolean other = i != last;
        last = i;
        if (i > 0 && other) { // within a part what has just been said or refused stays readable
            hints.accept(parts.get(i).hint().get());
        } else if (i <= 0 && !canvas.busy()) {
            rest.run();
        }
    }
}
