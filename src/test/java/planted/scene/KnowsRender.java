package planted.scene;

import planted.render.Furniture;

/** A planted violation. */
public final class KnowsRender {
    static final Class<?> WRONG = Furniture.class;
}
