package planted.drawing;

import planted.standards.Furniture;

/** A planted violation. */
public final class KnowsStandards {
    static final Class<?> WRONG = Furniture.class;
}
