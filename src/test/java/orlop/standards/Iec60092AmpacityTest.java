package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static orlop.standards.Situations.amps;
import static orlop.standards.Situations.at;
import static orlop.standards.Situations.carries;
import static orlop.standards.Situations.reason;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Iec60092AmpacityTest {
    private final Ampacity ship = RuleSets.published().get("iec60092").ampacity();

    /** Class-society rules, current carrying capacity of cables at 45 °C, 85 °C conductor (seen). */
    @ParameterizedTest
    @CsvSource({"1,16", "2.5,28", "10,67", "35,145", "120,320"})
    void single_cores_at_45_degrees_carry_what_is_printed(double areaMm2, double amps) {
        AmpacityResult.Carries read = carries(ship.of(at(areaMm2, 85, 6, 45, false)));

        assertThat(read.amps()).isEqualTo(amps);
        assertThat(read.provenance()).isEqualTo(Provenance.SEEN);
    }

    /** IEC 60092-352 clause 6: 0.85 for two cores, 0.70 for three and four (seen). */
    @ParameterizedTest
    @CsvSource({"1,1", "2,0.85", "3,0.7", "4,0.7"})
    void loaded_cores_in_one_sheath_have_their_factor(int loaded, double factor) {
        CableSituation s = new CableSituation(10, 85, Laying.FREE_AIR, Construction.MULTICORE, loaded, 1, 45, false);

        assertThat(amps(ship, s)).isCloseTo(67 * factor, within(1e-9));
    }

    @Test
    void more_than_six_bunched_cables_have_theirs() {
        assertThat(amps(ship, at(10, 85, 7, 45, false))).isCloseTo(67 * 0.85, within(1e-9));
    }

    /** Printed at 35 and 60 °C for 85 °C conductors: 1.12 and 0.79 (seen). */
    @Test
    void ambient_factors_count_from_45_degrees() {
        assertThat(carries(ship.of(at(10, 85, 1, 35, false))).totalFactor()).isEqualTo(1.12, within(1e-12));
        assertThat(carries(ship.of(at(10, 85, 1, 60, false))).totalFactor()).isEqualTo(0.79, within(1e-12));
    }

    @Test
    void an_engine_space_earns_nothing_for_cooler_air() {
        assertThat(carries(ship.of(at(10, 85, 1, 30, true))).totalFactor()).isEqualTo(1);
    }

    @Test
    void the_95_degree_column_ends_at_2_5_mm2_and_the_next_one_goes_on() {
        assertThat(carries(ship.of(at(2.5, 95, 1, 45, false))).cell().column()).startsWith("95 °C");
        assertThat(carries(ship.of(at(4, 95, 1, 45, false))).cell().column()).startsWith("90 °C");
    }

    @Test
    void there_is_no_value_below_1_mm2() {
        assertThat(reason(ship, at(0.75, 85, 1, 45, false))).isEqualTo(AmpacityResult.Reason.AREA_BELOW_TABLE);
    }
}
