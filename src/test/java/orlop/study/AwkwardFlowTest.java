package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import orlop.drawing.Chemistry;
import orlop.drawing.Conversion;
import orlop.drawing.Poles;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.findings.Checker;
import orlop.findings.Finding;

/** Direct-current flow where it is awkward: banks, rings, converters, controllers. Laws by hand beside each figure. */
@SuppressWarnings("NullAway") // a null fails the test
class AwkwardFlowTest {
    private static TerminalResult terminal(Study s, String component, int n) {
        return s.governing().components().get(component).terminals().get(n - 1);
    }

    private static Source.Battery battery(Chemistry chemistry, Double chargeLimitA, Double dischargeLimitA) {
        return new Source.Battery(chemistry, 1, 1, 200.0, null, null, chargeLimitA, dischargeLimitA, 100);
    }

    private static Source.Battery battery(double emfV, double ohm, Double chargeLimitA, Double dischargeLimitA) {
        return new Source.Battery(Chemistry.AGM, 1, 1, 200.0, emfV, ohm, chargeLimitA, dischargeLimitA, 80);
    }

    private static Conversion.DcDcConverter dcdc(Double ratedW, double setV, double efficiency, double idleW) {
        return new Conversion.DcDcConverter(ratedW, setV, 0, efficiency, idleW, true, null, true);
    }

    @Test
    void a_lithium_bank_charges_the_lead_bank_beside_it() {
        Study s = AwkwardTest.sound(Sketch.dc(12)
                .add("GB1", battery(Chemistry.LITHIUM_IRON_PHOSPHATE, null, null))
                .add("GB2", battery(Chemistry.AGM, null, null))
                .ohm("W1", "GB1.1", "GB2.1", 0.01));
        double ohm = 0.4 / 200 + 0.5 / 200 + 0.01; // of both banks by our estimates, and the cable

        assertThat(terminal(s, "GB1", 1).currentA()).isCloseTo((13.4 - 12.7) / ohm, within(1e-6));
        assertThat(terminal(s, "GB2", 1).currentA()).isCloseTo(-(13.4 - 12.7) / ohm, within(1e-6));
    }

    @Test
    void a_ring_main_shares_by_resistance() {
        Study s = AwkwardTest.sound(Sketch.dc(12)
                .supply("G", 12, 0)
                .bar("A")
                .bar("B")
                .current("E1", 9)
                .link("G.1", "A.g")
                .ohm("W1", "A.1", "B.1", 0.01)
                .ohm("W2", "A.2", "B.2", 0.02)
                .link("B.e", "E1.1"));

        assertThat(s.governing().cables().get("W1").currentA()).isCloseTo(6, within(1e-9));
        assertThat(s.governing().cables().get("W2").currentA()).isCloseTo(3, within(1e-9));
    }

    @Test
    void a_changeover_works_from_its_common_terminal_too() {
        Study s = AwkwardTest.sound(Sketch.dc(12)
                .supply("G", 12, 0)
                .add("Q", new Switching.Changeover(2, null, Poles.POSITIVE, 2, ""))
                .resistance("E1", 6)
                .resistance("E2", 4)
                .link("G.1", "Q.3")
                .link("Q.1", "E1.1")
                .link("Q.2", "E2.1"));

        assertThat(s.governing().components().get("E1").live()).isFalse();
        assertThat(terminal(s, "E2", 1).currentA()).isCloseTo(3, within(1e-9));
        assertThat(terminal(s, "Q", 3).currentA())
                .as("from the way to the common")
                .isCloseTo(-3, within(1e-9));
    }

