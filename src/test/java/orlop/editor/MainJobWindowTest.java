package orlop.editor;

import static java.util.concurrent.TimeUnit.SECONDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.timing.Pause.pause;
import static org.assertj.swing.timing.Timeout.timeout;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.Same;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Protection;
import orlop.findings.Finding;
import orlop.scene.Mark;
import orlop.scene.Role;
import orlop.scene.Route;
import orlop.scene.Scene;
import orlop.scene.SceneItem;
import orlop.study.CableResult;
import orlop.testing.WindowTest;

/**
 * The main job, done by hand in a real window: a drawing that calculates while it is drawn.
 *
 * <p>The one figure that is checked in itself is the drop of W10 by Ohm's law: 2 × 16 m of 6 mm² class 5 copper carry
 * some 10 A in a 24 V system (IEC 60228, table 3: 3.30 Ω/km at 20 °C), which loses 4 to 6 %.
 */
@WindowTest
@Timeout(180)
class MainJobWindowTest {
    private final Drawing start = TestBoat.drawing();

    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    private @Nullable MainWindow window;
    private @Nullable FrameFixture frame;

    @BeforeEach
    void open(Robot robot) {
        MainWindow opened = GuiActionRunner.execute(() -> {
            MainWindow w = EditorApp.window(start, null, new Settings(null));
            w.show();
            return w;
        });
        window = opened;
        frame = new FrameFixture(robot, opened.frame());
        until("the first figures are there", () -> state().fresh());
    }

    @AfterEach
    void close() {
        if (window != null) {
            MainWindow w = window;
            GuiActionRunner.execute(() -> w.frame().dispose());
        }
    }

    private MainWindow window() {
        if (window == null) {
            throw new IllegalStateException("no window");
        }
        return window;
    }

    private FrameFixture frame() {
        if (frame == null) {
            throw new IllegalStateException("no frame");
        }
        return frame;
    }

    private SheetCanvas canvas() {
        return window().bench().canvas();
    }

    private SessionState state() {
        return canvas().session().state();
    }

    private Scene scene() {
        return GuiActionRunner.execute(() -> canvas().scene().orElseThrow());
    }

