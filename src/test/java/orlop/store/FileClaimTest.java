package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileClaimTest {
    @TempDir
    private Path folder = Path.of("");

    private Path file = Path.of("");
    private Path user = Path.of("");

    @BeforeEach
    void a_drawing() throws IOException {
        file = Files.writeString(folder.resolve("heron.orlop"), "{}");
        user = folder.resolve("user");
    }

    private Optional<FileClaim> claim(Path of) {
        return FileClaim.of(of, user);
    }

    @Test
    void a_second_window_does_not_get_the_file_until_the_first_has_given_it_free() {
        FileClaim first = claim(file).orElseThrow();

        assertThat(claim(file)).isEmpty();
        first.close();
        Optional<FileClaim> then = claim(file);

        assertThat(then).isPresent();
        then.orElseThrow().close();
    }

    private String another() throws Exception {
        return AnotherProgram.says("claim", file.toString(), user.toString());
    }

    /** Some systems let go of a lock as soon as the program that has it closes the file anywhere else. */
    @Test
    void another_program_does_not_get_the_file_either_even_after_a_window_here_was_refused_it() throws Exception {
        try (FileClaim first = claim(file).orElseThrow()) {
            assertThat(first).isNotNull();
            assertThat(another()).isEqualTo("another has it");
            assertThat(claim(file)).isEmpty();
            assertThat(another()).isEqualTo("another has it");
        }
        assertThat(another()).isEqualTo("has it");
    }

    @Test
    void a_file_is_the_same_by_whatever_name_it_is_called() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("other.orlop"), file);
        Path roundabout = folder.resolve("x").resolve("..").resolve("heron.orlop");
        Files.createDirectory(folder.resolve("x"));

        try (FileClaim first = claim(file).orElseThrow()) {
            assertThat(first).isNotNull();
            assertThat(claim(link)).isEmpty();
            assertThat(claim(roundabout)).isEmpty();
        }
    }

    @Test
    void nothing_is_left_beside_the_file() throws IOException {
        claim(file).orElseThrow().close();

        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).containsExactly(file);
        }
    }

    @Test
    void a_claim_that_a_crash_has_left_holds_nothing() throws IOException {
        Files.writeString(folder.resolve(".heron.orlop.claim"), "Orlop, process 1, claim 1\n");

        Optional<FileClaim> next = claim(file);

        assertThat(next).isPresent();
        next.orElseThrow().close();
    }

    @Test
    void where_nothing_can_be_written_beside_the_file_the_claim_lies_in_the_users_folder() throws IOException {
        Files.createDirectory(folder.resolve(".heron.orlop.claim")); // no file can be made of that name

        try (FileClaim first = claim(file).orElseThrow();
                Stream<Path> all = Files.list(user)) {
            assertThat(first).isNotNull();
            assertThat(all).hasSize(1);
            assertThat(claim(file)).isEmpty();
        }
    }

    @Test
    void where_no_claim_can_be_made_at_all_the_work_goes_on() throws IOException {
        Files.createDirectory(folder.resolve(".heron.orlop.claim"));
        Files.writeString(user, "not a folder");

        Optional<FileClaim> claim = claim(file);

        assertThat(claim).isPresent();
        claim.orElseThrow().close();
    }

    @Test
    void a_fingerprint_tells_whether_the_content_is_another() throws IOException {
        Fingerprint before = Fingerprint.of(file);
        Files.writeString(file, "{}");
        assertThat(Fingerprint.of(file)).isEqualTo(before);
        Files.writeString(file, "{ }");
        assertThat(Fingerprint.of(file)).isNotEqualTo(before);
        Files.delete(file);
        assertThat(Fingerprint.of(file)).isEqualTo(Fingerprint.NONE);
    }
}
