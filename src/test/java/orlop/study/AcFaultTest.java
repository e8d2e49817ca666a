package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import orlop.drawing.Cable;
import orlop.drawing.Conductors;
import orlop.drawing.Conversion;
import orlop.drawing.Earthing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Excitation;
import orlop.drawing.Extras;
import orlop.drawing.FaultMethod;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Protection;
import orlop.drawing.Source;

/**
 * Alternating-current faults by kind. Formulas of IEC 60909-0:2016 (from memory), worked by hand beside each check;
 * factors c of its table 1.
 */
@SuppressWarnings("NullAway") // a null fails the test
class AcFaultTest {
    private static final double U0 = 400 / Math.sqrt(3);

    private static Sketch three(FaultMethod method) {
        return Sketch.dc(400, "iec60364", method).change(d -> d.with(ElectricalSystem.of("S", Nature.AC3N, 400)));
    }

    private static Sketch single(FaultMethod method) {
        return Sketch.dc(230, "iec60364", method).change(d -> d.with(ElectricalSystem.of("S", Nature.AC1, 230)));
    }

    private static FaultResult fault(Sketch s, String point, FaultKind kind) {
        return s.study().governing().points().get(point).faults().get(kind);
    }

    /** V. K. Mehta and R. Mehta, Principles of Power System, example 17.1 (read in a typed copy): 4330 A. */
    @Test
    void two_alternators_in_parallel_give_what_the_textbook_says() {
        Sketch s = Sketch.dc(12_000).change(d -> d.with(ElectricalSystem.of("S", Nature.AC3N, 12_000)));
        s.bar("B");
        s.add("G1", new Source.Generator(15_000.0, 0.8, 4, 30.0, 30.0, Excitation.UNKNOWN, null));
        s.add("G2", new Source.Generator(20_000.0, 0.8, 4, 50.0, 50.0, Excitation.UNKNOWN, null));
        s.link("B.1", "G1.1").link("B.2", "G2.1");
        assertThat(fault(s, "B", FaultKind.THREE_PHASE).maxA()).isCloseTo(4_330, within(2.0));
    }

    /**
     * A supply of 0.02 + j0.06 ohm and a cable of 0.10 + j0.01 ohm a line, neutral 0.20 + j0.02, PE 0.15 ohm, all at the
     * temperature stated. c 1.10: 254.034 V.
     *
     * <pre>
     * 3ph  Z = 0.12 + j0.07 = 0.138924 ohm      254.034 / 0.138924       = 1828.58 A
     * 2ph                                        √3/2 · 1828.58           = 1583.60 A
     * ln   Z = 0.32 + j0.09 = 0.332415 ohm      254.034 / 0.332415       =  764.21 A
     * le   Z = 0.27 + j0.08 = 0.281603 ohm      254.034 / 0.281603       =  902.10 A
     * κ    3ph: R/X 1.714286: 1.02 + 0.98 e^-5.142857 = 1.025724;  ip = 1.025724 √2 1828.58 = 2652.5 A
     * </pre>
     */
    @Test
    void each_kind_of_fault_at_the_end_of_a_cable_is_what_the_formula_gives() {
        Sketch s = three(FaultMethod.IEC)
                .add("G", new Source.Supply(null, 0, 0.02, 0.06, false))
                .bar("B");
        FourWireTest.cable(s, "W1", "G.1", "B.a", null, new Cable.Measured(null, null, 0.10, 0.01, 0.20, 0.02, 0.15));
        FaultResult three = fault(s, "B", FaultKind.THREE_PHASE);
        assertThat(three.maxA()).isCloseTo(1_828.58, within(0.01));
        assertThat(three.peakA()).isCloseTo(2_652.5, within(0.1));
        assertThat(three.minA()).isCloseTo(1_828.58 * 0.90 / 1.10, within(0.01));
        assertThat(fault(s, "B", FaultKind.TWO_PHASE).maxA()).isCloseTo(1_583.60, within(0.01));
        assertThat(fault(s, "B", FaultKind.LINE_NEUTRAL).maxA()).isCloseTo(764.21, within(0.01));
        assertThat(fault(s, "B", FaultKind.LINE_EARTH).maxA()).isCloseTo(902.10, within(0.02));
        FaultRange all = s.study().governing().points().get("B").fault();
        assertThat(all.maxA()).isCloseTo(1_828.58, within(0.01));
        assertThat(all.minA()).isCloseTo(764.21 * 0.90 / 1.10, within(0.01));
        assertThat(s.study().governing().cables().get("W1").faultTo()).isEqualTo(all);
    }

