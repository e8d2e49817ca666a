package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.OpenFile;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.desk.UiThread;
import orlop.drawing.Edits;
import orlop.drawing.Message;
import orlop.store.DrawingFile;

class FileCommandsTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    private final Answers answers = new Answers();
    private final List<String> gone = new ArrayList<>();
    private final Session session =
            new Session(TestBoat.drawing(), null, Review::of, Runnable::run, new HereAndNow(), e -> {
                throw new AssertionError(e);
            });
    private final Settings settings = new Settings(null);
    private final NoDesks desks = new NoDesks();
    private final Deque<Runnable> slowDisk = new ArrayDeque<>();
    private boolean slow;
    private final FileCommands files = new FileCommands(
            session, answers, settings, desks, this::read, Runnable::run, () -> {}, () -> gone.add("window"));
    private final Commands commands = commands();

    private Commands commands() {
        Commands c = new Commands("ctrl");
        files.addTo(c);
        new ExportCommands(session, new ShownScene(), answers, Runnable::run, Runnable::run).addTo(c);
        return c;
    }

    private void read(Runnable task) {
        if (slow) {
            slowDisk.add(task);
        } else {
            task.run();
        }
    }

    private void change() {
        session.apply(Edits.delete(Set.of("W16")));
    }

    private void run(CommandId id) {
        commands.get(id).run();
    }

    @Test
    void a_drawing_is_saved_and_opened_again() {
        answers.file = folder.resolve("boat.orlop");
        run(CommandId.SAVE);
        assertThat(session.state().file()).isEqualTo(answers.file);
        change();
        run(CommandId.SAVE);
        assertThat(session.state().dirty()).isFalse();

        files.take(null);
        run(CommandId.OPEN);

        assertThat(desks.opened)
                .singleElement()
                .satisfies(d -> assertThat(d.cables().contains("W16")).isFalse());
        assertThat(settings.recent()).containsExactly(folder.resolve("boat.orlop"));
    }

    private Path other(String name) throws Exception {
        Path file = folder.resolve(name);
        DrawingFile.save(file, TestBoat.drawing());
        return file;
    }

    @Test
    void the_window_stays_free_while_a_slow_disk_is_read_and_says_so() throws Exception {
        slow = true;
        Path file = other("other.orlop");

        files.open(file);

        assertThat(session.state().notice()).isEqualTo(Message.of("editor.say.reading", "other.orlop"));
        assertThat(session.state().file()).isNull();
        slowDisk.remove().run();
        assertThat(session.state().file()).isEqualTo(file);
        assertThat(session.state().notice()).isNull();
        assertThat(desks.opened).isEmpty();
    }

    @Test
    void what_is_drawn_while_a_file_is_read_is_not_pushed_aside() throws Exception {
        slow = true;
        files.open(other("other.orlop"));
        change();

        slowDisk.remove().run();

        assertThat(session.state().drawing().cables().contains("W16")).isFalse();
        assertThat(session.state().file()).isNull();
        assertThat(desks.opened).hasSize(1);
    }

    @Test
    void a_file_that_is_asked_for_twice_while_it_is_read_is_opened_once() throws Exception {
        slow = true;
        Path file = other("other.orlop");
        files.open(file);
        files.open(file);

        while (!slowDisk.isEmpty()) {
            slowDisk.remove().run();
        }

        assertThat(session.state().file()).isEqualTo(file);
        assertThat(desks.opened).isEmpty();
        assertThat(answers.asked).isEmpty();
    }

    @Test
    void who_closes_the_window_while_a_file_is_read_leaves_it_free() throws Exception {
        slow = true;
        Path file = other("other.orlop");
        files.open(file);
        run(CommandId.CLOSE);

        slowDisk.remove().run();

        assertThat(session.state().file()).isNull();
        assertThat(desks.opened).isEmpty();
        OpenFile.claim(file, folder).orElseThrow().close();
    }

    @Test
    void one_begins_to_look_for_a_file_where_the_last_one_was() throws Exception {
        settings.opened(folder.resolve("yesterday.orlop"));
        run(CommandId.OPEN);
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere")).resolve("boat.orlop");
        answers.file = elsewhere;
        run(CommandId.SAVE);
        answers.file = null;
        run(CommandId.OPEN);

        assertThat(answers.asked)
                .containsExactly("open near " + folder.resolve("yesterday.orlop"), "open near " + elsewhere);
    }

    @Test
    void a_file_that_is_gone_is_told_of_once_and_one_whose_disk_is_away_stays_in_the_list() throws Exception {
        Path there = folder.resolve("boat.orlop");
        Path away = folder.resolve("stick").resolve("boat.orlop");
        settings.opened(away);
        settings.opened(there);

        files.open(there);
        files.open(away);

        assertThat(answers.told).hasSize(2).allMatch(t -> t.contains("boat.orlop"));
        assertThat(settings.recent()).containsExactly(away);
    }

    @Test
    void closing_asks_about_changes_and_stays_when_told_to() {
        change();
        answers.unsaved = Prompts.Unsaved.STAY;

        run(CommandId.CLOSE);

        assertThat(gone).isEmpty();
    }

    @Test
    void closing_saves_when_told_to() {
        change();
        answers.unsaved = Prompts.Unsaved.SAVE;
        answers.file = folder.resolve("boat.orlop");

        run(CommandId.CLOSE);

        assertThat(gone).hasSize(1);
        assertThat(folder.resolve("boat.orlop")).exists();
    }

    @Test
    void closing_stays_when_saving_failed() {
        change();
        answers.unsaved = Prompts.Unsaved.SAVE;
        answers.file = folder.resolve("no such folder").resolve("boat.orlop");

        run(CommandId.CLOSE);

        assertThat(gone).isEmpty();
        assertThat(answers.told).hasSize(1);
    }

    @Test
    void a_file_that_is_no_drawing_is_told_with_its_cause_and_the_work_stays() throws Exception {
        answers.file = Files.writeString(folder.resolve("bad.orlop"), "{ \"orlop\": 1, ");

        run(CommandId.OPEN);

        assertThat(answers.told).singleElement().asString().contains("bad.orlop", "line");
        assertThat(session.state().drawing().components().contains("GB1")).isTrue();
        assertThat(settings.recent()).isEmpty();
    }

    @Test
    void a_place_without_a_name_is_told_by_line_and_character_alone() throws Exception {
        files.open(Files.writeString(folder.resolve("empty.orlop"), ""));

        assertThat(answers.told).singleElement().asString().contains("line 1, character 1\n");
    }

    @Test
    void the_exported_sheet_holds_its_tags_and_the_cautions() throws Exception {
        answers.file = folder.resolve("sheet.svg");

        run(CommandId.EXPORT_SVG);

        assertThat(Files.readString(folder.resolve("sheet.svg"))).contains("24MAIN", "Local codes prevail");
    }

    @Test
    void a_picture_is_exported_at_the_size_of_the_paper() throws Exception {
        answers.file = folder.resolve("sheet.png");

        run(CommandId.EXPORT_PNG);

        var image = javax.imageio.ImageIO.read(folder.resolve("sheet.png").toFile());
        assertThat(image.getWidth()).isEqualTo((int) Math.round(420 / 25.4 * 200));
    }

    @Test
    void a_saved_file_holds_what_the_store_reads() throws Exception {
        answers.file = folder.resolve("boat.orlop");
        run(CommandId.SAVE);

        assertThat(DrawingFile.load(folder.resolve("boat.orlop")).components())
                .isEqualTo(TestBoat.drawing().components());
    }

    private Path saved() {
        Path file = folder.resolve("boat.orlop");
        answers.file = file;
        run(CommandId.SAVE);
        return file;
    }

    private static boolean hasCable(Path file) throws Exception {
        return DrawingFile.load(file).cables().contains("W16");
    }

    @Test
    void an_untouched_window_takes_the_file_that_is_opened() throws Exception {
        Path file = folder.resolve("other.orlop");
        DrawingFile.save(file, TestBoat.drawing());
        answers.file = file;

        run(CommandId.OPEN);

        assertThat(desks.opened).isEmpty();
        assertThat(session.state().file()).isEqualTo(file);
    }

    @Test
    void what_another_program_wrote_is_not_written_over_unasked() throws Exception {
        Path file = saved();
        Files.writeString(file, "theirs");
        change();

        run(CommandId.SAVE);
        assertThat(file).hasContent("theirs");
        assertThat(session.state().dirty()).isTrue();
        files.lookOutside(); // the window comes to the front when the question has gone

        answers.outside = Prompts.Outside.OVERWRITE;
        run(CommandId.SAVE);
        assertThat(hasCable(file)).isFalse();
        assertThat(answers.asked).containsExactly("outside boat.orlop", "outside boat.orlop");
    }

    @Test
    void what_another_program_wrote_is_read_again_and_can_be_undone() throws Exception {
        Path file = saved();
        DrawingFile.save(file, Edits.delete(Set.of("W16")).applyTo(TestBoat.drawing()));
        answers.readAgain = true;

        files.lookOutside();
        files.lookOutside();

        assertThat(session.state().drawing().cables().contains("W16")).isFalse();
        assertThat(session.state().dirty()).isFalse();
        session.undo();
        assertThat(session.state().drawing().cables().contains("W16")).isTrue();
        assertThat(answers.asked).hasSize(1);
    }

    @Test
    void who_keeps_what_is_here_is_asked_once_and_has_it_unsaved() throws Exception {
        Path file = saved();
        DrawingFile.save(file, Edits.delete(Set.of("W16")).applyTo(TestBoat.drawing()));

        files.lookOutside();
        files.lookOutside();

        assertThat(answers.asked).containsExactly("read again boat.orlop");
        assertThat(session.state().dirty()).isTrue();
        run(CommandId.SAVE);
        assertThat(hasCable(file)).isTrue();
    }

    @Test
    void a_file_that_was_removed_is_told_of_once_and_written_again_by_save() throws Exception {
        Path file = saved();
        Files.delete(file);

        files.lookOutside();
        files.lookOutside();

        assertThat(answers.asked)
                .as("there is nothing that could be read again")
                .isEmpty();
        assertThat(answers.told).singleElement().asString().contains("boat.orlop", "no longer where it was");
        assertThat(session.state().dirty()).isTrue();
        run(CommandId.SAVE);
        assertThat(hasCable(file)).isTrue();
        assertThat(session.state().dirty()).isFalse();
    }

    @Test
    void a_window_whose_file_was_removed_unseen_does_not_close_unasked() throws Exception {
        Files.delete(saved());

        run(CommandId.CLOSE);

        assertThat(gone).isEmpty();
        assertThat(answers.asked).containsExactly("unsaved boat.orlop");
    }

    @Test
    void what_cannot_be_read_again_leaves_the_drawing_unsaved_and_is_told_once() throws Exception {
        Files.writeString(saved(), "no drawing");
        answers.readAgain = true;

        files.lookOutside();
        files.lookOutside();

        assertThat(answers.told).hasSize(1);
        assertThat(session.state().dirty()).as("what is here stands in no file").isTrue();
    }

    @Test
    void what_is_written_beside_a_file_named_without_its_folder_goes_to_that_folder() {
        session.saved(Path.of("boat.orlop"));

        Path offered = ExportCommands.suggestion(session.state(), "boat.orlop", "-1", ".svg");

        assertThat(offered).isEqualTo(Path.of("boat-1.svg").toAbsolutePath());
    }

    @Test
    void a_file_that_is_open_elsewhere_is_opened_as_a_copy_or_not_at_all() throws Exception {
        Path file = folder.resolve("theirs.orlop");
        DrawingFile.save(file, TestBoat.drawing());
        answers.file = file;
        try (OpenFile theirs = OpenFile.claim(file, folder).orElseThrow()) {
            run(CommandId.OPEN);
            assertThat(answers.asked).containsExactly("copy theirs.orlop");
            assertThat(settings.recent()).isEmpty();

            answers.openAsCopy = true;
            run(CommandId.OPEN);
            assertThat(session.state().file()).isNull();

            run(CommandId.SAVE);
            assertThat(answers.told).hasSize(1);
            assertThat(theirs.changedOutside()).isFalse();
        }
    }

    @Test
    void a_copy_is_saved_beside_and_the_work_stays_in_its_own_file() throws Exception {
        Path file = saved();
        change();
        answers.file = folder.resolve("copy.orlop");

        run(CommandId.SAVE_COPY);

        assertThat(hasCable(folder.resolve("copy.orlop"))).isFalse();
        assertThat(hasCable(file)).isTrue();
        assertThat(session.state().file()).isEqualTo(file);
        assertThat(session.state().dirty()).isTrue();
    }

    @Test
    void a_copy_is_suggested_under_a_name_that_no_file_has() throws Exception {
        String stem = String.valueOf(saved().getFileName()).replace(".orlop", "");
        Files.writeString(folder.resolve(stem + " copy.orlop"), "somebody's");

        run(CommandId.SAVE_COPY);

        assertThat(answers.suggested).endsWith(stem + " copy 2.orlop");
    }

    @Test
    void going_back_to_the_saved_drawing_is_a_step_that_can_be_undone() {
        saved();
        change();

        run(CommandId.REVERT);

        assertThat(session.state().drawing().cables().contains("W16")).isTrue();
        assertThat(session.state().dirty()).isFalse();
        session.undo();
        assertThat(session.state().drawing().cables().contains("W16")).isFalse();
    }

    @Test
    void a_file_that_may_not_be_written_loses_nothing() throws Exception {
        Path file = saved();
        change();
        java.util.Set<java.nio.file.attribute.PosixFilePermission> readOnly =
                java.nio.file.attribute.PosixFilePermissions.fromString("r--r--r--");
        Files.setPosixFilePermissions(file, readOnly);
        answers.file = folder.resolve("elsewhere.orlop");

        run(CommandId.SAVE);
        run(CommandId.SAVE_AS);

        assertThat(hasCable(folder.resolve("elsewhere.orlop"))).isFalse();
        assertThat(session.state().dirty()).isFalse();
    }

    /** Everything is done at once, on the thread of the test. */
    private static final class HereAndNow implements UiThread {
        @Override
        public boolean isCurrent() {
            return true;
        }

        @Override
        public void execute(Runnable task) {
            task.run();
        }
    }
}
