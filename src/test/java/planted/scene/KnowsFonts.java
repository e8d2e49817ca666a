package planted.scene;

import java.awt.Font;

/** A planted violation. */
public final class KnowsFonts {
    static final Class<?> WRONG = Font.class;
}
