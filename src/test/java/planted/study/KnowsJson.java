package planted.study;

import com.fasterxml.jackson.databind.JsonNode;

/** A planted violation. */
public final class KnowsJson {
    static final Class<?> WRONG = JsonNode.class;
}
