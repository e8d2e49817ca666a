package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/** Highest and lowest fault currents over conditions, of limited sources and diodes; figures by Ohm's law, by hand. */
@SuppressWarnings("NullAway") // a null fails the test
class FaultTest {
    private static FaultRange at(Study s, String point) {
        return s.governing().points().get(point).fault();
    }

    /** Two banks of 2.5 kA and 1 kA by switches: together, each alone, none. */
    private static Sketch twoBanks() {
        return Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .supply("GB2", 25, 0.025)
                .isolator("Q1", Position.CLOSED)
                .isolator("Q2", Position.CLOSED)
                .bar("B")
                .current("E1", 1)
                .link("GB1.1", "Q1.1")
                .link("GB2.1", "Q2.1")
                .link("Q1.2", "B.a")
                .link("Q2.2", "B.b")
                .ohm("W1", "B.c", "E1.1", 0.04);
    }

    @Test
    void governing_takes_the_highest_of_the_highest_and_the_lowest_of_the_lowest() {
        Sketch s = twoBanks()
                .condition("both")
                .condition("one")
                .condition("two")
                .position("one", "Q2", "open")
                .position("two", "Q1", "open");
        CableResult w = s.study().governing().cables().get("W1");

        assertThat(w.faultFrom().maxA()).isCloseTo(3_500, within(1e-6));
        assertThat(w.faultFrom().minA()).isCloseTo(1_000, within(1e-6));
        assertThat(w.faultTo().maxA()).isCloseTo(25 / (0.04 + 1 / 140.0), within(1e-6));
        assertThat(w.faultTo().minA()).isCloseTo(25 / 0.065, within(1e-6));
    }

    @Test
    void a_dead_cable_shows_no_fault_and_does_not_govern() {
        Sketch s = twoBanks().condition("both").condition("dark");
        s.position("dark", "Q1", "open").position("dark", "Q2", "open");
        Study study = s.study();

        assertThat(study.byCondition().get("dark").cables().get("W1").faultTo()).isEqualTo(FaultRange.NONE);
        assertThat(study.governing().cables().get("W1").faultFrom().minA()).isCloseTo(3_500, within(1e-6));
    }

    @Test
    void highest_is_cold_and_lowest_is_hot() {
        // 2 × 10 m of 10 mm²: 1.91 Ω/km at 20 °C (IEC 60228), 1 + 0.00393 · 70 at the 90 °C of the insulation
        Sketch s = Sketch.dc(24).supply("GB1", 24, 0.01).current("E1", 1).cable("W1", "GB1.1", "E1.1", 10, 10);
        FaultRange far = s.study().governing().cables().get("W1").faultTo();

        assertThat(far.maxA()).isCloseTo(24 / (0.01 + 0.0382), within(1e-6));
        assertThat(far.minA()).isCloseTo(24 / (0.01 + 0.0382 * (1 + 0.00393 * 70)), within(1e-6));
    }

    @Test
    void the_resistance_of_the_fault_counts_at_both_ends_and_for_both_figures() {
        StudyOptions options = new StudyOptions(0.05);
        CableResult w = Study.of(twoBanks().drawing(), options, () -> false)
                .governing()
                .cables()
                .get("W1");

        assertThat(w.faultFrom().maxA()).isCloseTo(25 / (0.05 + 1 / 140.0), within(1e-6));
        assertThat(w.faultFrom().minA()).isEqualTo(w.faultFrom().maxA());
        assertThat(w.faultTo().maxA()).isCloseTo(25 / (0.09 + 1 / 140.0), within(1e-6));
    }

    @Test
    void a_charger_beside_a_battery_adds_its_limit_to_the_highest_and_nothing_to_the_lowest() {
        Study s = Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .add("G2", new Source.LimitedSupply(28.0, 0, 60.0))
                .bar("B")
                .link("GB1.1", "B.a")
                .link("G2.1", "B.b")
                .study();

        assertThat(at(s, "B").maxA()).isCloseTo(2_560, within(1e-6));
        assertThat(at(s, "B").minA()).isCloseTo(2_500, within(1e-6));
    }

    @Test
    void what_only_a_charger_feeds_has_its_limit_for_the_lowest_too() {
        // a diode keeps the battery from the second bar
        Study s = Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .add("G2", new Source.LimitedSupply(28.0, 0, 60.0))
                .add("V1", new Switching.Diode(0.7, 0))
                .bar("B")
                .bar("C")
                .link("GB1.1", "B.a")
                .link("V1.2", "B.b")
                .link("V1.1", "C.a")
                .link("G2.1", "C.b")
                .study();

        assertThat(at(s, "C")).isEqualTo(new FaultRange(60.0, 60.0));
        assertThat(at(s, "B").maxA()).isCloseTo(2_560, within(1e-6));
    }

