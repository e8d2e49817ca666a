package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import orlop.drawing.Consumer;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.FaultMethod;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/** Alternating current: what kinds of loads and sources mean, converters, what is refused, sizing and protection. */
@SuppressWarnings("NullAway") // a null fails the test
class AlternatingTest {
    private static Sketch single() {
        return AcSketch.of(Nature.AC1, 230);
    }

    private static TerminalResult terminal(Results r, String component, int n) {
        return r.components().get(component).terminals().get(n);
    }

    /**
     * B. L. Theraja and A. K. Theraja, A Textbook of Electrical Technology, vol. III, example 41.42: 500 m feeder of
     * 0.02 + j0.04 ohm at 250 V, 50 A at 200 m, 100 A at power factor 0.8 at 300 m, 50 A at 0.6 at 500 m: about 5 V. The
     * book lumps the loads at their centre of gravity, hence the tolerance.
     */
    @Test
    void a_feeder_with_three_loads_drops_what_the_textbook_says() {
        Sketch s = single().add("G", new Source.Supply(250.0, 0, 0, 0, false))
                .bar("N1")
                .bar("N2")
                .bar("N3");
        AcSketch.impedance(s, "W1", "G.1", "N1.a", 0.02 * 0.4, 0.04 * 0.4);
        AcSketch.impedance(s, "W2", "N1.b", "N2.a", 0.02 * 0.2, 0.04 * 0.2);
        AcSketch.impedance(s, "W3", "N2.b", "N3.a", 0.02 * 0.4, 0.04 * 0.4);
        s.add("E1", AcSketch.current(50, 1))
                .add("E2", AcSketch.current(100, 0.8))
                .add("E3", AcSketch.current(50, 0.6));
        s.link("N1.c", "E1.1").link("N2.c", "E2.1").link("N3.c", "E3.1");

        double end = s.study().governing().points().get("N3").voltageV();
        assertThat(250 - end).isCloseTo(5.0, within(0.15));
    }

    /** P = √3·U·I·cos φ, and a drop of √3·I·R·cos φ from line to line is I·R·cos φ from line to neutral. */
    @Test
    void a_three_phase_motor_draws_a_third_of_its_power_from_each_phase() {
        Sketch s = AcSketch.of(Nature.AC3, 400).add("G", new Source.Supply(null, 0, 0, 0, false));
        s.add("M", new Consumer.Motor(7_500.0, 0.88, 0.83, null, null, null, Phase.ALL, false));
        AcSketch.impedance(s, "W1", "G.1", "M.1", 0.2, 0);
        Results r = s.study().governing();

        double volts = terminal(r, "M", 0).voltageV();
        double input = 7_500 / 0.88;
        assertThat(terminal(r, "G", 0).voltageV()).isCloseTo(400 / Math.sqrt(3), within(1e-9));
        assertThat(terminal(r, "M", 0).powerW()).isCloseTo(input, within(1e-6));
        double amps = terminal(r, "M", 0).currentA();
        assertThat(amps).isCloseTo(input / (3 * volts * 0.83), within(1e-6));
        CableResult w = r.cables().get("W1");
        assertThat(w.lossW()).isCloseTo(3 * amps * amps * 0.2, within(1e-6));
        assertThat(w.dropV()).isCloseTo(amps * 0.2 * 0.83, within(0.02));
        assertThat(w.dropPercent()).isCloseTo(100 * w.dropV() / (400 / Math.sqrt(3)), within(1e-9));
    }

    @Test
    void a_heater_is_a_resistance_and_takes_less_at_less_voltage() {
        Sketch s = single().add("G", new Source.Supply(207.0, 0, 0, 0, false));
        s.add("E", new Consumer.Heater(1_000.0, Phase.ALL, false)).link("G.1", "E.1");
        assertThat(terminal(s.study().governing(), "E", 0).powerW()).isCloseTo(810, within(1e-9));
    }

