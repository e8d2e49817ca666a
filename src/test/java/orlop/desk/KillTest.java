package orlop.desk;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A program that is killed, again and again: nobody loses more than the last second, and no file is broken. */
class KillTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    @Timeout(300)
    void fifty_kills_cost_never_more_than_the_last_second() throws Exception {
        Kill.many(folder, 1, 50);
    }

    @Test
    @Tag("campaign")
    @Timeout(1_800)
    void three_hundred_kills_cost_never_more_than_the_last_second() throws Exception {
        Kill.many(folder, 1_000, 300);
    }
}
