package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import javax.swing.JTree;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.desk.Sample;
import orlop.testing.WindowTest;

/** Writes pictures of the window to {@code target/gallery/}, for people to look at. */
@WindowTest
@Timeout(300)
class GalleryWindowTest {
    private static final Path GALLERY = Path.of("target", "gallery");

    @SuppressWarnings("NullAway.Init") // set before each test
    private OpenWindow on;

    @BeforeEach
    void open(Robot robot) throws Exception {
        Files.createDirectories(GALLERY);
        on = new OpenWindow(robot, Sample.of("pilot-cutter"), new Settings(null));
    }

    @AfterEach
    void close() {
        GuiActionRunner.execute(() -> {
            on.window().frame().dispose();
            Look.install(false);
        });
    }

    private void run(CommandId id) {
        GuiActionRunner.execute(() -> on.window().bench().commands().get(id).run());
        on.robot().waitForIdle();
    }

    private void shot(String name) throws Exception {
        on.robot().waitForIdle();
        Component root = on.window().frame().getRootPane();
        Rectangle at = GuiActionRunner.execute(() -> new Rectangle(root.getLocationOnScreen(), root.getSize()));
        BufferedImage image = new java.awt.Robot().createScreenCapture(at);
        ImageIO.write(image, "png", GALLERY.resolve("window-" + name + ".png").toFile());
        assertThat(colours(image)).as(name).isGreaterThan(40);
    }

    /** An empty window has a handful of colours. */
    private static int colours(BufferedImage image) {
        Set<Integer> seen = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y += 3) {
            for (int x = 0; x < image.getWidth(); x += 3) {
                seen.add(image.getRGB(x, y));
            }
        }
        return seen.size();
    }

    @Test
    void the_main_views_are_drawn_for_the_gallery_in_light_and_dark() throws Exception {
        shot("light");
        GuiActionRunner.execute(() -> on.canvas().session().select(Set.of("MA1")));
        run(CommandId.SHOW_PATH);
        shot("path");
        GuiActionRunner.execute(() -> on.canvas().session().select(Set.of("W8")));
        run(CommandId.SHOW_WORKING);
        Pause.pause(new Condition("workings of W8") {
            @Override
            public boolean test() {
                JTree tree = on.robot().finder().findByName("working", JTree.class);
                return GuiActionRunner.execute(tree::getRowCount) > 5;
            }
        });
        shot("working");
        GuiActionRunner.execute(() -> on.canvas().session().select(Set.of("MA1")));
        run(CommandId.SHOW_FINDINGS);
        shot("findings");
        run(CommandId.SHOW_CONDITIONS);
        shot("conditions");
        run(CommandId.DARK);
        run(CommandId.SHOW_REGISTER);
        shot("dark");
        assertThat(Look.dark()).isTrue();
    }

    /** The scale of a screen is fixed when a program starts: this one has a program of its own. */
    @Test
    void nothing_is_cut_off_at_twice_the_scale() throws Exception {
        Path picture = GALLERY.resolve("window-200-percent.png");
        Files.deleteIfExists(picture);
        Process p = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Dsun.java2d.uiScale=2",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ScaledWindow.class.getName(),
                        picture.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(p.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(p.waitFor(60, TimeUnit.SECONDS)).isTrue();

        assertThat(said.lines().toList()).isEqualTo(List.of("scale 2.0"));
        assertThat(colours(ImageIO.read(picture.toFile()))).isGreaterThan(40);
    }

    /** 1366 by 768 dots at 300 % are 455 by 256: this screen is scaled to be about as wide. Its scale is a whole number. */
    @Test
    void every_menu_box_and_page_lies_within_a_small_screen_and_its_buttons_can_be_pressed() throws Exception {
        int dots = java.awt.Toolkit.getDefaultToolkit().getScreenSize().width;
        Process p = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Dsun.java2d.uiScale=" + Math.round(dots / 455.0),
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SmallScreen.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(p.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(p.waitFor(150, TimeUnit.SECONDS)).isTrue();

        assertThat(said.lines().toList()).hasSize(1).first().asString().startsWith("seen ");
    }
}
