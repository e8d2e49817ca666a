package planted.store;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** Planted violations, one a method. */
public final class ReadsClock {
    static Instant instant() {
        return Instant.now();
    }

    static LocalDate day() {
        return LocalDate.now(ZoneOffset.UTC);
    }

    static Clock utc() {
        return Clock.systemUTC();
    }

    static Clock zoned() {
        return Clock.system(ZoneOffset.UTC);
    }

    static long millis() {
        return System.currentTimeMillis();
    }

    static long nanos() {
        return System.nanoTime();
    }
}
