package planted.study;

import planted.findings.Furniture;

/** A planted violation. */
public final class KnowsFindings {
    static final Class<?> WRONG = Furniture.class;
}
