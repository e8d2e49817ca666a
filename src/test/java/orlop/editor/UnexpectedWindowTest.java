package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.Review;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.testing.WindowTest;

/** An error that nobody foresaw is told in a real window, and the drawing is as it was. */
@WindowTest
@Timeout(120)
class UnexpectedWindowTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    @Test
    void the_person_is_told_where_the_details_stand_and_works_on(Robot robot) throws Exception {
        Drawing start = TestBoat.drawing();
        try (OpenWindow on = new OpenWindow(robot, start, new Settings(null))) {
            Path log = folder.resolve("orlop.log");
            Unexpected u = new Unexpected(log, () -> on.window().frame(), () -> {});
            SwingUtilities.invokeLater(() -> u.tell(new IllegalStateException("a bolt came loose")));

            JOptionPaneFixture box = JOptionPaneFinder.findOptionPane().using(robot);
            assertThat(box.textBox("details").text()).contains("UnexpectedWindowTest");
            assertThat(box.textBox("said").text()).contains("a bolt came loose", log.toString());
            box.okButton().click();

            assertThat(Files.readString(log)).contains("a bolt came loose");
            assertThat(on.state().drawing()).isSameAs(start);
            assertThat(on.canvas().isShowing()).isTrue();
        }
    }

    @Test
    void with_several_windows_all_is_written_down_and_it_is_told_at_one_that_is_there(Robot robot) throws Exception {
        Settings settings = new Settings(folder.resolve("settings.properties"));
        Path journals = settings.journals().orElseThrow();
        Windows windows = new Windows(settings, Review::of);
        List<MainWindow> open = GuiActionRunner.execute(() -> List.of(
                windows.window(TestBoat.drawing(), null, true),
                windows.window(TestBoat.drawing(), null, true),
                windows.window(TestBoat.drawing(), null, true)));
        AtomicLong kept = new AtomicLong(-1);
        GuiActionRunner.execute(() -> {
            open.forEach(MainWindow::show);
            open.get(2).bench().files().close(); // the one that was opened last is gone
        });
        SwingUtilities.invokeLater(() -> {
            for (MainWindow w : open.subList(0, 2)) {
                w.bench().canvas().session().apply(Edits.delete(Set.of("W16")));
            }
            SwingUtilities.invokeLater(() -> kept.set(journalsIn(journals))); // while the box stands there
            throw new IllegalStateException("a bolt came loose");
        });

        JOptionPaneFixture box = JOptionPaneFinder.findOptionPane().using(robot);
        Window owner = GuiActionRunner.execute(
                () -> SwingUtilities.getWindowAncestor(box.target()).getOwner());
        box.okButton().click();
        robot.waitForIdle();

        assertThat(owner).isIn(open.get(0).frame(), open.get(1).frame());
        assertThat(kept).as("each of both drawings was written down first").hasValue(2);
        GuiActionRunner.execute(() -> open.forEach(w -> w.frame().dispose()));
    }

    private static long journalsIn(Path folder) {
        String[] names = folder.toFile().list((f, name) -> name.endsWith(".orlop-journal"));
        return names == null ? 0 : names.length;
    }
}
