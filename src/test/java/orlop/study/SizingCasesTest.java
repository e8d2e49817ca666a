package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Finish;
import orlop.drawing.Laying;
import orlop.drawing.Nature;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.findings.Checker;
import orlop.findings.Cure;
import orlop.findings.Finding;

/** Areas by the tables of two rule sets, worked out by hand, and what is said where no area would do. */
@SuppressWarnings("NullAway") // a null fails the test
class SizingCasesTest {
    private static CableResult cable(Study s, String id) {
        return s.governing().cables().get(id);
    }

    private static Cable.Construction lying(
            double insulationC, Laying laying, int with, boolean engineSpace, double c) {
        return new Cable.Construction(5, Finish.PLAIN, insulationC, laying, with, engineSpace, c);
    }

    private static void lay(Sketch s, String id, Cable.Construction how) {
        s.change(d -> d.with(d.cables().require(id).withConstruction(how)));
    }

    /** A load of so many amperes at the end of half a metre: its drop asks for nothing. */
    private static CableResult loaded(String rules, double amps, Cable.Construction how) {
        Sketch s = Sketch.dc(24, rules).supply("G", 24, 0).current("E", amps).auto("W", "G.1", "E.1", 0.5);
        lay(s, "W", how);
        return cable(s.study(), "W");
    }

    /**
     * 33 CFR 183.425 Table 5 (read): AWG 10 (5.26 mm²) 55 A, AWG 8 (8.37 mm²) 70 A, AWG 6 (13.3 mm²) 100 A at 90 °C;
     * AWG 10 60 A at 105 °C, AWG 8 65 A at 75 °C. Engine space 0.82 at 90 °C (from memory), 0.85 at 105 °C (read). Four
     * conductors in a bundle 0.6 (ABYC E-11 Table VI-C, read). A metric area takes the row of the AWG size below it.
     */
    @ParameterizedTest
    @CsvSource({
        "55, 90, 0, false, 6, 55", // 6 mm² is above AWG 10
        "56, 90, 0, false, 10, 70",
        "60, 105, 0, false, 6, 60",
        "50, 90, 0, true, 10, 57.4", // 55 × 0.82 = 45.1; 70 × 0.82 = 57.4
        "51, 105, 0, true, 6, 51", // 60 × 0.85 = 51
        "50, 90, 1, false, 16, 60", // 70 × 0.6 = 42; 100 × 0.6 = 60
        "65, 75, 0, false, 10, 65"
    })
    void areas_by_the_table_of_33_cfr(
            double amps, double insulationC, int with, boolean engineSpace, double areaMm2, double ampacityA) {
        CableResult w = loaded("abyc", amps, lying(insulationC, Laying.BUNCHED, with, engineSpace, 30));

        assertThat(w.areaMm2()).isEqualTo(areaMm2);
        assertThat(w.ampacityA()).isCloseTo(ampacityA, within(1e-9));
        assertThat(w.governedBy()).isEqualTo(GovernedBy.AMPACITY);
    }

    /**
     * IEC 60364-5-52 (from memory), XLPE, two loaded conductors: method E (Table B.52.12) 2.5 mm² 36 A, 4 mm² 49 A; C
     * (B.52.3) 2.5 mm² 33 A, 4 mm² 45 A; B2 2.5 mm² 30 A, 4 mm² 40 A; PVC, E (B.52.10) 2.5 mm² 30 A, 4 mm² 40 A. Air of
     * 50 °C 0.82 (B.52.14); three circuits in a bunch 0.70 (B.52.17).
     */
    @ParameterizedTest
    @CsvSource({
        "36, 90, FREE_AIR, 0, 30, 2.5, 36",
        "36.1, 90, FREE_AIR, 0, 30, 4, 49",
        "30, 90, FREE_AIR, 0, 50, 4, 40.18", // 36 × 0.82 = 29.5; 49 × 0.82 = 40.18
        "30, 70, FREE_AIR, 0, 30, 2.5, 30",
        "30, 90, CONDUIT, 0, 30, 2.5, 30",
        "30, 90, BUNCHED, 2, 30, 4, 31.5", // 33 × 0.7 = 23.1; 45 × 0.7 = 31.5
        "33, 90, SHEATHED, 0, 30, 2.5, 33"
    })
    void areas_by_the_tables_of_iec_60364(
            double amps, double insulationC, Laying laying, int with, double airC, double areaMm2, double ampacityA) {
        CableResult w = loaded("iec60364", amps, lying(insulationC, laying, with, false, airC));

        assertThat(w.areaMm2()).isEqualTo(areaMm2);
        assertThat(w.ampacityA()).isCloseTo(ampacityA, within(1e-9));
        assertThat(w.governedBy()).isEqualTo(GovernedBy.AMPACITY);
        assertThat(w.sizing().fromMemory()).isTrue();
    }

