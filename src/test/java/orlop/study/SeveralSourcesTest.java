package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Ledger;

/** From which source drops and lengths are reckoned. The figures are worked out beside each network, by Ohm and Kirchhoff. */
@SuppressWarnings("NullAway") // a null fails the test
class SeveralSourcesTest {
    private static final Offset<Double> CLOSE = within(1e-9);

    /** Emfs behind 0.01 Ω each, leads of 0.02 Ω and 0.01 Ω, a load of constant current behind 0.01 Ω. */
    private static Sketch two(double emf1, double emf2, double amps) {
        return Sketch.dc(24)
                .supply("GB1", emf1, 0.01)
                .supply("GB2", emf2, 0.01)
                .bar("MAIN")
                .current("E1", amps)
                .ohm("W1", "GB1.1", "MAIN.a", 0.02)
                .ohm("W2", "MAIN.b", "GB2.1", 0.01)
                .ohm("W3", "MAIN.c", "E1.1", 0.01);
    }

    private static double percent(double volts) {
        return 100 * volts / 24;
    }

    @Test
    void where_two_give_the_drop_is_from_the_one_with_the_higher_voltage() {
        Results r = two(26, 24, 100).study().governing();

        // (26 − v) / 0.03 + (24 − v) / 0.02 = 100: v = 23.6 V, 80 A and 20 A, terminals at 25.2 V and 23.8 V
        assertThat(r.cables().get("W1").currentA()).isCloseTo(80, within(1e-6));
        assertThat(r.components().get("E1").dropFromSourcePercent()).isCloseTo(percent(25.2 - 22.6), CLOSE);
        assertThat(r.components().get("E1").feedingPath()).containsExactly("GB1", "W1", "MAIN", "W3", "E1");
        assertThat(r.cables().get("W1").dropFromSourcePercent()).isCloseTo(percent(25.2 - 23.6), CLOSE);
        assertThat(r.cables().get("W2").dropFromSourcePercent()).isCloseTo(percent(25.2 - 23.6), CLOSE);
        assertThat(r.cables().get("W3").dropFromSourcePercent()).isCloseTo(percent(25.2 - 22.6), CLOSE);
    }

    @Test
    void a_battery_that_is_charged_delivers_nothing() {
        Results r = two(28, 24, 10).study().governing();

        // (28 − v) / 0.03 + (24 − v) / 0.02 = 10: v = 25.48 V, 84 A and −74 A, terminals at 27.16 V and 24.74 V
        assertThat(r.components().get("E1").dropFromSourcePercent()).isCloseTo(percent(27.16 - 25.38), CLOSE);
        assertThat(r.cables().get("W2").dropFromSourcePercent()).isCloseTo(percent(27.16 - 24.74), CLOSE);
    }

    @Test
    void a_source_whose_current_does_not_reach_a_load_does_not_count_for_it() {
        Results r = Sketch.dc(24)
                .supply("GB1", 26, 0.001)
                .supply("GB2", 25, 0.01)
                .bar("ONE")
                .bar("TWO")
                .current("E1", 150)
                .current("E2", 10)
                .ohm("W1", "GB1.1", "ONE.a", 0.02)
                .ohm("W2", "GB2.1", "TWO.a", 0.01)
                .ohm("W3", "ONE.b", "TWO.b", 0.1)
                .ohm("W4", "ONE.c", "E1.1", 0.01)
                .ohm("W5", "TWO.c", "E2.1", 0.01)
                .study()
                .governing();

        // without W3 bar ONE lies at 26 − 150 · 0.021 = 22.85 V, TWO at 25 − 10 · 0.02 = 24.8 V: W3 carries
        // 1.95 / 0.141 A from TWO to ONE, so that nothing of GB1 comes to E2, though its terminal stands higher
        double across = 1.95 / 0.141;
        double terminal = 25 - 0.01 * (10 + across);
        double load = 25 - 0.02 * (10 + across) - 0.1;
        assertThat(r.cables().get("W3").currentA()).isCloseTo(-across, within(1e-9));
        assertThat(r.components().get("E2").dropFromSourcePercent()).isCloseTo(percent(terminal - load), CLOSE);
        assertThat(r.components().get("E1").feedingPath().get(0)).isEqualTo("GB1");
    }

    @Test
    void two_feeders_side_by_side_share_the_current_and_the_shorter_gives_the_length() {
        Results r = Sketch.dc(24)
                .supply("GB1", 24, 0)
                .bar("MAIN")
                .current("E1", 30)
                .cable("W1", "GB1.1", "MAIN.a", 4, 16)
                .cable("W2", "GB1.1", "MAIN.b", 6, 16)
                .cable("W3", "MAIN.c", "E1.1", 2, 16)
                .study()
                .governing();

        double first = r.cables().get("W1").currentA();
        double second = r.cables().get("W2").currentA();
        assertThat(first + second).isCloseTo(30, within(1e-6));
        assertThat(r.cables().get("W1").dropV()).isCloseTo(r.cables().get("W2").dropV(), within(1e-9));
        assertThat(r.cables().get("W2").lengthFromSourceM()).isCloseTo(4, CLOSE);
        assertThat(r.cables().get("W3").lengthFromSourceM()).isCloseTo(6, CLOSE);
        assertThat(r.components().get("E1").dropFromSourcePercent())
                .isCloseTo(
                        percent(r.cables().get("W1").dropV()
                                + r.cables().get("W3").dropV()),
                        within(1e-9));
    }

