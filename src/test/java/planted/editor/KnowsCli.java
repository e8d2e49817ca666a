package planted.editor;

import planted.cli.Furniture;

/** A planted violation. */
public final class KnowsCli {
    static final Class<?> WRONG = Furniture.class;
}
