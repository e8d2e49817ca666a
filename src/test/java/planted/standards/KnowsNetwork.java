package planted.standards;

import planted.network.Furniture;

/** A planted violation. */
public final class KnowsNetwork {
    static final Class<?> WRONG = Furniture.class;
}
