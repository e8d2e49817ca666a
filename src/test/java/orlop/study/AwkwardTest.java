package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Kind;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.findings.Checker;
import orlop.findings.Finding;

/** Drawings that are wrong, odd or unfinished: remarks and findings, never an exception, never NaN. */
@SuppressWarnings("NullAway") // a null fails the test
class AwkwardTest {
    /** Studies and checks, and looks into every number. */
    static Study sound(Sketch s) {
        Study study = s.study();
        List<Finding> findings = Checker.check(study);
        assertThat(findings).isNotNull();
        String all = study.byCondition() + " " + study.governing() + " " + study.gaps() + findings;
        all = all.replace("Quantity[value=NaN", ""); // a figure that is not known is shown as a dash
        assertThat(all).doesNotContain("NaN").doesNotContain("Infinity");
        return study;
    }

    private static Double volts(Study s, String point) {
        return s.governing().points().get(point).voltageV();
    }

    @Test
    void nothing_at_all() {
        Study s = sound(Sketch.dc(24));

        assertThat(s.byCondition()).containsOnlyKeys("as-drawn");
        assertThat(s.governing().converged()).isTrue();
    }

    @Test
    void a_load_with_no_path_is_dead_and_said() {
        Sketch sketch = Sketch.dc(12)
                .supply("G", 12.6, 0.01)
                .power("E1", 10)
                .power("E2", 10)
                .link("G.1", "E1.1");
        Study s = sound(sketch);

        assertThat(s.governing().components().get("E2").live()).isFalse();
        assertThat(Checker.check(s)).extracting(Finding::rule).contains("load-without-source");
    }

    @Test
    void an_open_isolator_leaves_what_is_behind_it_dead() {
        Study s = sound(Sketch.dc(12)
                .supply("G", 12.6, 0.01)
                .isolator("Q", Position.OPEN)
                .power("E1", 10)
                .link("G.1", "Q.1")
                .cable("W1", "Q.2", "E1.1", 3, 2.5));

        assertThat(s.governing().cables().get("W1").live()).isFalse();
        assertThat(s.governing().cables().get("W1").currentA()).isNull();
        assertThat(s.governing().cables().get("W1").faultTo()).isEqualTo(FaultRange.NONE);
        assertThat(s.governing().components().get("E1").feedingPath()).isEmpty();
    }

    @Test
    void a_changeover_feeds_from_the_way_it_stands_on() {
        Sketch sketch = Sketch.dc(12)
                .supply("G1", 12.0, 0.01)
                .supply("G2", 13.0, 0.01)
                .add("Q", new Switching.Changeover(2, null, Poles.POSITIVE, 1, ""))
                .resistance("E1", 10)
                .link("G1.1", "Q.1")
                .link("G2.1", "Q.2")
                .link("Q.3", "E1.1")
                .condition("one")
                .condition("two")
                .position("two", "Q", "2")
                .condition("off")
                .position("off", "Q", "0");
        Study s = sound(sketch);

        assertThat(s.of("one").components().get("E1").terminals().get(0).voltageV())
                .isCloseTo(12, within(0.02));
        assertThat(s.of("two").components().get("E1").terminals().get(0).voltageV())
                .isCloseTo(13, within(0.02));
        assertThat(s.of("off").components().get("E1").live()).isFalse();
        assertThat(s.governing().components().get("E1").terminals().get(0).voltageV())
                .isCloseTo(12, within(0.02));
    }

    @Test
    void a_system_of_no_voltage() {
        Study s = sound(Sketch.dc(0)
                .supply("G", 0, 0.01)
                .power("E1", 10)
                .resistance("E2", 3)
                .cable("W1", "G.1", "E1.1", 3, 2.5)
                .link("E1.1", "E2.1"));

        assertThat(s.governing().remarks()).extracting(Remark::kind).contains(Remark.Kind.COLLAPSE);
    }

    @Test
    void lengths_and_currents_beyond_all_measure() {
        for (double metres : new double[] {1e300, 1.7e308, 1e-300}) {
            for (double amps : new double[] {1e-300, 1e9, 1e300}) {
                Sketch s = Sketch.dc(24)
                        .supply("G", 25, 0.01)
                        .bar("B")
                        .fuse("F", "gg", 16)
                        .link("G.1", "F.1")
                        .auto("W0", "F.2", "B.a", metres)
                        .current("E1", amps)
                        .power("E2", amps)
                        .resistance("E3", 1 / amps)
                        .current("E4", amps)
                        .auto("W1", "B.b", "E1.1", metres)
                        .auto("W2", "B.c", "E2.1", 1)
                        .cable("W3", "B.d", "E3.1", metres, 1e300)
                        .cable("W4", "B.e", "E4.1", 1, 1e-300);
                Study study = sound(s);
                if (amps >= 1e9) {
                    assertThat(Checker.check(study))
                            .extracting(Finding::rule)
                            .containsAnyOf("no-area-fits", "no-operating-point", "drop-too-high");
                }
            }
        }
    }