    /**
     * 20 m of 6 mm² class 5 (3.30 ohm/km at 20 °C, IEC 60228): 0.066 ohm a conductor, 0.066 (1 + 0.00393 · 70) = 0.0841566
     * at 90 °C; reactance 0.08 mohm/m: 1.6 mohm. Shore 230 V: 1,000 A highest, 400 A lowest.
     *
     * <pre>
     * max  z = j 253/1000; loop 0.132 + j(0.253 + 0.0032) = 0.288208; 253 / 0.288208 = 877.84 A
     * min  z = 207/400 = 0.5175; loop 0.5175 + 0.1683132 + j0.0032 = 0.685821; 207 / 0.685821 = 301.83 A
     * </pre>
     */
    @Test
    void a_lead_behind_a_pedestal_is_cold_for_the_highest_and_hot_for_the_lowest_current() {
        Sketch s = single(FaultMethod.IEC)
                .add("XD", new Source.ShorePedestal(16.0, 1_000.0, 400.0, null))
                .bar("B");
        s.cable("W1", "XD.1", "B.a", 20, 6);
        for (FaultKind kind : new FaultKind[] {FaultKind.LINE_NEUTRAL, FaultKind.LINE_EARTH}) {
            FaultResult f = fault(s, "B", kind);
            assertThat(f.maxA()).isCloseTo(877.84, within(0.05));
            assertThat(f.minA()).isCloseTo(301.83, within(0.05));
            assertThat(f.sustainedA()).isEqualTo(f.minA());
        }
        assertThat(s.study().governing().points().get("B").faults())
                .containsOnlyKeys(FaultKind.LINE_NEUTRAL, FaultKind.LINE_EARTH);
    }

    /**
     * 20 kVA, 400 V, X″d 12 %: rated 28.8675 A, X″d = 0.12 · 8 = 0.96 ohm.
     *
     * <pre>
     * 3ph at its terminals, c 1.10: 254.034 / 0.96 = 264.62 A; κ with R = 0 is 2.0: ip = 2 √2 264.62 = 748.46 A
     * ln, Z0 = X″d / 2: √3 · 1.1 · 400 / (2 · 0.96 + 0.48) = 317.54 A
     * held: 3 · 28.8675 = 86.60 A with supported excitation
     * </pre>
     */
    @ParameterizedTest
    @EnumSource(Excitation.class)
    void a_generator_gives_its_subtransient_current_and_holds_what_its_excitation_can(Excitation excitation) {
        Sketch s = three(FaultMethod.IEC).add("G", new Source.Generator(20.0, 0.8, 4, 12.0, 20.0, excitation, null));
        s.bar("B").link("B.1", "G.1");
        FaultResult three = fault(s, "B", FaultKind.THREE_PHASE);
        assertThat(three.maxA()).isCloseTo(264.62, within(0.01));
        assertThat(three.peakA()).isCloseTo(748.46, within(0.02));
        assertThat(three.minA()).isCloseTo(0.90 * U0 / 1.6, within(0.01)); // X′d 20 %
        assertThat(fault(s, "B", FaultKind.LINE_NEUTRAL).maxA()).isCloseTo(317.54, within(0.01));
        switch (excitation) {
            case SUPPORTED -> assertThat(three.sustainedA()).isCloseTo(86.60, within(0.01));
            case SELF, CAPACITOR -> assertThat(three.sustainedA()).isZero();
            case UNKNOWN -> assertThat(three.sustainedA()).isNull();
        }
    }

    @Test
    void a_two_wire_tap_of_a_three_phase_board_has_no_fault_of_three_phases() {
        Sketch s = three(FaultMethod.PLAIN)
                .add("G", new Source.Supply(231.0, 0, 0.02, 0, false))
                .bar("B");
        s.add("E", FourWireTest.load(20, 0, Phase.L3));
        FourWireTest.cable(s, "W1", "G.1", "B.a", null, FourWireTest.each(0.1, 0));
        FourWireTest.cable(s, "W2", "B.b", "E.1", Conductors.L_N_PE, FourWireTest.each(0.3, 0));
        PointResult e = s.study().governing().points().get("E");
        assertThat(e.faults()).containsOnlyKeys(FaultKind.LINE_NEUTRAL, FaultKind.LINE_EARTH);
        assertThat(e.fault().maxA()).isCloseTo(231 / (0.02 + 0.2 + 0.6), within(1e-9));
        assertThat(fault(s, "B", FaultKind.THREE_PHASE).maxA()).isCloseTo(231 / 0.12, within(1e-9));
    }

