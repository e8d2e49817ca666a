package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Cable;
import orlop.drawing.Conductors;
import orlop.drawing.Consumer;
import orlop.drawing.Conversion;
import orlop.drawing.LoadBehaviour;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Source;

/** Three-phase systems whose phases differ: ngspice, textbook, and what each drawn thing means. */
@SuppressWarnings("NullAway") // a null fails the test
class FourWireTest {
    static Consumer.PlainLoad load(double ohm, double reactanceOhm, Phase phase) {
        return new Consumer.PlainLoad(
                LoadBehaviour.RESISTANCE, null, null, null, null, ohm, reactanceOhm, phase, false);
    }

    static TerminalResult terminal(Results r, String component, int n) {
        return r.components().get(component).terminals().get(n);
    }

    static Sketch cable(Sketch s, String id, String from, String to, Conductors c, Cable.Measured m) {
        Cable w = Cable.of(id, Sketch.t(from), Sketch.t(to)).withLengthM(1.0).withAreaMm2(10.0);
        return s.change(d -> d.with(remade(w, c, m, null)));
    }

    static Cable remade(Cable w, Conductors c, Cable.Measured m, Double conductorC) {
        return new Cable(
                w.id(),
                w.from(),
                w.to(),
                w.lengthM(),
                w.lengthEstimated(),
                w.areaMm2(),
                1,
                c,
                w.construction(),
                w.returns(),
                m,
                conductorC,
                w.refit(),
                w.stage(),
                w.name(),
                w.cableways(),
                w.bends(),
                w.labelAt(),
                w.locked(),
                w.extras());
    }

    /** One conductor of each phase and a neutral, all of these. */
    static Cable.Measured each(double ohm, double reactanceOhm) {
        return new Cable.Measured(null, null, ohm, reactanceOhm, ohm, reactanceOhm, null);
    }

    @Test
    void equal_loads_on_each_phase_give_what_the_one_phase_solution_gives_and_no_neutral_current() {
        Sketch three = AcSketch.of(Nature.AC3N, 400).add("G", new Source.Supply(231.0, 0, 0.05, 0.1, false));
        three.bar("B").add("E", AcSketch.power(9_000, 3_000)).link("B.e", "E.1");
        cable(three, "W1", "G.1", "B.a", null, each(0.1, 0.02));
        Sketch single = AcSketch.of(Nature.AC3N, 400).add("G", new Source.Supply(231.0, 0, 0.05, 0.1, false));
        single.bar("B");
        cable(single, "W1", "G.1", "B.a", null, each(0.1, 0.02));
        for (Phase p : List.of(Phase.L1, Phase.L2, Phase.L3)) {
            single.add(
                    "E" + p,
                    new Consumer.PlainLoad(LoadBehaviour.POWER, 3_000.0, 1_000.0, null, null, null, null, p, false));
            single.link("B." + p, "E" + p + ".1");
        }
        Results a = three.study().governing();
        Results b = single.study().governing();
        assertThat(a.points().get("B").phases()).isEmpty();
        assertThat(b.points().get("B").voltageV()).isCloseTo(a.points().get("B").voltageV(), within(1e-8));
        CableResult w = b.cables().get("W1");
        assertThat(w.currentA()).isCloseTo(a.cables().get("W1").currentA(), within(1e-8));
        assertThat(w.lossW()).isCloseTo(a.cables().get("W1").lossW(), within(1e-6));
        assertThat(w.dropV()).isCloseTo(a.cables().get("W1").dropV(), within(1e-8));
        assertThat(w.phases().get("N").currentA()).isLessThan(1e-8);
    }