    @Test
    void what_feeds_itself_backwards_through_a_cable_counts_as_negative() {
        Sketch s = single().add("G", new Source.Supply(230.0, 0, 0, 0, false));
        s.add("E", AcSketch.power(1_000, 500));
        AcSketch.impedance(s, "W1", "E.1", "G.1", 0.1, 0.01);
        Results r = s.study().governing();
        assertThat(r.cables().get("W1").currentA()).isNegative();
        assertThat(r.cables().get("W1").dropV()).isNegative();
        assertThat(r.cables().get("W1").lossW()).isPositive();
    }

    /** With a resistive source and load the most power is U²/4R: 230² / 4 = 13 225 W at 1 ohm. */
    @Test
    void just_short_of_the_greatest_power_there_is_an_operating_point_and_just_beyond_none() {
        for (double share : new double[] {0.99, 1.01}) {
            Sketch s = single().add("G", new Source.Supply(230.0, 0, 0, 0, false));
            s.add("E", AcSketch.power(13_225 * share, 0));
            AcSketch.impedance(s, "W1", "G.1", "E.1", 1, 0);
            Results r = s.study().governing();
            assertThat(r.converged()).isEqualTo(share < 1);
            if (share < 1) {
                double expected = 115 * (1 + Math.sqrt(1 - share));
                assertThat(terminal(r, "E", 0).voltageV()).isCloseTo(expected, within(1e-5));
            } else {
                assertThat(r.remarks()).extracting(Remark::kind).contains(Remark.Kind.COLLAPSE);
                assertThat(terminal(r, "E", 0).voltageV()).isNull();
            }
        }
    }

    @Test
    void sources_of_different_voltage_that_meet_without_impedance_contradict_each_other() {
        Sketch s = single().add("G1", new Source.Supply(230.0, 0, 0, 0, false));
        s.add("G2", new Source.Supply(230.0, 120, 0, 0, false)).link("G1.1", "G2.1");
        Results r = s.study().governing();
        assertThat(r.converged()).isFalse();
        assertThat(r.remarks()).extracting(Remark::kind).contains(Remark.Kind.CONTRADICTION);
    }

    @Test
    void a_charger_takes_from_the_alternating_side_what_it_gives_and_loses() {
        Sketch s = single().system("24", 24);
        s.add("G", new Source.Supply(230.0, 0, 0.5, 0, false));
        s.add("B", new Source.Supply(25.0, 0, 0.01, 0, false), "24");
        s.add("TB", new Conversion.Charger(40.0, 28.0, 0.8, 5, true), "S", "24");
        s.link("G.1", "TB.1").link("TB.2", "B.1");
        Results r = s.study().governing();
        double out = terminal(r, "TB", 1).powerW();
        assertThat(terminal(r, "TB", 1).currentA()).isCloseTo(40, within(1e-9));
        assertThat(terminal(r, "TB", 0).powerW()).isCloseTo(out / 0.8 + 5, within(1e-6));
    }

    @Test
    void an_inverter_takes_from_the_battery_the_active_power_that_it_gives_and_no_more_than_its_limit_into_a_fault() {
        Sketch s = single().system("24", 24);
        s.add("B", new Source.Supply(25.0, 0, 0.005, 0, false), "24");
        s.add("TB", new Conversion.Inverter(2_000.0, 0.9, 10, null, 30.0, null), "24", "S");
        s.add("E", AcSketch.power(900, 600));
        AcSketch.impedance(s, "W1", "TB.2", "E.1", 0.4, 0);
        s.link("B.1", "TB.1");
        Results r = s.study().governing();
        double out = terminal(r, "TB", 1).powerW();
        assertThat(out).isCloseTo(900 + r.cables().get("W1").lossW(), within(1e-6));
        assertThat(terminal(r, "TB", 0).powerW()).isCloseTo(out / 0.9 + 10, within(1e-6));
        assertThat(r.cables().get("W1").faultTo().maxA()).isEqualTo(30);
    }

