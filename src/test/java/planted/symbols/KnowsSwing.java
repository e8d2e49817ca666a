package planted.symbols;

import javax.swing.Icon;

/** A planted violation. */
public final class KnowsSwing {
    static final Class<?> WRONG = Icon.class;
}
