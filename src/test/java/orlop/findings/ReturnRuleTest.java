package orlop.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Kind;
import orlop.drawing.Words;
import orlop.study.Sketch;

/**
 * What is wired at its return alone. That a single line stands for both conductors, and a source feeds by its first
 * terminal, is common practice, no source.
 */
class ReturnRuleTest {
    private static final String RULE = "return-alone";

    private static List<Finding> said(Sketch s, String rule) {
        return Checker.check(s.study()).stream()
                .filter(f -> f.rule().equals(rule))
                .toList();
    }

    private static Sketch bank(String terminal) {
        return Sketch.dc(24)
                .add("GB1", Kind.BATTERY.defaults())
                .bar("WC1")
                .power("E1", 100)
                .cable("W1", "GB1." + terminal, "WC1.a", 1, 16)
                .cable("W2", "WC1.b", "E1.1", 5, 16);
    }

    @Test
    void a_bank_wired_at_its_negative_is_told_so_and_not_that_the_loads_ask_too_much() {
        Finding f = said(bank("2"), RULE).get(0);

        assertThat(f.place().item()).isEqualTo("GB1");
        assertThat(f.severity()).isEqualTo(Severity.DEFECT);
        assertThat(f.cure())
                .isInstanceOfSatisfying(
                        Cure.TurnRound.class, c -> assertThat(c.component()).isEqualTo("GB1"));
        assertThat(Words.english().text(f.message())).contains("GB1", "its negative", "nothing can flow");
        assertThat(said(bank("2"), "no-operating-point")).isEmpty();
    }

    @Test
    void a_bank_wired_at_its_positive_is_not() {
        assertThat(said(bank("1"), RULE)).isEmpty();
    }

    @Test
    void one_of_a_chain_is_not_to_be_turned_against_the_others() {
        Sketch s = Sketch.dc(24)
                .add("GB1", Kind.BATTERY.defaults())
                .add("GB2", Kind.BATTERY.defaults())
                .link("GB1.2", "GB2.1");

        assertThat(said(s, RULE))
                .singleElement()
                .satisfies(f -> assertThat(f.cure()).isNull());
    }

    @Test
    void a_load_wired_at_its_return_alone_is_told_too() {
        Sketch s = Sketch.dc(24).supply("GB1", 25, 0.01).power("E1", 100).cable("W1", "GB1.1", "E1.2", 5, 16);

        assertThat(said(s, RULE))
                .singleElement()
                .satisfies(f -> assertThat(f.place().item()).isEqualTo("E1"));
    }

    @Test
    void a_drawn_negative_and_a_bank_in_series_are_as_they_should_be() {
        Sketch s = Sketch.dc(24)
                .add("GB1", Kind.BATTERY.defaults())
                .add("GB2", Kind.BATTERY.defaults())
                .power("E1", 100)
                .link("GB1.2", "GB2.1")
                .cable("W1", "GB1.1", "E1.1", 5, 16)
                .cable("W2", "GB2.2", "E1.2", 5, 16);

        assertThat(said(s, RULE)).isEmpty();
    }

    /** A source of 12 V behind 1 ohm gives at most 36 W: {@code E^2/4R}. */
    @Test
    void loads_that_do_ask_too_much_elsewhere_are_told_all_the_same() {
        Sketch s = bank("2").supply("GB9", 12, 1).power("E9", 100).cable("W9", "GB9.1", "E9.1", 0.1, 50);

        assertThat(said(s, RULE)).hasSize(1);
        assertThat(said(s, "no-operating-point")).hasSize(1);
    }
}