    /** IEC 60909-0: I = c·U / Z with c 1.10 and 0.90 for supplies of ±10 % (from memory). */
    @Test
    void a_shore_supply_gives_its_prospective_current_at_its_socket() {
        Sketch s = Sketch.dc(230, "iec60364", FaultMethod.IEC)
                .change(d -> d.with(ElectricalSystem.of("S", Nature.AC1, 230)));
        s.add("XD", new Source.ShorePedestal(16.0, 1_500.0, 400.0, null));
        s.add("E", AcSketch.power(500, 0));
        AcSketch.impedance(s, "W1", "XD.1", "E.1", 0.5, 0);
        CableResult w = s.study().governing().cables().get("W1");
        assertThat(w.faultFrom().maxA()).isCloseTo(1_500, within(1e-6));
        assertThat(w.faultFrom().minA()).isCloseTo(400, within(1e-6));
        double x = 253 / 1_500.0;
        assertThat(w.faultTo().maxA()).isCloseTo(253 / Math.hypot(0.5, x), within(1e-6));
        assertThat(w.faultTo().minA()).isCloseTo(207 / (0.5 + 207 / 400.0), within(1e-6));
    }

    @Test
    void an_open_area_grows_until_the_drop_to_an_inductive_load_is_within_its_limit() {
        Sketch s = single().add("G", new Source.Supply(230.0, 0, 0, 0, false));
        s.add("E", AcSketch.power(2_000, 1_500)).auto("W1", "G.1", "E.1", 60);
        Results r = s.study().governing();
        ComponentResult e = r.components().get("E");
        assertThat(e.dropFromSourcePercent()).isLessThanOrEqualTo(e.dropLimitPercent());
        CableResult w = r.cables().get("W1");
        assertThat(w.areaMm2()).isGreaterThan(1.5);
        assertThat(w.leastAreaMm2()).isEqualTo(w.areaMm2());
        assertThat(w.ampacityA()).isGreaterThan(w.designCurrentA());
        assertThat(w.dropV()).isCloseTo(230 - terminal(r, "E", 0).voltageV(), within(1e-9));
    }

    @Test
    void a_cable_at_a_generator_needs_a_device_and_a_breaker_in_front_of_it_guards_it() {
        Sketch bare =
                single().add("G", new Source.Generator(8.0, 0.8, 4, 12.0, 20.0, orlop.drawing.Excitation.SELF, null));
        bare.bar("N").cable("W1", "G.1", "N.a", 20, 2.5);
        assertThat(bare.study().gaps()).extracting(Gap::cable).containsExactly("W1");

        Sketch guarded =
                single().add("G", new Source.Generator(8.0, 0.8, 4, 12.0, 20.0, orlop.drawing.Excitation.SELF, null));
        guarded.add("QF", new Protection.CircuitBreaker("", 16.0, null, null, null, 0.0, Poles.L_N, Position.CLOSED));
        guarded.bar("N").link("G.1", "QF.1").cable("W1", "QF.2", "N.a", 20, 2.5);
        Study study = guarded.study();
        assertThat(study.gaps()).isEmpty();
        assertThat(study.governing().cables().get("W1").protectedBy()).containsExactly("QF");
    }

    /** With a bypass the output of an inverter/charger can be reached from the shore: 35 A are its charging current. */
    @Test
    void the_output_of_an_inverter_charger_is_not_sized_for_its_charging_current() {
        Sketch s = single().system("24", 24)
                .add("GB", new Source.Supply(25.0, 0, 0.01, 0, false), "24")
                .add("G", new Source.Supply(null, 0, 0, 0, false))
                .bar("N");
        s.add("TB", new Conversion.InverterCharger(2_000.0, 0.9, 10, 35.0, 16.0, null, 40.0, null), "24", "S")
                .add("QC", new Switching.Changeover(2, null, Poles.L_N, 1, ""))
                .add("E", AcSketch.current(4, 1))
                .link("GB.1", "TB.1")
                .link("G.1", "N.a")
                .link("N.b", "TB.3")
                .link("N.c", "QC.2")
                .cable("W1", "TB.2", "QC.1", 2, 2.5)
                .link("QC.3", "E.1");

        assertThat(s.study().governing().cables().get("W1").designCurrentA()).isBetween(4.0, 2_000 / 230.0 + 1e-9);
    }

