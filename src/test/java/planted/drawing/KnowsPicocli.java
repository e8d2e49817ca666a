package planted.drawing;

import picocli.CommandLine;

/** A planted violation. */
public final class KnowsPicocli {
    static final Class<?> WRONG = CommandLine.class;
}
