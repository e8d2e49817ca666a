package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.Review;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.store.DrawingFile;
import orlop.store.Journal;

/** What is asked about a drawing that a crash has left, before any window is opened for it. */
class RecoveringTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    private final Answers answers = new Answers();

    private Path journals() {
        return folder.resolve("journals");
    }

    /** A journal that nobody holds any longer. */
    private Path left(Drawing drawing, Path file) throws Exception {
        Path left = journals().resolve("0000-0001.orlop-journal");
        try (Journal j = Journal.begin(journals())) {
            j.write(drawing, file);
            try (var all = Files.list(journals())) {
                Path one = all.filter(p -> p.toString().endsWith(".orlop-journal"))
                        .findFirst()
                        .orElseThrow();
                Files.copy(one, left);
            }
        }
        return left;
    }

    private void offer() {
        Settings mine = new Settings(folder.resolve("settings.properties"));
        new Recovering(new Windows(mine, Review::of), mine, answers).offer();
    }

    private Path saved() throws Exception {
        Path file = folder.resolve("boat.orlop");
        DrawingFile.save(file, TestBoat.drawing());
        return file;
    }

    private static Drawing other() {
        return Edits.delete(Set.of("W16")).applyTo(TestBoat.drawing());
    }

    @Test
    void what_stands_in_its_file_after_all_is_not_asked_about() throws Exception {
        Path left = left(TestBoat.drawing(), saved());

        offer();

        assertThat(answers.asked).isEmpty();
        assertThat(left).doesNotExist();
    }

    @Test
    void it_is_said_when_the_file_is_newer_than_what_was_left() throws Exception {
        Path file = saved();
        Path left = left(other(), file);
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().plusSeconds(3600)));

        offer();

        assertThat(answers.asked)
                .singleElement()
                .asString()
                .startsWith("recover boat.orlop")
                .contains("written later");
        assertThat(left).as("until it is answered").exists();
    }

    @Test
    void it_is_not_said_when_the_file_is_older() throws Exception {
        Path file = saved();
        left(other(), file);
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minusSeconds(3600)));

        offer();

        assertThat(answers.asked).containsExactly("recover boat.orlop");
    }

    @Test
    void what_cannot_be_read_stays_unless_it_is_thrown_away() throws Exception {
        Path left = left(other(), saved());
        Files.writeString(left, "{ \"journal\": 1 }\n{ \"orlop\": 1, ");

        offer();
        assertThat(answers.asked).singleElement().asString().contains("cannot be read", left.toString());
        assertThat(left).exists();

        answers.choice = 1;
        offer();
        assertThat(left).doesNotExist();
    }
}
