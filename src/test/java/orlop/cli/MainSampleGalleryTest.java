package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.render.PngExport;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;

/** Writes the sheets of the samples to {@code target/gallery/}, for people to look at and for the README. */
class MainSampleGalleryTest {
    private static final Path GALLERY = Path.of("target", "gallery");

    @Test
    void every_finding_of_a_drawing_of_one_sheet_has_its_marker_there() throws Exception {
        Opened opened = Opened.file(Path.of("src/test/resources/orlop/drawings/small-cutter.orlop"), 0);
        Scene scene = scene(opened, null);

        assertThat(opened.findings()).hasSizeGreaterThan(2);
        for (int number = 1; number <= opened.findings().size(); number++) {
            assertThat(scene.item(Role.FINDING, Integer.toString(number)))
                    .as("finding %d", number)
                    .isPresent();
        }
    }

    private static Scene scene(Opened opened, @Nullable String sheet) throws UserError {
        return SceneBuilder.bundled()
                .build(SceneRequest.paper(
                        opened.drawing(),
                        opened.study().governing(),
                        opened.findings(),
                        opened.sheet(sheet).id()));
    }

    @Test
    void the_main_sample_is_drawn_for_the_gallery() throws Exception {
        Scene scene = scene(Opened.mainSample(), null);
        Files.createDirectories(GALLERY);
        Files.write(GALLERY.resolve("pilot-cutter.svg"), SvgExport.write(scene, Palette.LIGHT));
        Files.write(GALLERY.resolve("pilot-cutter.png"), PngExport.write(scene, Palette.LIGHT, 100));

        BufferedImage picture = ImageIO.read(GALLERY.resolve("pilot-cutter.png").toFile());
        assertThat(picture.getWidth()).isEqualTo(1654); // A3 lying, 420 mm at 100 dots an inch
        assertThat(picture.getRGB(picture.getWidth() / 2, 5) & 0xffffff).isEqualTo(0xffffff);
    }

    @ParameterizedTest
    @CsvSource({
        "pilot-cutter, 2",
        "pilot-cutter, 3",
        "pilot-cutter, 4",
        "pilot-cutter-first-sketch, 1",
        "coastal-sloop, 1",
        "harbour-workboat, 1",
        "harbour-workboat, 2"
    })
    void every_other_sheet_is_drawn_for_the_gallery(String sample, String sheet) throws Exception {
        Opened opened = Opened.file(Path.of("sample-drawings", sample + ".orlop"), 0);
        Files.createDirectories(GALLERY);
        Path picture = GALLERY.resolve(sample + "-" + sheet + ".png");
        Files.write(picture, PngExport.write(scene(opened, sheet), Palette.LIGHT, 100));

        assertThat(ImageIO.read(picture.toFile()).getHeight()).isEqualTo(1169); // A3 lying, 297 mm
    }
}