    @Test
    void a_load_that_no_cable_carries_is_said_and_runs_are_proposed_where_they_would_do() {
        Study s = sound(Sketch.dc(24)
                .supply("G", 24, 0)
                .current("E1", 1e9)
                .current("E2", 2_000)
                .auto("W1", "G.1", "E1.1", 1e-3)
                .auto("W2", "G.1", "E2.1", 1e-3));

        assertThat(Checker.check(s).stream()
                        .filter(f -> f.rule().equals("no-area-fits"))
                        .map(f -> f.place().item() + " " + (f.cure() != null)))
                .containsExactly("W1 false", "W2 true");
    }

    @Test
    void absurd_values() {
        Study s = sound(Sketch.dc(24)
                .supply("G", 25, 0.01)
                .power("E1", 1e9)
                .current("E2", 1e9)
                .resistance("E3", 1e-9)
                .cable("W1", "G.1", "E1.1", 1e6, 0.5)
                .auto("W2", "G.1", "E2.1", 1e5)
                .auto("W3", "G.1", "E3.1", 1e5));

        assertThat(s.governing().converged()).isFalse();
        assertThat(s.governing().cables().get("W2").governedBy()).isEqualTo(GovernedBy.NOTHING_FITS);
    }

    @Test
    void a_load_of_a_gigawatt_collapses_its_own_island_only() {
        Study s = sound(Sketch.dc(24)
                .supply("G", 25, 0.01)
                .power("E1", 1e9)
                .link("G.1", "E1.1")
                .supply("G2", 25, 0.01)
                .resistance("E2", 5)
                .link("G2.1", "E2.1"));

        assertThat(volts(s, "G")).isNull();
        assertThat(volts(s, "G2")).isCloseTo(25, within(0.1));
        assertThat(Checker.check(s)).extracting(Finding::rule).contains("no-operating-point");
    }

    @Test
    void ideal_sources_that_contradict_each_other() {
        Study s = sound(Sketch.dc(24).supply("G1", 24, 0).supply("G2", 25, 0).link("G1.1", "G2.1"));

        assertThat(s.governing().remarks()).extracting(Remark::kind).contains(Remark.Kind.CONTRADICTION);
        assertThat(Checker.check(s)).extracting(Finding::rule).contains("contradictory-sources");
    }

    @Test
    void equal_ideal_sources_share_alike() {
        Study s = sound(Sketch.dc(24)
                .supply("G1", 24, 0)
                .supply("G2", 24, 0)
                .resistance("E1", 2)
                .link("G1.1", "G2.1")
                .link("G1.1", "E1.1"));

        assertThat(s.governing().components().get("G1").terminals().get(0).currentA())
                .isCloseTo(6, within(1e-9));
        assertThat(s.governing().components().get("G2").terminals().get(0).currentA())
                .isCloseTo(6, within(1e-9));
    }

    @Test
    void rings_without_resistance() {
        Study s = sound(Sketch.dc(24)
                .supply("G1", 24, 0.1)
                .bar("A")
                .bar("B")
                .fuse("F1", "gg", 63)
                .fuse("F2", "gg", 63)
                .resistance("E1", 2)
                .link("G1.1", "A.a")
                .link("A.b", "F1.1")
                .link("A.c", "F2.1")
                .link("F1.2", "B.a")
                .link("F2.2", "B.b")
                .link("B.c", "E1.1"));

        assertThat(s.governing().components().get("F1").terminals().get(0).currentA())
                .as("the shares of two parallel fuses without resistance are not determined")
                .isNull();
        assertThat(s.governing().components().get("E1").terminals().get(0).currentA())
                .isCloseTo(24 / 2.1, within(1e-9));
    }

    @Test
    void two_unequal_batteries_in_parallel_exchange_current() {
        Study s = sound(
                Sketch.dc(24).supply("G1", 25.6, 0.01).supply("G2", 24.6, 0.01).ohm("W1", "G1.1", "G2.1", 0.03));

        assertThat(s.governing().cables().get("W1").currentA()).isCloseTo(20, within(1e-9));
        assertThat(s.governing().components().get("G2").terminals().get(0).currentA())
                .isCloseTo(-20, within(1e-9));
    }

    @Test
    void a_one_way_supply_is_not_charged() {
        Study s = sound(Sketch.dc(24)
                .add("G1", new Source.Supply(25.0, 0, 0.01, 0, true))
                .supply("G2", 26, 0.01)
                .resistance("E1", 5)
                .link("G1.1", "G2.1")
                .link("G1.1", "E1.1"));

        assertThat(s.governing().components().get("G1").terminals().get(0).currentA())
                .isZero();
    }

    @Test
    void a_charger_without_resistance_holds_its_voltage_until_its_limit() {
        Sketch light = charger(10);
        Sketch heavy = charger(0.4);

        assertThat(volts(sound(light), "B")).isCloseTo(28, within(1e-9));
        Study s = sound(heavy);
        assertThat(s.governing().components().get("G2").terminals().get(0).currentA())
                .isCloseTo(40, within(1e-9));
        assertThat(volts(s, "B")).isLessThan(28);
    }

