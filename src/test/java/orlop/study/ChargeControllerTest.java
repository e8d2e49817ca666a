package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.Source;

/** Controllers between an array and a bank: what goes in comes out or is lost. */
@SuppressWarnings("NullAway") // a null fails the test
class ChargeControllerTest {
    private static TerminalResult terminal(Study s, String component, int n) {
        return s.governing().components().get(component).terminals().get(n - 1);
    }

    private static Sketch panel(double batteryV) {
        Source.PvArray array = new Source.PvArray(100.0, 22.0, 6.0, 18.0, 5.5, -0.3, null, 2, 1, 0, null, 0);
        Sketch s = Sketch.dc(12)
                .supply("GB", batteryV, 0.01)
                .add("GC", array, "PV")
                .add("TC", new Conversion.ChargeController(20.0, 75.0, 14.4, 0.95, 0, null), "PV", "S")
                .ohm("W1", "GC.1", "TC.1", 0.1)
                .link("TC.2", "GB.1");
        return s.change(d -> d.with(ElectricalSystem.of("PV", Nature.PV, 36)));
    }

    @Test
    void a_controller_passes_on_the_power_of_its_array() {
        Study s = AwkwardTest.sound(panel(12.8));
        TerminalResult in = terminal(s, "TC", 1);
        TerminalResult out = terminal(s, "TC", 2);

        assertThat(in.currentA()).isCloseTo(5.5, within(1e-9));
        assertThat(out.powerW()).isCloseTo(0.95 * in.powerW(), within(1e-6));
        assertThat(terminal(s, "GB", 1).currentA()).isNegative();
    }

    /** Two arrays with a controller each, in one system: power is voltage by current of each, as physics has it. */
    @Test
    void a_controller_of_a_smaller_array_is_not_held_at_the_voltage_of_another() {
        Source.PvArray other = new Source.PvArray(50.0, 22.0, 3.0, 18.0, 2.5, -0.3, null, 1, 1, 0, null, 0);
        Study s = AwkwardTest.sound(panel(12.8)
                .add("GC2", other, "PV")
                .add("TC2", new Conversion.ChargeController(20.0, 75.0, 14.4, 0.9, 0, null), "PV", "S")
                .ohm("W2", "GC2.1", "TC2.1", 0.1)
                .link("TC2.2", "GB.1"));

        assertThat(terminal(s, "TC2", 1).voltageV()).isCloseTo(18, within(1e-9));
        assertThat(terminal(s, "TC2", 2).powerW()).isCloseTo(0.9 * 18 * 2.5, within(1e-6));
        assertThat(terminal(s, "TC", 2).powerW()).isCloseTo(0.95 * (2 * 18) * 5.5, within(1e-6));
    }

    /** At the nominal voltage of its system, which is said; an array of which nothing is known gives nothing. */
    @Test
    void an_array_whose_voltages_are_not_known_asks_nothing_of_anybody() {
        Study amps = AwkwardTest.sound(unknown(5.5));
        Study nothing = AwkwardTest.sound(unknown(null));

        assertThat(terminal(amps, "TC", 2).powerW()).isCloseTo(0.95 * 36 * 5.5, within(1e-6));
        assertThat(amps.governing().remarks())
                .extracting(r -> r.message().key())
                .contains("study.assumed.power-point");
        assertThat(terminal(nothing, "TC", 2).currentA()).isCloseTo(0, within(1e-9));
    }

    private static Sketch unknown(@Nullable Double amps) {
        Source.PvArray array = new Source.PvArray(null, null, null, null, amps, -0.3, null, 2, 1, 0, null, 0);
        return panel(12.8).change(d -> d.with(d.components().require("GC").withParticulars(array)));
    }

    @Test
    void a_controller_holds_back_when_the_bank_is_full() {
        Study s = AwkwardTest.sound(panel(14.4));

        assertThat(terminal(s, "TC", 2).currentA()).isCloseTo(0, within(1e-9));
    }
}
