package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConductorsTest {
    private final Conductors conductors = Conductors.published();

    private double r20(double areaMm2, ConductorClass strands, Finish finish) {
        return conductors.r20OhmPerKm(areaMm2, strands, finish).value();
    }

    /** R01: IEC 60228:2004 class 5 plain, as printed in three copies that agree. */
    @Test
    void class_5_plain_is_exactly_as_iec_60228_prints_it() {
        PublishedCase.numbers(PublishedCase.of("R01").expected()).forEach((area, ohmPerKm) -> {
            Sourced read = conductors.r20OhmPerKm(Double.parseDouble(area), ConductorClass.CLASS_5, Finish.PLAIN);
            assertThat(read.value()).as(area + " mm²").isEqualTo(ohmPerKm);
            assertThat(read.provenance()).isEqualTo(Provenance.SEEN);
        });
    }

    /** R03: J. O. Bird, Electrical Circuit Theory and Technology, chapter 3, example 4. */
    @Test
    void resistance_follows_from_resistivity_length_and_area() {
        PublishedCase c = PublishedCase.of("R03");
        double ohm = Conductors.resistanceOhm(
                c.inputs().get("rho_ohm_m").asDouble(),
                c.inputs().get("length_m").asDouble(),
                c.inputs().get("area_mm2").asDouble());

        assertThat(ohm)
                .isCloseTo(
                        c.expected().get("r_ohm").asDouble(),
                        within(c.tolerance().asDouble()));
    }

    /** R04: J. O. Bird, Electrical Circuit Theory and Technology, chapter 3, example 7. */
    @Test
    void a_round_wire_has_the_area_of_its_circle() {
        PublishedCase c = PublishedCase.of("R04");
        double areaMm2 = Conductors.roundAreaMm2(c.inputs().get("diameter_mm").asDouble());
        double ohm = Conductors.resistanceOhm(
                c.inputs().get("rho_ohm_m").asDouble(),
                c.inputs().get("length_m").asDouble(),
                areaMm2);

        assertThat(ohm)
                .isCloseTo(
                        c.expected().get("r_ohm").asDouble(),
                        within(c.tolerance().asDouble()));
    }

    /** R05: J. O. Bird, Electrical Circuit Theory and Technology, chapter 3, example 11 (its own coefficient). */
    @Test
    void resistance_grows_with_temperature_from_20_degrees() {
        PublishedCase c = PublishedCase.of("R05");
        double ohm = Conductors.resistanceAtOhm(
                c.inputs().get("r20_ohm").asDouble(),
                c.inputs().get("temp_c").asDouble(),
                c.inputs().get("alpha20").asDouble());

        assertThat(ohm)
                .isCloseTo(
                        c.expected().get("r_ohm").asDouble(),
                        within(c.tolerance().asDouble()));
    }

    /** R08: IEC 60228:2004 temperature correction table, kt = 250/(230 + T). */
    @Test
    void the_factor_to_20_degrees_is_that_of_iec_60228() {
        PublishedCase c = PublishedCase.of("R08");
        PublishedCase.numbers(c.expected().get("kt"))
                .forEach((temperature, kt) -> assertThat(Conductors.factorTo20C(Double.parseDouble(temperature)))
                        .isCloseTo(kt, within(c.tolerance().asDouble())));
    }

    /** R08's note: with 0.00393 the factor from 70 °C is 0.8358, not 0.833. */
    @Test
    void our_coefficient_differs_from_the_rounded_one_of_iec_60228_as_its_note_says() {
        assertThat(1 / Conductors.resistanceAtOhm(1, 70)).isCloseTo(0.8358, within(0.00005));
    }

    /** Physics: tin resists more than copper; thicker conductors resist less. */
    @ParameterizedTest
    @EnumSource(ConductorClass.class)
    void resistance_falls_with_area_and_is_higher_tinned(ConductorClass strands) {
        double thinner = Double.POSITIVE_INFINITY;
        for (double area = 0.3; area < 400; area *= 1.02) {
            double plain = r20(area, strands, Finish.PLAIN);
            assertThat(plain).as(area + " mm²").isLessThan(thinner);
            assertThat(r20(area, strands, Finish.TINNED)).isGreaterThan(plain);
            thinner = plain;
        }
    }

    @Test
    void an_area_between_two_standard_ones_is_derived_from_both() {
        Sourced between = conductors.r20OhmPerKm(5, ConductorClass.CLASS_5, Finish.PLAIN);

        // By hand: 4 × 4.95 = 19.8 and 6 × 3.30 = 19.8 Ω·mm²/km, so 19.8 / 5.
        assertThat(between.value()).isCloseTo(3.96, within(1e-9));
        assertThat(between.provenance()).isEqualTo(Provenance.DERIVED);
        assertThat(between.source()).contains("between 4.0 and 6.0 mm²");
    }

    /** Hand-book AWG figures (NEC chapter 9 table 8) lie at most 12 % below the highest ones of IEC 60228 class 2. */
    @Test
    void hand_book_resistance_of_awg_sizes_lies_just_below_the_highest_permitted() {
        for (AwgSize size : AwgSizes.published().traded()) {
            double highest = r20(size.areaMm2().value(), ConductorClass.CLASS_2, Finish.PLAIN);
            double handBook = size.r20PlainOhmPerKm().orElseThrow().value();
            assertThat(handBook / highest).as(size.label()).isBetween(0.88, 1.01);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void an_impossible_area_is_refused(double areaMm2) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> conductors.r20OhmPerKm(areaMm2, ConductorClass.CLASS_5, Finish.PLAIN))
                .withMessageContaining("areaMm2");
    }

    @Test
    void standard_areas_are_those_of_iec_60228() {
        assertThat(conductors.standardAreasMm2())
                .containsExactly(
                        0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0, 120.0, 150.0,
                        185.0, 240.0, 300.0);
    }
}
