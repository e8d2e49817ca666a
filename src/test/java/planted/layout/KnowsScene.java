package planted.layout;

import planted.scene.Furniture;

/** A planted violation. */
public final class KnowsScene {
    static final Class<?> WRONG = Furniture.class;
}
