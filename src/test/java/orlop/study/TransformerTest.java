package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
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
import orlop.drawing.Source;
import orlop.study.linear.Complex;

/** Transformers and frequency converters: two alternating-current systems that feed each other. */
@SuppressWarnings("NullAway") // a null fails the test
class TransformerTest {
    private static Sketch systems(Nature first, double firstV, Nature second, double secondV) {
        return Sketch.dc(firstV)
                .change(d -> d.with(ElectricalSystem.of("S", first, firstV))
                        .with(ElectricalSystem.of("T", second, secondV)));
    }

    private static TerminalResult terminal(Results r, String component, int n) {
        return r.components().get(component).terminals().get(n);
    }

    /** uk 5 %, 60 W of 3 kVA: z = 115² / 3000 (0.02 + j √(0.05² − 0.02²)) = 0.088167 + j0.202 ohm at the second side. */
    private static Conversion.Transformer small(double noLoadW) {
        return new Conversion.Transformer(3.0, 5.0, 60.0, noLoadW, true);
    }

    private static final Complex SMALL_OHM =
            new Complex(0.02, Math.sqrt(0.05 * 0.05 - 0.02 * 0.02)).times(115 * 115 / 3_000.0);

    /** 230 V behind 0.4 ohm is 115 V behind 0.1 ohm: I = 115 / |0.1 + z + 5|. */
    @Test
    void a_single_phase_transformer_is_its_impedance_and_the_one_before_it_referred() {
        Sketch s = systems(Nature.AC1, 230, Nature.AC1, 115);
        s.add("G", new Source.Supply(230.0, 0, 0.4, 0, false)).add("TA", small(0), "S", "T");
        s.add("E", AcSketch.impedance(5, 0), "T").link("G.1", "TA.1").link("TA.2", "E.1");
        Results r = s.study().governing();
        double amps = 115 / SMALL_OHM.plus(new Complex(5.1, 0)).magnitude();
        assertThat(r.converged()).isTrue();
        assertThat(r.residualA()).isLessThan(1e-6);
        assertThat(terminal(r, "E", 0).currentA()).isCloseTo(amps, within(1e-9));
        assertThat(terminal(r, "TA", 1).currentA()).isCloseTo(amps, within(1e-9));
        assertThat(terminal(r, "TA", 0).currentA()).isCloseTo(amps / 2, within(1e-9));
        assertThat(terminal(r, "TA", 0).powerW() - terminal(r, "TA", 1).powerW())
                .isCloseTo(amps * amps * SMALL_OHM.re(), within(1e-6));
        assertThat(terminal(r, "G", 0).powerW()).isCloseTo(terminal(r, "TA", 0).powerW(), within(1e-6));
        assertThat(r.points().get("TA").faults().get(FaultKind.LINE_NEUTRAL).maxA())
                .isCloseTo(115 / SMALL_OHM.plus(new Complex(0.1, 0)).magnitude(), within(1e-6));
    }

    @Test
    void a_transformer_without_load_takes_its_iron_loss() {
        Sketch s = systems(Nature.AC1, 230, Nature.AC1, 115);
        s.add("G", new Source.Supply(230.0, 0, 0, 0, false)).add("TA", small(25), "S", "T");
        s.add("E", AcSketch.impedance(1e9, 0), "T").link("G.1", "TA.1").link("TA.2", "E.1");
        assertThat(terminal(s.study().governing(), "TA", 0).powerW()).isCloseTo(25, within(1e-3));
    }

    @Test
    void what_is_not_known_of_a_transformer_is_assumed_and_said_and_without_rating_it_is_not_calculated() {
        Sketch s = systems(Nature.AC1, 230, Nature.AC1, 115);
        s.add("G", new Source.Supply(230.0, 0, 0, 0, false));
        s.add("TA", new Conversion.Transformer(3.0, null, null, null, true), "S", "T")
                .link("G.1", "TA.1");
        assertThat(s.study().governing().remarks())
                .extracting(x -> x.message().key())
                .contains("study.assumed.transformer");
        s.add("TA", new Conversion.Transformer(null, null, null, null, true), "S", "T");
        assertThat(s.study().governing().remarks())
                .extracting(x -> x.message().key())
                .contains("study.not-calculated.transformer");
    }

