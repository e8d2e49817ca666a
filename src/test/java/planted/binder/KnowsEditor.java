package planted.binder;

import planted.editor.Furniture;

/** A planted violation. */
public final class KnowsEditor {
    static final Class<?> WRONG = Furniture.class;
}
