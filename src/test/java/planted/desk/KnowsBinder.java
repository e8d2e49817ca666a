package planted.desk;

import planted.binder.Furniture;

/** A planted violation. */
public final class KnowsBinder {
    static final Class<?> WRONG = Furniture.class;
}