    /**
     * IEC 60364-4-43 433.1: In ≤ Iz and I2 ≤ 1.45 Iz. A gG fuse operates at 1.6 In: Iz at least 1.103 In, 38.6 A for 35 A:
     * 4 mm² (49 A). A fuse that operates at 1.35 In: Iz at least In: 2.5 mm² (36 A). ABYC E-11 11.10: the next rating above
     * Iz will do: 60 A in front of AWG 10's 55 A; 70 A is no longer the next one.
     */
    @ParameterizedTest
    @CsvSource({"iec60364, gg, 35, 4", "iec60364, class-t, 35, 2.5", "abyc, class-t, 60, 6", "abyc, class-t, 70, 10"})
    void the_device_at_the_head_of_a_run_asks_for_an_area(String rules, String family, double ratingA, double areaMm2) {
        CableResult w = cable(
                Sketch.dc(24, rules)
                        .supply("G", 24, 0.05)
                        .fuse("F", family, ratingA)
                        .link("G.1", "F.1")
                        .current("E", 2)
                        .auto("W", "F.2", "E.1", 0.5)
                        .study(),
                "W");

        assertThat(w.areaMm2()).isEqualTo(areaMm2);
        assertThat(w.governedBy()).isEqualTo(GovernedBy.DEVICE);
    }

    /** Two runs of method E lie as two circuits: row 4 of Table B.52.17 gives 0.88 (from memory): 2 × 0.88 × 36 A. */
    /**
     * By Kirchhoff's law 20 A and 20 A behind a bar are 40 A before it, however long the cable: 4 mm² of method E, XLPE
     * (IEC 60364-5-52 Table B.52.12, from memory: 2.5 mm² 36 A, 4 mm² 49 A).
     */
    @Test
    void a_cable_of_unknown_length_is_sized_for_all_that_flows_in_it() {
        Sketch s = Sketch.dc(24)
                .supply("G", 24, 0)
                .bar("B")
                .current("E1", 20)
                .current("E2", 20)
                .auto("W", "G.1", "B.1", 0.5)
                .auto("W1", "B.2", "E1.1", 0.5)
                .auto("W2", "B.3", "E2.1", 0.5);
        s.change(d -> d.with(d.cables().require("W").withLengthM(null)));
        CableResult w = cable(s.study(), "W");

        assertThat(w.currentA()).isCloseTo(40, within(1e-9));
        assertThat(w.designCurrentA()).isCloseTo(40, within(1e-9));
        assertThat(w.areaMm2()).isEqualTo(4);
        assertThat(w.governedBy()).isEqualTo(GovernedBy.AMPACITY);
    }

    @Test
    void parallel_runs_share_the_current_and_count_as_so_many_circuits() {
        Sketch s = Sketch.dc(24).supply("G", 24, 0).current("E", 60).auto("W", "G.1", "E.1", 0.5);
        s.change(d -> d.with(d.cables().require("W").withParallel(2)));
        CableResult w = cable(s.study(), "W");

        assertThat(w.areaMm2()).isEqualTo(2.5);
        assertThat(w.ampacityA()).isCloseTo(2 * 0.88 * 36, within(1e-9));
    }

