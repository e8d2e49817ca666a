package planted.scene;

import java.awt.font.TextLayout;

/** A planted violation. */
public final class KnowsTextLayout {
    static final Class<?> WRONG = TextLayout.class;
}
