package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static orlop.standards.Situations.alone;
import static orlop.standards.Situations.amps;
import static orlop.standards.Situations.at;
import static orlop.standards.Situations.carries;
import static orlop.standards.Situations.reason;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AbycAmpacityTest {
    private final Ampacity abyc = RuleSets.published().get("abyc").ampacity();

    private static double areaMm2(String awg) {
        return AwgSizes.published().parse("AWG " + awg).orElseThrow().areaMm2().value();
    }

    /** A01: 33 CFR 183.425 Table 5, 30 °C outside engine spaces, digit by digit. */
    @Test
    void amperes_are_exactly_those_of_33_cfr_183_425() {
        PublishedCase.of("A01")
                .expected()
                .properties()
                .forEach(row -> PublishedCase.numbers(row.getValue()).forEach((column, amps) -> {
                    CableSituation s = alone(areaMm2(row.getKey()), Double.parseDouble(column));
                    AmpacityResult.Carries read = carries(abyc.of(s));
                    assertThat(read.amps())
                            .as("AWG " + row.getKey() + ", " + column)
                            .isEqualTo(amps);
                    assertThat(read.provenance()).isEqualTo(Provenance.SEEN);
                    assertThat(read.mayGovern()).isTrue();
                }));
    }

    /** A03: the same table's engine-space factor at 105 °C (0.85; another recollection says 0.86: within 0.5 A). */
    @Test
    void engine_spaces_take_the_tables_own_factor() {
        PublishedCase c = PublishedCase.of("A03");
        double toleranceA = c.tolerance().get("a").asDouble();
        PublishedCase.numbers(c.expected().get("inside_a")).forEach((awg, inside) -> {
            AmpacityResult.Carries read = carries(abyc.of(at(areaMm2(awg), 105, 1, 30, true)));
            assertThat(read.amps()).as("AWG " + awg).isCloseTo(inside, within(toleranceA));
            assertThat(read.factors()).singleElement().satisfies(f -> {
                assertThat(f.kind()).isEqualTo(CorrectionFactor.Kind.ENGINE_SPACE);
                assertThat(f.factor().value())
                        .isCloseTo(c.inputs().get("factor_105c").asDouble(), within(0.01));
                assertThat(f.factor().provenance()).isEqualTo(Provenance.SEEN);
            });
        });
    }

    /** An area in mm² reads the largest row that is not above it; areas of AWG written with three digits are that row. */
    @ParameterizedTest
    @CsvSource({"1,AWG 18", "2.5,AWG 14", "6,AWG 10", "10,AWG 8", "5.26,AWG 10", "2.08,AWG 14", "300,AWG 4/0"})
    void an_area_in_mm2_is_never_rounded_up_to_a_row(double areaMm2, String row) {
        assertThat(carries(abyc.of(alone(areaMm2, 105))).cell().row()).isEqualTo(row);
    }

    @ParameterizedTest
    @CsvSource({"60,60 °C", "70,60 °C", "85,80 °C", "90,90 °C", "104,90 °C", "250,200 °C"})
    void the_column_is_the_greatest_not_above_the_rating(double insulationC, String column) {
        assertThat(carries(abyc.of(alone(16, insulationC))).cell().column()).isEqualTo(column);
    }

    /** By hand: √((105 − 45)/(105 − 30)) = 0.8944; AWG 10 at 105 °C carries 60 A. */
    @Test
    void warmer_air_outside_engine_spaces_is_derived() {
        AmpacityResult.Carries read = carries(abyc.of(at(6, 105, 1, 45, false)));

        assertThat(read.amps()).isCloseTo(60 * 0.8944, within(0.01));
        assertThat(read.provenance()).isEqualTo(Provenance.DERIVED);
    }

    @Test
    void cooler_air_earns_nothing() {
        assertThat(amps(abyc, at(6, 105, 1, 5, false))).isEqualTo(60);
    }

    @Test
    void an_engine_space_hotter_than_50_degrees_is_derived() {
        // By hand: √((105 − 70)/(105 − 30)) = 0.6831, below the printed 0.85.
        assertThat(amps(abyc, at(6, 105, 1, 70, true))).isCloseTo(60 * 0.6831, within(0.01));
    }

    /** ABYC E-11 tables VI-A to VI-E: 1–2, 3, 4–6, 7–24, 25 and more current-carrying conductors (the last from memory). */
    @ParameterizedTest
    @CsvSource({"1,1", "2,0.6", "3,0.6", "4,0.5", "12,0.5", "13,0.4", "400,0.4"})
    void bundled_pairs_count_both_conductors(int circuits, double factor) {
        assertThat(amps(abyc, at(6, 105, circuits, 30, false))).isCloseTo(60 * factor, within(1e-9));
    }

    @Test
    void factors_multiply_and_the_weakest_provenance_counts() {
        AmpacityResult.Carries read = carries(abyc.of(at(6, 105, 13, 30, true)));

        assertThat(read.amps()).isCloseTo(60 * 0.85 * 0.4, within(1e-9));
        assertThat(read.factors()).hasSize(2);
        assertThat(read.provenance()).isEqualTo(Provenance.MEMORY);
    }

    @Test
    void there_is_no_value_below_the_table_or_in_air_too_warm() {
        assertThat(reason(abyc, alone(0.75, 105))).isEqualTo(AmpacityResult.Reason.AREA_BELOW_TABLE);
        assertThat(reason(abyc, alone(6, 55))).isEqualTo(AmpacityResult.Reason.INSULATION_BELOW_TABLE);
        assertThat(reason(abyc, at(6, 60, 1, 60, false))).isEqualTo(AmpacityResult.Reason.AMBIENT_TOO_WARM);
    }
}
