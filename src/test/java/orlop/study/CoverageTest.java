package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Conversion;
import orlop.drawing.Position;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/**
 * Where a device is missing. Rules: IEC 60364-4-43 433.1, 433.2 (device where the conductor's ampacity falls, 3 m) and
 * ISO 13297:2020 12.1 (0.2 m from a battery; digits from memory).
 */
@SuppressWarnings("NullAway") // a null fails the test
class CoverageTest {
    /** A battery, a main fuse, a bar and ten circuits, each with its fuse but those that are knocked out. */
    private static Sketch tenCircuits(boolean mainFuse, int... knockedOut) {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25.2, 0.05)
                .fuse("F0", "class-t", 200)
                .bar("BAR");
        if (mainFuse) {
            s.cable("W0", "GB1.1", "F0.1", 0.15, 95).cable("W1", "F0.2", "BAR.a", 2, 95);
        } else {
            s.cable("W1", "GB1.1", "BAR.a", 2, 95);
        }
        for (int i = 1; i <= 10; i++) {
            final int n = i;
            s.power("E" + i, 120);
            if (java.util.Arrays.stream(knockedOut).anyMatch(k -> k == n)) {
                s.cable("WL" + i, "BAR.t" + i, "E" + i + ".1", 6, 2.5);
            } else {
                s.fuse("F" + i, "iso8820-c", 10)
                        .link("BAR.t" + i, "F" + i + ".1", 0.05)
                        .cable("WL" + i, "F" + i + ".2", "E" + i + ".1", 6, 2.5);
            }
        }
        return s;
    }

    @Test
    void a_sound_board_has_no_gap() {
        assertThat(tenCircuits(true).study().gaps()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void the_one_circuit_without_fuse_is_found_at_the_bar(int missing) {
        List<Gap> gaps = tenCircuits(true, missing).study().gaps();

        assertThat(gaps).hasSize(1);
        Gap g = gaps.get(0);
        assertThat(g.kind()).isEqualTo(Gap.Kind.NO_DEVICE);
        assertThat(g.cable()).isEqualTo("WL" + missing);
        assertThat(g.atFrom()).isTrue();
        assertThat(g.distanceM()).isZero();
        assertThat(g.source()).isEqualTo("GB1");
        assertThat(g.proposed()).isNotNull();
        assertThat(g.proposed()).isEqualTo(new Gap.Proposal("iso8820-f", 7.5, 1)); // 120 W at 23 V are 5.2 A
    }

    @Test
    void a_missing_main_fuse_is_found_at_the_source() {
        List<Gap> gaps = tenCircuits(false).study().gaps();

        assertThat(gaps).hasSize(1);
        assertThat(gaps.get(0).kind()).isEqualTo(Gap.Kind.NO_DEVICE);
        assertThat(gaps.get(0).cable()).isEqualTo("W1");
        assertThat(gaps.get(0).atFrom()).isTrue();
    }

    /** Which of two devices is nearer is seen on the sketch itself. */
    @Test
    void the_devices_that_guard_a_cable_are_named_nearest_first() {
        Study s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25.2, 0.05)
                .supply("GB2", 25.0, 0.05)
                .fuse("F1", "class-t", 100)
                .fuse("F2", "class-t", 100)
                .bar("B")
                .cable("W1", "GB1.1", "F1.1", 0.1, 70)
                .cable("W2", "GB2.1", "F2.1", 0.1, 70)
                .cable("W3", "F1.2", "B.a", 2, 70)
                .cable("W4", "F2.2", "B.b", 2, 70)
                .study();

        assertThat(s.governing().cables().get("W3").protectedBy()).containsExactly("F1", "F2");
        assertThat(s.governing().cables().get("W4").protectedBy()).containsExactly("F2", "F1");
    }

    @Test
    void two_things_missing_give_two_gaps() {
        List<Gap> gaps = tenCircuits(false, 4).study().gaps();

        assertThat(gaps).extracting(Gap::cable).containsExactlyInAnyOrder("W1", "WL4");
    }

    @Test
    void a_cable_between_two_batteries_wants_a_device_at_both_ends() {
        Study s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25.2, 0.01)
                .supply("GB2", 25.0, 0.01)
                .cable("W1", "GB1.1", "GB2.1", 3, 35)
                .study();

        assertThat(s.gaps())
                .extracting(Gap::cable, Gap::atFrom)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("W1", true),
                        org.assertj.core.groups.Tuple.tuple("W1", false));
    }

    @Test
    void one_device_at_one_battery_leaves_the_other_end_open() {
        Study s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25.2, 0.01)
                .supply("GB2", 25.0, 0.01)
                .fuse("F1", "class-t", 100)
                .cable("W0", "GB1.1", "F1.1", 0.1, 35)
                .cable("W1", "F1.2", "GB2.1", 3, 35)
                .study();

        assertThat(s.gaps()).hasSize(1);
        assertThat(s.gaps().get(0).cable()).isEqualTo("W1");
        assertThat(s.gaps().get(0).atFrom()).isFalse();
        assertThat(s.gaps().get(0).source()).isEqualTo("GB2");
        assertThat(s.gaps().get(0).kind()).isEqualTo(Gap.Kind.TOO_FAR);
    }

    @Test
    void a_fuse_beyond_the_permitted_distance_is_too_far() {
        Study s = Sketch.dc(12, "iso13297")
                .supply("GB1", 12.6, 0.01)
                .fuse("F1", "iso8820-c", 15)
                .power("E1", 60)
                .cable("W1", "GB1.1", "F1.1", 0.5, 4)
                .cable("W2", "F1.2", "E1.1", 5, 4)
                .study();

        assertThat(s.gaps()).filteredOn(g -> g.kind() == Gap.Kind.TOO_FAR).hasSize(1);
        assertThat(s.gaps().get(0).device()).isEqualTo("F1");
    }

    @Test
    void a_fuse_too_large_for_its_only_cable_is_named() {
        Study s = Sketch.dc(12, "iso13297")
                .supply("GB1", 12.6, 0.1)
                .fuse("F1", "iso8820-c", 40)
                .power("E1", 60)
                .link("GB1.1", "F1.1", 0.1)
                .cable("W2", "F1.2", "E1.1", 5, 1.5)
                .study();

        assertThat(s.gaps()).hasSize(1);
        assertThat(s.gaps().get(0).kind()).isEqualTo(Gap.Kind.TOO_LARGE);
        assertThat(s.gaps().get(0).device()).isEqualTo("F1");
        assertThat(s.gaps().get(0).cable()).isEqualTo("W2");
    }

    @Test
    void a_fuse_that_cannot_break_and_a_fuse_of_too_low_voltage_are_named() {
        Study s = Sketch.dc(48, "iso13297")
                .supply("GB1", 51.2, 0.005)
                .fuse("F1", "iso8820-sf30", 100)
                .power("E1", 500)
                .link("GB1.1", "F1.1", 0.1)
                .cable("W2", "F1.2", "E1.1", 5, 35)
                .study();

        assertThat(s.gaps()).extracting(Gap::kind).contains(Gap.Kind.CANNOT_BREAK, Gap.Kind.VOLTAGE);
    }

    @Test
    void a_self_limiting_charger_needs_no_device_at_its_own_end() {
        Study s = Sketch.dc(24, "iso13297")
                .system("12", 12)
                .supply("GB1", 25.2, 0.01)
                .fuse("F1", "class-t", 40)
                .add("T1", new Conversion.DcDcConverter(240.0, null, 0.01, 0.9, 0, false, null, true), "S", "12")
                .bar("B12", "12")
                .add("E1", Sketch.load(orlop.drawing.LoadBehaviour.POWER, 100), "12")
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "T1.1", 2, 10)
                .cable("W2", "T1.2", "B12.a", 2, 10)
                .cable("W3", "B12.b", "E1.1", 2, 6)
                .study();

        assertThat(s.gaps()).isEmpty();
    }

    @Test
    void an_open_switch_does_not_hide_a_gap() {
        Study s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25.2, 0.01)
                .isolator("Q1", Position.OPEN)
                .power("E1", 100)
                .link("GB1.1", "Q1.1")
                .cable("W1", "Q1.2", "E1.1", 4, 4)
                .study();

        assertThat(s.gaps()).extracting(Gap::cable).containsExactly("W1");
    }

    @Test
    void a_changeover_lets_no_current_pass_from_way_to_way() {
        Sketch sketch = Sketch.dc(24, "iso13297")
                .supply("GB1", 25.2, 0.01)
                .add("G2", new Source.CurrentSupply(5))
                .add("Q1", new Switching.Changeover(2, null, orlop.drawing.Poles.POSITIVE, 1, ""))
                .fuse("F1", "class-t", 30)
                .power("E1", 100)
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "Q1.1", 3, 10)
                .cable("W2", "G2.1", "Q1.2", 3, 1)
                .cable("W3", "Q1.3", "E1.1", 3, 10);

        // W2 is too thin for F1, but the switch never joins it to the battery
        assertThat(sketch.study().gaps()).isEmpty();
    }

    /** Two banks of 1,000 A on one bar: each fuse sees the other bank or its own, never both; a branch sees both. */
    @Test
    void a_fuse_between_two_banks_breaks_the_greater_of_them_not_their_sum() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.02)
                .supply("GB2", 25, 0.025)
                .fuse("F1", "iso8820-sf30", 100)
                .fuse("F2", "iso8820-sf30", 100)
                .fuse("F3", "iso8820-sf30", 40)
                .bar("B")
                .power("E1", 100)
                .link("GB1.1", "F1.1")
                .link("GB2.1", "F2.1")
                .link("F1.2", "B.a")
                .link("F2.2", "B.b")
                .link("B.c", "F3.1")
                .cable("W1", "F3.2", "E1.1", 3, 10);

        // 1,250 A and 1,000 A alone, 2,250 A together; SF 30 breaks 2 kA (ISO 8820-5)
        assertThat(s.study().gaps())
                .extracting(Gap::kind, Gap::device)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Gap.Kind.CANNOT_BREAK, "F3"));
    }

    @Test
    void a_fuse_with_a_resistance_of_its_own_is_judged_alike() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.02)
                .supply("GB2", 25, 0.025)
                .add(
                        "F1",
                        new orlop.drawing.Protection.Fuse(
                                "iso8820-sf30", 100.0, null, null, 0.0005, orlop.drawing.Poles.POSITIVE))
                .fuse("F2", "iso8820-sf30", 100)
                .bar("B")
                .link("GB1.1", "F1.1")
                .link("GB2.1", "F2.1")
                .link("F1.2", "B.a")
                .link("F2.2", "B.b");

        assertThat(s.study().gaps()).isEmpty();
    }
}
