package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Chemistry;
import orlop.drawing.Source;
import orlop.standards.Conductors;

/**
 * Worked examples of textbooks, read in copies. Theraja: B. L. and A. K. Theraja, A Textbook of Electrical
 * Technology, Vol. III, chapter 40. Bird: J. O. Bird, Electrical Circuit Theory and Technology.
 */
@SuppressWarnings("NullAway") // a null fails the test
class PublishedTest {
    private static double volts(Study s, String point) {
        return s.governing().points().get(point).voltageV();
    }

    private static double amps(Study s, String cable) {
        return s.governing().cables().get(cable).currentA();
    }

    /** A feeder from A with loads at distances; a second source at the end if {@code endV} is above 0. */
    private static Study feeder(double startV, double endV, double ohmPerM, double lengthM, double[][] taps) {
        Sketch s = Sketch.dc(startV).supply("A", startV, 0);
        String from = "A.1";
        double at = 0;
        int n = 0;
        for (double[] tap : taps) {
            n++;
            s.bar("T" + n).current("E" + n, tap[1]).link("T" + n + ".load", "E" + n + ".1");
            s.ohm("W" + n, from, "T" + n + ".in", ohmPerM * (tap[0] - at));
            from = "T" + n + ".out";
            at = tap[0];
        }
        if (endV > 0) {
            s.supply("B", endV, 0).ohm("W" + (n + 1), from, "B.1", ohmPerM * (lengthM - at));
        }
        return s.study();
    }

    private static double[][] uniform(double lengthM, double ampsPerM) {
        int taps = 400;
        double[][] t = new double[taps][];
        for (int i = 0; i < taps; i++) {
            t[i] = new double[] {(i + 0.5) * lengthM / taps, ampsPerM * lengthM / taps};
        }
        return t;
    }

    /** V01: Theraja example 40.2: 200 m, 2 A/m, 0.3 Ω/km: 12 V fed from one end, 3 V from both. */
    @Test
    void a_uniformly_loaded_feeder() {
        Study one = feeder(400, 0, 0.3e-3, 200, uniform(200, 2));
        Study both = feeder(400, 400, 0.3e-3, 200, uniform(200, 2));

        assertThat(400 - volts(one, "T400")).isCloseTo(12.0, within(0.01));
        assertThat(400 - volts(both, "T200")).isCloseTo(3.0, within(0.01));
    }

    /** V02: Theraja example 40.3: 116.412 mm² give 10 V of drop; ρ = 0.0178 µΩ·m, go and return. */
    @Test
    void an_area_for_ten_volts_of_drop() {
        double ohmPerM = Conductors.resistanceOhm(1.78e-8, 2, 116.412);
        Study s = feeder(250, 0, ohmPerM, 250, new double[][] {{40, 30}, {100, 40}, {150, 100}, {250, 50}});

        assertThat(250 - volts(s, "T4")).isCloseTo(10.0, within(0.005));
    }

    /** V03: Theraja example 40.6: fed at 200 V from both ends. */
    @Test
    void a_feeder_fed_from_both_ends_with_three_loads() {
        Study s = feeder(200, 200, 0.1e-3, 1750, new double[][] {{500, 50}, {1200, 100}, {1500, 150}});

        assertThat(amps(s, "W1")).isCloseTo(88.6, within(0.1));
        assertThat(-amps(s, "W4")).isCloseTo(211.4, within(0.1));
        assertThat(volts(s, "T1")).isCloseTo(195.6, within(0.05));
        assertThat(volts(s, "T2")).isCloseTo(192.9, within(0.05));
        assertThat(volts(s, "T3")).isCloseTo(194.7, within(0.05));
    }

    /** V04: Theraja example 40.7: the lowest voltage is 246 V at the second load. */
    @Test
    void a_feeder_fed_from_both_ends_with_four_loads() {
        Study s = feeder(250, 250, 0.8e-3, 200, new double[][] {{50, 50}, {75, 40}, {100, 30}, {150, 25}});

        assertThat(volts(s, "T2")).isCloseTo(246.0, within(0.05));
        assertThat(volts(s, "T1")).isGreaterThan(volts(s, "T2"));
        assertThat(volts(s, "T3")).isGreaterThan(volts(s, "T2"));
    }

    /** V06: Theraja example 40.10: fed at 236 V and 237 V. */
    @Test
    void a_feeder_fed_at_different_voltages() {
        Study s = feeder(236, 237, 0.8e-3, 200, new double[][] {{50, 20}, {75, 40}, {100, 25}, {150, 30}});
        double[] sections = {53.75, 33.75, -6.25, -31.25, -61.25};

        for (int i = 0; i < sections.length; i++) {
            assertThat(amps(s, "W" + (i + 1))).isCloseTo(sections[i], within(0.05));
        }
        assertThat(volts(s, "T2")).isCloseTo(233.18, within(0.02));
    }