    @Test
    void where_no_area_carries_the_current_parallel_runs_are_proposed() {
        Sketch s = Sketch.dc(24).supply("G", 24, 0).current("E", 1_500).auto("W", "G.1", "E.1", 0.1);
        Study study = s.study();
        CableResult w = cable(study, "W");
        Finding f = Checker.check(study).stream()
                .filter(x -> x.rule().equals("no-area-fits"))
                .findFirst()
                .orElseThrow();
        Cure.SetRuns cure = (Cure.SetRuns) f.cure();

        assertThat(w.areaMm2()).isNull();
        assertThat(w.leastAreaMm2()).isNull();
        assertThat(w.governedBy()).isEqualTo(GovernedBy.NOTHING_FITS);
        Drawing cured = s.drawing()
                .with(s.drawing()
                        .cables()
                        .require("W")
                        .withParallel(cure.runs())
                        .withAreaMm2(cure.areaMm2()));
        CableResult again = cable(Study.of(cured), "W");
        assertThat(again.ampacityA()).isGreaterThanOrEqualTo(1_500);
        CableResult fewer = cable(
                Study.of(cured.with(cured.cables()
                        .require("W")
                        .withParallel(cure.runs() - 1)
                        .withAreaMm2(400.0))),
                "W");
        assertThat(fewer.ampacityA()).isLessThan(1_500);
    }

    @Test
    void the_position_of_a_switch_decides_which_condition_governs() {
        Study s = Sketch.dc(24)
                .supply("G", 24, 0.001)
                .add("Q", new Switching.Changeover(2, null, Poles.POSITIVE, 1, ""))
                .bar("B")
                .current("E1", 20)
                .current("E2", 34)
                .current("E3", 1)
                .auto("W", "G.1", "Q.3", 0.5)
                .link("Q.1", "E1.1")
                .link("Q.2", "B.q")
                .link("B.e2", "E2.1")
                .link("B.e3", "E3.1")
                .condition("one")
                .condition("two")
                .position("two", "Q", "2")
                .condition("off")
                .position("off", "Q", "0")
                .study();

        assertThat(cable(s, "W").designCurrentA()).isCloseTo(35, within(1e-9));
        assertThat(cable(s, "W").areaMm2()).isEqualTo(2.5);
        assertThat(cable(s, "W").governingCondition()).isEqualTo("two");
    }

    // ---- least area by drop ----------------------------------------------------------------------------------

    private static Sketch twoInARow(double firstMm2, double secondMm2) {
        return Sketch.dc(24, "iso13297")
                .supply("G", 24, 0)
                .bar("B")
                .current("E", 10)
                .cable("W1", "G.1", "B.a", 10, firstMm2)
                .cable("W2", "B.b", "E.1", 10, secondMm2)
                .change(SizingCasesTest::cold);
    }

    private static Drawing cold(Drawing drawing) {
        Drawing d = drawing;
        for (Cable w : drawing.cables().values()) {
            d = d.with(new Cable(
                    w.id(),
                    w.from(),
                    w.to(),
                    w.lengthM(),
                    w.lengthEstimated(),
                    w.areaMm2(),
                    1,
                    null,
                    w.construction(),
                    w.returns(),
                    w.measured(),
                    20.0,
                    w.refit(),
                    w.stage(),
                    "",
                    List.of(),
                    List.of(),
                    null,
                    w.locked(),
                    w.extras()));
        }
        return d;
    }

