package planted.layout;

import java.util.Random;

/** A planted violation. */
public final class RollsDice {
    static int roll() {
        return new Random(1).nextInt();
    }
}
