package planted.desk;

import java.awt.event.KeyEvent;

/** A planted violation. */
public final class KnowsAwtEvents {
    static final Class<?> WRONG = KeyEvent.class;
}