    @Test
    void round_a_ring_main_each_end_is_reckoned_the_way_its_current_comes() {
        Results r = Sketch.dc(24)
                .supply("GB1", 24, 0)
                .bar("A")
                .bar("B")
                .bar("C")
                .current("E1", 30)
                .link("GB1.1", "A.s")
                .ohm("W1", "A.a", "B.a", 0.01)
                .ohm("W2", "B.b", "C.a", 0.01)
                .ohm("W3", "C.b", "A.b", 0.01)
                .ohm("W4", "B.c", "E1.1", 0.01)
                .study()
                .governing();

        // 20 A by W1, 10 A by W3 and W2: B lies 0.2 V, C 0.1 V below A
        assertThat(r.cables().get("W2").currentA()).isCloseTo(-10, within(1e-9));
        assertThat(r.cables().get("W1").dropFromSourcePercent()).isCloseTo(percent(0.2), CLOSE);
        assertThat(r.cables().get("W2").dropFromSourcePercent()).isCloseTo(percent(0.2), CLOSE);
        assertThat(r.cables().get("W3").dropFromSourcePercent()).isCloseTo(percent(0.1), CLOSE);
        assertThat(r.components().get("E1").dropFromSourcePercent()).isCloseTo(percent(0.5), CLOSE);
    }

    @Test
    void behind_a_cable_of_unknown_length_the_drop_is_not_known_and_the_point_is_there() {
        Sketch s = Sketch.dc(24)
                .supply("GB1", 24, 0.01)
                .bar("MAIN")
                .current("E1", 10)
                .current("E2", 10)
                .cable("W1", "GB1.1", "MAIN.a", 3, 16)
                .cable("W2", "MAIN.b", "E1.1", 5, 4)
                .cable("W3", "MAIN.c", "E2.1", 5, 4);
        s.change(d -> d.with(d.cables().require("W2").withLengthM(null)));
        Results r = s.study().governing();

        assertThat(r.points()).containsKeys("MAIN", "E1", "E2");
        assertThat(r.points().get("MAIN").terminals()).doesNotContain("E1.1");
        assertThat(r.points().get("E1").live()).isTrue();
        assertThat(r.points().get("E1").lengthFromSourceM()).isNull();
        assertThat(r.cables().get("W2").dropV()).isNull();
        assertThat(r.cables().get("W2").dropPercent()).isNull();
        assertThat(r.cables().get("W2").dropFromSourcePercent()).isNull();
        assertThat(r.cables().get("W2").lossW()).isNull();
        assertThat(r.cables().get("W2").currentA()).isCloseTo(10, within(1e-9));
        assertThat(r.components().get("E1").dropFromSourcePercent()).isNull();
        assertThat(r.components().get("E2").dropFromSourcePercent()).isPositive();
        assertThat(r.remarks()).anyMatch(m -> m.item().equals("W2"));
        assertThat(orlop.findings.Checker.check(s.study()))
                .anyMatch(f -> f.rule().equals("no-length") && f.place().item().equals("W2"));
    }

    private static Drawing shuffled(Drawing d, Random random) {
        List<Component> components = new ArrayList<>(d.components().stream().toList());
        List<Cable> cables = new ArrayList<>(d.cables().stream().toList());
        Collections.shuffle(components, random);
        Collections.shuffle(cables, random);
        Drawing shuffled = d.withComponents(Ledger.empty()).withCables(Ledger.empty());
        for (Component c : components) {
            shuffled = shuffled.with(c);
        }
        for (Cable w : cables) {
            shuffled = shuffled.with(w);
        }
        return shuffled;
    }

    /** Ten bars in a chain with rings over it, four batteries of unequal voltage, a load at every bar. */
    private static Sketch grown(Random random) {
        Sketch s = Sketch.dc(24);
        for (int i = 0; i < 10; i++) {
            s.bar("B" + i).current("E" + i, random.nextInt(20));
            s.cable("L" + i, "B" + i + ".e", "E" + i + ".1", 1 + random.nextInt(5), 6);
            if (i > 0) {
                s.cable("C" + i, "B" + (i - 1) + ".o", "B" + i + ".i", 1 + random.nextInt(9), 35);
            }
        }
        for (int i = 0; i < 4; i++) {
            s.supply("G" + i, 24 + random.nextInt(4), 0.005);
            s.cable("S" + i, "G" + i + ".1", "B" + random.nextInt(10) + ".g" + i, 1 + random.nextInt(3), 50);
            s.cable("R" + i, "B" + i + ".r" + i, "B" + (5 + random.nextInt(5)) + ".q" + i, 1 + random.nextInt(9), 25);
        }
        return s;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void drops_and_lengths_do_not_depend_on_the_order_of_the_drawing_and_are_never_negative(int seed) {
        Random random = new Random(seed);
        Drawing d = grown(random).drawing();
        Results a = Study.of(d).governing();
        Results b = Study.of(shuffled(d, random)).governing();

        assertThat(a.converged()).isTrue();
        for (CableResult w : a.cables().values()) {
            CableResult other = b.cables().get(w.id());
            same(w.dropFromSourcePercent(), other.dropFromSourcePercent());
            same(w.lengthFromSourceM(), other.lengthFromSourceM());
        }
        for (ComponentResult c : a.components().values()) {
            same(c.dropFromSourcePercent(), b.components().get(c.id()).dropFromSourcePercent());
        }
        assertThat(a.cables().values()).allMatch(w -> w.dropFromSourcePercent() != null);
    }

    private static void same(@Nullable Double a, @Nullable Double b) {
        if (a == null) {
            assertThat(b).isNull();
            return;
        }
        assertThat(b).isCloseTo(a, within(1e-7));
        assertThat(a).isGreaterThanOrEqualTo(0);
    }
}
