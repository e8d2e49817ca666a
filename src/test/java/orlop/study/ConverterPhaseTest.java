package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import orlop.drawing.Conductors;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Source;

/** A converter on a cable of two conductors at a three-phase board names its phase: 230 V times amperes is its power. */
@SuppressWarnings("NullAway") // a null fails the test
class ConverterPhaseTest {
    private static Sketch board() {
        Sketch s = AcSketch.of(Nature.AC3N, 400)
                .system("24", 24)
                .add("G1", new Source.Supply(null, 0, 0, 0, false))
                .bar("WC1")
                .cable("W1", "G1.1", "WC1.a", 1, 16)
                .add("GB1", new Source.Supply(24.0, 0, 0.01, 0, false), "24");
        return s;
    }

    private static Sketch pair(Sketch s, String id, String from, String to) {
        return FourWireTest.cable(
                s,
                id,
                from,
                to,
                Conductors.L_N_PE,
                new orlop.drawing.Cable.Measured(0.01, null, null, null, null, null, null));
    }

    private static void carries(Sketch s, Phase phase, double watts) {
        Results r = s.study().governing();

        assertThat(r.remarks()).noneMatch(m -> m.message().key().equals("study.assumed.phase"));
        for (String line : new String[] {"L1", "L2", "L3"}) {
            double amps = Math.abs(r.cables().get("W1").phases().get(line).currentA());
            assertThat(amps).as(line).isCloseTo(line.equals(phase.word()) ? watts / 230.94 : 0, within(0.05));
        }
    }

    /** 28 V × 20 A / 0.9 = 622 W. */
    @ParameterizedTest
    @EnumSource(names = {"L1", "L2", "L3"})
    void a_charger(Phase phase) {
        Sketch s = board().add("TB1", new Conversion.Charger(20.0, 28.0, 0.9, 0, true, phase, null), "S", "24");
        pair(s, "W2", "WC1.b", "TB1.1").cable("W3", "TB1.2", "GB1.1", 1, 25);

        carries(
                s,
                phase,
                s.study().governing().components().get("TB1").terminals().get(1).voltageV() * 20 / 0.9);
    }

    /** Straight on the bar, no cable of two conductors between. */
    @ParameterizedTest
    @EnumSource(names = {"L1", "L2", "L3"})
    void a_charger_on_the_bar_itself(Phase phase) {
        Sketch s = board().add("TB1", new Conversion.Charger(20.0, 28.0, 0.9, 0, true, phase, null), "S", "24")
                .link("WC1.b", "TB1.1")
                .cable("W3", "TB1.2", "GB1.1", 1, 25);

        carries(
                s,
                phase,
                s.study().governing().components().get("TB1").terminals().get(1).voltageV() * 20 / 0.9);
    }

    /** A resistance of 52.9 Ω on 230 V takes 1 kW. */
    @ParameterizedTest
    @EnumSource(names = {"L1", "L2", "L3"})
    void a_transformer(Phase phase) {
        Sketch s = board().change(d -> d.with(ElectricalSystem.of("T", Nature.AC1, 230)))
                .add("TA1", new Conversion.Transformer(4.0, 0.1, 0.0, 0.0, true, phase), "S", "T")
                .add("E1", AcSketch.power(1_000, 0), "T");
        pair(s, "W2", "WC1.b", "TA1.1").cable("W3", "TA1.2", "E1.1", 1, 25);

        carries(s, phase, 1_000);
    }

    @ParameterizedTest
    @EnumSource(names = {"L1", "L2", "L3"})
    void an_inverter_with_charger(Phase phase) {
        Conversion.InverterCharger t =
                new Conversion.InverterCharger(3_000.0, 0.9, 0, 20.0, 30.0, null, null, null, phase, null);
        Sketch s = board().change(d -> d.with(ElectricalSystem.of("S", Nature.AC3N, 400)))
                .add("TB1", t, "24", "S")
                .cable("W3", "TB1.1", "GB1.1", 1, 25);
        pair(s, "W2", "WC1.b", "TB1.3");

        carries(
                s,
                phase,
                s.study().governing().components().get("TB1").terminals().get(0).voltageV() * 20 / 0.9);
    }
}