    private static void until(String what, BooleanSupplier holds) {
        pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return Boolean.TRUE.equals(GuiActionRunner.execute(holds::getAsBoolean));
                    }
                },
                timeout(20, SECONDS));
    }

    private Point at(double xMm, double yMm) {
        Point2D p = GuiActionRunner.execute(() -> canvas().viewport().toView(xMm, yMm));
        return new Point((int) Math.round(p.getX()), (int) Math.round(p.getY()));
    }

    private Point terminal(String component, String name) {
        return scene().terminals().stream()
                .filter(t -> t.terminal().component().equals(component)
                        && t.terminal().terminal().equals(name))
                .map(t -> at(t.xMm(), t.yMm()))
                .findFirst()
                .orElseThrow();
    }

    /** A point on the line of a cable. */
    private Point on(String cable, double share) {
        Route r = scene().routes().get(cable);
        assertThat(r).as(cable).isNotNull();
        return at(r.at(share).xMm(), r.at(share).yMm());
    }

    private void click(Point p) {
        frame().robot().click(canvas(), p);
    }

    private void drag(Point from, Point to) {
        Robot robot = frame().robot();
        robot.pressMouse(canvas(), from, MouseButton.LEFT_BUTTON);
        robot.moveMouse(canvas(), new Point((from.x + to.x) / 2, (from.y + to.y) / 2));
        robot.moveMouse(canvas(), to);
        robot.moveMouse(canvas(), to);
        robot.releaseMouseButtons();
        robot.waitForIdle();
    }

    /** Presses a key together with Ctrl. */
    private void ctrl(int code) {
        Robot robot = frame().robot();
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(code);
        robot.releaseKey(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
    }

    /** All texts on the sheet that belong to a cable or component. */
    private List<String> texts(String subject) {
        return scene().items().stream()
                .filter(i -> i.subject().equals(subject) && i.role() == Role.LABEL)
                .flatMap(i -> i.marks().stream())
                .filter(Mark.Text.class::isInstance)
                .map(m -> ((Mark.Text) m).text())
                .toList();
    }

    private CableResult result(String cable) {
        CableResult r = state().results().orElseThrow().cables().get(cable);
        assertThat(r).as(cable).isNotNull();
        return r;
    }

    private static double number(@Nullable Double d) {
        assertThat(d).isNotNull();
        return d;
    }

    private Optional<Finding> missing() {
        return java.util.Objects.requireNonNull(state().review()).findings().stream()
                .filter(f -> f.place().item().equals(TestBoat.UNGUARDED))
                .filter(f -> f.rule().contains("missing") || f.rule().contains("protection"))
                .findFirst();
    }

    @Test
    void the_main_job_from_a_changed_length_to_an_exported_sheet() throws Exception {
        assertThat(start.components().size()).isBetween(18, 30);
        theDropIsThatOfOhmsLaw();
        aChangedLengthIsFollowedByEveryAnnotation();
        theMissingFuseIsFoundAndPutIn();
        aDeviceIsDroppedOnACable();
        aCableIsRunBetweenTerminals();
        theSheetIsExported();
        undoGivesTheVeryFirstDrawing();
    }

    private void theDropIsThatOfOhmsLaw() {
        CableResult r = result("W10");
        double byHand = 2 * 16 * 0.00330 * number(r.currentA()) / 24 * 100;
        assertThat(number(r.dropPercent())).isBetween(byHand * 0.98, byHand * 1.15);
        assertThat(byHand).isBetween(4.0, 6.0);
    }

    private void aChangedLengthIsFollowedByEveryAnnotation() {
        List<String> before = texts("W10");
        double dropBefore = number(result("W10").dropPercent());
        click(on("W10", 0.4));
        until("the card of W10", () -> state().soleSelection().equals(Optional.of("W10")));

        frame().textBox("field.lengthM").deleteText().enterText("24,5\n");

        until(
                "new figures",
                () -> state().fresh()
                        && Double.valueOf(24.5)
                                .equals(state().drawing()
                                        .cables()
                                        .require("W10")
                                        .lengthM()));
        frame().textBox("field.lengthM").requireText("24.5 m");
        assertThat(texts("W10"))
                .isNotEqualTo(before)
                .anySatisfy(t -> assertThat(t).contains("24.5 m"));
        double dropAfter = number(result("W10").dropPercent());
        assertThat(dropAfter / dropBefore).isBetween(1.35, 1.75);
        assertThat(texts("W10")).anySatisfy(t -> assertThat(t).contains("%"));
        frame().label("result.drop-from-source").requireVisible();
    }

    private void theMissingFuseIsFoundAndPutIn() {
        Finding f = missing().orElseThrow();
        int number =
                java.util.Objects.requireNonNull(state().review()).findings().indexOf(f) + 1;
        SceneItem dashed = scene().item(Role.PROPOSED, Integer.toString(number)).orElseThrow();
        assertThat(dashed.marks()).isNotEmpty();
        Route line = scene().routes().get(TestBoat.UNGUARDED);
        assertThat(line).isNotNull();
        assertThat(dashed.bounds().distance(line.at(0).xMm(), line.at(0).yMm()))
                .as("drawn at the very place")
                .isLessThan(15);
        frame().panel("note." + number).requireVisible();

        frame().button("cure." + f.rule() + "." + TestBoat.UNGUARDED).click();

        until("the note is gone", () -> state().fresh() && missing().isEmpty());
        String fuse = state().soleSelection().orElseThrow();
        assertThat(state().drawing().components().require(fuse).particulars()).isInstanceOf(Protection.class);
        assertThat(result(TestBoat.UNGUARDED).protectedBy()).contains(fuse);
    }

    private void aDeviceIsDroppedOnACable() {
        int count = state().drawing().components().size();
        frame().button("group.switching").click();
        frame().button("kind.isolator").click();
        Point p = on("W12", 0.5);
        frame().robot().moveMouse(canvas(), p);
        click(p);

        until("an isolator in W12", () -> state().drawing().components().size() == count + 1 && state().fresh());
        String id = state().soleSelection().orElseThrow();
        assertThat(state().drawing().components().require(id).kind()).isEqualTo(Kind.ISOLATOR);
        assertThat(state().drawing().cables().require("W12").to().component()).isEqualTo(id);
        assertThat(result("W12").live()).isTrue();
    }

    private void aCableIsRunBetweenTerminals() {
        frame().button("group.loads").click();
        frame().button("kind.lighting").click();
        click(at(345, 190));
        until(
                "a lamp",
                () -> state().soleSelection()
                        .filter(id -> state().drawing().components().require(id).kind() == Kind.LIGHTING)
                        .isPresent());
        String lamp = state().soleSelection().orElseThrow();
        int count = state().drawing().cables().size();

        drag(terminal(lamp, "1"), terminal("FC8", "2"));

        until("a cable", () -> state().drawing().cables().size() == count + 1 && state().fresh());
        assertThat(state().drawing().cables().stream()).anySatisfy(w -> {
            assertThat(w.from().component()).isEqualTo(lamp);
            assertThat(w.to().component()).isEqualTo("FC8");
        });
    }

    private void theSheetIsExported() throws Exception {
        Path svg = folder.resolve("sheet.svg");
        frame().menuItem("menu.export-svg").click();
        frame().fileChooser("files").fileNameTextBox().setText(svg.toString());
        frame().fileChooser("files").approve();

        until("the file is written", () -> Files.exists(svg) && svg.toFile().length() > 10_000);
        String text = Files.readString(svg, StandardCharsets.UTF_8);
        assertThat(text).contains("24.5 m").contains("</svg>");
    }

    private void undoGivesTheVeryFirstDrawing() {
        frame().robot().focusAndWaitForFocusGain(canvas());
        for (int i = 0; i < 20 && state().undo() != null; i++) {
            ctrl(KeyEvent.VK_Z);
        }

        until("nothing to undo", () -> state().undo() == null && state().fresh());
        assertThat(Same.object(state().drawing(), start)).isTrue();
        assertThat(state().dirty()).isFalse();
    }
}
