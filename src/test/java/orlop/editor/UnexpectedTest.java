package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What happens at an error that nobody foresaw, before anybody is told. */
class UnexpectedTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    @Test
    void what_is_not_saved_is_written_down_first_and_every_error_stands_in_the_log() throws Exception {
        Path log = folder.resolve("logs").resolve("orlop.log");
        List<Boolean> logged = new ArrayList<>();
        Unexpected u = new Unexpected(log, () -> null, () -> logged.add(Files.exists(log)));

        u.tell(new IllegalStateException("the first one"));
        u.tell(new AssertionError("the second one"));

        assertThat(logged).containsExactly(false, true);
        assertThat(Files.readString(log))
                .containsSubsequence("the first one", "UnexpectedTest", "the second one", "UnexpectedTest");
    }

    @Test
    void a_log_does_not_grow_for_ever() throws Exception {
        Path log = folder.resolve("orlop.log");
        Files.writeString(log, "x".repeat((int) Unexpected.MOST_BYTES + 1));

        new Unexpected(log, () -> null, () -> {}).tell(new IllegalStateException("the newest one"));

        assertThat(Files.size(log)).isLessThan(Unexpected.MOST_BYTES);
        assertThat(Files.readString(log)).contains("the newest one");
    }

    @Test
    void a_log_that_cannot_be_written_is_no_second_error() throws Exception {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        boolean[] kept = {false};

        new Unexpected(file.resolve("orlop.log"), () -> null, () -> kept[0] = true).tell(new Error("any"));

        assertThat(kept[0]).isTrue();
        assertThat(file).hasContent("in the way");
    }
}
