package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import orlop.desk.Same;
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
class MainJobWindowTest extends InWindow {
    @TempDir
    @SuppressWarnings("NullAway.Init") // set by JUnit
    Path folder;

    MainJobWindowTest() {
        super(TestBoat.drawing());
    }

    private Scene scene() {
        return GuiActionRunner.execute(() -> on.canvas().scene().orElseThrow());
    }

    private Point at(double xMm, double yMm) {
        Point2D p = GuiActionRunner.execute(() -> on.canvas().viewport().toView(xMm, yMm));
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
    private Point along(String cable, double share) {
        Route r = scene().routes().get(cable);
        assertThat(r).as(cable).isNotNull();
        return at(r.at(share).xMm(), r.at(share).yMm());
    }

    private void click(Point p) {
        on.frame().robot().click(on.canvas(), p);
    }

    private void drag(Point from, Point to) {
        Robot robot = on.frame().robot();
        robot.pressMouse(on.canvas(), from, MouseButton.LEFT_BUTTON);
        robot.moveMouse(on.canvas(), new Point((from.x + to.x) / 2, (from.y + to.y) / 2));
        robot.moveMouse(on.canvas(), to);
        robot.moveMouse(on.canvas(), to);
        robot.releaseMouseButtons();
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
        CableResult r = on.state().results().orElseThrow().cables().get(cable);
        assertThat(r).as(cable).isNotNull();
        return r;
    }

    private static double number(@Nullable Double d) {
        assertThat(d).isNotNull();
        return d;
    }

    private Optional<Finding> missing() {
        return java.util.Objects.requireNonNull(on.state().review()).findings().stream()
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
        click(along("W10", 0.4));
        on.until("the card of W10", () -> on.state().soleSelection().equals(Optional.of("W10")));

        on.frame().textBox("field.lengthM").deleteText().enterText("24,5\n");

        on.until(
                "new figures",
                () -> on.state().fresh()
                        && Double.valueOf(24.5)
                                .equals(on.state()
                                        .drawing()
                                        .cables()
                                        .require("W10")
                                        .lengthM()));
        on.frame().textBox("field.lengthM").requireText("24.5 m");
        assertThat(texts("W10"))
                .isNotEqualTo(before)
                .anySatisfy(t -> assertThat(t).contains("24.5 m"));
        double dropAfter = number(result("W10").dropPercent());
        assertThat(dropAfter / dropBefore).isBetween(1.35, 1.75);
        assertThat(texts("W10")).anySatisfy(t -> assertThat(t).contains("%"));
        on.frame().label("result.drop-from-source").requireVisible();
    }

    private void theMissingFuseIsFoundAndPutIn() {
        Finding f = missing().orElseThrow();
        int number =
                java.util.Objects.requireNonNull(on.state().review()).findings().indexOf(f) + 1;
        SceneItem dashed = scene().item(Role.PROPOSED, Integer.toString(number)).orElseThrow();
        assertThat(dashed.marks()).isNotEmpty();
        Route line = scene().routes().get(TestBoat.UNGUARDED);
        assertThat(line).isNotNull();
        assertThat(dashed.bounds().distance(line.at(0).xMm(), line.at(0).yMm()))
                .as("drawn at the very place")
                .isLessThan(15);
        on.frame().panel("note." + number).requireVisible();

        on.frame().button("cure." + f.rule() + "." + TestBoat.UNGUARDED).click();

        on.until("the note is gone", () -> on.state().fresh() && missing().isEmpty());
        String fuse = on.state().soleSelection().orElseThrow();
        assertThat(on.state().drawing().components().require(fuse).particulars())
                .isInstanceOf(Protection.class);
        assertThat(result(TestBoat.UNGUARDED).protectedBy()).contains(fuse);
    }

    private void aDeviceIsDroppedOnACable() {
        int count = on.state().drawing().components().size();
        on.frame().button("group.switching").click();
        on.frame().button("kind.isolator").click();
        Point p = along("W12", 0.5);
        on.frame().robot().moveMouse(on.canvas(), p);
        click(p);

        on.until(
                "an isolator in W12",
                () -> on.state().drawing().components().size() == count + 1
                        && on.state().fresh());
        String id = on.state().soleSelection().orElseThrow();
        assertThat(on.state().drawing().components().require(id).kind()).isEqualTo(Kind.ISOLATOR);
        assertThat(on.state().drawing().cables().require("W12").to().component())
                .isEqualTo(id);
        assertThat(result("W12").live()).isTrue();
    }

    private void aCableIsRunBetweenTerminals() {
        on.frame().button("group.loads").click();
        on.frame().button("kind.lighting").click();
        click(at(345, 190));
        on.until(
                "a lamp",
                () -> on.state()
                        .soleSelection()
                        .filter(id ->
                                on.state().drawing().components().require(id).kind() == Kind.LIGHTING)
                        .isPresent());
        String lamp = on.state().soleSelection().orElseThrow();
        int count = on.state().drawing().cables().size();

        drag(terminal(lamp, "1"), terminal("FC8", "2"));

        on.until(
                "a cable",
                () -> on.state().drawing().cables().size() == count + 1
                        && on.state().fresh());
        assertThat(on.state().drawing().cables().stream()).anySatisfy(w -> {
            assertThat(w.from().component()).isEqualTo(lamp);
            assertThat(w.to().component()).isEqualTo("FC8");
        });
    }

    private void theSheetIsExported() throws Exception {
        Path svg = folder.resolve("sheet.svg");
        on.frame().menuItem("menu.export-svg").click();
        on.frame().fileChooser("files").fileNameTextBox().setText(svg.toString());
        on.frame().fileChooser("files").approve();

        on.until("the file is written", () -> Files.exists(svg) && svg.toFile().length() > 10_000);
        String text = Files.readString(svg, StandardCharsets.UTF_8);
        assertThat(text).contains("24.5 m").contains("</svg>");
    }

    private void undoGivesTheVeryFirstDrawing() {
        on.frame().robot().focusAndWaitForFocusGain(on.canvas());
        for (int i = 0; i < 20 && on.state().undo() != null; i++) {
            on.ctrl(KeyEvent.VK_Z);
        }

        on.until(
                "nothing to undo", () -> on.state().undo() == null && on.state().fresh());
        assertThat(Same.object(on.state().drawing(), start)).isTrue();
        assertThat(on.state().dirty()).isFalse();
    }
}