    /** On a board that is also loaded on one phase, loads on all phases are what they were. */
    @Test
    void loads_on_all_phases_take_the_same_where_another_phase_draws_next_to_nothing() {
        List<Consumer.PlainLoad> loads =
                List.of(AcSketch.power(9_000, 3_000), AcSketch.current(12, 0.7), AcSketch.impedance(20, 5));
        for (Consumer.PlainLoad l : loads) {
            List<TerminalResult> found = new ArrayList<>();
            for (boolean unequal : new boolean[] {false, true}) {
                Sketch s = AcSketch.of(Nature.AC3N, 400).add("G", new Source.Supply(231.0, 0, 0.05, 0.1, false));
                s.bar("B").add("E", l).link("B.e", "E.1");
                cable(s, "W1", "G.1", "B.a", null, each(0.1, 0.02));
                if (unequal) {
                    s.add("X", load(1e9, 0, Phase.L2)).link("B.x", "X.1");
                }
                found.add(terminal(s.study().governing(), "E", 0));
            }
            assertThat(found.get(1).phases()).isNotEmpty();
            assertThat(found.get(1).voltageV()).isCloseTo(found.get(0).voltageV(), within(1e-5));
            assertThat(found.get(1).currentA()).isCloseTo(found.get(0).currentA(), within(1e-5));
            assertThat(found.get(1).powerW()).isCloseTo(found.get(0).powerW(), within(1e-3));
        }
    }

    /** Ohm's law: 10 A of the only load flows in L2 and back in the neutral, and in no other conductor. */
    @Test
    void a_two_wire_cable_takes_the_phase_of_the_load_behind_it() {
        Sketch s = AcSketch.of(Nature.AC3N, 400).add("G", new Source.Supply(230.0, 0, 0, 0, false));
        s.bar("B").add("E", load(22.4, 0, Phase.L2));
        cable(s, "W1", "G.1", "B.a", null, each(0.1, 0));
        cable(s, "W2", "B.b", "E.1", Conductors.L_N_PE, each(0.2, 0));
        Results r = s.study().governing();
        assertThat(r.cables().get("W2").phases()).containsOnlyKeys("L2", "N");
        assertThat(r.cables().get("W2").currentA()).isCloseTo(10, within(1e-9));
        assertThat(r.cables().get("W2").dropV()).isCloseTo(4, within(1e-9));
        assertThat(r.cables().get("W2").dropPercent()).isCloseTo(100 * 4 / (400 / Math.sqrt(3)), within(1e-9));
        assertThat(r.cables().get("W2").lossW()).isCloseTo(40, within(1e-9));
        assertThat(r.cables().get("W1").dropV()).isCloseTo(2, within(1e-9));
        assertThat(r.components().get("E").dropFromSourcePercent()).isCloseTo(6 / 2.309401, within(1e-5));
        assertThat(r.cables().get("W1").phases().get("L1").currentA()).isCloseTo(0, within(1e-9));
        assertThat(r.cables().get("W1").phases().get("N").currentA()).isCloseTo(10, within(1e-9));
        assertThat(r.points().get("B").phases().get("N").voltageV()).isCloseTo(1, within(1e-9));
        assertThat(terminal(r, "E", 0).voltageV()).isCloseTo(224, within(1e-9));
    }

    /** 230 V behind 0.1 ohm twice and 0.2 ohm twice: 400 V over 39.4 + 0.6 ohm is 10 A. */
    @Test
    void a_load_between_two_phases_has_the_line_voltage_and_leaves_the_neutral_alone() {
        Sketch s = AcSketch.of(Nature.AC3, 400).add("G", new Source.Supply(400 / Math.sqrt(3), 0, 0, 0, false));
        s.bar("B").add("E", load(39.4, 0, Phase.L2_L3));
        cable(s, "W1", "G.1", "B.a", null, each(0.1, 0));
        cable(s, "W2", "B.b", "E.1", Conductors.TWO_WIRE, each(0.2, 0));
        Results r = s.study().governing();
        assertThat(terminal(r, "E", 0).currentA()).isCloseTo(10, within(1e-9));
        assertThat(terminal(r, "E", 0).voltageV()).isCloseTo(394, within(1e-9));
        assertThat(r.cables().get("W2").phases()).containsOnlyKeys("L2", "L3");
        assertThat(r.cables().get("W2").dropV()).isCloseTo(4, within(1e-9));
        assertThat(r.cables().get("W2").dropPercent()).isCloseTo(1, within(1e-9));
        assertThat(r.components().get("E").dropFromSourcePercent()).isCloseTo(1.5, within(1e-9));
        assertThat(r.points().get("B").phases()).containsOnlyKeys("L1", "L2", "L3");
    }

