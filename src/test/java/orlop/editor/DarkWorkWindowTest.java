package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Same;
import orlop.drawing.Drawing;
import orlop.testing.WindowTest;

/** A spell of work by mouse and keys in the dark look; every step of it is taken back, one by one. */
@WindowTest
@Timeout(180)
class DarkWorkWindowTest {
    private final Drawing start = TestBoat.drawing();

    @SuppressWarnings("NullAway.Init") // set before each test
    private OpenWindow on;

    @BeforeEach
    void open(Robot robot) {
        on = new OpenWindow(robot, start, new Settings(null));
        GuiActionRunner.execute(
                () -> on.window().bench().commands().get(CommandId.DARK).run());
        robot.waitForIdle();
    }

    @AfterEach
    void close() {
        on.close();
        GuiActionRunner.execute(() -> Look.install(false));
    }

    /** Does a step, sees that the drawing is another now, and remembers how it was before. */
    private void step(String what, Runnable step) {
        Drawing before = on.drawing();
        step.run();
        on.until(what, () -> !Same.object(on.drawing(), before));
        on.until("the figures of: " + what, () -> on.state().fresh());
    }

    @Test
    void work_in_the_dark_is_done_and_undone_to_the_very_first_drawing() {
        step("moved by the mouse", () -> drag("MA1", 0, 40));
        step("nudged", () -> on.press(KeyEvent.VK_RIGHT));
        step("deleted and healed", () -> key("FC3", KeyEvent.VK_DELETE));
        step("turned", () -> keyWithCtrl("P1", KeyEvent.VK_R));
        step("duplicated", () -> keyWithCtrl("MA2", KeyEvent.VK_D));
        step("cut", () -> on.ctrl(KeyEvent.VK_X));
        step("pasted", () -> on.ctrl(KeyEvent.VK_V));
        step("all deleted", () -> {
            on.ctrl(KeyEvent.VK_A);
            on.press(KeyEvent.VK_DELETE);
        });
        assertThat(on.drawing().components().size()).isZero();
        itIsDark();

        int steps = 0;
        while (on.state().undo() != null) {
            Drawing before = on.drawing();
            on.ctrl(KeyEvent.VK_Z);
            on.until("a step back", () -> !Same.object(on.drawing(), before));
            steps++;
        }

        assertThat(steps).isBetween(7, 8); // a move and a nudge right after it may be one
        assertThat(Same.object(on.drawing(), start)).isTrue();
        assertThat(on.state().dirty()).isFalse();
        on.until("the figures", () -> on.state().fresh());
        itIsDark();
    }

    private void drag(String item, int dx, int dy) {
        Point from = on.middle(item);
        on.robot().pressMouse(on.canvas(), from, MouseButton.LEFT_BUTTON);
        on.robot().moveMouse(on.canvas(), from.x + dx / 2 + 1, from.y + dy / 2 + 1);
        on.robot().moveMouse(on.canvas(), from.x + dx, from.y + dy);
        on.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        on.robot().waitForIdle();
    }

    private void key(String item, int code) {
        on.robot().click(on.canvas(), on.middle(item));
        on.press(code);
    }

    private void keyWithCtrl(String item, int code) {
        on.robot().click(on.canvas(), on.middle(item));
        on.ctrl(code);
    }

    /** Nine tenths of the window are darker than a middle grey, and something on it is light: the text and the lines. */
    private void itIsDark() {
        BufferedImage image = GuiActionRunner.execute(() -> {
            var all = on.window().frame().getContentPane();
            BufferedImage i = new BufferedImage(all.getWidth(), all.getHeight(), BufferedImage.TYPE_INT_RGB);
            all.paint(i.createGraphics());
            return i;
        });
        int dark = 0;
        int light = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                Color c = new Color(image.getRGB(x, y));
                int level = Math.max(c.getRed(), Math.max(c.getGreen(), c.getBlue()));
                dark += level < 128 ? 1 : 0;
                light += level > 160 ? 1 : 0;
            }
        }
        double all = image.getWidth() * (double) image.getHeight();
        assertThat(dark / all).as("dark share").isGreaterThan(0.9);
        assertThat(light).as("light dots").isGreaterThan(500);
    }
}
