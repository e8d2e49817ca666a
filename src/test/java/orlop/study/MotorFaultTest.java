package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Consumer;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.FaultMethod;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Source;
import orlop.drawing.Switching;

/**
 * What three-phase motors drive into a fault: IEC 60909-0 clause 3.8 (from memory), Z = U / (√3 I_LR), R / X = 0.42 for
 * groups of low-voltage motors; locked-rotor current six times the rated one, 5 to 8 being usual (IEC 60034-12, from
 * memory).
 */
@SuppressWarnings("NullAway") // a null fails the test
class MotorFaultTest {
    private static Sketch bar(FaultMethod method, @Nullable Double startingA, Phase phase) {
        return Sketch.dc(400, "iec60364", method)
                .change(d -> d.with(ElectricalSystem.of("S", Nature.AC3N, 400)))
                .add("G", new Source.Supply(null, 0, 0, 0.20, false))
                .add("M", new Consumer.Motor(11_000.0, 0.89, 0.85, null, startingA, null, phase, false))
                .bar("B")
                .link("G.1", "B.a");
    }

    private static FaultResult fault(Sketch s) {
        return s.study().governing().points().get("B").faults().get(FaultKind.THREE_PHASE);
    }

    /**
     * 254.034 V (c 1.10). The supply alone: / 0.20 = 1270.17 A. The motor: 11,000 / (√3 400 0.89 0.85) = 20.988 A, six
     * times that 125.93 A; 230.940 / 125.93 = 1.8339 ohm = 0.71016 + j1.69086; with 150 A stated 1.53960 ohm. Currents
     * added as phasors.
     */
    @ParameterizedTest
    @CsvSource({"IEC, , ALL, 1398.91", "IEC, 150, ALL, 1423.73", "IEC, , L1, 1270.17", "PLAIN, , ALL, 1154.70"})
    void a_motor_adds_its_own_current_to_the_highest_fault_current(
            FaultMethod method, @Nullable Double startingA, Phase phase, double amps) {
        FaultResult f = fault(bar(method, startingA, phase).link("M.1", "B.b"));

        assertThat(f.maxA()).isCloseTo(amps, within(0.02));
        assertThat(f.minA()).isCloseTo(method == FaultMethod.PLAIN ? 1_154.70 : 0.9 / 1.1 * 1_270.17, within(0.02));
    }

    @Test
    void a_motor_behind_an_open_switch_adds_nothing() {
        Sketch s = bar(FaultMethod.IEC, null, Phase.ALL)
                .add("Q", new Switching.Isolator(63.0, null, Poles.L3, Position.OPEN))
                .link("Q.1", "B.b")
                .link("Q.2", "M.1");
        assertThat(fault(s).maxA()).isCloseTo(1_270.17, within(0.01));
    }

    @Test
    void a_motor_alone_feeds_no_fault() {
        Sketch s = bar(FaultMethod.IEC, null, Phase.ALL)
                .link("M.1", "B.b")
                .condition("off")
                .source("off", "G", "off");
        assertThat(s.study().of("off").points().get("B").faults()).isEmpty();
    }

    @Test
    void that_it_is_taken_so_is_said_once() {
        Sketch s = bar(FaultMethod.IEC, null, Phase.ALL).link("M.1", "B.b");
        assertThat(s.study().governing().remarks())
                .extracting(r -> r.message().key())
                .containsOnlyOnce("study.assumed.motor-fault");
        Sketch stated = bar(FaultMethod.IEC, 150.0, Phase.ALL).link("M.1", "B.b");
        assertThat(stated.study().governing().remarks())
                .extracting(r -> r.message().key())
                .doesNotContain("study.assumed.motor-fault");
    }
}