    /**
     * By hand, 20 °C, limit 10 % (2.4 V), 10 A through 2 × 10 m and 2 × 10 m: 4 mm² (4.95 Ω/km) drops 0.99 V, 1.5 mm²
     * (13.3 Ω/km) 2.66 V. Left for the second 1.41 V: 4 mm² (2.5 mm², 7.98 Ω/km, drops 1.596 V). The first cannot help.
     */
    @Test
    void the_least_area_is_what_this_cable_needs_with_the_others_as_they_are() {
        Study s = twoInARow(4, 1.5).study();

        assertThat(cable(s, "W2").leastAreaMm2()).isEqualTo(4);
        assertThat(cable(s, "W2").governedBy()).isEqualTo(GovernedBy.DROP);
        assertThat(cable(s, "W1").leastAreaMm2()).isNull();
        assertThat(cable(s, "W1").governedBy()).isEqualTo(GovernedBy.DROP);
        Study cured = twoInARow(4, 4).study();
        assertThat(Checker.check(cured)).extracting(Finding::rule).doesNotContain("drop-too-high");
        assertThat(cable(cured, "W1").leastAreaMm2()).isEqualTo(4); // 2.5 mm² would drop 1.596 V of the 1.41 V left
    }

    @Test
    void where_two_cables_are_too_thin_none_alone_has_a_least_area_and_together_they_have() {
        Study s = twoInARow(0.75, 0.75).study(); // 5.2 V each
        CableResult one = cable(s, "W1");

        assertThat(one.leastAreaMm2()).isNull();
        assertThat(one.governedBy()).isEqualTo(GovernedBy.DROP);
        Study cured = twoInARow(
                        one.sizing().togetherAreaMm2(), cable(s, "W2").sizing().togetherAreaMm2())
                .study();
        assertThat(Checker.check(cured)).extracting(Finding::rule).doesNotContain("drop-too-high");
    }

    @Test
    void what_an_installed_cable_alone_spoils_makes_no_other_cable_grow() {
        Study s = twoInARow(0.75, 1)
                .change(d -> d.with(d.cables().require("W2").withAreaMm2(null)))
                .study();

        assertThat(cable(s, "W2").areaMm2()).isEqualTo(1);
        assertThat(Checker.check(s)).extracting(Finding::rule).contains("drop-too-high");
    }

    @Test
    void a_stated_resistance_does_not_follow_the_area_and_that_is_said() {
        Sketch s = Sketch.dc(24, "iso13297").supply("G", 24, 0).current("E", 50).ohm("W", "G.1", "E.1", 0.1);
        s.change(d -> d.with(d.cables().require("W").withAreaMm2(null)));
        Study study = s.study();

        assertThat(cable(study, "W").dropV()).isCloseTo(5, within(1e-9));
        assertThat(cable(study, "W").governedBy()).isEqualTo(GovernedBy.AMPACITY);
        assertThat(cable(study, "W").ampacityA()).isGreaterThanOrEqualTo(50);
        assertThat(study.governing().remarks())
                .extracting(r -> r.item() + " " + r.message().key())
                .contains("W study.assumed.stated-resistance");
    }

    @Test
    void each_cable_without_a_length_has_its_own_finding() {
        Sketch s = Sketch.dc(24).supply("G", 24, 0.01).current("E1", 1).current("E2", 1);
        for (int i = 1; i <= 2; i++) {
            int n = i;
            s.change(d -> d.with(Cable.of("W" + n, Sketch.t("G.1"), Sketch.t("E" + n + ".1"))));
        }

        assertThat(Checker.check(s.study()).stream()
                        .filter(f -> f.rule().equals("no-length"))
                        .map(f -> f.place().item()))
                .containsExactly("W1", "W2");
    }

    /** ΔU = I (R cos φ + X sin φ), 230 V single phase; reactance 0.08 mΩ/m (IEC 60364-5-52, annex G, from memory). */
    @Test
    void power_factor_and_reactance_enter_the_drop() {
        Sketch s = AcSketch.of(Nature.AC1, 230).add("G", new Source.Supply(230.0, 0, 0, 0, false));
        s.add("E", AcSketch.current(10, 0.8)).cable("W", "G.1", "E.1", 50, 50).change(SizingCasesTest::cold);
        double r = 2 * 50 * 0.386e-3;
        double x = 2 * 50 * 0.08e-3;

        assertThat(cable(s.study(), "W").dropV()).isCloseTo(10 * (r * 0.8 + x * 0.6), within(0.002));
    }