    /** Equal phases: 10 kVA 400/230 V, 4 %, no loss: X = 0.04 · 230² / 10,000 = 0.2116 ohm a phase. */
    @Test
    void three_phases_give_the_same_one_by_one_as_together() {
        for (boolean unequal : new boolean[] {false, true}) {
            Sketch s = systems(Nature.AC3, 400, Nature.AC3N, 230);
            s.add("G", new Source.Supply(null, 0, 0, 0, false));
            s.add("TA", new Conversion.Transformer(10.0, 4.0, 0.0, null, true), "S", "T")
                    .link("G.1", "TA.1");
            s.add("E", AcSketch.impedance(6, 0), "T")
                    .bar("B", "T")
                    .link("TA.2", "B.t")
                    .link("B.e", "E.1");
            if (unequal) {
                s.add("X", FourWireTest.load(1e9, 0, Phase.L1), "T").link("B.x", "X.1");
            }
            Results r = s.study().governing();
            double amps = 230 / Math.sqrt(3) / Math.hypot(6, 0.2116);
            assertThat(terminal(r, "E", 0).currentA()).isCloseTo(amps, within(1e-5));
            assertThat(terminal(r, "TA", 0).currentA()).isCloseTo(amps * 230 / 400, within(1e-5));
            assertThat(terminal(r, "TA", 0).powerW()).isCloseTo(3 * 36 * amps * amps / 6, within(1e-2));
            assertThat(terminal(r, "G", 0).powerW()).isCloseTo(3 * 6 * amps * amps, within(1e-2));
        }
    }

    /** Delta to star: a load of one phase takes its current, times 1/√3 of the voltages' ratio, from two lines alone. */
    @Test
    void a_load_of_one_phase_behind_delta_and_star_draws_from_two_lines() {
        Sketch s = systems(Nature.AC3, 400, Nature.AC3N, 400);
        s.add("G", new Source.Supply(null, 0, 0, 0, false));
        s.add("TA", new Conversion.Transformer(10.0, 4.0, 0.0, null, true), "S", "T")
                .link("G.1", "TA.1");
        s.add("E", FourWireTest.load(23, 0, Phase.L1), "T").link("TA.2", "E.1");
        Results r = s.study().governing();
        double amps = 400 / Math.sqrt(3) / Math.hypot(23, 0.04 * 16);
        assertThat(terminal(r, "E", 0).currentA()).isCloseTo(amps, within(1e-9));
        TerminalResult in = terminal(r, "TA", 0);
        assertThat(in.phases().get("L1").currentA()).isCloseTo(amps / Math.sqrt(3), within(1e-9));
        assertThat(Math.abs(in.phases().get("L2").currentA())).isCloseTo(amps / Math.sqrt(3), within(1e-9));
        assertThat(in.phases().get("L3").currentA()).isCloseTo(0, within(1e-9));
        assertThat(in.powerW()).isCloseTo(23 * amps * amps, within(1e-6));
    }

