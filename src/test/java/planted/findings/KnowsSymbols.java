package planted.findings;

import planted.symbols.Furniture;

/** A planted violation. */
public final class KnowsSymbols {
    static final Class<?> WRONG = Furniture.class;
}