    @Test
    void a_neutral_that_carries_most_decides_the_current_of_its_cable() {
        Sketch s = AcSketch.of(Nature.AC3N, 400)
                .add("G", new Source.Supply(230.0, 0, 0, 0, false))
                .bar("B");
        s.add("E1", load(23, 0, Phase.L1)).link("B.e1", "E1.1");
        s.add("E2", load(0.001, 23, Phase.L2)).link("B.e2", "E2.1");
        cable(s, "W1", "G.1", "B.a", null, each(1e-6, 0));
        Results r = s.study().governing();
        // 10 A at 0° and 10 A at −120° − 90° = 150°: together 2 · 10 · cos 75° = 5.18 A in the neutral
        assertThat(r.cables().get("W1").phases().get("N").currentA())
                .isCloseTo(20 * Math.cos(Math.toRadians(75)), within(1e-3));
        Sketch lagging = AcSketch.of(Nature.AC3N, 400)
                .add("G", new Source.Supply(230.0, 0, 0, 0, false))
                .bar("B");
        lagging.add("E1", load(23, 0, Phase.L1)).link("B.e1", "E1.1");
        lagging.add("E2", load(0.001, -23, Phase.L2)).link("B.e2", "E2.1");
        cable(lagging, "W1", "G.1", "B.a", null, each(1e-6, 0));
        // 10 A at 0° and 10 A at −30°: 2 · 10 · cos 15° = 19.3 A in the neutral, more than in any line
        CableResult w = lagging.study().governing().cables().get("W1");
        assertThat(w.currentA()).isCloseTo(20 * Math.cos(Math.toRadians(15)), within(1e-3));
        assertThat(w.designCurrentA()).isCloseTo(w.currentA(), within(1e-9));
    }

    @Test
    void a_two_wire_cable_with_loads_of_two_phases_behind_it_is_said_and_only_that_is_left_out() {
        Sketch s = AcSketch.of(Nature.AC3N, 400)
                .add("G", new Source.Supply(230.0, 0, 0, 0, false))
                .bar("B")
                .bar("C");
        cable(s, "W1", "G.1", "B.a", null, each(0.1, 0));
        cable(s, "W2", "B.b", "C.a", Conductors.L_N_PE, each(0.1, 0));
        s.add("E1", load(23, 0, Phase.L1)).link("C.e1", "E1.1");
        s.add("E2", load(23, 0, Phase.L2)).link("C.e2", "E2.1");
        s.add("E3", load(23, 0, Phase.L3)).link("B.e3", "E3.1");
        Results r = s.study().governing();
        assertThat(r.remarks())
                .filteredOn(x -> x.kind() == Remark.Kind.NOT_CALCULATED)
                .extracting(x -> x.item() + " " + x.message().key())
                .contains("W2 study.not-calculated.phases-mixed");
        assertThat(terminal(r, "E1", 0).voltageV()).isNull();
        assertThat(terminal(r, "E3", 0).currentA()).isCloseTo(230 / 23.2, within(1e-9));
    }

    @Test
    void a_charger_on_a_two_wire_cable_takes_the_phase_of_its_board_and_is_said_where_nothing_names_one() {
        for (boolean named : new boolean[] {true, false}) {
            Sketch s = AcSketch.of(Nature.AC3N, 400).system("24", 24).bar("B").bar("C");
            s.add("G", new Source.Supply(230.0, 0, 0, 0, false));
            s.add("A", new Source.Supply(25.0, 0, 0.01, 0, false), "24");
            s.add("TB", new Conversion.Charger(40.0, 28.0, 0.8, 0, true), "S", "24")
                    .link("TB.2", "A.1");
            cable(s, "W1", "G.1", "B.a", null, each(0.1, 0));
            cable(s, "W2", "B.b", "C.a", Conductors.L_N_PE, each(0.1, 0));
            s.link("C.t", "TB.1");
            if (named) {
                s.add("E", load(100, 0, Phase.L3)).link("C.e", "E.1");
            }
            Results r = s.study().governing();
            String phase = named ? "L3" : "L1";
            assertThat(r.cables().get("W2").phases()).containsOnlyKeys(phase, "N");
            assertThat(r.remarks().stream().anyMatch(x -> x.message().key().equals("study.assumed.phase")))
                    .isNotEqualTo(named);
            double out = terminal(r, "TB", 1).powerW();
            assertThat(terminal(r, "TB", 0).powerW()).isCloseTo(out / 0.8, within(1e-6));
            assertThat(terminal(r, "TB", 0).phases().get(phase).currentA())
                    .isCloseTo(terminal(r, "TB", 0).currentA(), within(1e-9));
        }
    }

