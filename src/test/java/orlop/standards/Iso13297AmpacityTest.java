package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static orlop.standards.Situations.alone;
import static orlop.standards.Situations.at;
import static orlop.standards.Situations.carries;
import static orlop.standards.Situations.reason;

import org.junit.jupiter.api.Test;

/** The table is from memory: these tests hold its marks and limits, and its distance from the public table. */
class Iso13297AmpacityTest {
    private final Ampacity iso = RuleSets.published().get("iso13297").ampacity();

    @Test
    void every_value_is_marked_as_from_memory() {
        for (double area : iso.areasMm2()) {
            assertThat(carries(iso.of(alone(area, 105))).provenance()).isEqualTo(Provenance.MEMORY);
        }
    }

    @Test
    void the_60_degree_column_is_shown_but_may_not_govern() {
        AmpacityResult.Carries read = carries(iso.of(alone(6, 60)));

        assertThat(read.amps()).isEqualTo(29);
        assertThat(read.mayGovern()).isFalse();
        assertThat(read.doubts()).containsExactly(AmpacityResult.Doubt.INSULATION_COLUMN_UNCHECKED);
        assertThat(carries(iso.of(alone(6, 69))).mayGovern()).isFalse();
        assertThat(carries(iso.of(alone(6, 70))).mayGovern()).isTrue();
    }

    @Test
    void engine_space_factors_are_shown_but_may_not_govern() {
        AmpacityResult.Carries read = carries(iso.of(at(6, 105, 1, 30, true)));

        assertThat(read.amps()).isCloseTo(60 * 0.86, within(1e-9));
        assertThat(read.doubts()).containsExactly(AmpacityResult.Doubt.ENGINE_SPACE_FACTOR_UNCHECKED);
        assertThat(carries(iso.of(at(6, 200, 1, 30, true))).mayGovern()).isFalse();
        assertThat(carries(iso.of(at(6, 105, 1, 80, true))).mayGovern()).isFalse();
    }

    @Test
    void insulation_of_60_degrees_is_not_permitted_in_engine_spaces() {
        assertThat(reason(iso, at(6, 60, 1, 30, true))).isEqualTo(AmpacityResult.Reason.NOT_PERMITTED_IN_ENGINE_SPACE);
    }

    @Test
    void three_conductors_together_need_no_factor_and_four_do() {
        assertThat(carries(iso.of(at(6, 105, 1, 30, false))).totalFactor()).isEqualTo(1);
        assertThat(carries(iso.of(at(6, 105, 2, 30, false))).totalFactor()).isCloseTo(0.7, within(1e-12));
    }

    /** Against 33 CFR 183.425 (seen), by area: the 105 °C column stays between −20 and +20 % of the row below. */
    @Test
    void the_105_degree_column_is_of_the_size_of_the_public_table() {
        Ampacity abyc = RuleSets.published().get("abyc").ampacity();
        for (double area : iso.areasMm2()) {
            if (area >= 2.5 && area <= 95) {
                double perMm2Iso = carries(iso.of(alone(area, 105))).amps() / Math.pow(area, 0.625);
                AmpacityResult.Carries row = carries(abyc.of(alone(area, 105)));
                double rowMm2 = AwgSizes.published()
                        .parse(row.cell().row())
                        .orElseThrow()
                        .areaMm2()
                        .value();
                double perMm2Abyc = row.amps() / Math.pow(rowMm2, 0.625);
                assertThat(perMm2Iso / perMm2Abyc).as(area + " mm²").isBetween(0.8, 1.2);
            }
        }
    }
}
