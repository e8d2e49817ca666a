package orlop.editor;

import java.awt.Component;
import java.awt.Container;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/** Finds the parts of a form that is on no screen. */
final class FormParts {
    private FormParts() {}

    /** The first part of this type. */
    static <C> C find(Container in, Class<C> type) {
        C found = first(in, type, null);
        if (found == null) {
            throw new NoSuchElementException("no " + type);
        }
        return found;
    }

    /** The part of this type and name. */
    static <C> C named(Container in, Class<C> type, String name) {
        C found = first(in, type, name);
        if (found == null) {
            throw new NoSuchElementException("no " + name);
        }
        return found;
    }

    private static <C> @Nullable C first(Container in, Class<C> type, @Nullable String name) {
        for (Component c : in.getComponents()) {
            if (type.isInstance(c) && (name == null || name.equals(c.getName()))) {
                return type.cast(c);
            }
            C deeper = c instanceof Container k ? first(k, type, name) : null;
            if (deeper != null) {
                return deeper;
            }
        }
        return null;
    }
}