    @Test
    void an_insulated_system_without_neutral_has_faults_between_lines_alone() {
        Sketch s = Sketch.dc(230).change(d -> d.with(ElectricalSystem.of("S", Nature.AC3, 230)));
        s.add("G", new Source.Supply(null, 0, 0.05, 0, false)).bar("B").link("B.1", "G.1");
        PointResult b = s.study().governing().points().get("B");
        assertThat(b.faults()).containsOnlyKeys(FaultKind.THREE_PHASE, FaultKind.TWO_PHASE);
        assertThat(b.fault().minA()).isCloseTo(230 / Math.sqrt(3) / 0.05 * Math.sqrt(3) / 2, within(1e-6));
    }

    @Test
    void a_system_said_to_be_insulated_has_no_earth_fault_current() {
        Sketch s = single(FaultMethod.PLAIN)
                .change(d -> d.with(new ElectricalSystem(
                        "S", "", Nature.AC1, 230, 253, 50, Earthing.INSULATED, null, null, Extras.NONE)));
        s.add("G", new Source.Supply(230.0, 0, 0.1, 0, false)).bar("B").link("B.1", "G.1");
        assertThat(s.study().governing().points().get("B").faults()).containsOnlyKeys(FaultKind.LINE_NEUTRAL);
    }

    /** Loop 0.1 + 0.6 + 0.4 at the load; at the bar before the last cable back, 0.1 + 0.2 + 0.3. */
    @Test
    void a_neutral_that_is_drawn_counts_in_the_loop() {
        Sketch s = single(FaultMethod.PLAIN).add("G", new Source.Supply(230.0, 0, 0.1, 0, false));
        s.bar("L").bar("N").add("E", AcSketch.impedance(22, 0));
        AcSketch.impedance(s, "W1", "G.1", "L.a", 0.2, 0);
        AcSketch.impedance(s, "W2", "L.b", "E.1", 0.4, 0);
        AcSketch.impedance(s, "W3", "E.2", "N.a", 0.1, 0);
        AcSketch.impedance(s, "W4", "N.b", "G.2", 0.3, 0);
        Results r = s.study().governing();
        assertThat(r.points().get("E").faults().get(FaultKind.LINE_NEUTRAL).maxA())
                .isCloseTo(230 / (0.1 + 0.6 + 0.4), within(1e-9));
        assertThat(r.points().get("L").faults().get(FaultKind.LINE_NEUTRAL).maxA())
                .isCloseTo(230 / (0.1 + 0.2 + 0.3), within(1e-9));
    }

    @Test
    void an_inverter_alone_gives_its_limit_and_holds_it_as_long_as_it_says() {
        for (Double hold : new Double[] {null, 0.0, 2.0}) {
            Sketch s = three(FaultMethod.IEC).system("24", 24).bar("B");
            s.add("A", new Source.Supply(25.0, 0, 0.001, 0, false), "24");
            s.add("TB", new Conversion.Inverter(9_000.0, 0.9, 10, null, 40.0, hold), "24", "S");
            s.link("A.1", "TB.1").link("TB.2", "B.a");
            FaultResult f = fault(s, "B", FaultKind.LINE_NEUTRAL);
            assertThat(f.maxA()).isEqualTo(40);
            assertThat(f.minA()).isEqualTo(40);
            assertThat(f.sustainedA()).isEqualTo(hold == null ? null : (Double) (hold > 0 ? 40.0 : 0.0));
        }
    }

    /** A breaker between two supplies breaks what the greater brings, not what both bring together. */
    @Test
    void what_passes_a_breaker_between_two_sources_is_what_one_side_brings() {
        Sketch s = single(FaultMethod.PLAIN).bar("B").bar("C");
        s.add("G1", new Source.Supply(230.0, 0, 0.1, 0, false)).link("G1.1", "B.g");
        s.add("G2", new Source.Supply(230.0, 0, 0.2, 0, false)).link("G2.1", "C.g");
        s.add("QF", new Protection.CircuitBreaker("", 16.0, null, 2.5, null, 0.0, Poles.L, Position.CLOSED));
        s.link("B.q", "QF.1").link("QF.2", "C.q");
        Study enough = s.study();
        assertThat(enough.gaps()).noneMatch(g -> g.kind() == Gap.Kind.CANNOT_BREAK);
        Sketch weak = single(FaultMethod.PLAIN).bar("B").bar("C");
        weak.add("G1", new Source.Supply(230.0, 0, 0.1, 0, false)).link("G1.1", "B.g");
        weak.add("G2", new Source.Supply(230.0, 0, 0.2, 0, false)).link("G2.1", "C.g");
        weak.add("QF", new Protection.CircuitBreaker("", 16.0, null, 2.2, null, 0.0, Poles.L, Position.CLOSED));
        weak.link("B.q", "QF.1").link("QF.2", "C.q");
        assertThat(weak.study().gaps()).anyMatch(g -> g.kind() == Gap.Kind.CANNOT_BREAK);
    }
}