    /** The first feeds the second, which feeds the first one's input: what they lose goes round and comes from the bank. */
    @Test
    void two_converters_in_a_ring_with_a_bank_come_to_rest() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .system("12", 12)
                .supply("G", 25, 0.01)
                .bar("A")
                .bar("B", "12")
                .add("T1", dcdc(480.0, 12.5, 0.9, 2), "S", "12")
                .add("T2", dcdc(240.0, 24.0, 0.9, 2), "12", "S")
                .add("E1", Sketch.load(orlop.drawing.LoadBehaviour.POWER, 100), "12")
                .link("G.1", "A.g")
                .link("A.1", "T1.1")
                .link("T1.2", "B.1")
                .link("B.2", "T2.1")
                .link("T2.2", "A.2")
                .link("B.3", "E1.1"));

        assertThat(s.governing().converged()).isTrue();
        assertThat(terminal(s, "T2", 2).currentA())
                .as("the bank lies above its set voltage")
                .isCloseTo(0, within(1e-9));
        assertThat(terminal(s, "T1", 1).powerW()).isCloseTo((100 + 2) / 0.9 + 2, within(1e-6));
    }

    @Test
    void two_converters_that_feed_each_other_hard_are_a_result_or_a_finding() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .system("12", 12)
                .supply("G", 23, 0.01)
                .bar("A")
                .bar("B", "12")
                .add("T1", dcdc(480.0, 12.5, 0.9, 2), "S", "12")
                .add("T2", dcdc(240.0, 28.0, 0.9, 2), "12", "S")
                .link("G.1", "A.g")
                .link("A.1", "T1.1")
                .link("T1.2", "B.1")
                .link("B.2", "T2.1")
                .link("T2.2", "A.2"));

        if (s.governing().converged()) {
            double round = terminal(s, "T2", 2).powerW();
            assertThat(terminal(s, "T2", 1).powerW()).isCloseTo(round / 0.9 + 2, within(1e-6));
            assertThat(terminal(s, "T1", 2).powerW()).isCloseTo(round / 0.9 + 2, within(1e-6));
        } else {
            assertThat(Checker.check(s))
                    .extracting(Finding::rule)
                    .containsAnyOf("contradictory-sources", "no-operating-point");
        }
    }

    @Test
    void a_converter_that_is_asked_for_more_than_its_rating_is_said() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .system("12", 12)
                .supply("G", 25, 0.01)
                .add("T1", dcdc(120.0, 12.0, 0.9, 2), "S", "12")
                .add("E1", Sketch.load(orlop.drawing.LoadBehaviour.RESISTANCE, 0.9), "12")
                .link("G.1", "T1.1")
                .link("T1.2", "E1.1"));

        assertThat(terminal(s, "T1", 2).currentA())
                .as("its rating over its voltage")
                .isCloseTo(10, within(1e-9));
        assertThat(terminal(s, "E1", 1).voltageV()).isCloseTo(9, within(1e-9));
        assertThat(Checker.check(s))
                .filteredOn(f -> f.rule().equals("beyond-rating"))
                .extracting(f -> f.place().item())
                .containsExactly("T1");
    }

    @Test
    void a_converter_whose_load_takes_more_power_than_it_gives_has_no_operating_point() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .system("12", 12)
                .supply("G", 25, 0.01)
                .add("T1", dcdc(120.0, 12.0, 0.9, 2), "S", "12")
                .add("E1", Sketch.load(orlop.drawing.LoadBehaviour.POWER, 300), "12")
                .link("G.1", "T1.1")
                .link("T1.2", "E1.1"));

        assertThat(Checker.check(s)).extracting(Finding::rule).contains("no-operating-point");
        assertThat(s.governing().components().get("G").terminals().get(0).voltageV())
                .as("the other island works on")
                .isNotNull();
    }

    @Test
    void an_unloaded_converter_draws_its_idle_power() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .system("12", 12)
                .supply("G", 25, 0)
                .add("T1", dcdc(120.0, 12.0, 0.9, 5), "S", "12")
                .link("G.1", "T1.1"));

        assertThat(terminal(s, "T1", 1).powerW()).isCloseTo(5, within(1e-9));
        assertThat(terminal(s, "T1", 1).currentA()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void a_cable_from_a_bar_to_itself_carries_nothing() {
        Study s = AwkwardTest.sound(Sketch.dc(12)
                .supply("G", 12, 0.01)
                .bar("A")
                .resistance("E1", 4)
                .link("G.1", "A.g")
                .cable("W1", "A.1", "A.2", 5, 10)
                .link("A.3", "E1.1"));

        assertThat(s.governing().cables().get("W1").currentA()).isZero();
        assertThat(s.governing().cables().get("W1").dropV()).isZero();
        assertThat(terminal(s, "E1", 1).currentA()).isCloseTo(12 / 4.01, within(1e-9));
    }

    @Test
    void equal_chargers_without_slope_share_and_that_is_said() {
        Sketch sketch = Sketch.dc(24)
                .bar("B")
                .supply("GB", 25, 0.1)
                .add("G1", new Source.LimitedSupply(28.0, 0, 40.0))
                .add("G2", new Source.LimitedSupply(28.0, 0, 40.0))
                .link("GB.1", "B.a")
                .link("G1.1", "B.b")
                .link("G2.1", "B.c");
        Study s = AwkwardTest.sound(sketch);

        assertThat(terminal(s, "GB", 1).currentA()).isCloseTo(-30, within(1e-9));
        assertThat(terminal(s, "G1", 1).currentA() + terminal(s, "G2", 1).currentA())
                .isCloseTo(30, within(1e-9));
        assertThat(s.governing().remarks()).extracting(r -> r.message().key()).contains("study.assumed.equal-share");
    }

    /** By Kirchhoff's current law and Ohm's law alone: what both give flows into the bank, whatever they would hold. */
    @Test
    void equal_chargers_that_are_both_too_small_give_their_limits_and_no_more() {
        Sketch sketch = Sketch.dc(24)
                .bar("B")
                .supply("GB", 25, 0.1)
                .add("G1", new Source.LimitedSupply(28.0, 0, 10.0))
                .add("G2", new Source.LimitedSupply(28.0, 0, 6.0))
                .add("G3", new Source.LimitedSupply(28.0, 0, 0.0))
                .link("GB.1", "B.a")
                .link("G1.1", "B.b")
                .link("G2.1", "B.c")
                .link("G3.1", "B.d");
        Study s = AwkwardTest.sound(sketch);

        assertThat(terminal(s, "G1", 1).currentA()).isCloseTo(10, within(1e-9));
        assertThat(terminal(s, "G2", 1).currentA()).isCloseTo(6, within(1e-9));
        assertThat(terminal(s, "G3", 1).currentA()).isCloseTo(0, within(1e-9));
        assertThat(terminal(s, "GB", 1).currentA()).isCloseTo(-16, within(1e-9));
        assertThat(terminal(s, "GB", 1).voltageV()).isCloseTo(25 + 16 * 0.1, within(1e-9));
    }

    /** By Kirchhoff's current law: a bank takes what all chargers may give, or what lifts it to their voltage. */
    @Test
    void chargers_of_any_limits_side_by_side_charge_as_one_of_all_their_limits() {
        Random random = new Random(28);
        for (int n = 0; n < 200; n++) {
            Sketch sketch = Sketch.dc(24).bar("B").supply("GB", 25, 0.1).link("GB.1", "B.a");
            double most = 0;
            int chargers = 2 + random.nextInt(4);
            for (int k = 1; k <= chargers; k++) {
                double limitA = random.nextInt(15);
                most += limitA;
                sketch.add("G" + k, new Source.LimitedSupply(28.0, 0, limitA)).link("G" + k + ".1", "B." + k);
            }
            Study s = AwkwardTest.sound(sketch);
            assertThat(-terminal(s, "GB", 1).currentA())
                    .as("drawing %s of chargers for %s A", n, most)
                    .isCloseTo(Math.min(most, (28 - 25) / 0.1), within(1e-8));
        }
    }

    @Test
    void a_bank_charged_beyond_its_limit_is_said() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .add("GB", battery(25.0, 0.1, 10.0, null))
                .add("G1", new Source.LimitedSupply(28.0, 0, 40.0))
                .link("GB.1", "G1.1"));

        assertThat(terminal(s, "GB", 1).currentA()).isCloseTo(-30, within(1e-9));
        assertThat(Checker.check(s))
                .filteredOn(f -> f.rule().equals("beyond-rating"))
                .extracting(f -> f.place().item())
                .containsExactly("GB");
    }

    @Test
    void a_bank_discharged_beyond_what_its_management_lets_through_is_said() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .add("GB", battery(25.0, 0.01, null, 50.0))
                .current("E1", 60)
                .link("GB.1", "E1.1"));

        assertThat(Checker.check(s))
                .filteredOn(f -> f.rule().equals("beyond-rating"))
                .extracting(f -> f.place().item())
                .containsExactly("GB");
    }

    @Test
    void a_bank_within_its_limits_is_not_spoken_of() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .add("GB", battery(25.0, 0.01, 100.0, 100.0))
                .current("E1", 60)
                .link("GB.1", "E1.1"));

        assertThat(Checker.check(s)).extracting(Finding::rule).doesNotContain("beyond-rating");
    }

    @Test
    void a_diode_isolator_with_equal_banks_shares() {
        Study s = AwkwardTest.sound(Sketch.dc(12)
                .add("G", new Source.LimitedSupply(14.4, 0.01, 30.0))
                .add("RA", new Switching.DiodeIsolator(2, null, 0.7))
                .supply("GB1", 12.6, 0.05)
                .supply("GB2", 12.6, 0.05)
                .link("G.1", "RA.1")
                .ohm("W1", "RA.2", "GB1.1", 0.01)
                .ohm("W2", "RA.3", "GB2.1", 0.01));
        double each = (14.4 - 0.7 - 12.6) / (2 * 0.01 + 0.06);

        assertThat(s.governing().cables().get("W1").currentA()).isCloseTo(each, within(1e-6));
        assertThat(s.governing().cables().get("W2").currentA()).isCloseTo(each, within(1e-6));
    }

    /** An alternator on the start bank, the house bank behind a relay that closes at 13.3 V. */
    private static Sketch relay(Double closesV, Double opensV, double alternatorA) {
        return Sketch.dc(12)
                .supply("GB1", 12.7, 0.02)
                .supply("GB2", 12.4, 0.02)
                .add("G", new Source.LimitedSupply(14.4, 0, alternatorA))
                .add("K1", new Switching.CombiningRelay(null, closesV, opensV, orlop.drawing.Position.OPEN))
                .link("G.1", "GB1.1")
                .ohm("W1", "GB1.1", "K1.1", 0.01)
                .ohm("W2", "K1.2", "GB2.1", 0.01)
                .condition("run")
                .condition("stop")
                .source("stop", "G", "off")
                .condition("forced")
                .position("forced", "K1", "closed")
                .source("forced", "G", "off");
    }

    private static java.util.List<String> said(Study s, String condition) {
        return s.of(condition).remarks().stream().map(r -> r.message().key()).toList();
    }

    @Test
    void a_combining_relay_closes_while_one_side_is_charged() {
        Study s = AwkwardTest.sound(relay(13.3, 12.8, 200));

        assertThat(s.of("run").cables().get("W1").currentA()).isCloseTo((14.4 - 12.4) / 0.04, within(1e-6));
        assertThat(said(s, "run")).contains("study.assumed.relay-closed");
        assertThat(s.of("stop").cables().get("W1").currentA()).isCloseTo(0, within(1e-9));
        assertThat(said(s, "stop")).contains("study.assumed.relay-open");
        assertThat(s.of("forced").cables().get("W1").currentA())
                .as("what the condition says holds")
                .isCloseTo((12.7 - 12.4) / 0.06, within(1e-6));
        assertThat(said(s, "forced")).noneMatch(k -> k.startsWith("study.assumed.relay"));
        assertThat(Topology.of(s, "run").fedFromComponent("GB2"))
                .extracting(orlop.network.Reaches.FedFrom::source)
                .contains("G", "GB1");
        assertThat(Topology.of(s, "stop").fedFromComponent("GB2"))
                .extracting(orlop.network.Reaches.FedFrom::source)
                .containsExactly("GB2");
    }

    @Test
    void a_relay_that_would_open_at_once_is_said() {
        Study s = AwkwardTest.sound(relay(13.3, 13.2, 35)); // 13.4 V open, (12.7 / 0.02 + 12.4 / 0.04 + 35) V joined

        assertThat(said(s, "run")).contains("study.assumed.relay-closed", "study.assumed.relay-chatters");
    }

    @Test
    void a_relay_of_unknown_voltage_stands_as_drawn() {
        Study s = AwkwardTest.sound(relay(null, null, 200));

        assertThat(s.of("run").cables().get("W1").currentA()).isCloseTo(0, within(1e-9));
        assertThat(said(s, "run")).noneMatch(k -> k.startsWith("study.assumed.relay"));
    }
}
