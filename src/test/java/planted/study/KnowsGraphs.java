package planted.study;

import org.jgrapht.Graph;

/** A planted violation. */
public final class KnowsGraphs {
    static final Class<?> WRONG = Graph.class;
}
