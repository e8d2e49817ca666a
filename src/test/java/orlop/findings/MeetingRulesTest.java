package orlop.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Excitation;
import orlop.drawing.Nature;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.RefitStatus;
import orlop.drawing.Source;
import orlop.drawing.Switching;
import orlop.drawing.Words;
import orlop.network.Meetings;
import orlop.study.Sketch;

/**
 * Two AC sources that are not made to run parallel may not be joined, in no position of the switches: IEC 60364-5-55
 * 551.6 and 551.7, ISO 13297 (from memory).
 */
@SuppressWarnings("NullAway") // a null fails the test
class MeetingRulesTest {
    /** A shore inlet XD1, a generator GA1 and a bar WC1, not joined yet. */
    private static Sketch board() {
        return Sketch.dc(230)
                .change(d -> d.with(ElectricalSystem.of("S", Nature.AC1, 230)))
                .add("XD1", new Source.ShoreInlet(16.0, 1_500.0, 500.0))
                .add("GA1", new Source.Generator(6.0, 0.9, 2, 12.0, 22.0, Excitation.SELF, null))
                .bar("WC1");
    }

    private static Switching.Contactor contactor(String interlock) {
        return new Switching.Contactor(40.0, 0.0, Poles.POSITIVE, Position.OPEN, interlock);
    }

    private static Switching.Changeover changeover() {
        return new Switching.Changeover(2, 40.0, Poles.POSITIVE, 1, "");
    }

    private static List<Finding> found(Sketch s, String rule) {
        return Checker.check(s.study()).stream()
                .filter(f -> f.rule().equals(rule))
                .toList();
    }

    private static List<Finding> meetings(Sketch s) {
        return found(s, "sources-can-meet");
    }

    private static String text(Finding f) {
        return Words.english().text(f.message());
    }

