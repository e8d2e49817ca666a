package orlop.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.desk.OwnSymbols;
import orlop.desk.Review;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.scene.Scene;
import orlop.scene.SceneBuilder;
import orlop.scene.SceneRequest;

/** What is painted anew where a sheet has changed must give the picture that painting all of it gives, dot by dot. */
class StaticLayerTest {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 640;

    private final SceneBuilder builder = SceneBuilder.bundled();

    @BeforeAll
    static void look() {
        Look.install(false);
    }

    private Scene scene(Drawing d) {
        Review r = Review.of(d, () -> false);
        return builder.build(SceneRequest.screen(d, r.study().governing(), r.findings(), "1"));
    }

    private static int[] painted(StaticLayer layer, Scene scene, Viewport v, double scale) {
        BufferedImage screen = new BufferedImage(
                (int) Math.ceil(WIDTH * scale), (int) Math.ceil(HEIGHT * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = screen.createGraphics();
        g.scale(scale, scale);
        layer.paint(g, scene, v, false, WIDTH, HEIGHT);
        g.dispose();
        return screen.getRGB(0, 0, screen.getWidth(), screen.getHeight(), null, 0, screen.getWidth());
    }

    private static Drawing edited(Drawing d, Random r, int step) {
        int load = r.nextInt(24);
        String id = "E" + load / 16 + "_" + load % 16;
        Component c = d.components().require(id);
        Cable w = d.cables().stream()
                .filter(x -> x.to().component().equals(id))
                .findFirst()
                .orElseThrow();
        return switch (step % 4) {
            case 0 -> Edits.change(w.withLengthM(1 + 0.1 * r.nextInt(60))).applyTo(d);
            case 1 -> Edits.move(Set.of(id), 2.5 * (r.nextInt(3) - 1), 2.5, "m").applyTo(d);
            case 2 ->
                Edits.change(c.withName(r.nextBoolean() ? "cabin" : "aft")).applyTo(d);
            default -> {
                Place at = Place.at("1", 60 + 5 * r.nextInt(60), 200 + 5 * r.nextInt(20));
                yield d.components().contains("E99")
                        ? Edits.delete(Set.of("E99")).applyTo(d)
                        : Edits.place(Component.of("E99", Kind.MOTOR, at, List.of("24")))
                                .applyTo(d);
            }
        };
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.25, 2})
    void changed_parts_are_painted_as_the_whole_is(double scale) {
        Random random = new Random(7);
        Drawing d = GrownBoat.of(60);
        Scene scene = scene(d);
        List<Viewport> views = List.of(
                Viewport.fitting(scene.widthMm(), scene.heightMm(), WIDTH, HEIGHT),
                Viewport.around(180, 70, 5.3, WIDTH, HEIGHT));
        List<StaticLayer> layers = List.of(new StaticLayer(), new StaticLayer());
        ChangedParts last = new ChangedParts(scene, OwnSymbols.library(), null);
        int partly = 0;
        for (int step = 0; step < 16; step++) {
            for (int v = 0; v < views.size(); v++) {
                int[] kept = painted(layers.get(v), scene, views.get(v), scale);
                assertThat(different(kept, painted(new StaticLayer(), scene, views.get(v), scale)))
                        .as("view " + v + " after edit " + step)
                        .isNull();
            }
            d = edited(d, random, step);
            scene = scene(d);
            ChangedParts now = new ChangedParts(scene, OwnSymbols.library(), last);
            partly += now.changed().filter(p -> !p.isEmpty()).isPresent() ? 1 : 0;
            last = now;
        }
        assertThat(partly).as("edits after which a part is painted").isGreaterThan(12);
    }

    /** The first dot that differs; null if none does. */
    private static @Nullable String different(int[] a, int[] b) {
        for (int i = 0; i < a.length; i++) {
            if (a[i] != b[i]) {
                return i + ": " + Integer.toHexString(a[i]) + " instead of " + Integer.toHexString(b[i]);
            }
        }
        return null;
    }
}
