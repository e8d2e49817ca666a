package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edits;
import orlop.drawing.Ledger;

/** What a person may change without changing the physics. */
@SuppressWarnings("NullAway") // a null fails the test
class InvarianceTest {
    private static Sketch base() {
        return Sketch.dc(24)
                .supply("GB1", 25.6, 0.006)
                .supply("GB2", 25.1, 0.012)
                .fuse("F1", "class-t", 100)
                .bar("MAIN")
                .bar("FORE")
                .power("E1", 300)
                .current("E2", 12)
                .resistance("E3", 4)
                .cable("W1", "GB1.1", "F1.1", 0.5, 35)
                .cable("W2", "F1.2", "MAIN.a", 2, 35)
                .cable("W3", "GB2.1", "MAIN.b", 3, 25)
                .cable("W4", "MAIN.c", "FORE.a", 9, 16)
                .cable("W5", "FORE.b", "E1.1", 4, 6)
                .cable("W6", "FORE.c", "E2.1", 5, 2.5)
                .cable("W7", "MAIN.d", "E3.1", 6, 4);
    }

    private static void same(Results a, Results b, String point) {
        assertThat(b.points().get(point).voltageV())
                .as(point)
                .isCloseTo(a.points().get(point).voltageV(), within(1e-9));
        assertThat(b.points().get(point).fault().maxA())
                .isCloseTo(a.points().get(point).fault().maxA(), within(1e-6));
        assertThat(b.points().get(point).fault().minA())
                .isCloseTo(a.points().get(point).fault().minA(), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void the_order_of_the_drawing_does_not_matter(int seed) {
        Drawing d = base().drawing();
        List<Component> components = new ArrayList<>(d.components().stream().toList());
        List<Cable> cables = new ArrayList<>(d.cables().stream().toList());
        Collections.shuffle(components, new Random(seed));
        Collections.shuffle(cables, new Random(seed + 100));
        Drawing shuffled = d.withComponents(Ledger.empty()).withCables(Ledger.empty());
        for (Component c : components) {
            shuffled = shuffled.with(c);
        }
        for (Cable w : cables) {
            shuffled = shuffled.with(w);
        }
        Results a = Study.of(d).governing();
        Results b = Study.of(shuffled).governing();

        same(a, b, "MAIN");
        same(a, b, "FORE");
        for (String w : a.cables().keySet()) {
            assertThat(b.cables().get(w).currentA()).isCloseTo(a.cables().get(w).currentA(), within(1e-9));
            assertThat(b.cables().get(w).leastAreaMm2())
                    .isEqualTo(a.cables().get(w).leastAreaMm2());
            assertThat(b.cables().get(w).protectedBy())
                    .isEqualTo(a.cables().get(w).protectedBy());
        }
    }

    @Test
    void other_tags_give_the_same_figures() {
        Drawing d = base().drawing();
        Drawing renamed =
                Edits.rename("GB1", "ZZ9").applyTo(Edits.rename("W4", "A1").applyTo(d));
        Results a = Study.of(d).governing();
        Results b = Study.of(renamed).governing();

        same(a, b, "MAIN");
        same(a, b, "FORE");
        assertThat(b.cables().get("A1").currentA())
                .isCloseTo(a.cables().get("W4").currentA(), within(1e-9));
    }

    @Test
    void a_cable_in_two_halves_is_the_same_cable() {
        Drawing d = base().drawing();
        Sketch halves = base();
        Cable w = d.cables().require("W4");
        halves.change(x -> x.withCables(x.cables().without("W4")));
        halves.add("X", orlop.drawing.Kind.JUNCTION.defaults())
                .cable("W4a", w.from().toString(), "X.a", 4.5, 16)
                .cable("W4b", "X.b", w.to().toString(), 4.5, 16);
        Results a = Study.of(d).governing();
        Results b = halves.study().governing();

        same(a, b, "MAIN");
        same(a, b, "FORE");
        assertThat(b.cables().get("W4a").dropV() + b.cables().get("W4b").dropV())
                .isCloseTo(a.cables().get("W4").dropV(), within(1e-9));
    }

    @Test
    void a_cable_drawn_from_the_other_end_only_changes_its_signs() {
        Drawing d = base().drawing();
        Drawing turned = d;
        for (Cable w : d.cables().values()) {
            turned = turned.with(
                    Cable.of(w.id(), w.to(), w.from()).withLengthM(w.lengthM()).withAreaMm2(w.areaMm2()));
        }
        Results a = Study.of(d).governing();
        Results b = Study.of(turned).governing();

        same(a, b, "MAIN");
        same(a, b, "FORE");
        for (String w : a.cables().keySet()) {
            assertThat(b.cables().get(w).currentA())
                    .isCloseTo(-a.cables().get(w).currentA(), within(1e-9));
            assertThat(b.cables().get(w).faultFrom().maxA())
                    .isCloseTo(a.cables().get(w).faultTo().maxA(), within(1e-6));
        }
    }

    @Test
    void currents_through_what_has_no_resistance_are_known() {
        Results r = base().study().governing();

        assertThat(r.components().get("F1").terminals().get(0).currentA())
                .isCloseTo(r.cables().get("W1").currentA(), within(1e-9));
    }
}
