package orlop.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import orlop.drawing.Position;
import orlop.study.Sketch;

/** A danger is told in every condition in which it is there: common practice, no source. */
class FindingConditionsTest {
    /** Two banks on a bar, W1 and W2 with their fuses; the circuit W3 has none. */
    private static Sketch bare() {
        return Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.05)
                .supply("GB2", 25, 0.05)
                .fuse("F1", "class-t", 200)
                .fuse("F2", "class-t", 200)
                .bar("WC1")
                .link("GB1.1", "F1.1", 0.1)
                .link("GB2.1", "F2.1", 0.1)
                .cable("W1", "F1.2", "WC1.a", 2, 95)
                .cable("W2", "F2.2", "WC1.b", 2, 95)
                .power("E1", 100)
                .cable("W3", "WC1.c", "E1.1", 5, 2.5)
                .condition("one")
                .condition("two")
                .condition("none")
                .source("one", "GB2", "off")
                .source("two", "GB1", "off")
                .source("none", "GB1", "off")
                .source("none", "GB2", "off");
    }

    private static Finding only(Sketch s, String rule) {
        return Checker.check(s.study()).stream()
                .filter(f -> f.rule().equals(rule))
                .reduce((a, b) -> {
                    throw new AssertionError("more than one");
                })
                .orElseThrow();
    }

    @Test
    void a_missing_fuse_is_told_in_every_condition_in_which_some_source_drives_the_cable() {
        assertThat(only(bare(), "missing-fuse").conditions()).containsExactly("one", "two");
    }

    @Test
    void an_open_switch_does_not_hide_it() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.05)
                .isolator("QB1", Position.OPEN)
                .link("GB1.1", "QB1.1", 0.1)
                .power("E1", 100)
                .cable("W3", "QB1.2", "E1.1", 5, 2.5)
                .condition("open")
                .condition("closed")
                .position("closed", "QB1", "closed");

        assertThat(only(s, "missing-fuse").conditions()).containsExactly("open", "closed");
    }

    @Test
    void a_fuse_too_large_is_told_in_each_condition_too() {
        Sketch s = bare().fuse("F3", "iso8820-c", 60)
                .power("E2", 50)
                .link("WC1.d", "F3.1", 0.05)
                .cable("W4", "F3.2", "E2.1", 4, 1.5);

        assertThat(only(s, "fuse-too-large").conditions()).containsExactly("one", "two");
    }

    @Test
    void what_a_device_cannot_break_is_told_where_that_current_can_flow() {
        // 25 V over 5 mΩ drive 5 kA with the strong bank, 25 V over 0.1 Ω 250 A with the weak one; the fuse breaks 1 kA
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.005)
                .supply("GB2", 25, 0.1)
                .isolator("QB1", Position.CLOSED)
                .fuse("F1", "iso8820-c", 15)
                .link("GB1.1", "QB1.1")
                .link("QB1.2", "F1.1")
                .link("GB2.1", "F1.1")
                .power("E1", 50)
                .cable("W1", "F1.2", "E1.1", 4, 2.5)
                .condition("strong")
                .condition("weak")
                .source("weak", "GB1", "off");

        assertThat(only(s, "cannot-break").conditions()).containsExactly("strong");
    }
}
