package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static orlop.standards.Situations.alone;
import static orlop.standards.Situations.amps;
import static orlop.standards.Situations.at;
import static orlop.standards.Situations.carries;
import static orlop.standards.Situations.laid;
import static orlop.standards.Situations.reason;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class Iec60364AmpacityTest {
    private final Ampacity iec = RuleSets.published().get("iec60364").ampacity();

    /** A04: three loaded PVC cores, method B2, at 30 to 55 °C, as printed in a machine maker's instruction book. */
    @Test
    void three_loaded_pvc_cores_in_conduit_carry_what_is_printed() {
        PublishedCase c = PublishedCase.of("A04");
        double toleranceA = c.tolerance().get("a").asDouble();
        c.expected().properties().forEach(row -> {
            for (int i = 0; i < row.getValue().size(); i++) {
                double ambientC = c.inputs().get("temps_c").get(i).asDouble();
                CableSituation s = new CableSituation(
                        Double.parseDouble(row.getKey()),
                        c.inputs().get("insulation_c").asDouble(),
                        Laying.CONDUIT,
                        Construction.MULTICORE,
                        3,
                        1,
                        ambientC,
                        false);
                assertThat(amps(iec, s))
                        .as(row.getKey() + " mm² at " + ambientC + " °C")
                        .isCloseTo(row.getValue().get(i).asDouble(), within(toleranceA));
            }
        });
    }

    /** A06: T. Linsley, Basic Electrical Installation Work, chapter 14: 32 A at 35 °C needs 10 mm² (46 A in the table). */
    @Test
    void the_design_example_chooses_10_mm2() {
        PublishedCase c = PublishedCase.of("A06");
        double inA = c.inputs().get("in_a").asDouble();
        CableSituation ten =
                new CableSituation(10, 70, Laying.IN_INSULATION, Construction.SINGLE_CORE, 2, 1, 35, false);
        AmpacityResult.Carries read = carries(iec.of(ten));

        assertThat(read.cell().amps())
                .isEqualTo(c.expected().get("chosen_table_a").asDouble());
        assertThat(read.totalFactor()).isEqualTo(c.inputs().get("ca").asDouble());
        assertThat(inA / read.totalFactor())
                .isCloseTo(
                        c.expected().get("it_required_a").asDouble(),
                        within(c.tolerance().get("a").asDouble()));
        double least = iec.areasMm2().stream()
                .filter(a -> amps(iec, ten.withAreaMm2(a)) >= inA)
                .findFirst()
                .orElseThrow();
        assertThat(least).isEqualTo(c.expected().get("chosen_mm2").asDouble());
    }

    /** A08: IEC 60364-5-52 Table B.52.17 item 1 (BS 7671 Table 4C1 row 1). */
    @Test
    void bunched_circuits_take_the_printed_factors() {
        PublishedCase.numbers(PublishedCase.of("A08").expected()).forEach((circuits, factor) -> {
            CableSituation s = new CableSituation(
                    4, 70, Laying.BUNCHED, Construction.SINGLE_CORE, 2, Integer.parseInt(circuits), 30, false);
            assertThat(carries(iec.of(s)).totalFactor()).as(circuits).isCloseTo(factor, within(1e-12));
        });
    }

    /** A09: Table B.52.14 against √((Tc − Ta)/(Tc − 30)), both ways. */
    @Test
    void ambient_factors_are_printed_and_the_formula_reproduces_them() {
        PublishedCase c = PublishedCase.of("A09");
        for (String insulation : new String[] {"pvc", "xlpe"}) {
            double ratingC = c.inputs().get(insulation + "_c").asDouble();
            PublishedCase.numbers(c.expected().get(insulation)).forEach((ambient, factor) -> {
                double ambientC = Double.parseDouble(ambient);
                assertThat(carries(iec.of(at(4, ratingC, 1, ambientC, false))).totalFactor())
                        .as(insulation + " " + ambient)
                        .isCloseTo(factor, within(1e-12));
                assertThat(AmbientFactors.byFormula(ratingC, ambientC, 30).value())
                        .isCloseTo(factor, within(c.tolerance().asDouble()));
            });
        }
    }

    /** The mapping this room documents; figures of tables B.52.2 to B.52.12. */
    @ParameterizedTest
    @CsvSource({
        "FREE_AIR,MULTICORE,2,method E,70",
        "FREE_AIR,SINGLE_CORE,2,method C,63",
        "ON_SURFACE,MULTICORE,2,method C,63",
        "BUNCHED,MULTICORE,3,method C,57",
        "CONDUIT,SINGLE_CORE,2,method B1,57",
        "CONDUIT,MULTICORE,2,method B2,52",
        "IN_INSULATION,SINGLE_CORE,2,method A1,46",
        "IN_INSULATION,MULTICORE,1,method A2,43",
    })
    void the_method_follows_from_the_laying(
            Laying laying, Construction construction, int loaded, String method, double ampsAt10mm2) {
        AmpacityResult.Carries read = carries(iec.of(laid(10, 70, laying, construction, loaded)));

        assertThat(read.cell().column()).contains(method);
        assertThat(read.amps()).isEqualTo(ampsAt10mm2);
    }

    @Test
    void thick_singles_in_free_air_take_method_f() {
        assertThat(amps(iec, laid(35, 90, Laying.FREE_AIR, Construction.SINGLE_CORE, 2)))
                .isEqualTo(200);
        assertThat(amps(iec, laid(35, 90, Laying.FREE_AIR, Construction.SINGLE_CORE, 3)))
                .isEqualTo(169);
    }

    @Test
    void a_loaded_neutral_costs_14_percent() {
        AmpacityResult.Carries read = carries(iec.of(laid(10, 70, Laying.CONDUIT, Construction.MULTICORE, 4)));

        assertThat(read.amps()).isCloseTo(46 * 0.86, within(1e-9));
        assertThat(read.provenance()).isEqualTo(Provenance.MEMORY);
    }

    @Test
    void between_printed_temperatures_the_factor_lies_between() {
        AmpacityResult.Carries read = carries(iec.of(at(4, 70, 1, 37.5, false)));

        assertThat(read.totalFactor()).isCloseTo((0.94 + 0.87) / 2, within(1e-9));
        assertThat(read.factors().get(0).factor().provenance()).isEqualTo(Provenance.MEMORY);
    }

    @Test
    void beyond_the_printed_temperatures_the_formula_goes_on() {
        // By hand: √((70 − 65)/(70 − 30)) = 0.3536.
        assertThat(carries(iec.of(at(4, 70, 1, 65, false))).totalFactor()).isCloseTo(0.3536, within(0.0001));
    }

    @Test
    void an_engine_space_is_taken_at_50_degrees_at_least() {
        assertThat(carries(iec.of(at(4, 90, 1, 30, true))).totalFactor()).isCloseTo(0.82, within(1e-12));
        assertThat(carries(iec.of(at(4, 90, 1, 60, true))).totalFactor()).isCloseTo(0.71, within(1e-12));
    }

    @Test
    void a_single_layer_suffers_less_than_a_bunch() {
        CableSituation bunch = new CableSituation(10, 70, Laying.BUNCHED, Construction.MULTICORE, 2, 6, 30, false);
        CableSituation layer = new CableSituation(10, 70, Laying.FREE_AIR, Construction.MULTICORE, 2, 6, 30, false);

        assertThat(carries(iec.of(bunch)).totalFactor()).isCloseTo(0.57, within(1e-12));
        assertThat(carries(iec.of(layer)).totalFactor()).isCloseTo(0.73, within(1e-12));
    }

    @Test
    void there_is_no_value_where_the_tables_end() {
        assertThat(reason(iec, alone(1, 70))).isEqualTo(AmpacityResult.Reason.AREA_BELOW_TABLE);
        assertThat(reason(iec, alone(4, 60))).isEqualTo(AmpacityResult.Reason.INSULATION_BELOW_TABLE);
        assertThat(reason(iec, at(4, 70, 1, 70, false))).isEqualTo(AmpacityResult.Reason.AMBIENT_TOO_WARM);
        CableSituation bunch = new CableSituation(10, 70, Laying.BUNCHED, Construction.MULTICORE, 2, 21, 30, false);
        assertThat(reason(iec, bunch)).isEqualTo(AmpacityResult.Reason.GROUP_ABOVE_TABLE);
    }
}