    @Test
    void a_current_without_power_factor_is_taken_as_active_and_that_is_said() {
        Sketch s = AcSketch.of(Nature.AC1, 230).add("G", new Source.Supply(230.0, 0, 0, 0, false));
        s.add("E", Sketch.load(orlop.drawing.LoadBehaviour.CURRENT, 10)).cable("W", "G.1", "E.1", 5, 2.5);

        assertThat(s.study().governing().remarks())
                .extracting(r -> r.item() + " " + r.message().key())
                .contains("E study.assumed.power-factor");
    }

    // ---- heat of a fault -------------------------------------------------------------------------------------

    /**
     * IEC 60364-4-43 434.5.2: a C16 breaker of 10 kA, energy-limiting class 3: 84,000 A²s (EN 60898-1, from memory); 90 °C
     * insulation taken as PVC: k = 226 √ln((234.5 + 160)/(234.5 + 90)) = 99.9; √84,000 / 99.9 = 2.90 mm²: 4 mm².
     */
    @Test
    void the_heat_of_a_fault_asks_for_an_area() {
        Sketch s = AcSketch.of(Nature.AC1, 230).add("G", new Source.Supply(230.0, 0, 0.04, 0, false));
        s.add("Q", new Protection.CircuitBreaker("mcb-c", 16.0, null, 10.0, null, 0.0, Poles.L_N, Position.CLOSED));
        s.add("E", AcSketch.power(500, 0)).link("G.1", "Q.1").auto("W", "Q.2", "E.1", 2);
        Study study = s.study();

        assertThat(cable(study, "W").areaMm2()).isEqualTo(4);
        assertThat(cable(study, "W").governedBy()).isEqualTo(GovernedBy.ADIABATIC);
        assertThat(cable(study, "W").sizing().fromMemory()).isTrue();
        s.change(d -> d.with(d.cables().require("W").withAreaMm2(2.5)));
        assertThat(Checker.check(s.study())).extracting(Finding::rule).contains("cannot-bear-fault");
    }

    @Test
    void where_no_opening_time_is_known_the_heat_is_not_checked_and_that_is_said() {
        Sketch s = Sketch.dc(24).supply("G", 24, 0.005);
        s.add("Q", new Protection.CircuitBreaker("mccb", 16.0, null, 10.0, 60.0, 0.0, Poles.POSITIVE, Position.CLOSED));
        s.current("E", 5).link("G.1", "Q.1").auto("W", "Q.2", "E.1", 2);

        assertThat(s.study().governing().remarks())
                .extracting(r -> r.item() + " " + r.message().key())
                .contains("Q study.assumed.fault-heat-time");
    }

    /** √40,000 / 99.9 = 2.002 mm²: 2.5 mm²; 4.8 kA are within 10 kA, but not within 3 kA. */
    @ParameterizedTest
    @CsvSource({"10, true", "3, false"})
    void what_a_maker_states_counts_up_to_the_breaking_capacity(double breakingKa, boolean counts) {
        Sketch s = Sketch.dc(24).supply("G", 24, 0.005);
        Protection.CircuitBreaker breaker = new Protection.CircuitBreaker(
                "mccb", 16.0, null, breakingKa, 60.0, 0.0, Poles.POSITIVE, Position.CLOSED, 40_000.0);
        s.add("Q", breaker).current("E", 5).link("G.1", "Q.1").auto("W", "Q.2", "E.1", 2);
        Study study = s.study();

        if (counts) {
            assertThat(cable(study, "W").areaMm2()).isEqualTo(2.5);
            assertThat(cable(study, "W").governedBy()).isEqualTo(GovernedBy.ADIABATIC);
        }
        assertThat(study.governing().remarks().stream()
                        .anyMatch(r -> r.message().key().equals("study.assumed.fault-heat-time")))
                .isEqualTo(!counts);
    }
}
