package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {
    @ParameterizedTest
    @CsvSource({
        "12, AMPERE, 12 A",
        "12.34, AMPERE, 12.3 A",
        "12.35, AMPERE, 12.4 A",
        "1234.5, AMPERE, 1235 A",
        "1234.4, AMPERE, 1234 A",
        "0.00012345, OHM, 0.000123 Ω",
        "5.94, PERCENT, 5.9 %",
        "5.95, PERCENT, 6 %",
        "99.6, PERCENT, 100 %",
        "9.96, PERCENT, 10 %",
        "-3.456, VOLT, −3.456 V",
        "24, VOLT, 24 V",
        "2.5, SQUARE_MILLIMETRE, 2.5 mm²",
        "0, METRE, 0 m",
        "-0.0, METRE, 0 m",
        "3.7e-12, AMPERE, 0 A",
        "1e10, WATT, 10000000000 W",
        "123456789, NONE, 123456789",
        "0.1234567, NONE, 0.123457"
    })
    void it_is_shown_with_the_digits_of_its_unit(double value, Unit unit, String shown) {
        assertThat(new Quantity(value, unit).text()).isEqualTo(shown);
    }

    @Test
    void numbers_of_common_size_are_rounded_like_all_others() {
        // The reference is decimal arithmetic of the Java library: BigDecimal with rounding half up.
        List<Unit> units = List.of(Unit.values());
        Random random = new Random(7);
        for (int i = 0; i < 200_000; i++) {
            double digits = random.nextInt(1_000_000) / Math.pow(10, random.nextInt(10));
            double value = i % 2 == 0 ? digits : (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 5);
            Unit unit = units.get(i % units.size());
            if (Math.abs(value) >= 1e-9) {
                BigDecimal exact = BigDecimal.valueOf(value);
                int whole = Math.max(0, exact.precision() - exact.scale());
                BigDecimal r = exact.round(new MathContext(Math.max(unit.digits(), whole), RoundingMode.HALF_UP));
                assertThat(new Quantity(value, unit).number())
                        .as("%s", value)
                        .isEqualTo(r.stripTrailingZeros().toPlainString().replace('-', '−'));
            }
        }
    }

    @Test
    void what_is_no_number_is_a_dash() {
        assertThat(new Quantity(Double.NaN, Unit.AMPERE).text()).isEqualTo("– A");
        assertThat(new Quantity(Double.POSITIVE_INFINITY, Unit.NONE).text()).isEqualTo("–");
    }

    @Test
    void the_language_of_the_machine_changes_nothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(new Quantity(1234.5678, Unit.VOLT).text()).isEqualTo("1235 V");
            assertThat(new Quantity(1.5, Unit.VOLT).text()).isEqualTo("1.5 V");
        } finally {
            Locale.setDefault(before);
        }
    }
}
