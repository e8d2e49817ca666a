package planted.network;

import planted.study.Furniture;

/** A planted violation. */
public final class KnowsStudy {
    static final Class<?> WRONG = Furniture.class;
}