    /** 400 V between two lines to 230 V single-phase. */
    @Test
    void a_single_phase_transformer_hangs_on_two_lines_of_a_board() {
        Sketch s = systems(Nature.AC3, 400, Nature.AC1, 230);
        s.add("G", new Source.Supply(null, 0, 0.1, 0, false)).bar("B").link("G.1", "B.g");
        s.add("TA", new Conversion.Transformer(5.0, 4.0, 0.0, null, true), "S", "T");
        FourWireTest.cable(s, "W1", "B.t", "TA.1", Conductors.TWO_WIRE, FourWireTest.each(0.2, 0));
        s.add("E", AcSketch.impedance(20, 0), "T").link("TA.2", "E.1");
        Results r = s.study().governing();
        double ratio = 230 / 400.0;
        double ohm = 20 + 2 * (0.1 + 0.2) * ratio * ratio;
        double amps = 230 / Math.hypot(ohm, 0.04 * 230 * 230 / 5_000);
        assertThat(terminal(r, "E", 0).currentA()).isCloseTo(amps, within(1e-9));
        assertThat(r.cables().get("W1").phases()).containsOnlyKeys("L1", "L2");
        assertThat(r.cables().get("W1").currentA()).isCloseTo(amps * ratio, within(1e-9));
        FaultResult f = r.points().get("TA.2").faults().get(FaultKind.LINE_NEUTRAL);
        double loop = Math.hypot(2 * 0.3 * ratio * ratio, 0.04 * 230 * 230 / 5_000);
        assertThat(f.maxA()).isCloseTo(230 / loop, within(1e-6));
    }

    @Test
    void a_frequency_converter_takes_the_power_that_it_gives_and_loses_and_limits_a_fault() {
        Sketch s = systems(Nature.AC3, 400, Nature.AC3, 230);
        s.add("G", new Source.Supply(null, 0, 0.1, 0.05, false));
        s.add("TF", new Conversion.FrequencyConverter(4_000.0, 0.95, 30, null), "S", "T")
                .link("G.1", "TF.1");
        s.add("M", AcSketch.power(3_000, 2_000), "T").link("TF.2", "M.1");
        Results r = s.study().governing();
        assertThat(r.converged()).isTrue();
        assertThat(terminal(r, "TF", 1).powerW()).isCloseTo(3_000, within(1e-6));
        assertThat(terminal(r, "TF", 0).powerW()).isCloseTo(3_000 / 0.95 + 30, within(1e-6));
        double rated = 4_000 / (Math.sqrt(3) * 230);
        assertThat(r.points().get("TF").faults().get(FaultKind.THREE_PHASE).maxA())
                .isCloseTo(2 * rated, within(1e-6));
    }

    /**
     * IEC 60909-0: K_T = 0.95 c / (1 + 0.6 x_T), Ik = c U / (√3 K_T Z_T). 630 kVA, 410 V, 4 %, 6.5 kW: x_T = √(0.04² −
     * (6.5/630)²) = 0.038649, c 1.05 where the highest voltage is within 6 %: K_T = 0.9975 / 1.023189 = 0.97489;
     * Z_T = 0.04 · 0.41² / 0.63 = 10.6730 mohm, K_T Z_T = 10.4050 mohm.
     */
    @Test
    void a_transformer_counts_in_faults_with_its_factor() {
        Sketch s = Sketch.dc(20_000, "iec60364", FaultMethod.IEC)
                .change(d -> d.with(narrow("S", 20_000)).with(narrow("T", 410)));
        s.add("G", new Source.Supply(null, 0, 0, 0, false));
        s.add("TA", new Conversion.Transformer(630.0, 4.0, 6_500.0, null, true), "S", "T")
                .link("G.1", "TA.1");
        s.bar("B", "T").link("TA.2", "B.t");
        double expected = 1.05 * 410 / Math.sqrt(3) / 10.4050e-3;
        assertThat(s.study()
                        .governing()
                        .points()
                        .get("B")
                        .faults()
                        .get(FaultKind.THREE_PHASE)
                        .maxA())
                .isCloseTo(expected, within(1e-4 * expected));
    }

    private static ElectricalSystem narrow(String id, double nominalV) {
        Nature nature = nominalV > 1_000 ? Nature.AC3 : Nature.AC3N;
        return new ElectricalSystem(
                id, "", nature, nominalV, 1.05 * nominalV, 50, Earthing.UNKNOWN, null, null, Extras.NONE);
    }