    @Test
    void shore_and_generator_on_one_bar_behind_plain_switches_are_a_danger() {
        Sketch s = board().isolator("QB1", Position.OPEN)
                .isolator("QB2", Position.OPEN)
                .cable("W1", "XD1.1", "QB1.1", 3, 4)
                .cable("W2", "GA1.1", "QB2.1", 3, 4)
                .link("QB1.2", "WC1.a")
                .link("QB2.2", "WC1.b");

        assertThat(meetings(s)).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.DANGER);
            assertThat(f.place()).isEqualTo(Finding.Place.component("WC1"));
            assertThat(f.provenance()).isEqualTo("memory");
            assertThat(f.clause()).contains("551.6", "551.7", "13297");
            assertThat(text(f))
                    .contains("XD1", "GA1", "XD1 - W1 - QB1 - WC1 - QB2 - W2 - GA1")
                    .contains("No interlock keeps QB1, QB2", "changeover switch of break-before-make type");
        });
    }

    @Test
    void a_condition_that_joins_them_is_named() {
        Sketch s = board().cable("W1", "XD1.1", "WC1.a", 3, 4)
                .isolator("QB2", Position.OPEN)
                .cable("W2", "GA1.1", "QB2.1", 3, 4)
                .link("QB2.2", "WC1.b")
                .condition("shore")
                .condition("both")
                .position("both", "QB2", "closed");

        assertThat(meetings(s))
                .singleElement()
                .satisfies(f -> assertThat(text(f)).contains("They are joined so in: both."));
    }

    @Test
    void without_any_switch_nothing_parts_them() {
        Sketch s = board().cable("W1", "XD1.1", "WC1.a", 3, 4)
                .cable("W2", "GA1.1", "WC1.b", 3, 4)
                .condition("c1")
                .source("c1", "GA1", "off");

        assertThat(meetings(s))
                .singleElement()
                .satisfies(f -> assertThat(text(f)).contains("No switch stands between them"));
    }

    @Test
    void a_changeover_parts_them() {
        Sketch s = board().add("QC1", changeover())
                .cable("W1", "XD1.1", "QC1.1", 3, 4)
                .cable("W2", "GA1.1", "QC1.2", 3, 4)
                .cable("W3", "QC1.3", "WC1.a", 3, 4);

        assertThat(meetings(s)).isEmpty();
    }

    @Test
    void a_way_round_the_changeover_joins_them() {
        Sketch s = board().add("QC1", changeover())
                .cable("W1", "XD1.1", "QC1.1", 3, 4)
                .cable("W2", "GA1.1", "QC1.2", 3, 4)
                .cable("W3", "QC1.3", "WC1.a", 3, 4)
                .isolator("QB1", Position.OPEN)
                .cable("W4", "GA1.1", "QB1.1", 3, 4)
                .cable("W5", "QB1.2", "WC1.b", 3, 4);

        assertThat(meetings(s))
                .singleElement()
                .satisfies(f -> assertThat(text(f)).contains("XD1 - W1 - QC1 - W3 - WC1 - W5 - QB1 - W4 - GA1"));
    }

    @Test
    void contactors_part_them_only_with_an_interlock() {
        assertThat(meetings(contactors("sources", "sources"))).isEmpty();
        assertThat(meetings(contactors("sources", "others"))).hasSize(1);
        assertThat(meetings(contactors("", ""))).hasSize(1);
    }

    private static Sketch contactors(String one, String other) {
        return board().add("QA1", contactor(one))
                .add("QA2", contactor(other))
                .cable("W1", "XD1.1", "QA1.1", 3, 4)
                .cable("W2", "GA1.1", "QA2.1", 3, 4)
                .link("QA1.2", "WC1.a")
                .link("QA2.2", "WC1.b");
    }

    @Test
    void a_condition_that_closes_both_contactors_of_an_interlock_is_found() {
        Sketch s = contactors("sources", "sources")
                .condition("odd")
                .position("odd", "QA1", "closed")
                .position("odd", "QA2", "closed");

        assertThat(meetings(s))
                .singleElement()
                .satisfies(f -> assertThat(text(f)).contains("joined so in: odd"));
    }

    /** Battery GB1, inverter/charger TB1 with its output at a bar WC2. */
    private static Sketch inverter() {
        Conversion.InverterCharger t = new Conversion.InverterCharger(3_000.0, 0.92, 18, 60.0, 32.0, null, 40.0, 0.5);
        return board().system("24", 24)
                .add("GB1", new Source.Supply(25.0, 0, 0.01, 0, false), "24")
                .add("TB1", t, "24", "S")
                .bar("WC2")
                .cable("W1", "XD1.1", "WC1.a", 3, 4)
                .cable("W5", "GB1.1", "TB1.1", 1, 70)
                .cable("W6", "TB1.2", "WC2.a", 2, 4);
    }

    @Test
    void an_inverter_that_is_passed_through_does_not_meet_the_shore() {
        Sketch s = inverter().cable("W7", "WC1.b", "TB1.3", 2, 4);

        assertThat(meetings(s)).isEmpty();
        assertThat(found(s, "feeds-itself")).isEmpty();
    }

    @Test
    void the_output_of_an_inverter_on_a_board_fed_from_the_shore_is_a_danger() {
        Sketch s = inverter()
                .isolator("QB1", Position.OPEN)
                .cable("W7", "WC1.b", "QB1.1", 2, 4)
                .cable("W8", "QB1.2", "WC2.b", 2, 4);

        assertThat(meetings(s))
                .singleElement()
                .satisfies(f -> assertThat(text(f)).contains("XD1", "TB1", "QB1"));
    }

    @Test
    void an_inverter_whose_output_reaches_its_own_input_is_found_and_does_not_count_as_live_from_itself() {
        Sketch s = inverter()
                .isolator("QB1", Position.CLOSED)
                .cable("W7", "WC2.b", "QB1.1", 2, 4)
                .cable("W8", "QB1.2", "TB1.3", 2, 4)
                .power("E1", 500)
                .cable("W9", "WC2.c", "E1.1", 2, 4);

        assertThat(found(s, "feeds-itself")).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.DANGER);
            assertThat(text(f)).contains("TB1 - W6 - WC2 - W7 - QB1 - W8 - TB1");
        });
        assertThat(s.study().governing().components().get("E1").live()).isTrue();
        assertThat(s.study().governing().cables().get("W5").currentA())
                .as("the battery gives what the load takes, over 92 %, and 18 W: 562 W at 25 V")
                .isBetween(22.0, 23.5);
    }

    @Test
    void sources_on_either_side_of_a_transformer_meet_too() {
        Sketch s = board().change(d -> d.with(ElectricalSystem.of("T", Nature.AC1, 230)))
                .add("TA1", new Conversion.Transformer(4.0, 4.0, 120.0, 45.0, true), "S", "T")
                .add("XD2", new Source.ShoreInlet(16.0, 1_500.0, 500.0), "T")
                .bar("WC9", "T")
                .cable("W1", "GA1.1", "TA1.1", 3, 4)
                .cable("W2", "TA1.2", "WC9.a", 3, 4)
                .cable("W3", "XD2.1", "WC9.b", 3, 4);

        assertThat(meetings(s))
                .singleElement()
                .satisfies(f -> assertThat(text(f)).contains("GA1 - W1 - TA1 - W2 - WC9 - W3 - XD2"));
    }

    @Test
    void batteries_may_meet_and_what_is_to_be_removed_counts_no_more() {
        Sketch dc =
                Sketch.dc(24).supply("GB1", 25, 0.01).supply("GB2", 25, 0.01).cable("W1", "GB1.1", "GB2.1", 1, 70);
        Sketch removed = board().cable("W1", "XD1.1", "WC1.a", 3, 4)
                .cable("W2", "GA1.1", "WC1.b", 3, 4)
                .change(d -> d.with(removed(d.components().require("GA1"))));

        assertThat(meetings(dc)).isEmpty();
        assertThat(meetings(removed)).isEmpty();
    }

    private static Component removed(Component c) {
        return new Component(
                c.id(),
                c.name(),
                c.place(),
                c.systems(),
                RefitStatus.TO_BE_REMOVED,
                c.stage(),
                c.location(),
                c.locked(),
                c.particulars(),
                c.extras());
    }

    /** Positions of forty changeovers cannot be enumerated: 2 to the 40th. */
    @Test
    void forty_changeovers_in_a_row_are_instant() {
        Sketch s = board();
        for (int i = 0; i < 40; i++) {
            s.add("QC" + i, changeover());
        }
        for (int i = 0; i < 39; i++) {
            s.link("QC" + i + ".3", "QC" + (i + 1) + ".1").link("QC" + i + ".3", "QC" + (i + 1) + ".2");
        }
        s.cable("W1", "XD1.1", "QC0.1", 3, 4);
        Sketch parted = s.cable("W2", "GA1.1", "QC0.2", 3, 4);

        List<Meetings.Meeting> none =
                Assertions.assertTimeout(Duration.ofSeconds(2), () -> Meetings.of(parted.drawing()));
        assertThat(none).isEmpty();
        parted.cable("W3", "GA1.1", "QC39.3", 3, 4);
        List<Meetings.Meeting> one =
                Assertions.assertTimeout(Duration.ofSeconds(2), () -> Meetings.of(parted.drawing()));
        assertThat(one).singleElement().satisfies(m -> assertThat(m.way()).contains("QC0", "QC39", "W3"));
    }
}
