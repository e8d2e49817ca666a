package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is remembered stays so, whatever happens to the small file or beside it. */
class SettingsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    private Path file() {
        return folder.resolve("settings.properties");
    }

    @Test
    void what_was_there_is_whole_until_the_new_is() throws Exception {
        new Settings(file()).rememberWord("look", "dark");
        Path before = Files.createLink(folder.resolve("the old one"), file());
        String old = Files.readString(before);

        new Settings(file()).rememberWord("look", "light");

        assertThat(Files.readString(before))
                .as("a file that is emptied before it is written loses all when the disk is full")
                .isEqualTo(old);
        assertThat(new Settings(file()).word("look", "")).isEqualTo("light");
    }

    @Test
    void two_programs_at_once_leave_each_other_what_they_remember() {
        Settings one = new Settings(file());
        Settings two = new Settings(file());

        one.rememberWord("look", "dark");
        one.opened(Path.of("/boats/one.orlop"));
        two.rememberWord("areas", "mm2");
        two.opened(Path.of("/boats/two.orlop"));
        one.forget("areas");

        Settings next = new Settings(file());
        assertThat(next.word("look", "")).isEqualTo("dark");
        assertThat(next.word("areas", "forgotten")).isEqualTo("forgotten");
        assertThat(next.recent()).containsExactly(Path.of("/boats/two.orlop"), Path.of("/boats/one.orlop"));
    }

    @Test
    void a_name_that_is_none_here_is_passed_over() throws Exception {
        Files.writeString(file(), "recent.1=a\\u0000b\nrecent.2=/boats/one.orlop\nlook=dark\n");

        Settings s = new Settings(file());

        assertThat(s.recent()).containsExactly(Path.of("/boats/one.orlop"));
        s.opened(Path.of("/boats/two.orlop"));
        assertThat(s.recent()).hasSize(2);
    }

    @Test
    void what_cannot_be_kept_holds_and_is_told_and_is_kept_as_soon_as_it_can_be() throws Exception {
        Path inTheWay = Files.writeString(folder.resolve("home"), "in the way");
        Path there = inTheWay.resolve("settings.properties");
        Settings s = new Settings(there);

        s.rememberWord("look", "dark");

        assertThat(s.word("look", "")).isEqualTo("dark");
        assertThat(s.refusal()).isPresent();

        Files.delete(inTheWay);
        s.rememberWord("areas", "mm2");

        assertThat(s.refusal()).isEmpty();
        assertThat(new Settings(there).word("look", "")).isEqualTo("dark");
    }

    @Test
    void what_is_remembered_already_is_not_written_again() throws Exception {
        new Settings(file()).rememberWord("look", "dark");
        Path before = Files.createLink(folder.resolve("the same one"), file());

        new Settings(file()).rememberWord("look", "dark");

        assertThat(Files.isSameFile(before, file())).isTrue();
    }
}
