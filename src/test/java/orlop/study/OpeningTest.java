package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Nature;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Source;

/**
 * A device opens on the lowest fault current behind it, whichever source is on: that current reaches I2, IEC 60364-4-43
 * 434.5.2 in its simplest form (from memory). I2 of class T is 1.35 In (UL 248-1, from memory), of miniature breakers
 * 1.45 In (IEC 60898-1, from memory).
 */
@SuppressWarnings("NullAway") // a null fails the test
class OpeningTest {
    /** Two banks of 25 V behind class T fuses on one bar; a circuit of 0.2 Ω and 16 mm² from there. */
    private static Sketch twoBanks(double oneA, double otherA, double loopOhm) {
        return Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .supply("GB2", 25, 0.01)
                .fuse("F1", "class-t", oneA)
                .fuse("F2", "class-t", otherA)
                .bar("WC1")
                .link("GB1.1", "F1.1", 0.1)
                .link("GB2.1", "F2.1", 0.1)
                .link("F1.2", "WC1.a", 0.1)
                .link("F2.2", "WC1.b", 0.1)
                .power("E1", 100)
                .ohm("W1", "WC1.c", "E1.1", loopOhm);
    }

    private static org.assertj.core.api.ListAssert<String> late(Sketch s) {
        return assertThat(s.study().gaps().stream()
                .filter(g -> g.kind() == Gap.Kind.DOES_NOT_OPEN)
                .map(Gap::device)
                .toList());
    }

    /** 25 V over 0.5 Ω are 50 A; 60 A of class T surely open from 81 A on. */
    @Test
    void a_feed_that_is_alone_in_one_condition_is_checked_in_that() {
        Sketch s = twoBanks(60, 30, 0.49).condition("one").condition("both").source("one", "GB2", "off");

        late(s).containsExactly("F1");
    }

    @Test
    void with_enough_current_nothing_is_said() {
        late(twoBanks(60, 30, 0.2).condition("one").source("one", "GB2", "off")).isEmpty();
    }

    /** Some 50 A of both together open neither 60 A (81 A) nor 40 A (54 A): the smaller is named. */
    @Test
    void where_both_are_always_on_their_sum_opens_the_smaller() {
        late(twoBanks(60, 40, 0.49)).containsExactly("F2");
        late(twoBanks(60, 30, 0.49)).isEmpty(); // 40.5 A open it
    }

    /** 1.45 × 32 A = 46.4 A. */
    @ParameterizedTest
    @CsvSource({"45, 1", "48, 0"})
    void an_alternating_circuit_is_checked_too(double shoreLeastA, int expected) {
        Sketch s = AcSketch.of(Nature.AC1, 230)
                .add("XD1", new Source.ShoreInlet(32.0, 1_500.0, shoreLeastA))
                .add(
                        "F1",
                        new Protection.CircuitBreaker("mcb-c", 32.0, null, 6.0, null, 0.0, Poles.L_N, Position.CLOSED))
                .link("XD1.1", "F1.1", 0.1)
                .power("E1", 100)
                .cable("W1", "F1.2", "E1.1", 1, 10);

        late(s).hasSize(expected);
    }

    /** A cable from the bar to a board, two class T fuses of 100 A before it, each of which alone would guard it. */
    private static Sketch board(double areaMm2) {
        Sketch s = twoBanks(100, 100, 0.05).bar("WC2").cable("W2", "WC1.d", "WC2.a", 3, areaMm2);
        for (int i = 2; i <= 4; i++) {
            s.fuse("F1" + i, "class-t", 60)
                    .power("E" + i, 200)
                    .link("WC2.t" + i, "F1" + i + ".1", 0.05)
                    .cable("W1" + i, "F1" + i + ".2", "E" + i + ".1", 2, 16);
        }
        return s;
    }

    private static long together(Sketch s) {
        return s.study().governing().remarks().stream()
                .filter(m -> m.message().key().equals("study.beyond.together"))
                .filter(m -> m.item().equals("W2"))
                .count();
    }

    /** IEC 60364-5-52: 25 mm² carries less, 95 mm² more than the 180 A that the three devices behind let pass. */
    @ParameterizedTest
    @CsvSource({"25, 1", "95, 0"})
    void two_banks_that_load_a_feeder_together_are_told_where_nothing_limits_them(double areaMm2, int expected) {
        assertThat(together(board(areaMm2))).isEqualTo(expected);
    }

    @Test
    void one_bank_alone_cannot() {
        Sketch s = board(25);
        s.change(d -> d.withComponents(d.components().without("GB2")));

        assertThat(together(s)).isZero();
    }
}
