package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import orlop.drawing.Source;

/** From which source a drop is reckoned; the expected figures are Ohm's law by hand. */
@SuppressWarnings("NullAway") // a null fails the test
class DeliveryTest {
    /** A bank, being charged with 50 A over 10 mΩ, and a load of 10 A over another 10 mΩ. */
    private static Sketch charging() {
        return Sketch.dc(12, "iec60364")
                .supply("GB1", 12.6, 0.01)
                .bar("MAIN")
                .add("GA1", new Source.LimitedSupply(14.4, 0, 50.0))
                .current("E1", 10)
                .link("GB1.1", "MAIN.a")
                .ohm("W1", "GA1.1", "MAIN.b", 0.01)
                .ohm("W2", "MAIN.c", "E1.1", 0.01);
    }

    @Test
    void the_drop_of_a_charging_lead_is_not_the_loads_concern() {
        ComponentResult e1 = charging().study().governing().components().get("E1");

        assertThat(e1.dropFromSourcePercent()).isCloseTo(100 * 0.1 / 12, within(1e-6));
        assertThat(e1.feedingPath()).startsWith("GB1").doesNotContain("W1");
    }

    @Test
    void what_the_charging_current_adds_on_the_banks_own_cable_does_not_lessen_a_loads_drop() {
        ComponentResult e1 = Sketch.dc(12, "iec60364")
                .supply("GB1", 12.6, 0.01)
                .bar("MAIN")
                .add("GA1", new Source.LimitedSupply(14.4, 0, 50.0))
                .current("E1", 10)
                .ohm("W3", "GB1.1", "MAIN.a", 0.01)
                .ohm("W1", "GA1.1", "MAIN.b", 0.01)
                .ohm("W2", "MAIN.c", "E1.1", 0.01)
                .study()
                .governing()
                .components()
                .get("E1");

        // 40 A flow back to the bank and lift the bar over it by 0.4 V; the load loses 10 A over 10 mΩ behind the bar
        assertThat(e1.dropFromSourcePercent()).isCloseTo(100 * 0.1 / 12, within(1e-6));
    }

    @Test
    void without_a_bank_the_charger_is_the_source() {
        Sketch s = charging().condition("a").source("a", "GB1", "off");
        ComponentResult e1 = s.study().governing().components().get("E1");

        assertThat(e1.dropFromSourcePercent()).isCloseTo(100 * 0.2 / 12, within(1e-6));
        assertThat(e1.feedingPath()).startsWith("GA1");
    }

    @Test
    void of_two_banks_the_one_that_gives_counts_whatever_the_other_takes() {
        Sketch s = Sketch.dc(12, "iec60364")
                .supply("GB1", 12.0, 0.01)
                .supply("GB2", 12.8, 0.01)
                .bar("MAIN")
                .current("E1", 10)
                .link("GB1.1", "MAIN.a")
                .ohm("W1", "GB2.1", "MAIN.b", 0.02)
                .ohm("W2", "MAIN.c", "E1.1", 0.01);
        ComponentResult e1 = s.study().governing().components().get("E1");

        // MAIN: (12.0/0.01 + 12.8/0.03 − 10) / (1/0.01 + 1/0.03) = 12.125 V; GB2 gives 22.5 A, GB1 takes 12.5 A
        assertThat(e1.dropFromSourcePercent()).isCloseTo(100 * (22.5 * 0.02 + 0.1) / 12, within(1e-6));
        assertThat(e1.feedingPath()).startsWith("GB2", "W1");
    }
}
