package planted.symbols;

import planted.layout.Furniture;

/** A planted violation. */
public final class KnowsLayout {
    static final Class<?> WRONG = Furniture.class;
}
