package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AwgSizesTest {
    private final AwgSizes sizes = AwgSizes.published();

    /** Never rounded up: 6 mm² is thicker than AWG 10 (5.26) and thinner than AWG 8 (8.37). */
    @ParameterizedTest
    @CsvSource({
        "0.5,< AWG 18",
        "0.82,AWG 18",
        "1,> AWG 18",
        "2.08,AWG 14",
        "2.5,> AWG 14",
        "5.26,AWG 10",
        "6,> AWG 10",
        "16,> AWG 6",
        "67.4,AWG 2/0",
        "70,> AWG 2/0",
        "150,> AWG 4/0"
    })
    void the_size_beside_an_area_is_never_rounded_up(double areaMm2, String shown) {
        assertThat(sizes.besideMm2(areaMm2)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"6,8", "5.26,10", "2.5,12", "70,3/0"})
    void the_size_to_buy_in_place_of_an_area_is_not_thinner(double areaMm2, String name) {
        assertThat(sizes.thinnestNotBelow(areaMm2).orElseThrow().name()).isEqualTo(name);
    }

    @Test
    void nothing_is_thick_enough_beyond_the_table() {
        assertThat(sizes.thinnestNotBelow(120)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"AWG 10,10", "awg10,10", "#8,8", "2/0,2/0", "00,2/0", "AWG 0,1/0", " AWG 4/0 ,4/0", "AWG #2,2"})
    void sizes_are_read_as_people_write_them(String text, String name) {
        assertThat(sizes.parse(text).orElseThrow().name()).isEqualTo(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"10", "10 mm²", "AWG 40", "AWG", "5/0", "", "AWG 2.5"})
    void what_is_no_size_or_could_mean_mm2_is_not_read(String text) {
        assertThat(sizes.parse(text)).isEmpty();
    }

    /** ASTM B258: the gauge is a geometric series, 4/0 being 0.46 in and 36 being 0.005 in. */
    @Test
    void areas_follow_the_definition_of_the_gauge() {
        AwgSize ten = sizes.parse("AWG 10").orElseThrow();
        double diameterMm = 0.127 * Math.pow(92, (36 - 10) / 39.0);

        assertThat(ten.areaMm2().value()).isCloseTo(Conductors.roundAreaMm2(diameterMm), within(0.0005));
        assertThat(sizes.parse("4/0").orElseThrow().areaMm2().value())
                .isCloseTo(Conductors.roundAreaMm2(0.46 * 25.4), within(0.0005));
    }

    @Test
    void areas_grow_and_resistances_fall_along_the_gauge() {
        double area = 0;
        double ohm = Double.POSITIVE_INFINITY;
        for (AwgSize size : sizes.traded()) {
            assertThat(size.areaMm2().value()).isGreaterThan(area);
            assertThat(size.r20PlainOhmPerKm().orElseThrow().value()).isLessThan(ohm);
            assertThat(size.r20TinnedOhmPerKm().orElseThrow().value())
                    .isGreaterThan(size.r20PlainOhmPerKm().orElseThrow().value());
            area = size.areaMm2().value();
            ohm = size.r20PlainOhmPerKm().orElseThrow().value();
        }
        assertThat(sizes.traded()).hasSize(15);
        assertThat(sizes.all()).hasSize(22);
    }
}
