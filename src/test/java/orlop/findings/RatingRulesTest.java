package orlop.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Consumer;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Excitation;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.drawing.Words;
import orlop.study.Sketch;

/**
 * The current that a circuit is designed for stays below its device's rating: Ib ≤ In, IEC 60364-4-43 433.1 (from memory).
 * That a supply is not asked for more than its rating is common practice, no source.
 */
@SuppressWarnings("NullAway") // a null fails the test
class RatingRulesTest {
    private static List<Finding> found(Sketch s, String rule) {
        return Checker.check(s.study()).stream()
                .filter(f -> f.rule().equals(rule))
                .toList();
    }

    private static String text(Finding f) {
        return Words.english().text(f.message());
    }

    /** A fuse of 10 A before so many amperes, on 6 mm² that would stand 40 A. */
    private static Sketch circuit(double amps) {
        return Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .fuse("F1", "iso8820-c", 10)
                .link("GB1.1", "F1.1", 0.1)
                .current("E1", amps)
                .cable("W1", "F1.2", "E1.1", 4, 6);
    }

    @ParameterizedTest
    @CsvSource({"9.9, 0", "10, 0", "10.1, 1", "14, 1"})
    void a_fuse_of_ten_amperes_carries_ten(double amps, int expected) {
        assertThat(found(circuit(amps), "load-above-device")).hasSize(expected);
    }

