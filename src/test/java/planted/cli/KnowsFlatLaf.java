package planted.cli;

import com.formdev.flatlaf.FlatLightLaf;

/** A planted violation. */
public final class KnowsFlatLaf {
    static final Class<?> WRONG = FlatLightLaf.class;
}
