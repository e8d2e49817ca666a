package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import orlop.render.PngExport;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;

/** Writes the main sample's sheet to {@code target/gallery/}, for people to look at and for the README. */
class MainSampleGalleryTest {
    private static final Path GALLERY = Path.of("target", "gallery");

    @Test
    void every_finding_of_the_main_sample_has_its_marker_on_the_sheet() throws Exception {
        Opened opened = Opened.mainSample();
        Scene scene = scene(opened);

        assertThat(opened.findings()).hasSizeGreaterThan(2);
        for (int number = 1; number <= opened.findings().size(); number++) {
            assertThat(scene.item(Role.FINDING, Integer.toString(number)))
                    .as("finding %d", number)
                    .isPresent();
        }
    }

    private static Scene scene(Opened opened) throws UserError {
        return SceneBuilder.bundled()
                .build(SceneRequest.paper(
                        opened.drawing(),
                        opened.study().governing(),
                        opened.findings(),
                        opened.sheet(null).id()));
    }

    @Test
    void the_main_sample_is_drawn_for_the_gallery() throws Exception {
        Scene scene = scene(Opened.mainSample());
        Files.createDirectories(GALLERY);
        Files.write(GALLERY.resolve("pilot-cutter.svg"), SvgExport.write(scene, Palette.LIGHT));
        Files.write(GALLERY.resolve("pilot-cutter.png"), PngExport.write(scene, Palette.LIGHT, 100));

        BufferedImage picture = ImageIO.read(GALLERY.resolve("pilot-cutter.png").toFile());
        assertThat(picture.getWidth()).isEqualTo(1654); // A3 lying, 420 mm at 100 dots an inch
        assertThat(picture.getRGB(picture.getWidth() / 2, 5) & 0xffffff).isEqualTo(0xffffff);
    }
}