    /**
     * IEC TR 60909-4 (2000), low-voltage example (data from memory; F1 34.62 kA, F3 6.95 kA): two transformers in parallel
     * on one feeder. By the plain method, so the voltage 1.05 · 400 V / √3 and the factors K_T are put in by hand. T1 stands at section F1 of the busbar, T2
     * behind L1 at section F2: so the figures come out.
     */
    @Test
    void two_transformers_in_parallel_give_what_the_standards_example_says() {
        Sketch s = systems(Nature.AC3, 20_000, Nature.AC3N, 410);
        double emf = 1.05 * 400 / Math.sqrt(3) * 20_000 / 410;
        double x = 1.1 * 20_000 / Math.sqrt(3) / 10_000 / Math.hypot(1, 0.1);
        s.add("Q", new Source.Supply(emf, 0, 0.1 * x, x, false)).bar("H").link("Q.1", "H.q");
        s.add("T1", withFactor(630, 6_500), "S", "T").link("H.1", "T1.1");
        s.add("T2", withFactor(400, 4_600), "S", "T").link("H.2", "T2.1");
        s.bar("F1", "T").bar("F2", "T").bar("F3", "T").bar("J", "T").link("T1.2", "F1.1");
        line(s, "L1", "T2.2", "F2.3", 0.077, 0.079, 10, 2);
        line(s, "L2", "F1.3", "F2.1", 0.208, 0.068, 4, 2);
        line(s, "L3", "F2.2", "J.1", 0.271, 0.087, 20, 1);
        line(s, "L4", "J.2", "F3.1", 0.3704, 0.297, 50, 1);
        Results r = s.study().governing();
        assertThat(r.points().get("F1").faults().get(FaultKind.THREE_PHASE).maxA())
                .isCloseTo(34_620, within(50.0));
        assertThat(r.points().get("F3").faults().get(FaultKind.THREE_PHASE).maxA())
                .isCloseTo(6_950, within(50.0));
    }

    private static Conversion.Transformer withFactor(double kva, double lossW) {
        double xt = Math.sqrt(0.04 * 0.04 - lossW * lossW / kva / kva / 1e6);
        double factor = 0.95 * 1.05 / (1 + 0.6 * xt);
        return new Conversion.Transformer(kva, 4 * factor, lossW * factor, null, true);
    }

    private static void line(
            Sketch s, String id, String from, String to, double ohmPerKm, double xPerKm, double lengthM, int runs) {
        double km = lengthM / 1_000 / runs;
        Cable.Measured m = new Cable.Measured(null, null, ohmPerKm * km, xPerKm * km, null, null, null);
        FourWireTest.cable(s, id, from, to, null, m);
    }

    /** A generator of 20 kVA, 400 V, X″d 0.96 ohm behind 10 kVA, 4 %, no loss: 0.64 ohm; a load of one phase behind. */
    @Test
    void a_generator_behind_a_transformer_gives_less_into_a_fault() {
        Sketch s = systems(Nature.AC3, 400, Nature.AC3N, 400);
        s.add("G", new Source.Generator(20.0, 0.8, 4, 12.0, 12.0, Excitation.SUPPORTED, null));
        s.add("TA", new Conversion.Transformer(10.0, 4.0, 0.0, null, true), "S", "T")
                .link("G.1", "TA.1");
        s.bar("B", "T").link("TA.2", "B.t");
        PointResult b = s.study().governing().points().get("B");
        double u0 = 400 / Math.sqrt(3);
        assertThat(b.faults().get(FaultKind.THREE_PHASE).maxA()).isCloseTo(u0 / 1.6, within(1e-6));
        assertThat(b.faults().get(FaultKind.LINE_NEUTRAL).maxA()).isCloseTo(u0 / (0.64 + 0.64), within(1e-6));
        assertThat(b.faults().get(FaultKind.THREE_PHASE).sustainedA()).isCloseTo(86.6025, within(1e-3));
    }
}
