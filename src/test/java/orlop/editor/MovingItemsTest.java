package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.layout.Rect;
import orlop.scene.Role;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneItem;
import orlop.scene.SceneRequest;
import orlop.study.Study;

/** What is painted over a sheet while something is dragged that is too much to be laid out at every step. */
class MovingItemsTest {
    private static final int PX_PER_MM = 4;

    private final Drawing d = TestBoat.drawing();
    private final Scene scene =
            SceneBuilder.bundled().build(SceneRequest.screen(d, Study.of(d).governing(), List.of(), "1"));

    private int ink(Set<String> dragged, double dx, double dy, Rect where) {
        BufferedImage sheet = new BufferedImage(420 * PX_PER_MM, 297 * PX_PER_MM, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = sheet.createGraphics();
        g.scale(PX_PER_MM, PX_PER_MM);
        new MovingItems(d, scene, dragged).paint(g, dx, dy, 1.0 / PX_PER_MM);
        g.dispose();
        int ink = 0;
        for (int x = (int) (where.minX() * PX_PER_MM); x < where.maxX() * PX_PER_MM; x++) {
            for (int y = (int) (where.minY() * PX_PER_MM); y < where.maxY() * PX_PER_MM; y++) {
                ink += sheet.getRGB(x, y) >>> 24 > 0 ? 1 : 0;
            }
        }
        return ink;
    }

    private Rect label(String cable) {
        return scene.item(Role.LABEL, cable).map(SceneItem::bounds).orElseThrow();
    }

    @Test
    void the_text_of_a_cable_follows_what_it_hangs_on_half_as_far() {
        assertThat(d.cables().require("W4").from().component()).isEqualTo("GA1");

        assertThat(ink(Set.of("GA1"), 0, -30, label("W4").moved(0, -15))).isGreaterThan(200);
        assertThat(ink(Set.of("GB1"), 0, -30, label("W4").moved(0, -15))).isZero();
    }

    @Test
    void a_cable_between_two_that_are_dragged_goes_with_them_as_it_is() {
        assertThat(ink(Set.of("GA1", "FC2"), 100, 0, label("W4").moved(100, 0))).isGreaterThan(200);
    }
}
