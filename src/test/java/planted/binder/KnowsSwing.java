package planted.binder;

import javax.swing.JTable;

/** A planted violation. */
public final class KnowsSwing {
    static final Class<?> WRONG = JTable.class;
}