    @Test
    void an_inverter_feeds_single_phases_and_takes_their_power_from_the_battery() {
        Sketch s = AcSketch.of(Nature.AC3N, 400).system("24", 24).bar("B");
        s.add("A", new Source.Supply(25.0, 0, 0.001, 0, false), "24");
        s.add("TB", new Conversion.Inverter(9_000.0, 0.9, 10, null, 60.0, null), "24", "S")
                .link("A.1", "TB.1");
        cable(s, "W1", "TB.2", "B.a", null, each(0.1, 0));
        s.add("E1", load(23, 0, Phase.L1)).link("B.e1", "E1.1");
        s.add("E2", load(46, 10, Phase.L2_L3)).link("B.e2", "E2.1");
        Results r = s.study().governing();
        double out = terminal(r, "E1", 0).powerW()
                + terminal(r, "E2", 0).powerW()
                + r.cables().get("W1").lossW();
        assertThat(terminal(r, "TB", 1).powerW()).isCloseTo(out, within(1e-6));
        assertThat(terminal(r, "TB", 0).powerW()).isCloseTo(out / 0.9 + 10, within(1e-6));
    }

    @Test
    void a_load_without_a_neutral_is_said() {
        Sketch s = AcSketch.of(Nature.AC3N, 400).add("G", new Source.Supply(230.0, 0, 0, 0, false));
        s.add("E", load(23, 0, Phase.L1));
        cable(s, "W1", "G.1", "E.1", Conductors.L3_PE, each(0.1, 0));
        Results r = s.study().governing();
        assertThat(r.remarks())
                .extracting(x -> x.item() + " " + x.message().key())
                .contains("E study.not-calculated.phase-missing");
        assertThat(terminal(r, "E", 0).currentA()).isNull();
    }

    /** A breaker guards the lead, and the tap of one phase is said for want of one. */
    @Test
    void a_tap_of_one_phase_needs_a_device_of_its_own_like_any_other_branch() {
        Sketch s = AcSketch.of(Nature.AC3N, 400).bar("B");
        s.add("G", new Source.Generator(8.0, 0.8, 4, 12.0, 20.0, orlop.drawing.Excitation.SELF, null));
        s.add(
                "QF",
                new orlop.drawing.Protection.CircuitBreaker(
                        "", 32.0, null, null, null, 0.0, orlop.drawing.Poles.L3_N, orlop.drawing.Position.CLOSED));
        s.link("G.1", "QF.1").cable("W1", "QF.2", "B.a", 10, 10);
        s.add("E", load(100, 0, Phase.L1)).cable("W2", "B.b", "E.1", 10, 1.5);
        Cable w = s.drawing().cables().require("W2");
        s.change(d -> d.with(remade(w, Conductors.L_N_PE, Cable.Measured.NOTHING, null)));
        Study study = s.study();
        assertThat(study.gaps())
                .filteredOn(g -> g.kind() != Gap.Kind.DOES_NOT_OPEN)
                .extracting(Gap::cable)
                .containsExactly("W2");
        // 8 kVA are 11.5 A; behind 20 % of transient reactance two lines draw √3/2 of 57.7 A: less than 1.6 × 32 A
        assertThat(study.gaps())
                .filteredOn(g -> g.kind() == Gap.Kind.DOES_NOT_OPEN)
                .singleElement()
                .satisfies(g -> {
                    assertThat(g.device()).isEqualTo("QF");
                    assertThat(g.faultA()).isCloseTo(Math.sqrt(3) / 2 * 57.7, within(1.0));
                });
        assertThat(study.governing().cables().get("W1").protectedBy()).containsExactly("QF");
    }
}