    @Test
    void a_diode_without_slope_drops_the_same_in_flow_and_in_a_fault_and_says_so() {
        Study s = Sketch.dc(24)
                .supply("GB1", 24.7, 0.01)
                .add("V1", new Switching.Diode(0.7, 0))
                .bar("B")
                .current("E1", 10)
                .link("GB1.1", "V1.1")
                .link("V1.2", "B.a")
                .link("B.b", "E1.1")
                .study();

        assertThat(s.governing().points().get("B").voltageV()).isCloseTo(23.9, within(1e-9));
        assertThat(at(s, "B").maxA()).isCloseTo(2_400, within(1e-6));
        assertThat(s.governing().remarks())
                .anyMatch(r -> r.message().key().equals("study.assumed.diode")
                        && r.item().equals("V1"));
    }

    @Test
    void a_source_without_resistance_is_not_limited_and_nothing_is_proposed() {
        Study s = Sketch.dc(24)
                .supply("GB1", 24, 0)
                .current("E1", 5)
                .cable("W1", "GB1.1", "E1.1", 4, 4)
                .study();
        CableResult w = s.governing().cables().get("W1");

        assertThat(w.faultFrom().unlimited()).isTrue();
        assertThat(w.faultFrom().maxA()).isNull();
        assertThat(w.faultTo().unlimited()).isFalse();
        assertThat(w.faultTo().maxA()).isPositive();
        assertThat(s.gaps()).hasSize(1);
        assertThat(s.gaps().get(0).unlimited()).isTrue();
        assertThat(s.gaps().get(0).proposed()).isNull();
    }

    @Test
    void equal_limited_sources_side_by_side_share_and_that_is_said() {
        for (double load : List.of(20.0, 40.0, 58.0)) {
            Study s = Sketch.dc(24)
                    .add("G1", new Source.LimitedSupply(28.0, 0, 40.0))
                    .add("G2", new Source.LimitedSupply(28.0, 0, 20.0))
                    .bar("B")
                    .current("E1", load)
                    .link("G1.1", "B.a")
                    .link("G2.1", "B.b")
                    .link("B.c", "E1.1")
                    .study();
            double two = Math.min(20, load / 2);

            assertThat(s.governing().converged()).isTrue();
            assertThat(current(s, "G2")).isCloseTo(two, within(1e-9));
            assertThat(current(s, "G1")).isCloseTo(load - two, within(1e-9));
            assertThat(at(s, "B")).isEqualTo(new FaultRange(60.0, 60.0));
            assertThat(s.governing().remarks()).anyMatch(r -> r.message().key().equals("study.assumed.equal-share"));
        }
    }

    private static double current(Study s, String source) {
        return s.governing().components().get(source).terminals().get(0).currentA();
    }

    @Test
    void sources_that_contradict_each_other_are_both_named() {
        Study s = Sketch.dc(24)
                .supply("GB1", 24, 0)
                .supply("GB2", 25, 0)
                .link("GB1.1", "GB2.1")
                .study();
        Remark r = s.governing().remarks().stream()
                .filter(x -> x.kind() == Remark.Kind.CONTRADICTION)
                .findFirst()
                .orElseThrow();

        assertThat(r.message().arguments().get(0)).isEqualTo(List.of("GB1", "GB2"));
        assertThat(s.governing().converged()).isFalse();
    }

    @Test
    void breaking_capacity_counts_what_a_person_can_switch_together_though_no_condition_does() {
        // 1.5 kA each, together 3 kA: more than the 2 kA of SF 30 (ISO 8820-5)
        Sketch s = Sketch.dc(24)
                .supply("GB1", 24, 0.016)
                .supply("GB2", 24, 0.016)
                .isolator("Q1", Position.CLOSED)
                .isolator("Q2", Position.OPEN)
                .add("F1", new Protection.Fuse("iso8820-sf30", 40.0, null, null, 0.0, Poles.POSITIVE))
                .bar("B")
                .power("E1", 100)
                .link("GB1.1", "Q1.1")
                .link("GB2.1", "Q2.1")
                .link("Q1.2", "B.a")
                .link("Q2.2", "B.b")
                .link("B.c", "F1.1")
                .cable("W1", "F1.2", "E1.1", 2, 10);

        assertThat(s.study().gaps()).extracting(Gap::kind).containsExactly(Gap.Kind.CANNOT_BREAK);
    }
}
