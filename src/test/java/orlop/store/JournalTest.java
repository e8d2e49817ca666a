package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import orlop.drawing.Drawing;

class JournalTest {
    private static final Drawing DRAWING = RealisticDrawing.make();

    @TempDir
    private Path folder = Path.of("");

    /** As a crash leaves it: the journal without the lock on it. */
    private Path crashed(Drawing drawing, Path file) throws Exception {
        Path journals = folder.resolve("journals");
        byte[] text;
        try (Journal j = Journal.begin(journals)) {
            j.write(drawing, file);
            text = Files.readAllBytes(only(journals));
        }
        return Files.write(journals.resolve("00000001-0001" + Journal.SUFFIX), text);
    }

    private static Path only(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(p -> p.toString().endsWith(Journal.SUFFIX))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void a_journal_that_is_open_is_left_to_its_owner() throws Exception {
        try (Journal j = Journal.begin(folder)) {
            j.write(DRAWING, null);

            assertThat(Journal.left(folder)).isEmpty();
            assertThat(AnotherProgram.says("journals", folder.toString())).isEqualTo("0 left");
        }
    }

    @Test
    void what_a_crash_leaves_is_found_with_its_drawing_and_file() throws Exception {
        Path file = folder.resolve("Möwe \"2\"\n.orlop");
        crashed(DRAWING, file);

        List<LeftJournal> left = Journal.left(folder.resolve("journals"));

        assertThat(left).hasSize(1);
        assertThat(left.get(0).read().drawing()).isEqualTo(DRAWING);
        assertThat(left.get(0).read().file()).isEqualTo(file);
    }

    @Test
    void what_is_thrown_away_is_not_found_again() throws Exception {
        crashed(DRAWING, folder.resolve("a.orlop"));

        Journal.left(folder.resolve("journals")).forEach(LeftJournal::discard);

        assertThat(Journal.left(folder.resolve("journals"))).isEmpty();
    }

    @Test
    void a_closed_journal_leaves_nothing_behind() throws Exception {
        Journal j = Journal.begin(folder);
        j.write(DRAWING, null);
        j.close();
        j.close();
        j.write(DRAWING, null);

        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).isEmpty();
        }
    }

    @Test
    void a_lock_without_a_journal_is_swept_away() throws Exception {
        Files.writeString(folder.resolve("00000001-0001" + Journal.SUFFIX + ".lock"), "");

        assertThat(Journal.left(folder)).isEmpty();

        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).isEmpty();
        }
    }

    @Test
    void a_journal_that_cannot_be_read_says_so_and_stays() throws Exception {
        Path bad =
                Files.writeString(folder.resolve("00000001-0001" + Journal.SUFFIX), "{\"journal\":1}\n{ \"orlop\": 1,");

        LeftJournal left = Journal.left(folder).get(0);
        FileProblem problem = catchThrowableOfType(FileProblem.class, left::read);

        assertThat(problem).isNotNull();
        assertThat(bad).exists();
    }

    @Test
    void a_spoilt_first_line_costs_the_name_of_the_file_only() throws Exception {
        Path journal = crashed(DRAWING, folder.resolve("a.orlop"));
        String text = Files.readString(journal);
        Files.writeString(journal, "spoilt" + text.substring(text.indexOf('\n')));

        LeftJournal.Content content =
                Journal.left(folder.resolve("journals")).get(0).read();

        assertThat(content.drawing()).isEqualTo(DRAWING);
        assertThat(content.file()).isNull();
    }

    @Test
    void a_folder_that_cannot_be_made_is_a_problem_with_a_cure() throws Exception {
        Path notAFolder = Files.writeString(folder.resolve("file"), "");

        FileProblem problem = catchThrowableOfType(FileProblem.class, () -> Journal.begin(notAFolder));

        assertThat(problem.cure()).isPresent();
    }
}
