package planted.scene;

import java.util.function.UnaryOperator;

/** A planted violation. */
public final class LowersByDefault {
    static UnaryOperator<String> lower() {
        return String::toLowerCase;
    }
}
