package planted.render;

import planted.store.Furniture;

/** A planted violation. */
public final class KnowsStore {
    static final Class<?> WRONG = Furniture.class;
}
