package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** Leaves the keys where they are while what has them is made anew: the new part of the same name gets them. */
final class KeptFocus {
    private KeptFocus() {}

    /**
     * @param place what is filled anew
     * @param filling does so
     * @param otherwise what gets the keys if nothing of that name is left
     */
    static void through(Container place, Runnable filling, Supplier<Optional<? extends Component>> otherwise) {
        Window window = SwingUtilities.getWindowAncestor(place);
        Component owner = window == null ? null : window.getMostRecentFocusOwner(); // a box may lie over it
        if (owner == null || !SwingUtilities.isDescendingFrom(owner, place)) {
            filling.run();
            return;
        }
        int caret = owner instanceof JTextComponent t ? t.getCaretPosition() : 0;
        filling.run();
        if (SwingUtilities.isDescendingFrom(owner, place)) {
            return; // it is still there
        }
        Optional<Component> heir = named(place, owner.getName()).filter(Component::isFocusable);
        heir.or(otherwise).ifPresent(c -> {
            c.requestFocusInWindow();
            if (c instanceof JTextComponent t && t.getDocument().getLength() >= caret) {
                t.setCaretPosition(caret);
            }
        });
    }

    private static Optional<Component> named(Container in, String name) {
        for (Component c : in.getComponents()) {
            if (name != null && name.equals(c.getName())) {
                return Optional.of(c);
            }
            Optional<Component> deeper = c instanceof Container k ? named(k, name) : Optional.empty();
            if (deeper.isPresent()) {
                return deeper;
            }
        }
        return Optional.empty();
    }
}
