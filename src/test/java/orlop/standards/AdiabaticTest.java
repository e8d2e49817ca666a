package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AdiabaticTest {
    private final Adiabatic adiabatic = Adiabatic.published();

    /** K01: IEC 60364-5-54 annex A, IEC 60364-4-43 table 43A. */
    @Test
    void k_follows_from_the_two_temperatures() {
        PublishedCase c = PublishedCase.of("K01");
        for (JsonNode pair : c.inputs().get("pairs_ti_tf_c")) {
            double k = Adiabatic.k(pair.get(0).asDouble(), pair.get(1).asDouble());
            JsonNode expected = c.expected()
                    .get("k")
                    .get(pair.get(0).asInt() + "-" + pair.get(1).asInt());
            assertThat(k)
                    .as(pair.toString())
                    .isCloseTo(
                            expected.asDouble(), within(c.tolerance().get("k").asDouble()));
        }
    }

    /** K01's material constants make the 226 of the formula: √(Qc (β + 20) / ρ20). */
    @Test
    void the_constant_226_follows_from_the_material() {
        JsonNode in = PublishedCase.of("K01").inputs();
        double constant = Math.sqrt(in.get("Qc_J_per_C_mm3").asDouble()
                * (in.get("beta_c").asDouble() + 20)
                / in.get("rho20_ohm_mm").asDouble());

        assertThat(Adiabatic.k(70, 160))
                .isCloseTo(
                        constant * Math.sqrt(Math.log((234.5 + 160) / (234.5 + 70))),
                        within(PublishedCase.of("K01").tolerance().get("k").asDouble()));
    }

    /** K02: S = √(I²t)/k of IEC 60364-5-54 clause 543.1.2. */
    @Test
    void the_least_area_is_that_of_the_adiabatic_formula() {
        PublishedCase c = PublishedCase.of("K02");
        double areaMm2 = Adiabatic.leastAreaMm2(
                c.inputs().get("i_a").asDouble(),
                c.inputs().get("t_s").asDouble(),
                c.inputs().get("k").asDouble());

        assertThat(areaMm2)
                .isCloseTo(
                        c.expected().get("s_mm2").asDouble(),
                        within(c.tolerance().get("mm2").asDouble()));
    }

    /** Every printed k (IEC 60364-4-43 table 43A, 60364-5-54 A.54.2, a ship-cable sheet) is that of the formula. */
    @Test
    void every_printed_k_agrees_with_the_formula() {
        assertThat(adiabatic.insulations()).hasSize(10);
        for (String insulation : adiabatic.insulations()) {
            for (double areaMm2 : new double[] {2.5, 300, 301}) {
                Optional<AdiabaticFactor> printed = adiabatic.factor(insulation, areaMm2);
                boolean beyond = insulation.equals("pvc-105") && areaMm2 > 300;
                assertThat(printed.isPresent()).as(insulation + " " + areaMm2).isEqualTo(!beyond);
                printed.ifPresent(
                        f -> assertThat(f.k().value()).isCloseTo(Adiabatic.k(f.initialC(), f.finalC()), within(1.0)));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"70,35,115", "70,400,103", "90,35,100", "105,35,87.6"})
    void insulation_known_by_its_rating_only_is_taken_as_pvc(double insulationC, double areaMm2, double k) {
        AdiabaticFactor assumed =
                adiabatic.assumedForRating(insulationC, areaMm2).orElseThrow();

        assertThat(assumed.k().value()).isCloseTo(k, within(0.6));
        assertThat(assumed.k().provenance()).isEqualTo(Provenance.ENGINEERING_ESTIMATE);
    }

    @Test
    void unknown_insulation_has_no_k() {
        assertThat(adiabatic.factor("paper", 10)).isEmpty();
        assertThat(adiabatic.assumedForRating(200, 10)).isEmpty();
    }

    @Test
    void impossible_arguments_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Adiabatic.k(160, 160));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Adiabatic.leastAreaMm2(100, 6, 115))
                .withMessageContaining("timeS");
    }
}
