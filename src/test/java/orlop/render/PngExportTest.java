package orlop.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import orlop.drawing.Point;
import orlop.scene.Ink;
import orlop.scene.Palette;
import orlop.scene.SampleSheet;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;

class PngExportTest {
    private static final Scene SCENE = SceneBuilder.bundled().build(SampleSheet.request());

    @Test
    void the_picture_has_the_size_that_the_resolution_asks_for() throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngExport.write(SCENE, Palette.LIGHT, 50)));

        assertThat(image.getWidth()).isEqualTo(827); // 420 mm / 25.4 × 50
        assertThat(image.getHeight()).isEqualTo(585); // 297 mm / 25.4 × 50
    }

    @Test
    void a_cable_has_the_ink_of_its_system_and_a_dead_one_is_grey() {
        for (Palette palette : new Palette[] {Palette.LIGHT, Palette.DARK}) {
            BufferedImage image = PngExport.image(SCENE, palette, 127); // 5 dots a millimetre

            assertThat(at(image, on("W6"))).isEqualTo(palette.rgb(Ink.SYSTEM_1));
            assertThat(at(image, on("W11"))).isEqualTo(palette.rgb(Ink.SYSTEM_2));
            assertThat(at(image, on("W20"))).isEqualTo(palette.rgb(Ink.DEAD));
            assertThat(at(image, new Point(30, 230))).isEqualTo(palette.rgb(Ink.PAPER));
        }
    }

    @Test
    void a_senseless_resolution_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> PngExport.write(SCENE, Palette.LIGHT, 10_000));
        assertThatIllegalArgumentException().isThrownBy(() -> PngExport.write(SCENE, Palette.LIGHT, Double.NaN));
    }

    private static Point on(String cable) {
        return Objects.requireNonNull(SCENE.routes().get(cable)).at(0.15);
    }

    private static int at(BufferedImage image, Point mm) {
        return image.getRGB((int) (mm.xMm() * 5), (int) (mm.yMm() * 5)) & 0xFFFFFF;
    }
}
