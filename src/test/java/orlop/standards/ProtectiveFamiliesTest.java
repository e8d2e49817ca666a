package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProtectiveFamiliesTest {
    private final ProtectiveFamilies families = ProtectiveFamilies.published();

    private Characteristic one(String family, Characteristic.Kind kind, double inA) {
        List<Characteristic> points = families.get(family).points().of(kind, inA);
        assertThat(points).as(family + " " + kind + " " + inA).hasSize(1);
        return points.get(0);
    }

    private Characteristic gate(String family, double inA, double multiple) {
        List<Characteristic> gates = families.get(family).points().of(Characteristic.Kind.GATE, inA).stream()
                .filter(p -> p.multiple().orElse(0) == multiple)
                .toList();
        assertThat(gates).as(family + " gate at " + multiple).hasSize(1);
        return gates.get(0);
    }

    /** P01: IEC 60898-1 table 7: thermal limits. */
    @Test
    void household_breakers_keep_the_conventional_currents() {
        JsonNode expected = PublishedCase.of("P01").expected();
        for (String family : new String[] {"mcb-b", "mcb-c", "mcb-d"}) {
            for (double inA : new double[] {6, 63, 80, 125}) {
                double hours = expected.get("conventional_time_h")
                        .get(inA <= 63 ? "to_63A" : "over_63A")
                        .asDouble();
                Characteristic hold = one(family, Characteristic.Kind.HOLD, inA);
                Characteristic operate = one(family, Characteristic.Kind.OPERATE, inA);
                assertThat(hold.multiple())
                        .hasValue(expected.get("no_trip_multiple").asDouble());
                assertThat(hold.tMinS()).hasValue(hours * 3600);
                assertThat(operate.multiple())
                        .hasValue(expected.get("trip_multiple").asDouble());
                assertThat(operate.tMaxS()).hasValue(hours * 3600);
                JsonNode at255 = expected.get("at_2.55_In_s").get(inA <= 32 ? "to_32A" : "over_32A");
                assertThat(gate(family, inA, 2.55).tMinS())
                        .hasValue(at255.get(0).asDouble());
                assertThat(gate(family, inA, 2.55).tMaxS())
                        .hasValue(at255.get(1).asDouble());
            }
        }
    }

    /** P01: IEC 60898-1 table 7: magnetic limits. */
    @Test
    void household_breakers_keep_the_instantaneous_limits() {
        JsonNode expected = PublishedCase.of("P01").expected();
        double instantS = expected.get("instantaneous_time_s").asDouble();
        for (String letter : new String[] {"B", "C", "D"}) {
            JsonNode band = expected.get("instantaneous").get(letter);
            String family = "mcb-" + letter.toLowerCase(Locale.ROOT);
            assertThat(gate(family, 16, band.get(0).asDouble()).tMinS()).hasValue(instantS);
            assertThat(gate(family, 16, band.get(1).asDouble()).tMaxS()).hasValue(instantS);
        }
    }

    /** P02: IEC 60269-1 table 2 (from memory). */
    @ParameterizedTest
    @CsvSource({"16,16-63", "63,16-63", "80,over63-160", "160,over63-160", "200,over160-400", "500,over400"})
    void gg_fuses_keep_the_conventional_currents(double inA, String range) {
        JsonNode expected = PublishedCase.of("P02").expected();
        double seconds = expected.get("hours").get(range).asDouble() * 3600;

        assertThat(one("gg", Characteristic.Kind.HOLD, inA).multiple())
                .hasValue(expected.get("inf").asDouble());
        assertThat(one("gg", Characteristic.Kind.HOLD, inA).tMinS()).hasValue(seconds);
        assertThat(one("gg", Characteristic.Kind.OPERATE, inA).multiple())
                .hasValue(expected.get("if").asDouble());
        assertThat(one("gg", Characteristic.Kind.OPERATE, inA).tMaxS()).hasValue(seconds);
    }

    @Test
    void every_overload_protection_knows_the_current_that_surely_operates_it() {
        for (ProtectiveFamily family : families.all()) {
            if (family.overloadProtection()) {
                double inA = family.ratingsA().get(family.ratingsA().size() / 2);
                assertThat(family.i2OverIn(inA)).as(family.id()).isPresent();
                assertThat(family.i2OverIn(inA).orElseThrow().value()).isBetween(1.0, 2.1);
            }
        }
    }

    @Test
    void points_are_in_order_and_name_their_sources() {
        for (ProtectiveFamily family : families.all()) {
            assertThat(family.ratingsA()).isSorted().doesNotHaveDuplicates();
            for (Characteristic p : family.points().all()) {
                assertThat(p.source()).isNotBlank();
                assertThat(p.tMinS().orElse(0)).isLessThanOrEqualTo(p.tMaxS().orElse(Double.MAX_VALUE));
            }
        }
    }

    /** ISO 8820-3:2015 and -5:2015 catalogue and scope pages: 32 V, 1 kA blades, 2 kA strips; F is the miniature blade. */
    @Test
    void blades_and_strips_have_the_voltage_and_breaking_capacity_of_iso_8820() {
        for (String blade : new String[] {"iso8820-f", "iso8820-c", "iso8820-e"}) {
            assertThat(families.get(blade).maxVoltageV(true).orElseThrow().value())
                    .isEqualTo(32);
            assertThat(families.get(blade).breakingA(true).orElseThrow().value())
                    .isEqualTo(1000);
            assertThat(families.get(blade).maxVoltageV(false)).isEmpty();
            assertThat(families.get(blade)
                            .continuousLoadFraction()
                            .orElseThrow()
                            .value())
                    .isEqualTo(0.75);
        }
        assertThat(families.get("iso8820-sf51").breakingA(true).orElseThrow().value())
                .isEqualTo(2000);
        assertThat(families.get("mcb-c").breakingA(false)).as("declared").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "28.8,true,12,20,400,iso8820-f,15",
        "28.8,true,33,50,400,iso8820-c,35",
        "28.8,true,45,60,400,iso8820-e,50",
        "28.8,true,12,60,1500,iso8820-sf30,30",
        "28.8,true,210,260,1500,iso8820-sf51,225",
        "28.8,true,210,260,9000,class-t,225",
        "58.4,true,110,130,12000,class-t,110",
        "58.4,true,8,11,3000,mcb-c-dc,8",
        "230,false,12,18,3000,mcb-c,13",
        "400,false,150,200,9000,gg,160",
    })
    void the_first_proposal_is_the_least_that_would_do(
            double highestV, boolean dc, double minA, double maxA, double prospectiveA, String family, double ratingA) {
        Proposal first = families.proposals(highestV, dc, minA, maxA, prospectiveA)
                .first()
                .orElseThrow();

        assertThat(first.family().id()).isEqualTo(family);
        assertThat(first.ratingA()).isEqualTo(ratingA);
    }

    @Test
    void what_a_device_must_be_marked_with_is_said() {
        assertThat(families.proposals(230, false, 12, 18, 3000)
                        .first()
                        .orElseThrow()
                        .mustBeMarked())
                .containsExactly(Proposal.Mark.BREAKING_CAPACITY);
        assertThat(families.proposals(28.8, true, 8, 12, 5000).first().orElseThrow())
                .satisfies(p -> assertThat(p.family().id()).isEqualTo("gg"))
                .satisfies(p -> assertThat(p.mustBeMarked()).containsExactly(Proposal.Mark.VOLTAGE));
        assertThat(families.proposals(28.8, true, 12, 20, 400)
                        .first()
                        .orElseThrow()
                        .mustBeMarked())
                .isEmpty();
    }

    /** A lithium-iron-phosphate bank of 48 V charges to 58.4 V: neither the 32 V nor the 58 V blades may be used. */
    @Test
    void no_blade_is_proposed_above_its_voltage() {
        assertThat(families.proposals(58.4, true, 5, 40, 100).inOrder())
                .isNotEmpty()
                .noneMatch(p -> p.family().id().startsWith("iso8820"));
        assertThat(families.proposals(56, true, 5, 40, 100).inOrder()).anySatisfy(p -> {
            assertThat(p.family().id()).isEqualTo("iso8820-f");
            assertThat(p.mustBeMarked()).containsExactly(Proposal.Mark.VOLTAGE);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "28.8,true,30,20,400,RATING_RANGE_EMPTY", "3000,true,10,20,400,VOLTAGE",
        "28.8,true,10,20,900000,BREAKING_CAPACITY", "28.8,true,2000,2100,400,RATING"
    })
    void where_nothing_would_do_the_reason_is_given(
            double highestV, boolean dc, double minA, double maxA, double prospectiveA, Proposals.Obstacle why) {
        Proposals none = families.proposals(highestV, dc, minA, maxA, prospectiveA);

        assertThat(none.inOrder()).isEmpty();
        assertThat(none.whyNone()).contains(why);
    }

    @Test
    void every_proposal_would_do() {
        for (double minA = 1; minA < 600; minA *= 1.7) {
            for (double prospectiveA = 100; prospectiveA < 40_000; prospectiveA *= 2.3) {
                for (Proposal p : families.proposals(28.8, true, minA, 1.3 * minA, prospectiveA)
                        .inOrder()) {
                    assertThat(p.ratingA()).isBetween(minA, 1.3 * minA);
                    assertThat(p.family().ratingsA()).contains(p.ratingA());
                    if (!p.mustBeMarked().contains(Proposal.Mark.BREAKING_CAPACITY)) {
                        assertThat(p.family().breakingA(true).orElseThrow().value())
                                .isGreaterThanOrEqualTo(prospectiveA);
                    }
                }
            }
        }
    }

    @Test
    void pv_strings_get_gpv_fuses_only() {
        assertThat(families.pvProposals(120, 14, 20, 30).first().orElseThrow())
                .satisfies(p -> assertThat(p.family().id()).isEqualTo("gpv"))
                .satisfies(p -> assertThat(p.ratingA()).isEqualTo(15));
    }

    @Test
    void an_unknown_family_is_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> families.get("glass"))
                .withMessageStartingWith("no device family glass; there are [iso8820-f");
    }
}
