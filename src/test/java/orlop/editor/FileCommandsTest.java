package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.desk.UiThread;
import orlop.drawing.Edits;
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
    private final Commands commands = commands();

    private Commands commands() {
        Commands c = new Commands("ctrl");
        new FileCommands(session, new ShownScene(), answers, settings, () -> {}, () -> gone.add("window")).addTo(c);
        return c;
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

        answers.file = folder.resolve("boat.orlop");
        run(CommandId.OPEN);

        assertThat(session.state().drawing().cables().contains("W16")).isFalse();
        assertThat(settings.recent()).containsExactly(folder.resolve("boat.orlop"));
    }

    @Test
    void closing_asks_about_changes_and_stays_when_told_to() {
        change();
        answers.unsaved = Prompts.Unsaved.STAY;

        run(CommandId.QUIT);

        assertThat(gone).isEmpty();
    }

    @Test
    void closing_saves_when_told_to() {
        change();
        answers.unsaved = Prompts.Unsaved.SAVE;
        answers.file = folder.resolve("boat.orlop");

        run(CommandId.QUIT);

        assertThat(gone).hasSize(1);
        assertThat(folder.resolve("boat.orlop")).exists();
    }

    @Test
    void closing_stays_when_saving_failed() {
        change();
        answers.unsaved = Prompts.Unsaved.SAVE;
        answers.file = folder.resolve("no such folder").resolve("boat.orlop");

        run(CommandId.QUIT);

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

    private static final class Answers implements Prompts {
        private Path file = Path.of("unset");
        private Unsaved unsaved = Unsaved.STAY;
        private final List<String> told = new ArrayList<>();

        @Override
        public Optional<Path> open() {
            return Optional.of(file);
        }

        @Override
        public Optional<Path> save(Path suggestion, String suffix) {
            return Optional.of(file);
        }

        @Override
        public Unsaved unsaved(String name) {
            return unsaved;
        }

        @Override
        public Optional<String> line(String title, String label, String initial) {
            return Optional.empty();
        }

        @Override
        public boolean form(String title, JComponent form) {
            return false;
        }

        @Override
        public void tell(String title, String text) {
            told.add(text);
        }

        @Override
        public void tell(String title, JComponent content) {
            told.add(title);
        }
    }
}