    @Test
    void the_next_rating_that_the_cable_stands_is_the_cure() {
        assertThat(found(circuit(14), "load-above-device")).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.DEFECT);
            assertThat(f.place()).isEqualTo(Finding.Place.component("F1"));
            assertThat(f.clause()).contains("433.1");
            assertThat(text(f)).contains("F1, 10 A", "14 A");
            assertThat(((Cure.ReplaceDevice) f.cure()).ratingA()).isEqualTo(15);
        });
    }

    @Test
    void no_cure_that_the_cable_does_not_stand() {
        Sketch s = Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .fuse("F1", "iso8820-c", 20)
                .link("GB1.1", "F1.1", 0.1)
                .current("E1", 39)
                .cable("W1", "F1.2", "E1.1", 4, 2.5); // 32 A by IEC 60364-5-52, free air: less than the next 40 A

        assertThat(found(s, "load-above-device"))
                .singleElement()
                .satisfies(f -> assertThat(f.cure()).isNull());
    }

    @Test
    void the_sum_of_the_circuits_counts_at_the_main_fuse() {
        Sketch s = Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .fuse("F0", "class-t", 30)
                .bar("WC1")
                .link("GB1.1", "F0.1", 0.1)
                .cable("W0", "F0.2", "WC1.a", 1, 16);
        for (int i = 1; i <= 4; i++) {
            s.fuse("F" + i, "iso8820-c", 10)
                    .current("E" + i, 8)
                    .link("WC1.t" + i, "F" + i + ".1", 0.05)
                    .cable("W" + i, "F" + i + ".2", "E" + i + ".1", 3, 2.5);
        }
        s.condition("all").condition("half").load("half", "E1", false, 1).load("half", "E2", false, 1);

        assertThat(found(s, "load-above-device")).singleElement().satisfies(f -> {
            assertThat(f.place().item()).isEqualTo("F0");
            assertThat(text(f)).contains("32 A", "in all");
            assertThat(f.conditions()).containsExactly("all");
        });
    }

    @Test
    void a_single_load_counts_in_full_however_little_of_it_runs_at_once() {
        Sketch s = circuit(14).condition("c").load("c", "E1", true, 0.5);

        assertThat(found(s, "load-above-device")).singleElement().satisfies(f -> {
            assertThat(text(f)).contains("before a load of 14 A");
            assertThat(f.conditions()).containsExactly("c");
        });
    }

    @Test
    void a_switch_has_a_rating_too() {
        Sketch s = Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .add("Q1", new Switching.Isolator(50.0, 0.0, Poles.POSITIVE, Position.CLOSED))
                .link("GB1.1", "Q1.1")
                .current("E1", 60)
                .cable("W1", "Q1.2", "E1.1", 1, 25);

        assertThat(found(s, "load-above-device"))
                .singleElement()
                .satisfies(f -> assertThat(text(f)).contains("Q1", "50 A", "60 A", "contacts"));
    }

    /** ISO 8820-3 type C (from memory): 1.1 In for 100 h, at 1.35 In not before 0.75 s. */
    @ParameterizedTest
    @CsvSource({"10.8, 1, 0", "12, 1, 1", "12, 0.011, 0"})
    void a_machine_that_runs_for_minutes_may_ask_for_what_the_fuse_carries_so_long(
            double amps, double minutes, int expected) {
        Consumer.ShortTimeMachine m = new Consumer.ShortTimeMachine(null, amps, 0.8, null, minutes, Phase.ALL, false);
        Sketch s = Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .fuse("F1", "iso8820-c", 10)
                .link("GB1.1", "F1.1", 0.1)
                .add("MA1", m)
                .cable("W1", "F1.2", "MA1.1", 4, 6);

        assertThat(found(s, "load-above-device")).hasSize(expected);
    }

    private static Sketch ac(Nature nature, double nominalV) {
        return Sketch.dc(230).change(d -> d.with(ElectricalSystem.of("S", nature, nominalV)));
    }

    private static Consumer.PlainLoad watts(double watts) {
        return new Consumer.PlainLoad(LoadBehaviour.POWER, watts, 0.0, null, null, null, null, Phase.ALL, false);
    }

    @ParameterizedTest
    @CsvSource({"AC1, 230, 5900, 0", "AC1, 230, 6200, 1", "AC3N, 400, 5900, 0", "AC3N, 400, 6200, 1"})
    void a_generator_of_six_kilovoltamperes_gives_six(Nature nature, double nominalV, double watts, int expected) {
        Sketch s = ac(nature, nominalV)
                .add("GA1", new Source.Generator(6.0, 1, 2, 12.0, 22.0, Excitation.SELF, null))
                .add("E1", watts(watts))
                .cable("W1", "GA1.1", "E1.1", 1, 16);

        List<Finding> found = found(s, "supply-above-rating");

        assertThat(found).hasSize(expected);
        assertThat(found).allSatisfy(f -> assertThat(text(f)).contains("GA1", "6000 VA", "has to give 620"));
    }

    @Test
    void of_three_phases_the_most_loaded_has_a_third() {
        Consumer.PlainLoad one =
                new Consumer.PlainLoad(LoadBehaviour.POWER, 2_500.0, 0.0, null, null, null, null, Phase.L1, false);
        Sketch s = ac(Nature.AC3N, 400)
                .add("GA1", new Source.Generator(6.0, 1, 2, 12.0, 22.0, Excitation.SELF, null))
                .add("E1", one)
                .cable("W1", "GA1.1", "E1.1", 1, 16);

        assertThat(found(s, "supply-above-rating")).hasSize(1);
    }

    @Test
    void a_shore_supply_an_inverter_and_a_frequency_converter_are_held_to_their_ratings() {
        Sketch s = ac(Nature.AC1, 230)
                .system("24", 24)
                .change(d -> d.with(ElectricalSystem.of("M", Nature.AC3, 230)))
                .change(d -> d.with(ElectricalSystem.of("I", Nature.AC1, 230)))
                .add("XD1", new Source.ShoreInlet(16.0, 1_500.0, 500.0))
                .bar("WC1")
                .cable("W1", "XD1.1", "WC1.a", 2, 10)
                .add("E1", watts(2_000))
                .cable("W2", "WC1.b", "E1.1", 2, 4)
                .add("TB1", new Conversion.FrequencyConverter(1_500.0, 0.95, 0, null), "S", "M")
                .cable("W3", "WC1.c", "TB1.1", 2, 4)
                .add("E2", watts(1_800), "M")
                .cable("W4", "TB1.2", "E2.1", 2, 4)
                .add("GB1", new Source.Supply(25.0, 0, 0.001, 0, false), "24")
                .add("TB2", new Conversion.Inverter(800.0, 0.9, 0, null, null, null), "24", "I")
                .cable("W5", "GB1.1", "TB2.1", 1, 50)
                .add("E3", watts(900), "I")
                .cable("W6", "TB2.2", "E3.1", 2, 4);

        assertThat(found(s, "supply-above-rating"))
                .extracting(f -> f.place().item())
                .containsExactly("XD1", "TB1", "TB2");
    }

    @ParameterizedTest
    @CsvSource({"6000, 0", "8000, 1"})
    void an_inverter_passes_through_what_its_transfer_switch_is_rated_for(double watts, int expected) {
        Conversion.InverterCharger t = new Conversion.InverterCharger(3_000.0, 0.92, 0, 10.0, 30.0, null, null, null);
        Sketch s = ac(Nature.AC1, 230)
                .system("24", 24)
                .add("GB1", new Source.Supply(25.0, 0, 0.01, 0, false), "24")
                .add("XD1", new Source.ShoreInlet(63.0, 1_500.0, 500.0))
                .add("TB1", t, "24", "S")
                .cable("W0", "GB1.1", "TB1.1", 1, 50)
                .cable("W1", "XD1.1", "TB1.3", 2, 10)
                .add("E1", watts(watts))
                .cable("W2", "TB1.2", "E1.1", 2, 10);

        assertThat(found(s, "supply-above-rating")).hasSize(expected);
    }

    /** 27.6 V over 1.8 Ω would be 15 A; 10 A leave 18 V. */
    @Test
    void a_charger_that_gives_all_it_has_and_lets_the_voltage_sink_is_found() {
        Sketch s = Sketch.dc(24)
                .change(d -> d.with(ElectricalSystem.of("A", Nature.AC1, 230)))
                .add("XD1", new Source.ShoreInlet(16.0, 1_500.0, 500.0), "A")
                .add("TB1", new Conversion.Charger(10.0, 27.6, 0.9, 0, true), "A", "S")
                .cable("W1", "XD1.1", "TB1.1", 2, 2.5)
                .resistance("E1", 1.8)
                .ohm("W2", "TB1.2", "E1.1", 0.04);

        assertThat(found(s, "beyond-rating"))
                .singleElement()
                .satisfies(f -> assertThat(text(f)).contains("TB1 gives all of its 10 A", "18.4 V of its 27.6 V"));
    }

    @Test
    void a_limited_supply_is_found_likewise_and_not_beside_a_bank() {
        Sketch s = Sketch.dc(24)
                .add("G1", new Source.LimitedSupply(27.6, 0, 10.0))
                .resistance("E1", 1.8)
                .ohm("W2", "G1.1", "E1.1", 0.04);

        assertThat(found(s, "beyond-rating")).hasSize(1);
        s.supply("GB1", 24, 0.01).ohm("W3", "GB1.1", "G1.1", 0.001);
        assertThat(found(s, "beyond-rating")).isEmpty();
    }

    /** 240 V and 230 V behind 0.1 Ω each and 0.8 Ω between: 10 A flow, 2.3 kW into the lower source. */
    @ParameterizedTest
    @CsvSource({"true, 240, 1", "false, 240, 0", "true, 220, 0"})
    void an_alternating_supply_that_may_take_nothing_back_says_so_where_it_would(
            boolean oneWay, double otherV, int expected) {
        Sketch s = ac(Nature.AC1, 230)
                .add("G1", new Source.Supply(230.0, 0, 0.1, 0, oneWay))
                .add("G2", new Source.Supply(otherV, 0, 0.1, 0, false))
                .ohm("W1", "G1.1", "G2.1", 0.8);

        List<Finding> found = found(s, "contradictory-sources");

        assertThat(found).hasSize(expected);
        assertThat(found).allSatisfy(f -> assertThat(text(f)).contains("G1 may take no power back", "2310 W"));
    }

    private static double replacement(Sketch s, String rule) {
        Finding f = found(s, rule).get(0);
        return ((Cure.ReplaceDevice) f.cure()).ratingA();
    }

    /** A string fuse is never greater than what the module's maker permits (IEC 62548, IEC 60364-7-712; from memory). */
    @Test
    void a_string_fuse_is_replaced_by_none_above_the_modules_limit() {
        for (double limit : new double[] {15, 12, 11}) {
            Source.PvArray array = new Source.PvArray(220.0, 44.5, 6.3, 36.6, 6.0, -0.3, limit, 2, 2, 0, null, 0);
            Sketch s = Sketch.dc(24)
                    .change(d -> d.with(new ElectricalSystem(
                            "S",
                            "",
                            Nature.PV,
                            72,
                            105.0,
                            d.systems().require("S").frequencyHz(),
                            d.systems().require("S").earthing(),
                            null,
                            null,
                            d.systems().require("S").extras())))
                    .add("GC1", array)
                    .fuse("F1", "iso8820-f", 15)
                    .cable("W1", "GC1.1", "F1.1", 3, 4)
                    .power("E1", 300)
                    .cable("W2", "F1.2", "E1.1", 3, 4);

            assertThat(replacement(s, "device-voltage")).isEqualTo(limit == 11 ? 10 : limit);
        }
    }

    /** A 10 A blade breaks 1 kA; gG has 10 A too (IEC 60269-2). */
    @Test
    void a_device_that_cannot_break_the_fault_is_replaced_by_one_of_the_same_rating() {
        Sketch s = Sketch.dc(24)
                .supply("GB1", 25, 0.003)
                .fuse("F1", "iso8820-f", 10)
                .link("GB1.1", "F1.1", 0.1)
                .current("E1", 5)
                .cable("W1", "F1.2", "E1.1", 4, 2.5);

        assertThat(replacement(s, "cannot-break")).isEqualTo(10);
    }

    /** The DC lead of an inverter/charger that charges with 60 A: on the AC side 3 kVA over 230 V are 13 A. */
    @Test
    void what_a_charger_charges_with_is_no_current_of_its_alternating_side() {
        Conversion.InverterCharger t =
                new Conversion.InverterCharger(3_000.0, 0.92, 18, 60.0, 32.0, 6_000.0, 40.0, 0.5);
        Sketch s = ac(Nature.AC1, 230)
                .system("24", 24)
                .add("GB1", new Source.Supply(25.0, 0, 0.01, 0, false), "24")
                .add("XD1", new Source.ShoreInlet(32.0, 1_500.0, 500.0))
                .add("TB1", t, "24", "S")
                .cable("W0", "GB1.1", "TB1.1", 1, 50)
                .cable("W1", "XD1.1", "TB1.3", 2, 4)
                .add("E1", watts(2_000))
                .cable("W54", "TB1.2", "E1.1", 2, 4);

        assertThat(s.study().governing().cables().get("W54").designCurrentA()).isBetween(2_000 / 230.0, 3_000 / 230.0);
    }
}
