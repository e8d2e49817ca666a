package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Words;

/** What people type on boats of both sides of the ocean: common practice, no source, save where one is named. */
class NumberInputTest {
    private final Locale before = Locale.getDefault();

    @AfterEach
    void giveTheLanguageBack() {
        Locale.setDefault(before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2,5      | areaMm2  | 2.5",
                "2.5      | areaMm2  | 2.5",
                "2.5 mm2  | areaMm2  | 2.5",
                "2,5mm²   | areaMm2  | 2.5",
                "16 MM2   | areaMm2  | 16",
                "150W     | powerW   | 150",
                "1.2 kW   | powerW   | 1200",
                "1,2 KW   | powerW   | 1200",
                "1.500    | lengthM  | 1.5",
                "1,500    | lengthM  | 1.5",
                "14 m     | lengthM  | 14",
                "350 mm   | lengthM  | 0.35",
                ".5       | lengthM  | 0.5",
                "5.       | lengthM  | 5",
                "0,35 mΩ  | resistanceOhm | 0.00035",
                "0.35 mohm| resistanceOhm | 0.00035",
                "85 %     | efficiency | 0.85",
                "0.85     | efficiency | 0.85",
                "3 %      | dropPercent | 3",
                "30 mA    | residualMilliA | 30",
                "0.03 A   | residualMilliA | 30",
                "6 kA     | breakingKa | 6",
                "6000 A   | breakingKa | 6",
                "8 kVA    | ratedKva | 8",
                "−20      | ambientC | -20",
                "-20 °C   | ambientC | -20",
                "230Ah    | capacityAh | 230",
                "-0.3 %/K | voltagePercentPerK | -0.3",
            })
    void a_number_is_read_as_people_type_it(String typed, String field, double value) {
        NumberInput.Reading r = NumberInput.read(typed, Measure.ofField(field));

        assertThat(r).isInstanceOf(NumberInput.Value.class);
        assertThat(((NumberInput.Value) r).value()).isEqualTo(value);
    }

    /** Areas of ASTM B258, as printed in NEC chapter 9 table 8 (from memory): 5.261, 3.31, 21.15, 53.49, 67.43, 107.2. */
    @ParameterizedTest
    @CsvSource({
        "AWG 10, 5.261",
        "awg12, 3.31",
        "4 AWG, 21.15",
        "AWG 1/0, 53.49",
        "2/0 awg, 67.43",
        "AWG #4/0, 107.2",
    })
    void american_gauges_are_read_as_their_area(String typed, double areaMm2) {
        NumberInput.Reading r = NumberInput.read(typed, Measure.SQUARE_MILLIMETRE);

        assertThat(r).isInstanceOf(NumberInput.Value.class);
        assertThat(((NumberInput.Value) r).value()).isCloseTo(areaMm2, within(areaMm2 * 0.001));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.234,5", "1,234.5", "1 000", "1'000", "1\u00a0000", "1,2,3", "1.000.000", "2_500"})
    void what_parts_thousands_is_refused(String typed) {
        assertThat(reason(typed, "powerW")).contains("two ways");
    }

    @ParameterizedTest
    @ValueSource(strings = {"two", "-", ",", "kW", "NaN", "Infinity", "AWG 10", "AWG 77"})
    void what_is_no_number_is_refused(String typed) {
        assertThat(reason(typed, "powerW")).contains("no number");
    }

    @ParameterizedTest
    @CsvSource({"5 V, powerW", "5 mm, areaMm2", "1e3, powerW", "5 kW, lengthM"})
    void a_unit_that_does_not_belong_is_refused_with_those_that_do(String typed, String field) {
        assertThat(reason(typed, field)).contains(Measure.ofField(field).signs().get(0));
    }

    @Test
    void a_blank_field_is_nothing_and_no_error() {
        assertThat(NumberInput.read(" \u00a0", Measure.METRE)).isEqualTo(new NumberInput.Nothing());
    }

    @Test
    void what_was_understood_is_shown_with_its_unit() {
        NumberInput.Value v = (NumberInput.Value) NumberInput.read("1.500", Measure.METRE);

        assertThat(Words.english().text(v.understood())).isEqualTo("1.5 m");
    }

    @Test
    void the_language_of_the_machine_changes_nothing() {
        Locale.setDefault(Locale.forLanguageTag("de-DE"));

        assertThat(((NumberInput.Value) NumberInput.read("1.500", Measure.METRE)).value())
                .isEqualTo(1.5);
        assertThat(NumberInput.typed(0.00035, Measure.OHM)).isEqualTo("0.00035 Ω");
    }

    @Test
    void what_is_shown_for_editing_reads_back_to_the_very_value() {
        for (double v : new double[] {0, 2.5, 1.0 / 3, 1e-7, 123456.789, 5.2610}) {
            NumberInput.Reading r = NumberInput.read(NumberInput.typed(v, Measure.OHM), Measure.OHM);

            assertThat(((NumberInput.Value) r).value()).isEqualTo(v);
        }
    }

    private static String reason(String typed, String field) {
        NumberInput.Reading r = NumberInput.read(typed, Measure.ofField(field));
        assertThat(r).isInstanceOf(NumberInput.Refused.class);
        return Words.english().text(((NumberInput.Refused) r).reason());
    }
}
