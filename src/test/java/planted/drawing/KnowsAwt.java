package planted.drawing;

import java.awt.Shape;

/** A planted violation. */
public final class KnowsAwt {
    static final Class<?> WRONG = Shape.class;
}
