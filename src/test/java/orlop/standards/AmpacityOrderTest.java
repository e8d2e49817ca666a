package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static orlop.standards.Situations.amps;
import static orlop.standards.Situations.at;
import static orlop.standards.Situations.carries;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What any ampacity table must hold, whatever its figures: physics, and the marks of its sources. */
class AmpacityOrderTest {
    private static final double[] INSULATIONS_C = {70, 75, 80, 85, 90, 105};

    static Stream<RuleSet> ruleSets() {
        return RuleSets.published().all().stream();
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void a_thicker_conductor_carries_more(RuleSet rules) {
        for (double insulationC : INSULATIONS_C) {
            for (Laying laying : Laying.values()) {
                for (Construction construction : Construction.values()) {
                    double thinner = 0;
                    for (double area : rules.standardAreasMm2()) {
                        CableSituation s = new CableSituation(area, insulationC, laying, construction, 2, 1, 30, false);
                        double amps = amps(rules.ampacity(), s);
                        assertThat(amps).as(s.toString()).isGreaterThan(thinner);
                        thinner = amps;
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void warmer_air_more_circuits_and_engine_spaces_never_help(RuleSet rules) {
        Ampacity ampacity = rules.ampacity();
        for (double insulationC : INSULATIONS_C) {
            for (boolean engineSpace : new boolean[] {false, true}) {
                double cooler = Double.POSITIVE_INFINITY;
                for (double ambientC = 0; ambientC < 60; ambientC += 0.5) {
                    double amps = amps(ampacity, at(10, insulationC, 1, ambientC, engineSpace));
                    assertThat(amps).as(insulationC + " °C in " + ambientC).isLessThanOrEqualTo(cooler);
                    cooler = amps;
                }
            }
            // Printed engine-space factors belong to 50 °C: compared up to 45 °C only.
            for (double ambientC = 0; ambientC <= 45; ambientC += 5) {
                assertThat(amps(ampacity, at(10, insulationC, 1, ambientC, true)))
                        .isLessThanOrEqualTo(amps(ampacity, at(10, insulationC, 1, ambientC, false)));
            }
            double fewer = Double.POSITIVE_INFINITY;
            for (int circuits = 1; circuits <= 20; circuits++) {
                double amps = amps(ampacity, at(10, insulationC, circuits, 30, false));
                assertThat(amps).isLessThanOrEqualTo(fewer);
                fewer = amps;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void better_insulation_never_carries_less(RuleSet rules) {
        for (double area : rules.standardAreasMm2()) {
            double worse = 0;
            for (double insulationC = 70; insulationC <= 220; insulationC += 5) {
                double amps = amps(rules.ampacity(), at(area, insulationC, 1, 30, false));
                assertThat(amps).as(area + " mm² at " + insulationC).isGreaterThanOrEqualTo(worse);
                worse = amps;
            }
        }
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void the_result_is_as_weak_as_its_weakest_part(RuleSet rules) {
        AmpacityResult.Carries read = carries(rules.ampacity().of(at(10, 90, 7, 47, false)));

        assertThat(read.factors()).isNotEmpty();
        assertThat(read.cell().source()).isNotBlank();
        for (CorrectionFactor f : read.factors()) {
            assertThat(read.provenance()).isGreaterThanOrEqualTo(f.factor().provenance());
            assertThat(f.factor().source()).isNotBlank();
        }
    }
}
