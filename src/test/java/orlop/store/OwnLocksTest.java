package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is known again by whichever way it is reached. */
class OwnLocksTest {
    @TempDir
    Path folder;

    @Test
    void a_file_reached_over_a_link_to_its_folder_is_the_same() throws IOException {
        Path real = Files.createDirectory(folder.resolve("boats"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), real);
        Path direct = real.resolve("boat.lock");

        assertThat(OwnLocks.take(direct)).isTrue();
        assertThat(OwnLocks.held(link.resolve("boat.lock"))).isTrue();
        assertThat(OwnLocks.take(real.resolve("../boats/boat.lock"))).isFalse();
        OwnLocks.drop(link.resolve("boat.lock"));
        assertThat(OwnLocks.held(direct)).isFalse();
    }
}