    @Test
    void an_inverter_charger_passes_the_shore_through_and_charges_and_at_sea_inverts() {
        Sketch s = single().system("24", 24);
        s.add("XD", new Source.Supply(230.0, 0, 0.2, 0, false));
        s.add("B", new Source.Supply(25.0, 0, 0.005, 0, false), "24");
        s.add("TB", new Conversion.InverterCharger(2_000.0, 0.9, 10, 35.0, 16.0, null, 40.0, null), "24", "S");
        s.add("E", AcSketch.power(900, 100));
        s.link("B.1", "TB.1").link("XD.1", "TB.3").link("TB.2", "E.1");
        s.condition("shore").condition("sea").source("sea", "XD", "off");
        Study study = s.study();

        Results shore = study.of("shore");
        double charge = 35 * terminal(shore, "B", 0).voltageV();
        assertThat(terminal(shore, "B", 0).currentA()).isCloseTo(-35, within(1e-6));
        assertThat(terminal(shore, "XD", 0).powerW()).isCloseTo(900 + charge / 0.9 + 10, within(1e-4));
        Results sea = study.of("sea");
        assertThat(terminal(sea, "E", 0).voltageV()).isCloseTo(230, within(1e-9));
        assertThat(terminal(sea, "B", 0).powerW()).isCloseTo(900 / 0.9 + 10, within(1e-6));
        assertThat(sea.components().get("E").live()).isTrue();
    }

    @Test
    void nothing_is_assumed_of_the_shore_at_an_inlet_whose_pedestal_is_drawn() {
        Sketch s = single().add("GA", new Source.ShorePedestal(16.0, 1_500.0, 500.0, 30.0))
                .add("XD", new Source.ShoreInlet(16.0, null, null))
                .add("E", AcSketch.power(900, 0))
                .link("XD.1", "E.1");
        assertThat(s.study().governing().remarks())
                .extracting(r -> r.message().key())
                .contains("study.assumed.shore");

        s.link("GA.1", "XD.2");
        assertThat(s.study().governing().remarks())
                .extracting(r -> r.message().key())
                .doesNotContain("study.assumed.shore");
    }

    @Test
    void a_neutral_that_is_drawn_has_its_own_drop() {
        Sketch s = single().add("G", new Source.Supply(230.0, 0, 0, 0, false)).add("E", AcSketch.impedance(22, 0));
        AcSketch.impedance(s, "W1", "G.1", "E.1", 0.6, 0);
        AcSketch.impedance(s, "W2", "E.2", "G.2", 0.4, 0);
        Results r = s.study().governing();
        assertThat(r.cables().get("W1").currentA()).isCloseTo(10, within(1e-9));
        assertThat(terminal(r, "E", 0).powerW()).isCloseTo(2_200, within(1e-9));
        assertThat(r.components().get("E").dropFromSourcePercent()).isCloseTo(100 * 10 / 230.0, within(1e-9));
    }

    @Test
    void a_load_behind_a_closed_breaker_passes_its_current_through_it() {
        Sketch s = AcSketch.of(Nature.AC3, 400).add("G", new Source.Supply(null, 0, 0.05, 0.02, false));
        s.add("QF", new Protection.CircuitBreaker("", 16.0, null, null, null, 0.0, Poles.L3, Position.CLOSED));
        s.add("E", AcSketch.power(6_000, 3_000)).link("G.1", "QF.1");
        AcSketch.impedance(s, "W1", "QF.2", "E.1", 0.1, 0.01);
        Results r = s.study().governing();
        assertThat(terminal(r, "QF", 0).currentA())
                .isCloseTo(terminal(r, "E", 0).currentA(), within(1e-9));
        double expected = 6_000 + r.cables().get("W1").lossW();
        assertThat(terminal(r, "QF", 0).powerW()).isCloseTo(expected, within(1e-6));
    }
}
