package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.Robot;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.drawing.Drawing;
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
            assertThat(box.textBox().text()).contains("a bolt came loose", log.toString());
            box.okButton().click();

            assertThat(Files.readString(log)).contains("a bolt came loose");
            assertThat(on.state().drawing()).isSameAs(start);
            assertThat(on.canvas().isShowing()).isTrue();
        }
    }
}
