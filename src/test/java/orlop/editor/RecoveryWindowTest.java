package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javax.swing.JFrame;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.OpenFile;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.store.DrawingFile;
import orlop.testing.WindowTest;

/** A window is killed; the next start offers what was in it. */
@WindowTest
@Timeout(120)
class RecoveryWindowTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    @Test
    void what_a_killed_window_held_is_offered_and_opened_unsaved_in_a_window(Robot robot) throws Exception {
        Path settings = folder.resolve("settings.properties");
        kill(settings);
        Answers answers = new Answers();
        answers.recovery = Prompts.Recovery.RESTORE;

        GuiActionRunner.execute(() -> {
            Settings mine = new Settings(settings);
            new Recovering(new Windows(mine, Review::of), mine, answers).offer();
        });
        robot.waitForIdle();

        assertThat(answers.asked).hasSize(1).first().asString().startsWith("recover");
        List<JFrame> frames = GuiActionRunner.execute(() -> Arrays.stream(Window.getWindows())
                .filter(w -> w instanceof JFrame && w.isShowing())
                .map(JFrame.class::cast)
                .toList());
        assertThat(frames).hasSize(1);
        JFrame frame = frames.get(0);
        SheetCanvas canvas = robot.finder().findByType(frame, SheetCanvas.class);
        assertThat(canvas.session()
                        .state()
                        .drawing()
                        .components()
                        .require("MA2")
                        .name())
                .isEqualTo(WindowThatIsKilled.NAME);
        assertThat(canvas.session().state().dirty()).isTrue();
        GuiActionRunner.execute(frame::dispose);
    }

    @Test
    void what_was_left_of_a_file_that_is_open_comes_to_its_window_and_can_be_undone() throws Exception {
        Path file = folder.resolve("boat.orlop");
        Drawing saved = TestBoat.drawing();
        DrawingFile.save(file, saved);
        Drawing left = Edits.delete(Set.of("W16")).applyTo(saved);
        Settings mine = new Settings(folder.resolve("settings.properties"));

        GuiActionRunner.execute(() -> {
            Windows windows = new Windows(mine, Review::of);
            OpenFile claimed = OpenFile.claim(file, mine.home()).orElseThrow();
            MainWindow w = windows.window(saved, claimed, true);
            w.show();
            Session session = w.bench().canvas().session();

            assertThat(windows.recovered(folder.resolve("other.orlop"), left)).isFalse();
            assertThat(windows.recovered(file, left)).isTrue();
            assertThat(session.state().drawing().cables().contains("W16")).isFalse();
            assertThat(session.state().dirty()).isTrue();
            assertThat(windows.recovered(file, saved))
                    .as("nothing that is not saved is pushed aside")
                    .isFalse();
            session.undo();
            assertThat(session.state().drawing()).isSameAs(saved);
            assertThat(session.state().dirty()).isFalse();
            w.frame().dispose();
        });
        assertThat(DrawingFile.load(file)).isEqualTo(saved);
    }

    private void kill(Path settings) throws Exception {
        Path ready = folder.resolve("ready");
        Process p = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        WindowThatIsKilled.class.getName(),
                        settings.toString(),
                        ready.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
        for (int i = 0; i < 400 && p.isAlive() && !Files.exists(ready); i++) {
            p.waitFor(100, TimeUnit.MILLISECONDS);
        }
        assertThat(Files.readString(folder.resolve("said"))).isEmpty();
        assertThat(ready).exists();
        p.destroyForcibly().waitFor();
    }
}
