package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Distribution;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Kind;
import orlop.drawing.Point;
import orlop.layout.Rect;
import orlop.scene.Scene;

/** Bars pulled at one end: the other end stays, and what hangs on the bar goes on hanging there. */
class BarStretchTest {
    private static final double NEAR_MM = 2;

    /** A bar from x 70 to 130 at y 60, with a lamp below each end. */
    private static Drawing barred(Kind bar) {
        Drawing d = SmallBoat.put(SmallBoat.drawing(), "WC1", bar, 100, 60);
        d = SmallBoat.put(d, "EA2", Kind.LIGHTING, 80, 100);
        d = SmallBoat.put(d, "EA3", Kind.LIGHTING, 120, 100);
        d = SmallBoat.run(d, "W3", "WC1.1", "EA2.1", 3);
        return SmallBoat.run(d, "W4", "WC1.2", "EA3.1", 3);
    }

    private static Rect bar(Drawing d) {
        return Drawn.of(d).bars().stream()
                .filter(b -> b.component().equals("WC1"))
                .findFirst()
                .orElseThrow()
                .rect();
    }

    private static double tap(Drawing d, String cable) {
        return java.util.Objects.requireNonNull(Drawn.of(d).routes().get(cable))
                .points()
                .get(0)
                .xMm();
    }

    private static BarStretch end(Drawing d, double xMm) {
        return BarStretch.at(Drawn.of(d), "WC1", xMm, 60.5, NEAR_MM).orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"BUSBAR", "DISTRIBUTION_BOARD"})
    void an_end_that_is_pulled_out_leaves_the_other_and_the_taps(String kind) {
        Drawing d = barred(Kind.valueOf(kind));

        Drawing longer = end(d, 130).to(171.3, "key").applyTo(d);

        assertThat(bar(longer).minX()).isEqualTo(70);
        assertThat(bar(longer).maxX()).isEqualTo(170);
        assertThat(tap(longer, "W3")).isEqualTo(80);
        assertThat(tap(longer, "W4")).isEqualTo(120);
        assertThat(longer.components().require("WC1").place().at()).isEqualTo(new Point(120, 60));
    }

    @Test
    void the_left_end_goes_to_the_left_and_a_standing_bar_down() {
        Drawing d = barred(Kind.BUSBAR);
        assertThat(bar(end(d, 70).to(30, "key").applyTo(d)).minX()).isEqualTo(30);
        assertThat(bar(end(d, 70).to(30, "key").applyTo(d)).maxX()).isEqualTo(130);

        Drawing alone = SmallBoat.put(SmallBoat.drawing(), "WC1", Kind.BUSBAR, 100, 60);
        var c = alone.components().require("WC1");
        Drawing standing = alone.with(c.withPlace(c.place().withRotationDegree(90)));
        Drawing after = BarStretch.at(Drawn.of(standing), "WC1", 100, 90, NEAR_MM)
                .orElseThrow()
                .to(140, "key")
                .applyTo(standing);
        assertThat(bar(after).minY()).isEqualTo(30);
        assertThat(bar(after).maxY()).isEqualTo(140);
    }

    @Test
    void no_tap_is_left_behind_and_a_bar_without_any_keeps_a_length() {
        Drawing d = barred(Kind.BUSBAR);
        Drawing shorter = end(d, 130).to(75, "key").applyTo(d);
        assertThat(bar(shorter).maxX()).isBetween(120.0, 122.5);
        assertThat(tap(shorter, "W4")).isEqualTo(120);

        Drawing alone = SmallBoat.put(SmallBoat.drawing(), "WC1", Kind.BUSBAR, 100, 60);
        Drawing least = end(alone, 130).to(-500, "key").applyTo(alone);
        assertThat(((Distribution.Busbar) least.components().require("WC1").particulars()).drawnLengthMm())
                .isEqualTo(5);
    }

    @Test
    void only_the_ends_of_a_bar_can_be_pulled() {
        Scene s = Drawn.of(barred(Kind.BUSBAR));
        assertThat(BarStretch.at(s, "WC1", 100, 60, NEAR_MM)).isEmpty();
        assertThat(BarStretch.at(s, "WC1", 130, 66, NEAR_MM)).isEmpty();
        assertThat(BarStretch.at(s, "WC1", 134, 60, NEAR_MM)).isEmpty();
        assertThat(BarStretch.at(s, "GB1", 50, 150, NEAR_MM)).isEmpty();
    }

    @Test
    void a_locked_bar_and_one_that_is_gone_refuse() {
        Drawing d = barred(Kind.BUSBAR);
        BarStretch end = end(d, 130);
        Drawing locked = Locks.set(Set.of("WC1"), true).applyTo(d);

        assertThatThrownBy(() -> end.to(170, "key").applyTo(locked))
                .isInstanceOfSatisfying(
                        Edit.Refusal.class, r -> assertThat(r.reason().key()).isEqualTo("drawing.refuse.locked"));
        assertThatThrownBy(() -> end.to(170, "key").applyTo(SmallBoat.drawing()))
                .isInstanceOfSatisfying(
                        Edit.Refusal.class, r -> assertThat(r.reason().key()).isEqualTo("drawing.refuse.gone"));
    }
}
