package planted.scene;

import java.io.InputStream;

/** A planted violation. */
public final class KnowsStreams {
    static final Class<?> WRONG = InputStream.class;
}
