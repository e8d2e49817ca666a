package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Laying;
import orlop.drawing.Location;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/**
 * Coverage over switch positions, distances, rows, rings and parallel runs. Rules: IEC 60364-4-43 433.1, 433.2.2, 434.2.1
 * (from memory), ISO 13297:2020 12.1 (digits from memory), ABYC E-11 11.10.
 */
@SuppressWarnings("NullAway") // a null fails the test
class ReachTest {
    private static List<String> bare(Sketch s) {
        return List.copyOf(BareCables.ofProgram(s.study(), false));
    }

    private static Sketch contactors(String lockOfOne, String lockOfTwo) {
        return Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .fuse("F1", "class-t", 100)
                .add("K1", new Switching.Contactor(null, 0.0, Poles.POSITIVE, Position.OPEN, lockOfOne))
                .add("K2", new Switching.Contactor(null, 0.0, Poles.POSITIVE, Position.OPEN, lockOfTwo))
                .bar("B")
                .add("G2", new Source.CurrentSupply(5))
                .power("E1", 10)
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "K1.1", 3, 35)
                .cable("W2", "K1.2", "B.a", 3, 35)
                .cable("W3", "B.b", "K2.1", 3, 35)
                .cable("W4", "K2.2", "G2.1", 3, 1.5);
    }

    @Test
    void an_interlock_keeps_a_battery_from_a_thin_cable_and_without_it_the_cable_is_bare() {
        assertThat(bare(contactors("lock", "lock"))).isEmpty();
        assertThat(bare(contactors("", ""))).containsExactly("W4");
        assertThat(bare(contactors("one", "two"))).containsExactly("W4");
    }

    @Test
    void a_position_that_no_condition_has_is_looked_at_all_the_same() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .isolator("Q1", Position.OPEN)
                .power("E1", 10)
                .link("GB1.1", "Q1.1")
                .cable("W1", "Q1.2", "E1.1", 3, 4)
                .condition("a")
                .condition("b")
                .source("a", "GB1", "off")
                .source("b", "GB1", "off");

        assertThat(bare(s)).containsExactly("W1");
    }

    @Test
    @Timeout(10)
    void forty_switches_and_twenty_changeovers_take_no_time() {
        Sketch s = Sketch.dc(24, "iso13297").supply("GB1", 25, 0.01).fuse("F1", "class-t", 60);
        s.link("GB1.1", "F1.1").bar("B0").cable("W", "F1.2", "B0.in", 2, 35);
        for (int i = 1; i <= 20; i++) {
            s.bar("B" + i).add("Q" + i, new Switching.Changeover(2, null, Poles.POSITIVE, 1, ""));
            s.isolator("S" + i, Position.OPEN).isolator("T" + i, Position.OPEN);
            s.link("B" + (i - 1) + ".a", "S" + i + ".1").link("S" + i + ".2", "Q" + i + ".1");
            s.link("B" + (i - 1) + ".b", "T" + i + ".1").link("T" + i + ".2", "Q" + i + ".2");
            s.cable("W" + i, "Q" + i + ".3", "B" + i + ".in", 1, i == 20 ? 1.5 : 35);
        }

        assertThat(bare(s)).containsExactly("W20");
    }

    @Test
    void one_device_for_a_row_is_held_against_its_thinnest_cable() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .fuse("F1", "class-t", 60)
                .add("X1", Kind.TERMINAL.defaults())
                .power("E1", 60)
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "X1.1", 3, 25)
                .cable("W2", "X1.2", "E1.1", 3, 2.5);
        List<Gap> gaps = s.study().gaps();

        assertThat(gaps)
                .extracting(Gap::kind, Gap::cable, Gap::device)
                .containsExactly(tuple(Gap.Kind.TOO_LARGE, "W2", "F1"));
        assertThat(gaps.get(0).proposed().ratingA()).isLessThan(30);
    }

    @Test
    void without_any_device_the_proposal_at_the_head_of_a_row_guards_the_thinnest_too() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .add("X1", Kind.TERMINAL.defaults())
                .power("E1", 60)
                .cable("W1", "GB1.1", "X1.1", 3, 25)
                .cable("W2", "X1.2", "E1.1", 3, 1.5);
        List<Gap> gaps = s.study().gaps();
        double thinnest = s.study().governing().cables().get("W2").ampacityA();

        assertThat(gaps).hasSize(1);
        assertThat(gaps.get(0).cable()).isEqualTo("W1");
        assertThat(gaps.get(0).also()).containsExactly("W2");
        assertThat(gaps.get(0).proposed().ratingA()).isLessThanOrEqualTo(thinnest);
    }

    @Test
    void a_cable_with_its_device_at_the_load_is_bare_and_the_device_is_named() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .fuse("F1", "iso8820-c", 10)
                .power("E1", 60)
                .cable("W1", "GB1.1", "F1.1", 5, 4)
                .link("F1.2", "E1.1");

        assertThat(s.study().gaps())
                .extracting(Gap::kind, Gap::cable, Gap::device, Gap::reachedM)
                .containsExactly(tuple(Gap.Kind.TOO_FAR, "W1", "F1", 5.0));
    }

    @Test
    void a_ring_wants_a_device_at_both_its_feeds() {
        Sketch ring = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .bar("B")
                .bar("C")
                .bar("D")
                .link("GB1.1", "B.in")
                .cable("R1", "B.a", "C.a", 3, 10)
                .cable("R2", "C.b", "D.a", 3, 10)
                .cable("R3", "D.b", "B.b", 3, 10);
        List<Gap> gaps = ring.study().gaps();

        assertThat(gaps).extracting(Gap::cable, Gap::atFrom).containsExactly(tuple("R1", true), tuple("R3", false));
        assertThat(bare(ring)).containsExactly("R1", "R2", "R3");
        Sketch oneFeed = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .fuse("F1", "class-t", 40)
                .bar("B")
                .bar("C")
                .link("GB1.1", "B.in")
                .link("B.a", "F1.1")
                .cable("R1", "F1.2", "C.a", 3, 10)
                .cable("R3", "C.b", "B.b", 3, 10);
        assertThat(oneFeed.study().gaps()).extracting(Gap::cable, Gap::atFrom).containsExactly(tuple("R3", false));
        assertThat(bare(oneFeed))
                .as("the other feed reaches the first cable too")
                .containsExactly("R1", "R3");
    }

    @Test
    void parallel_runs_carry_together() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .fuse("F1", "class-t", 80)
                .power("E1", 60)
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "E1.1", 3, 10);

        assertThat(bare(s)).containsExactly("W1");
        s.change(d -> d.with(d.cables().require("W1").withParallel(2)));
        assertThat(bare(s)).isEmpty();
    }

    @Test
    void chargers_that_add_up_to_more_than_a_cable_carries_want_a_device() {
        Sketch s = Sketch.dc(24, "iso13297")
                .add("G1", new Source.LimitedSupply(28.0, 0, 30.0))
                .add("G2", new Source.LimitedSupply(28.0, 0, 30.0))
                .bar("B")
                .power("E1", 60)
                .link("G1.1", "B.a")
                .link("G2.1", "B.b")
                .cable("W1", "B.c", "E1.1", 3, 4);

        assertThat(bare(s)).containsExactly("W1");
        Sketch parted = Sketch.dc(24, "iso13297")
                .add("G1", new Source.LimitedSupply(28.0, 0, 30.0))
                .add("G2", new Source.LimitedSupply(28.0, 0, 30.0))
                .add("Q1", new Switching.Changeover(2, null, Poles.POSITIVE, 1, ""))
                .power("E1", 60)
                .link("G1.1", "Q1.1")
                .link("G2.1", "Q1.2")
                .cable("W1", "Q1.3", "E1.1", 3, 4);
        assertThat(bare(parted)).as("never both").isEmpty();
    }

    // ---- distances -----------------------------------------------------------------------------------------------

    private static Sketch lead(String rules, double lengthM, Laying laying, boolean atBattery, String location) {
        Sketch s = Sketch.dc(24, rules)
                .supply("GB1", 25, 0.01)
                .fuse("F0", "class-t", 200)
                .fuse("F1", "class-t", 20)
                .bar("B")
                .power("E1", 60)
                .link("GB1.1", "F0.1")
                .link("F0.2", "B.a")
                .cable("W1", atBattery ? "GB1.1" : "B.b", "F1.1", lengthM, 4)
                .cable("W2", "F1.2", "E1.1", 3, 4);
        return s.change(d -> placed(d, laying, location));
    }

    private static Drawing placed(Drawing d, Laying laying, String location) {
        Cable w = d.cables().require("W1");
        Cable.Construction c = w.construction();
        Drawing laid = d.with(w.withConstruction(
                new Cable.Construction(c.conductorClass(), c.finish(), c.insulationC(), laying, 0, false, null)));
        Component g = laid.components().require("GB1");
        return located(laid)
                .with(new Component(
                        g.id(),
                        g.name(),
                        g.place(),
                        g.systems(),
                        g.refit(),
                        g.stage(),
                        location,
                        g.locked(),
                        g.particulars(),
                        g.extras()));
    }

    private static Drawing located(Drawing d) {
        return new Drawing(
                d.vessel(),
                d.systems(),
                d.conditions(),
                d.locations()
                        .with("bilge", new Location("bilge", "", null, false, false, true, false, Extras.NONE))
                        .with(
                                "engine-room",
                                new Location("engine-room", "", null, false, true, true, false, Extras.NONE)),
                d.sheets(),
                d.components(),
                d.cables(),
                d.links(),
                d.cableways(),
                d.notes(),
                d.measurements(),
                d.accepted(),
                d.dayPlans(),
                d.extras());
    }

    @Test
    void three_metres_are_taken_away_from_batteries_and_the_condition_is_said() {
        Sketch s = lead("iec60364", 2.9, Laying.FREE_AIR, false, "");
        Study study = s.study();

        assertThat(study.gaps()).isEmpty();
        assertThat(study.governing().remarks())
                .filteredOn(r -> r.message().key().equals("study.assumed.short-run"))
                .extracting(Remark::item)
                .containsExactly("W1");
        assertThat(bare(lead("iec60364", 3.1, Laying.FREE_AIR, false, ""))).containsExactly("W1");
    }

    @Test
    void at_a_battery_three_metres_want_a_sheath_and_no_engine_space() {
        assertThat(bare(lead("iec60364", 2.9, Laying.FREE_AIR, true, "bilge"))).containsExactly("W1");
        assertThat(bare(lead("iec60364", 0.2, Laying.FREE_AIR, true, "bilge"))).isEmpty();
        assertThat(bare(lead("iec60364", 2.9, Laying.CONDUIT, true, "bilge"))).isEmpty();
        assertThat(bare(lead("iec60364", 2.9, Laying.CONDUIT, true, "engine-room")))
                .containsExactly("W1");
    }

    @Test
    void the_length_of_links_counts_and_so_does_a_sheath() {
        assertThat(bare(lead("iso13297", 0.2, Laying.FREE_AIR, true, ""))).isEmpty();
        assertThat(bare(lead("iso13297", 0.25, Laying.FREE_AIR, true, ""))).containsExactly("W1");
        assertThat(bare(lead("iso13297", 1.8, Laying.SHEATHED, true, ""))).isEmpty();
        Sketch links = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.01)
                .bar("B")
                .fuse("F1", "class-t", 20)
                .power("E1", 60)
                .link("GB1.1", "B.a", 0.15)
                .cable("W1", "B.b", "F1.1", 0.1, 4)
                .cable("W2", "F1.2", "E1.1", 3, 4);
        assertThat(bare(links)).containsExactly("W1");
    }

    @Test
    void devices_at_the_end_of_a_lead_together_let_pass_no_more_than_it_carries() {
        Sketch s = Sketch.dc(24, "iso13297").supply("GB1", 25, 0.01).bar("B").cable("W1", "GB1.1", "B.in", 0.15, 4);
        for (int i = 1; i <= 4; i++) {
            s.fuse("F" + i, "class-t", 30).power("E" + i, 60);
            s.link("B.t" + i, "F" + i + ".1").cable("WL" + i, "F" + i + ".2", "E" + i + ".1", 3, 4);
        }

        assertThat(bare(s)).containsExactly("W1");
    }

    @Test
    void blocks_joined_within_a_hand_are_one_bank() {
        Sketch s = Sketch.dc(24, "iso13297")
                .add("GB1", Kind.BATTERY.defaults())
                .add("GB2", Kind.BATTERY.defaults())
                .fuse("F1", "class-t", 100)
                .power("E1", 60)
                .cable("W0", "GB1.1", "GB2.1", 0.18, 35)
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "E1.1", 3, 35);

        assertThat(bare(s)).isEmpty();
        s.change(d -> d.with(d.cables().require("W0").withLengthM(0.6)));
        assertThat(bare(s)).containsExactly("W0");
    }

    // ---- opening -------------------------------------------------------------------------------------------------

    @Test
    void a_device_that_the_lowest_fault_does_not_open_is_named_with_the_cable() {
        // 60 m of 1.5 mm²: 24 V over 2 × 60 × 13.3 mΩ hot, some 12 A, for a fuse of 10 A that opens at 19 A (gG: 1.9
        // In)
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 24, 0.01)
                .fuse("F1", "gg", 10)
                .power("E1", 5)
                .link("GB1.1", "F1.1")
                .cable("W1", "F1.2", "E1.1", 60, 1.5);
        List<Gap> gaps = s.study().gaps();

        assertThat(gaps)
                .extracting(Gap::kind, Gap::device, Gap::cable)
                .containsExactly(tuple(Gap.Kind.DOES_NOT_OPEN, "F1", "W1"));
        assertThat(gaps.get(0).faultA()).isBetween(10.0, 15.0);
        assertThat(gaps.get(0).proposed().ratingA()).isLessThan(10);
        s.change(d -> d.with(d.cables().require("W1").withLengthM(30.0)));
        assertThat(s.study().gaps()).isEmpty();
    }

    @Test
    void behind_a_source_that_holds_its_limit_a_cable_that_carries_it_is_no_matter() {
        Sketch s = Sketch.dc(24, "iso13297")
                .add("G1", new Source.LimitedSupply(24.0, 0, 12.0))
                .fuse("F1", "iso8820-c", 15)
                .power("E1", 60)
                .link("G1.1", "F1.1")
                .cable("W1", "F1.2", "E1.1", 3, 4);

        assertThat(s.study().gaps()).isEmpty();
    }
}