    /** V08: Theraja example 40.17: a ring fed at 240 V, 0.2 Ω/km each conductor. */
    @Test
    void a_ring() {
        Study s = Sketch.dc(240)
                .supply("A", 240, 0)
                .bar("B")
                .bar("C")
                .bar("D")
                .current("EB", 100)
                .current("EC", 70)
                .current("ED", 50)
                .link("B.e", "EB.1")
                .link("C.e", "EC.1")
                .link("D.e", "ED.1")
                .ohm("AB", "A.1", "B.a", 0.4e-3 * 60)
                .ohm("BC", "B.b", "C.a", 0.4e-3 * 80)
                .ohm("CD", "C.b", "D.a", 0.4e-3 * 90)
                .ohm("DA", "D.b", "A.1", 0.4e-3 * 70)
                .study();

        assertThat(volts(s, "B")).isCloseTo(236.9, within(0.05));
        assertThat(volts(s, "C")).isCloseTo(235.98, within(0.05));
        assertThat(volts(s, "D")).isCloseTo(237.45, within(0.05));
    }

    /** V12: maximum power transfer, E²/4R = 360 W; elementary circuit theory. */
    @ParameterizedTest
    @CsvSource({"100, 11.099019513592784", "300, 8.449489742783179", "359, 6.31622776601684"})
    void a_constant_power_load_near_the_limit(double watts, double expectedV) {
        Study s = Sketch.dc(12)
                .supply("G", 12, 0.1)
                .power("E", watts)
                .link("G.1", "E.1")
                .study();

        assertThat(volts(s, "G")).isCloseTo(expectedV, within(1e-6));
    }

    /** V12, beyond the limit: no operating point, said and not thrown. */
    @Test
    void a_constant_power_load_beyond_the_limit_has_no_operating_point() {
        Study s = Sketch.dc(12)
                .supply("G", 12, 0.1)
                .power("E", 361)
                .link("G.1", "E.1")
                .study();

        assertThat(s.governing().converged()).isFalse();
        assertThat(s.governing().points().get("G").voltageV()).isNull();
        assertThat(s.governing().remarks()).extracting(Remark::kind).contains(Remark.Kind.COLLAPSE);
    }

    /** S06: technical guide on DC distribution: 110 cells of 0.5 mΩ, 240 V: 4.37 kA; four banks 17.5 kA. */
    @Test
    void the_terminal_fault_current_of_a_big_battery() {
        Source.Battery bank = new Source.Battery(Chemistry.FLOODED_LEAD, 1, 1, 500.0, 240.0, 0.055, null, null, 100);
        Study one = Sketch.dc(240).add("GB1", bank).study();
        Sketch four = Sketch.dc(240).bar("BAR");
        for (int i = 1; i <= 4; i++) {
            four.add("GB" + i, bank).link("GB" + i + ".1", "BAR.t" + i);
        }

        assertThat(one.governing().points().get("GB1").fault().maxA()).isCloseTo(4370, within(30.0));
        assertThat(four.study().governing().points().get("BAR").fault().maxA()).isCloseTo(17_500, within(60.0));
    }

    /** B01: Bird chapter 4, example 1: eight cells of 2.2 V and 0.2 Ω in series (17.6 V, 1.6 Ω), in parallel (0.025 Ω). */
    @Test
    void cells_in_series_and_in_parallel() {
        Source.Battery cell = new Source.Battery(Chemistry.UNKNOWN, 1, 1, 1.0, 2.2, 0.2, null, null, 100);
        Sketch series = Sketch.dc(17.6);
        Sketch parallel = Sketch.dc(2.2).bar("BAR");
        for (int i = 1; i <= 8; i++) {
            series.add("GB" + i, cell);
            parallel.add("GB" + i, cell).link("GB" + i + ".1", "BAR.t" + i);
        }
        for (int i = 1; i < 8; i++) {
            series.link("GB" + i + ".2", "GB" + (i + 1) + ".1");
        }
        Study s = series.study();

        assertThat(volts(s, "GB1")).isCloseTo(17.6, within(1e-9));
        assertThat(s.governing().points().get("GB1").fault().maxA()).isCloseTo(17.6 / 1.6, within(1e-9));
        assertThat(parallel.study().governing().points().get("BAR").fault().maxA())
                .isCloseTo(2.2 / 0.025, within(1e-9));
    }

    /** IEC 61660-1 (factors from memory): peak E/(0.9 R_B + R), quasi-steady 0.95·0.9·U/(1.7 R_B + R hot). */
    @Test
    void a_battery_by_the_iec_method() {
        Source.Battery b = new Source.Battery(Chemistry.FLOODED_LEAD, 1, 1, 200.0, null, 0.005, null, null, 80);
        Study s = Sketch.dc(24, "iec60364", orlop.drawing.FaultMethod.IEC)
                .add("GB1", b)
                .power("E1", 10)
                .cable("W1", "GB1.1", "E1.1", 10, 16)
                .study();
        CableResult w = s.governing().cables().get("W1");
        double cold = 2 * 1.21e-3 * 10;

        assertThat(w.faultFrom().maxA()).isCloseTo(1.05 * 24 / (0.9 * 0.005), within(1e-6));
        assertThat(w.faultTo().maxA()).isCloseTo(1.05 * 24 / (0.9 * 0.005 + cold), within(1e-6));
        assertThat(w.faultTo().minA())
                .isCloseTo(0.95 * 0.9 * 24 / (1.7 * 0.005 + cold * (1 + 0.00393 * 70)), within(1e-6));
    }
}
