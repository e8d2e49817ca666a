package orlop.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JLabel;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.exception.EdtViolationException;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.junit.jupiter.api.Test;

/** Proves that window tests see real windows, and that a touch from the wrong thread fails. */
@WindowTest
class FrameWindowTest {

    @Test
    void a_frame_is_found_and_its_button_can_be_pressed(Robot robot) {
        GuiActionRunner.execute(FrameWindowTest::show);

        FrameFixture frame = WindowFinder.findFrame("knocker").using(robot);
        frame.button("knock").click();

        frame.label("answer").requireText("come in");
    }

    @Test
    void touching_swing_off_its_own_thread_is_refused() {
        JLabel label = GuiActionRunner.execute(() -> new JLabel("before"));
        assertThat(label).isNotNull();

        assertThatThrownBy(() -> new JFrame().add(new JButton("from the test's thread")))
                .isInstanceOf(EdtViolationException.class);
    }

    private static JFrame show() {
        JLabel answer = new JLabel("nobody");
        answer.setName("answer");
        JButton knock = new JButton("Knock");
        knock.setName("knock");
        knock.addActionListener(event -> answer.setText("come in"));
        JFrame frame = new JFrame("Door");
        frame.setName("knocker");
        frame.add(knock, "North");
        frame.add(answer, "South");
        frame.pack();
        frame.setVisible(true);
        return frame;
    }
}
