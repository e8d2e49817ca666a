package orlop.editor;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.swing.timing.Pause.pause;
import static org.assertj.swing.timing.Timeout.timeout;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.function.BooleanSupplier;
import javax.swing.text.JTextComponent;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.exception.WaitTimedOutError;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.jspecify.annotations.Nullable;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.scene.SceneItem;

/** A real window, worked by a robot. */
final class OpenWindow implements AutoCloseable {
    private final MainWindow window;
    private final FrameFixture frame;

    OpenWindow(Robot robot, Drawing start, Settings settings) {
        window = GuiActionRunner.execute(() -> {
            MainWindow w = EditorApp.window(start, null, settings);
            w.show();
            return w;
        });
        frame = new FrameFixture(robot, window.frame());
        until("the first figures are there", () -> state().fresh());
    }

    @Override
    public void close() {
        GuiActionRunner.execute(() -> window.frame().dispose());
    }

    MainWindow window() {
        return window;
    }

    FrameFixture frame() {
        return frame;
    }

    Robot robot() {
        return frame.robot();
    }

    SheetCanvas canvas() {
        return window.bench().canvas();
    }

    SessionState state() {
        return canvas().session().state();
    }

    Drawing drawing() {
        return state().drawing();
    }

    void until(String what, BooleanSupplier holds) {
        try {
            pause(
                    new Condition(what) {
                        @Override
                        public boolean test() {
                            return Boolean.TRUE.equals(GuiActionRunner.execute(holds::getAsBoolean));
                        }
                    },
                    timeout(60, SECONDS));
        } catch (WaitTimedOutError e) {
            throw new AssertionError(what + " was waited for in vain; " + GuiActionRunner.execute(this::standing), e);
        }
        frame.robot().waitForIdle();
    }

    /** What the window shows, to tell why something was waited for in vain. */
    private String standing() {
        return "sheet %s, selected %s, focus at %s, mouse on the canvas at %s of %s, sheet's corner at %s"
                .formatted(
                        state().sheet(),
                        state().selection(),
                        focusedNow(),
                        canvas().getMousePosition(),
                        canvas().getSize(),
                        canvas().viewport().toView(0, 0));
    }

    /**
     * A double click on the canvas. Where the machine was so slow that two single clicks came of it, which is the robot's
     * doing, it is done again.
     */
    void doubleClick(Point at) {
        Clicks clicks = new Clicks();
        GuiActionRunner.execute(() -> canvas().addMouseListener(clicks));
        for (int i = 0; i < 5 && clicks.most < 2; i++) {
            robot().click(canvas(), at, MouseButton.LEFT_BUTTON, 2);
        }
        GuiActionRunner.execute(() -> canvas().removeMouseListener(clicks));
    }

    /** Counts as the canvas is told. */
    private static final class Clicks extends MouseAdapter {
        volatile int most;

        @Override
        public void mousePressed(MouseEvent e) {
            most = Math.max(most, e.getClickCount());
        }
    }

    /** Presses a key, with these held down. */
    void press(int code, int... held) {
        for (int h : held) {
            robot().pressKey(h);
        }
        robot().pressAndReleaseKeys(code);
        for (int i = held.length - 1; i >= 0; i--) {
            robot().releaseKey(held[i]);
        }
        robot().waitForIdle();
    }

    void ctrl(int code) {
        press(code, KeyEvent.VK_CONTROL);
    }

    void type(String text) {
        robot().enterText(text);
        robot().waitForIdle();
    }

    /**
     * Types all that is to stand in the field that has the keys. On a busy machine a key may be down for so long that it
     * repeats itself: what stands there then is typed again.
     */
    void fill(String text) {
        for (int i = 0; i < 5; i++) {
            ctrl(KeyEvent.VK_A);
            type(text);
            if (focused() instanceof JTextComponent field
                    && text.equals(GuiActionRunner.execute(() -> field.getText()))) {
                return;
            }
        }
        throw new AssertionError(text + " could not be typed at " + focused());
    }

    /** What has the focus of the keyboard; on the event thread. */
    @Nullable
    Component focusedNow() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    /** What has the focus of the keyboard. */
    @Nullable
    Component focused() {
        return GuiActionRunner.execute(this::focusedNow);
    }

    void untilFocused(Component c) {
        until("the focus is there", c::isFocusOwner);
    }

    /** The middle of an item, on the canvas. */
    Point middle(String item) {
        SceneItem i = GuiActionRunner.execute(() -> canvas().scene().orElseThrow().items().stream()
                .filter(s -> s.subject().equals(item))
                .findFirst()
                .orElseThrow());
        Point2D p = GuiActionRunner.execute(() ->
                canvas().viewport().toView(i.bounds().centreX(), i.bounds().centreY()));
        return new Point((int) Math.round(p.getX()), (int) Math.round(p.getY()));
    }
}
