package orlop.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Extras;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Message;
import orlop.drawing.Nature;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.RefitStatus;
import orlop.drawing.Source;
import orlop.drawing.Words;
import orlop.study.Sketch;
import orlop.study.Study;

/** The rules, each on a small drawing that breaks it and nothing else of its kind. */
@SuppressWarnings("NullAway") // a null fails the test
class CheckerTest {
    static List<Finding> check(Sketch s) {
        return Checker.check(s.study());
    }

    static Finding only(Sketch s, String rule) {
        List<Finding> found =
                check(s).stream().filter(f -> f.rule().equals(rule)).toList();
        assertThat(found).as(rule).hasSize(1);
        return found.get(0);
    }

    private static String text(Message m) {
        return Words.english().text(m);
    }

    /** A battery, its fuse, one circuit; everything in order. */
    static Sketch sound() {
        return Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.05)
                .fuse("F1", "iso8820-c", 15)
                .power("E1", 120)
                .link("GB1.1", "F1.1", 0.1)
                .cable("W1", "F1.2", "E1.1", 6, 4);
    }

    @Test
    void a_sound_drawing_has_neither_danger_nor_defect() {
        assertThat(check(sound())).noneMatch(f -> f.severity() != Severity.ADVICE);
    }

    @Test
    void a_missing_fuse_is_a_danger_with_a_device_to_insert() {
        Sketch s = sound().power("E2", 60).cable("W2", "GB1.1", "E2.1", 5, 2.5);
        Finding f = only(s, "missing-fuse");

        assertThat(f.severity()).isEqualTo(Severity.DANGER);
        assertThat(f.place()).isEqualTo(Finding.Place.on("W2", true, 0));
        assertThat(f.cure()).isInstanceOf(Cure.InsertDevice.class);
        assertThat(f.proposed().ratingA()).isBetween(2.5, 10.0);
        assertThat(f.clause()).contains("13297");
        assertThat(f.provenance()).isEqualTo("memory");
        assertThat(text(f.message())).contains("W2", "GB1", "2.5 mm²");
        assertThat(text(f.cure().label())).startsWith("insert");
    }

    @Test
    void a_drop_says_drop_and_limit_and_what_would_cure_it() {
        // 20 A over 2 × 8 m of 2.5 mm², 24 V: far above 10 %
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .fuse("F1", "iso8820-c", 25)
                .add("E1", Sketch.load(orlop.drawing.LoadBehaviour.CURRENT, 20))
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "E1.1", 8, 2.5);
        Finding f = only(s, "drop-too-high");
        Cure.SetArea cure = (Cure.SetArea) f.cure();

        assertThat(f.severity()).isEqualTo(Severity.DEFECT);
        assertThat(text(f.message())).startsWith("Drop 1").contains("limit 10 %", "from GB1 to E1");
        assertThat(cure.cable()).isEqualTo("W1");
        Study cured =
                Study.of(s.drawing().with(s.drawing().cables().require("W1").withAreaMm2(cure.areaMm2())));
        assertThat(Checker.check(cured)).extracting(Finding::rule).doesNotContain("drop-too-high");
        assertThat(cure.areaMm2()).as("the least that does").isEqualTo(4);
    }

    @Test
    void a_cable_too_thin_is_a_danger() {
        Sketch s = Sketch.dc(24, "iec60364")
                .supply("GB1", 25, 0.01)
                .power("E1", 1500)
                .cable("W1", "GB1.1", "E1.1", 0.5, 2.5);
        Finding f = only(s, "cable-too-thin");

        assertThat(f.severity()).isEqualTo(Severity.DANGER);
        assertThat(f.cure()).isInstanceOf(Cure.SetArea.class);
    }

    @Test
    void a_fuse_too_large_is_to_be_replaced() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.05)
                .fuse("F1", "iso8820-c", 40)
                .power("E1", 100)
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "E1.1", 4, 1.5);
        Finding f = only(s, "fuse-too-large");

        assertThat(f.place()).isEqualTo(Finding.Place.component("F1"));
        assertThat(((Cure.ReplaceDevice) f.cure()).ratingA()).isLessThan(40);
        assertThat(text(f.message())).contains("F1", "40 A", "W1", "1.5 mm²");
    }

    @Test
    void a_device_that_cannot_break_and_one_of_too_low_voltage() {
        Sketch s = Sketch.dc(48, "iso13297")
                .supply("GB1", 51.2, 0.005)
                .fuse("F1", "iso8820-sf30", 100)
                .power("E1", 500)
                .link("GB1.1", "F1.1", 0.1)
                .cable("W1", "F1.2", "E1.1", 5, 35);

        assertThat(only(s, "cannot-break").severity()).isEqualTo(Severity.DANGER);
        assertThat(text(only(s, "cannot-break").message())).contains("breaks up to 2 kA", "10 kA");
        assertThat(only(s, "device-voltage").severity()).isEqualTo(Severity.DEFECT);
        assertThat(text(only(s, "device-voltage").message())).contains("32 V", "57.6 V");
    }

    @Test
    void a_device_in_the_negative_alone() {
        Sketch s = sound().add("F2", new Protection.Fuse("iso8820-c", 10.0, null, null, null, Poles.NEGATIVE))
                .power("E2", 60)
                .link("GB1.1", "F2.1")
                .cable("W2", "F2.2", "E2.1", 4, 2.5);

        assertThat(only(s, "negative-only").severity()).isEqualTo(Severity.DANGER);
        assertThat(only(s, "negative-only").cure()).isInstanceOf(Cure.EnterValue.class);
        assertThat(only(s, "missing-fuse").place().item()).isEqualTo("W2");
    }

    /** A breaker marked 400 V (IEC 60898-1) is made for a 400 V supply with its tolerance, not for 500 V. */
    @ParameterizedTest
    @CsvSource({"400, 0", "500, 1"})
    void in_alternating_current_a_device_is_held_against_the_nominal_voltage(double nominalV, int found) {
        Protection.CircuitBreaker marked400V =
                new Protection.CircuitBreaker("mcb-d", 25.0, null, 10.0, null, null, Poles.L3, Position.CLOSED);
        Sketch s = generator(nominalV)
                .add("F1", marked400V, "400")
                .add("E1", load(9_000), "400")
                .link("GA1.1", "F1.1")
                .cable("W1", "F1.2", "E1.1", 5, 4);

        List<Finding> tooLow =
                check(s).stream().filter(f -> f.rule().equals("device-voltage")).toList();
        assertThat(tooLow).hasSize(found);
        assertThat(tooLow).allSatisfy(f -> assertThat(text(f.message())).contains("up to 400 V", "asks for 500 V"));
    }

    private static Sketch generator(double nominalV) {
        Sketch s = Sketch.dc(24, "iec60364");
        s.change(d -> d.with(ElectricalSystem.of("400", Nature.AC3N, nominalV)));
        return s.add(
                "GA1", new Source.Generator(20.0, 0.8, 4, 10.0, 18.0, orlop.drawing.Excitation.SUPPORTED, null), "400");
    }

    private static Consumer.PlainLoad load(double watts) {
        return Sketch.load(LoadBehaviour.POWER, watts);
    }

    @Test
    void what_nobody_can_enter_is_no_finding() {
        Sketch s = generator(400).add("E1", load(2_000), "400").link("GA1.1", "E1.1");

        assertThat(s.study().governing().remarks())
                .extracting(r -> r.message().key())
                .contains("study.assumed.generator-held");
        assertThat(check(s)).extracting(f -> f.place().item()).doesNotContain("GA1");
    }

    @Test
    void what_is_to_be_removed_says_nothing() {
        Sketch s = sound().add("GB2", orlop.drawing.Kind.BATTERY.defaults());
        assertThat(only(s, "assumed").place().item()).isEqualTo("GB2");

        s.change(d -> {
            Component c = d.components().require("GB2");
            return d.with(new Component(
                    c.id(),
                    c.name(),
                    c.place(),
                    c.systems(),
                    RefitStatus.TO_BE_REMOVED,
                    c.stage(),
                    c.location(),
                    c.locked(),
                    c.particulars(),
                    c.extras()));
        });
        assertThat(check(s)).extracting(f -> f.place().item()).doesNotContain("GB2");
    }

    @Test
    void a_load_without_source_only_if_in_all_conditions() {
        Sketch s = sound().isolator("Q1", orlop.drawing.Position.CLOSED)
                .power("E2", 10)
                .power("E3", 10)
                .link("F1.2", "Q1.1")
                .cable("W2", "Q1.2", "E2.1", 2, 4)
                .condition("a")
                .condition("b")
                .position("b", "Q1", "open");

        assertThat(only(s, "load-without-source").place().item()).isEqualTo("E3");
    }

    @Test
    void what_is_not_known_is_said() {
        Sketch s = Sketch.dc(24, "")
                .add("GB1", orlop.drawing.Kind.BATTERY.defaults())
                .add("F1", orlop.drawing.Kind.FUSE.defaults())
                .add("E1", orlop.drawing.Kind.MOTOR.defaults())
                .link("GB1.1", "F1.1");
        s.change(d -> d.with(orlop.drawing.Cable.of("W1", Sketch.t("F1.2"), Sketch.t("E1.1"))));
        List<Finding> found = check(s);

        assertThat(found)
                .filteredOn(f -> f.rule().equals("assumed"))
                .extracting(f -> f.place().item())
                .contains("", "GB1", "E1");
        assertThat(found).extracting(Finding::rule).contains("no-length", "no-rating");
        assertThat(found).extracting(Finding::severity).doesNotContain(Severity.DEFECT);
    }

    @Test
    void a_load_that_never_runs() {
        Sketch s =
                sound().condition("a").condition("b").load("a", "E1", false, 1).load("b", "E1", false, 1);

        assertThat(only(s, "never-runs").place().item()).isEqualTo("E1");
    }

    @Test
    void the_gravest_comes_first_then_the_order_of_the_drawing() {
        Sketch s = sound().power("E2", 60)
                .cable("W3", "GB1.1", "E2.1", 5, 2.5)
                .power("E9", 10)
                .power("E8", 10);
        List<Finding> found = check(s);

        assertThat(found.get(0).severity()).isEqualTo(Severity.DANGER);
        assertThat(found).isSortedAccordingTo(java.util.Comparator.comparing(Finding::severity));
        assertThat(found)
                .filteredOn(f -> f.rule().equals("load-without-source"))
                .extracting(f -> f.place().item())
                .containsExactly("E9", "E8");
    }

    @Test
    void a_device_that_the_lowest_fault_does_not_open_says_both_currents() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 24, 0.01)
                .fuse("F1", "gg", 10)
                .power("E1", 5)
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "E1.1", 60, 1.5);
        Finding f = only(s, "does-not-open");

        assertThat(f.severity()).as("the cable carries it").isEqualTo(Severity.DEFECT);
        assertThat(f.place()).isEqualTo(Finding.Place.component("F1"));
        assertThat(text(f.message())).contains("F1, 10 A", "19 A", "W1");
        assertThat(f.cure()).isInstanceOf(Cure.ReplaceDevice.class);
        assertThat(f.provenance()).isEqualTo("memory");
    }

    @Test
    void a_bar_that_nothing_feeds_in_any_position() {
        Sketch s = sound().bar("B1")
                .bar("B2")
                .isolator("Q1", orlop.drawing.Position.OPEN)
                .link("F1.2", "Q1.1")
                .cable("W2", "Q1.2", "B1.a", 2, 4);

        assertThat(only(s, "bar-without-source").place().item()).isEqualTo("B2");
        assertThat(text(only(s, "bar-without-source").message())).contains("B2", "draw what feeds it");
    }

    @Test
    void a_drawn_negative_bar_is_no_bar_without_source() {
        Sketch s = sound().bar("NEG").link("GB1.2", "NEG.a").cable("W2", "E1.2", "NEG.b", 6, 4);

        assertThat(check(s)).extracting(Finding::rule).doesNotContain("bar-without-source", "missing-fuse");
    }

    @Test
    void a_cable_that_leads_back_to_its_bar() {
        Sketch s = sound().bar("B1").link("F1.2", "B1.in").cable("W2", "B1.a", "B1.b", 2, 4);

        assertThat(only(s, "cable-to-itself").place()).isEqualTo(Finding.Place.cable("W2"));
    }

    @Test
    void what_stays_on_something_that_goes_is_said() {
        Sketch s = sound().power("E2", 10).cable("W2", "F1.2", "E2.1", 2, 4);
        s.change(d -> {
            var old = d.components().require("E2");
            return d.with(new orlop.drawing.Component(
                    "E2",
                    "",
                    old.place(),
                    old.systems(),
                    orlop.drawing.RefitStatus.TO_BE_REMOVED,
                    old.stage(),
                    "",
                    false,
                    old.particulars(),
                    Extras.NONE));
        });
        Finding f = only(s, "ends-on-removed");

        assertThat(f.place()).isEqualTo(Finding.Place.cable("W2"));
        assertThat(text(f.message())).contains("W2", "E2");
        assertThat(check(s)).extracting(Finding::rule).doesNotContain("load-without-source");
    }

    @Test
    void contradicting_sources_are_both_named() {
        Sketch s = Sketch.dc(24).supply("GB1", 24, 0).supply("GB2", 25, 0).link("GB1.1", "GB2.1");
        Finding f = only(s, "contradictory-sources");

        assertThat(f.place()).isEqualTo(Finding.Place.component("GB1"));
        assertThat(text(f.message())).contains("GB1", "GB2", "give them their resistances");
    }

    @Test
    void a_current_that_nothing_limits_is_said_and_nothing_is_proposed() {
        Sketch s =
                Sketch.dc(24, "iso13297").supply("GB1", 24, 0).power("E1", 60).cable("W1", "GB1.1", "E1.1", 4, 4);
        Finding f = only(s, "missing-fuse");

        assertThat(f.proposed()).isNull();
        assertThat(f.cure()).isNull();
        assertThat(text(f.message())).contains("give the source a resistance").doesNotContain("–");
    }

    @Test
    void every_rule_has_its_words() {
        Set<String> missing = new TreeSet<>();
        for (String rule : Checker.rules()) {
            if (Words.english().pattern("findings." + rule + ".title").isEmpty()) {
                missing.add(rule);
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void a_limit_of_the_system_itself_overrules_the_rule_set() {
        Sketch s = sound();
        s.change(d -> {
            var old = d.systems().require("S");
            return d.with(new orlop.drawing.ElectricalSystem(
                    "S", "", old.nature(), 24, 28.8, 0, old.earthing(), 0.5, 0.5, Extras.NONE));
        });
        Finding f = only(s, "drop-too-high");

        assertThat(text(f.message())).contains("limit 0.5 %");
        assertThat(s.study().governing().components().get("E1").dropLimitPercent())
                .isCloseTo(0.5, within(1e-12));
    }
}
