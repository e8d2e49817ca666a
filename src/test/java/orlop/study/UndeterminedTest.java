package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import orlop.drawing.Conversion;
import orlop.drawing.Source;

/** What a drawing leaves open is said, not hidden. */
@SuppressWarnings("NullAway") // a null fails the test
class UndeterminedTest {
    private static java.util.List<String> keys(Study s, String item) {
        return s.governing().remarks().stream()
                .filter(r -> r.item().equals(item))
                .map(r -> r.message().key())
                .toList();
    }

    private static Sketch ring(double ohm) {
        return Sketch.dc(24)
                .supply("G", 24, 0.01)
                .bar("A")
                .bar("B")
                .current("E", 10)
                .link("G.1", "A.g")
                .ohm("W1", "A.1", "B.1", ohm)
                .ohm("W2", "A.2", "B.2", ohm)
                .link("B.e", "E.1");
    }

    @Test
    void two_cables_side_by_side_without_resistance_leave_their_currents_open() {
        Study s = ring(0).study();
        assertThat(s.governing().cables().get("W1").currentA()).isNull();
        assertThat(keys(s, "W1")).contains("study.not-calculated.undivided");
        assertThat(keys(s, "W2")).contains("study.not-calculated.undivided");
    }

    @Test
    void two_equal_cables_share_equally_however_small_their_resistance() {
        for (double ohm : new double[] {1e-3, 1e-7, 1e-9, 1e-15, 1e-300}) {
            Study s = ring(ohm).study();
            assertThat(s.governing().converged()).as("%s ohm", ohm).isTrue();
            assertThat(s.governing().cables().get("W1").currentA()).isCloseTo(5, within(1e-6));
            assertThat(keys(s, "W1")).doesNotContain("study.not-calculated.undivided");
        }
    }

    @Test
    void a_bank_that_is_higher_than_a_converter_holds_feeds_it_and_that_is_said() {
        for (double setV : new double[] {12, 14}) {
            Study s = Sketch.dc(24)
                    .system("12", 12)
                    .supply("G", 24, 0.01)
                    .add("T", new Conversion.PlainConverter(setV, 0.02, 0.9, 0), "24", "12")
                    .add("GB", new Source.Supply(13.0, 0, 0.03, 0, false), "12")
                    .link("G.1", "T.1")
                    .link("T.2", "GB.1")
                    .study();
            double into = (13 - setV) / 0.05;
            assertThat(s.governing().components().get("T").terminals().get(1).currentA())
                    .isCloseTo(-into, within(1e-6));
            assertThat(keys(s, "T").contains("study.not-calculated.fed-back")).isEqualTo(into > 0);
        }
    }

    @Test
    void a_source_of_power_without_a_limit_says_what_it_brings_into_a_fault() {
        Study s = Sketch.dc(24)
                .add("G", new Source.PowerSupply(240, null))
                .supply("GB", 24, 0.01)
                .link("G.1", "GB.1")
                .study();
        assertThat(keys(s, "G")).contains("study.assumed.power-limit");
        // 24 V over 0.01 ohm, and 240 W over 24 V
        assertThat(s.governing().points().get("G").fault().maxA()).isCloseTo(2_410, within(1e-6));
    }

    /** 12 A that are taken lower the voltage; they bring nothing into a fault and take nothing from the highest. */
    @Test
    void what_takes_a_current_brings_none_into_a_fault() {
        Study s = Sketch.dc(24)
                .add("G", new Source.CurrentSupply(-12))
                .supply("GB", 24, 0.01)
                .link("G.1", "GB.1")
                .study();
        FaultRange fault = s.governing().points().get("G").fault();
        assertThat(fault.maxA()).isCloseTo(2_400, within(1e-6));
        assertThat(fault.minA()).isLessThanOrEqualTo(fault.maxA());
    }
}
