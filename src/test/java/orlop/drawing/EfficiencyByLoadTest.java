package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EfficiencyByLoadTest {
    private static final EfficiencyByLoad SHEET = EfficiencyByLoad.read("10:80 25:88 50:91 100:89");

    /** Straight lines between the steps by hand: 0.80 + 0.08·7.5/15, 0.91 − 0.02·25/50. */
    @ParameterizedTest
    @CsvSource({"0, 0.80", "10, 0.80", "17.5, 0.84", "25, 0.88", "50, 0.91", "75, 0.90", "100, 0.89", "150, 0.89"})
    void it_is_straight_between_the_steps_and_constant_outside(double loadPercent, double efficiency) {
        assertThat(SHEET.at(loadPercent)).isCloseTo(efficiency, within(1e-12));
    }

    @Test
    void what_is_typed_comes_back_and_comma_and_point_are_both_decimal() {
        assertThat(SHEET.toString()).isEqualTo("10:80 25:88 50:91 100:89");
        assertThat(EfficiencyByLoad.read(" 12,5:80,5;50%:91.25% ").toString()).isEqualTo("12.5:80.5 50:91.25");
        assertThat(EfficiencyByLoad.read("12,5:80,5 50:91.25"))
                .isEqualTo(EfficiencyByLoad.of(new double[] {12.5, 0.805}, new double[] {50, 0.9125}));
    }

    @ParameterizedTest
    @ValueSource(strings = {"10", "10:80:5", "a:b", "10:", ":80", "-5:80", "10 80", "1e3:80", "10:80,"})
    void what_is_no_step_is_named(String typed) {
        assertThatThrownBy(() -> EfficiencyByLoad.read(typed))
                .isInstanceOfSatisfying(
                        Checks.OutOfRange.class,
                        e -> assertThat(e.reason().key()).isEqualTo("drawing.range.step"));
    }

    @ParameterizedTest
    @CsvSource({
        "10:0, drawing.range.positive",
        "10:101, drawing.range.between",
        "250:90, drawing.range.between",
        "50:90 50:91, drawing.range.rising",
        "50:90 25:91, drawing.range.rising"
    })
    void what_no_converter_has_is_refused(String typed, String key) {
        assertThatThrownBy(() -> EfficiencyByLoad.read(typed))
                .isInstanceOfSatisfying(
                        Checks.OutOfRange.class,
                        e -> assertThat(e.reason().key()).isEqualTo(key));
    }
}