    /** In direct current a reactance is nothing: what has no resistance joins. */
    @Test
    void a_reactance_without_resistance_carries_direct_current() {
        Study s = Sketch.dc(24)
                .supply("G1", 24, 0.5)
                .add("Z1", new orlop.drawing.Distribution.Impedance(0, 0.3))
                .resistance("E1", 5.5)
                .link("G1.1", "Z1.1")
                .link("Z1.2", "E1.1")
                .study();

        assertThat(s.governing().components().get("E1").terminals().get(0).currentA())
                .isCloseTo(4, within(1e-9)); // 24 V over 6 Ω
    }

    /** Ohm's law and the source's limit; no network needs solving. */
    @Test
    void a_limited_source_alone_drives_its_limit_or_what_its_voltage_drives_through_a_long_way() {
        Study s = Sketch.dc(24)
                .add("G2", new Source.LimitedSupply(28.0, 0, 40.0))
                .bar("B")
                .current("E1", 1)
                .ohm("W1", "G2.1", "B.a", 0.01)
                .ohm("W2", "B.b", "E1.1", 2)
                .study();

        assertThat(s.governing().cables().get("W1").faultTo().maxA()).isCloseTo(40, within(1e-9));
        assertThat(s.governing().cables().get("W2").faultTo().maxA()).isCloseTo(28 / 2.01, within(1e-9));
    }

    private static Sketch charger(double loadOhm) {
        return Sketch.dc(24)
                .bar("B")
                .supply("G1", 25, 0.1)
                .add("G2", new Source.LimitedSupply(28.0, 0, 40.0))
                .resistance("E1", loadOhm)
                .link("G1.1", "B.a")
                .link("G2.1", "B.b")
                .link("E1.1", "B.c");
    }

    @Test
    void a_diode_isolator_lets_the_batteries_charge_and_not_exchange() {
        Study s = sound(Sketch.dc(12)
                .add("G", new Source.Alternator(80.0, 20.0, 14.4, orlop.drawing.KnownReturn.ISOLATED))
                .add("RA", new Switching.DiodeIsolator(2, null, 0.7))
                .supply("GB1", 12.8, 0.02)
                .supply("GB2", 12.0, 0.05)
                .link("G.1", "RA.1")
                .ohm("W1", "RA.2", "GB1.1", 0.005)
                .ohm("W2", "RA.3", "GB2.1", 0.005)
                .condition("run")
                .condition("stop")
                .source("stop", "G", "off"));

        assertThat(s.of("run").cables().get("W1").currentA()).isCloseTo((13.7 - 12.8) / 0.025, within(1e-6));
        assertThat(s.of("run").cables().get("W2").currentA()).isCloseTo((13.7 - 12.0) / 0.055, within(1e-6));
        assertThat(s.of("stop").cables().get("W1").currentA()).isCloseTo(0, within(1e-9));
        assertThat(s.of("stop").points().get("G").voltageV()).isNull();
    }

    @Test
    void a_return_that_is_drawn() {
        Study s = sound(Sketch.dc(24)
                .supply("G", 25, 0)
                .bar("NEG")
                .add("BC", Kind.SHUNT.defaults())
                .resistance("E1", 5)
                .link("G.1", "E1.1")
                .ohm("W1", "G.2", "BC.1", 0.1)
                .link("BC.2", "NEG.a"));

        assertThat(s.governing().components().get("E1").terminals().get(0).currentA())
                .isCloseTo(25 / 5.1, within(1e-9));
        assertThat(volts(s, "NEG")).isZero();
    }

    @Test
    void a_return_is_drawn_from_either_end() {
        Sketch s = Sketch.dc(24).supply("G", 25, 0).resistance("E1", 5).link("G.1", "E1.1");
        Study away = sound(s.ohm("W1", "G.2", "E1.2", 0.1));
        Study back = sound(Sketch.dc(24)
                .supply("G", 25, 0)
                .resistance("E1", 5)
                .link("G.1", "E1.1")
                .ohm("W1", "E1.2", "G.2", 0.1));

        assertThat(away.governing().cables().get("W1").currentA()).isCloseTo(-25 / 5.1, within(1e-9));
        assertThat(back.governing().cables().get("W1").currentA()).isCloseTo(25 / 5.1, within(1e-9));
    }

    @Test
    void parts_half_wired_and_unknown() {
        Sketch s = Sketch.dc(24).bar("B");
        int n = 0;
        for (Kind k : Kind.values()) {
            n++;
            String[] systems = k.spansSystems() ? new String[] {"S", "S"} : new String[] {"S"};
            s.add("X" + n, k.defaults(), systems);
            String terminal = k.terminals() == Kind.Terminals.ANY ? "a" : "1";
            s.auto("W" + n, "B.t" + n, "X" + n + "." + terminal, 1);
        }

        Study study = sound(s);
        assertThat(study.governing().remarks()).isNotEmpty();
    }
}
