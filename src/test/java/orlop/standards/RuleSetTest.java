package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RuleSetTest {
    private final RuleSets rules = RuleSets.published();
    private final ProtectiveFamilies families = ProtectiveFamilies.published();

    static Stream<RuleSet> ruleSets() {
        return RuleSets.published().all().stream();
    }

    private double maxDeviceA(String ruleSet, double ampacityA, String family) {
        return rules.get(ruleSet)
                .maxDeviceA(ampacityA, families.get(family))
                .maxDeviceA()
                .orElseThrow();
    }

    /** M01: ISO 10133:2012, clauses 4.7, 4.8, 7.7 (excerpts). */
    @Test
    void small_craft_keep_the_smallest_conductors_and_drops_of_iso_10133() {
        JsonNode expected = PublishedCase.of("M01").expected();
        RuleSet iso = rules.get("iso13297");

        assertThat(iso.leastAreaMm2(Construction.SINGLE_CORE).value())
                .isEqualTo(expected.get("min_area_mm2_separate_over_200mm").asDouble());
        assertThat(iso.leastAreaMm2(Construction.MULTICORE).value())
                .isEqualTo(expected.get("min_area_mm2_in_multicore").asDouble());
        assertThat(iso.dropPercent(true, 24, true).value()).isEqualTo(3);
        assertThat(iso.dropPercent(true, 24, false).value())
                .isEqualTo(expected.get("other_circuits_pct").asDouble());
    }

    /** P05: IEC 60364-4-43 clause 433.1, both conditions. */
    @Test
    void a_device_protects_if_both_conditions_hold() {
        PublishedCase c = PublishedCase.of("P05");
        for (int i = 0; i < c.inputs().get("cases").size(); i++) {
            JsonNode one = c.inputs().get("cases").get(i);
            double i2 = one.has("i2_over_in") ? one.get("i2_over_in").asDouble() : 1.45;
            boolean ok = DeviceRule.overloadProtected(
                    one.get("ib").asDouble(),
                    one.get("in").asDouble(),
                    one.get("iz").asDouble(),
                    i2);
            assertThat(ok)
                    .as(one.toString())
                    .isEqualTo(c.expected().get("ok").get(i).asBoolean());
        }
    }

    /** IEC 60364-4-43 433.1: a breaker up to Iz; gG up to 1.45/1.6 Iz = 0.906 Iz, below 16 A 1.45/1.9 Iz. */
    @ParameterizedTest
    @CsvSource({
        "mcb-c,21,21",
        "gpv,21,21",
        "class-t,100,100",
        "gg,50,45.3125",
        "gg,12,9.1579",
        "gg,17,12.9737",
        "gg,18,16.3125"
    })
    void the_145_rule_limits_by_the_conventional_current(String family, double ampacityA, double expectedA) {
        assertThat(maxDeviceA("iec60364", ampacityA, family)).isCloseTo(expectedA, within(0.0001));
    }

    @Test
    void the_greatest_device_keeps_the_rule_and_the_next_rating_breaks_it() {
        for (String family : new String[] {"gg", "mcb-c", "class-t", "gpv", "mccb"}) {
            ProtectiveFamily f = families.get(family);
            for (double izA = 30; izA < 120; izA += 0.7) {
                double max = maxDeviceA("iec60364", izA, family);
                for (double inA : f.ratingsA()) {
                    double i2 = f.i2OverIn(inA).orElseThrow().value();
                    assertThat(DeviceRule.overloadProtected(0, inA, izA, i2))
                            .as(family + " " + inA + " A on " + izA)
                            .isEqualTo(inA <= max);
                }
            }
        }
    }

    /** ABYC E-11 11.10 (seen): not above the ampacity; the next standard size (from memory) is allowed up to 150 %. */
    @ParameterizedTest
    @CsvSource({
        "iso8820-f,21,25,MEMORY",
        "iso8820-f,20,20,MEMORY",
        "gg,64,80,MEMORY",
        "class-t,31,35,MEMORY",
        "iso8820-sf51,520,520,SEEN",
        "rcd,30,-1,SEEN"
    })
    void abyc_allows_the_next_size_up_to_150_percent(
            String family, double ampacityA, double expectedA, Provenance provenance) {
        DeviceLimit limit = rules.get("abyc").maxDeviceA(ampacityA, families.get(family));

        assertThat(limit.maxDeviceA().orElse(-1.0)).isEqualTo(expectedA);
        assertThat(limit.clause()).isEqualTo("ABYC E-11 11.10");
        assertThat(limit.provenance()).isEqualTo(provenance);
    }

    @Test
    void abyc_refuses_a_next_size_above_150_percent() {
        assertThat(maxDeviceA("abyc", 19, "iso8820-sf30")).isEqualTo(19); // the least strip is 30 A: 158 %
        assertThat(maxDeviceA("abyc", 20, "iso8820-sf30")).isEqualTo(30);
    }

    @Test
    void small_craft_iso_stays_within_the_ampacity() {
        assertThat(maxDeviceA("iso13297", 21.3, "iso8820-f")).isEqualTo(21.3);
    }

    @Test
    void a_device_without_overload_protection_gives_no_limit() {
        for (RuleSet set : rules.all()) {
            assertThat(set.maxDeviceA(30, families.get("am")).maxDeviceA()).isEmpty();
            assertThat(set.maxDeviceA(30, families.get("ar")).maxDeviceA()).isEmpty();
        }
    }

    /** ABYC E-11 11.10 (7, 40, 72 in), ISO 10133 8.1, ISO 13297 12.3 and 13.2.2, IEC 60364-4-43 433.2.2. */
    @ParameterizedTest
    @CsvSource({
        "abyc,DC_POINT,false,0.175,SEEN",
        "abyc,DC_POINT,true,1.02,SEEN",
        "abyc,BATTERY,true,1.83,MEMORY",
        "abyc,SHORE_INLET,true,3,MEMORY",
        "iso13297,BATTERY,false,0.2,MEMORY",
        "iso13297,CHARGING_SOURCE,false,1.8,SEEN",
        "iso13297,AC_SOURCE,false,0.5,SEEN",
        "iec60364,BATTERY,false,3,MEMORY",
        "iec60092,BATTERY,false,0.2,ENGINEERING_ESTIMATE"
    })
    void the_first_device_stands_within_the_permitted_distance(
            String set, SourceKind start, boolean sheathed, double distanceM, Provenance provenance) {
        RuleLimit limit = rules.get(set).firstDeviceWithinM(start, sheathed);

        assertThat(limit.value()).isEqualTo(distanceM);
        assertThat(limit.provenance()).isEqualTo(provenance);
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void every_limit_is_there_and_a_sheath_never_shortens_a_distance(RuleSet set) {
        for (SourceKind start : SourceKind.values()) {
            RuleLimit bare = set.firstDeviceWithinM(start, false);
            assertThat(set.firstDeviceWithinM(start, true).value()).isGreaterThanOrEqualTo(bare.value());
            assertThat(bare.clause()).isNotBlank();
        }
        assertThat(set.leastAreaMm2(Construction.MULTICORE).value())
                .isLessThanOrEqualTo(set.leastAreaMm2(Construction.SINGLE_CORE).value());
        for (boolean dc : new boolean[] {true, false}) {
            for (double nominalV : new double[] {12, 48, 50, 110, 230, 400}) {
                assertThat(set.dropPercent(dc, nominalV, true).value())
                        .isLessThanOrEqualTo(
                                set.dropPercent(dc, nominalV, false).value());
            }
        }
    }

    /** IEC 60092: 6 %, but 10 % for battery-fed systems up to 50 V (from memory). */
    @Test
    void ships_permit_more_drop_at_low_voltage() {
        RuleSet ship = rules.get("iec60092");

        assertThat(ship.dropPercent(true, 24, false).value()).isEqualTo(10);
        assertThat(ship.dropPercent(true, 110, false).value()).isEqualTo(6);
    }

    @Test
    void an_unknown_rule_set_is_refused_by_name() {
        assertThat(rules.all()).extracting(RuleSet::id).containsExactly("abyc", "iec60364", "iso13297", "iec60092");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rules.get("iso"))
                .withMessage("no rule set iso; there are [abyc, iec60364, iso13297, iec60092]");
    }
}
