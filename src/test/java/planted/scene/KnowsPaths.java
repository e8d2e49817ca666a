package planted.scene;

import java.nio.file.Path;

/** A planted violation. */
public final class KnowsPaths {
    static final Class<?> WRONG = Path.class;
}
