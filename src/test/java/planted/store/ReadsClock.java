package planted.store;

import java.time.Instant;

/** A planted violation. */
public final class ReadsClock {
    static Instant now() {
        return Instant.now();
    }
}
