package planted.standards;

import planted.drawing.Furniture;

/** A planted violation. */
public final class KnowsDrawing {
    static final Class<?> WRONG = Furniture.class;
}
