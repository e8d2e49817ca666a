package planted.store;

import planted.desk.Furniture;

/** A planted violation. */
public final class KnowsDesk {
    static final Class<?> WRONG = Furniture.class;
}
