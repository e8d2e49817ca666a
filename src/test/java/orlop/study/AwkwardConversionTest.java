package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import orlop.drawing.Conversion;
import orlop.findings.Checker;
import orlop.findings.Finding;

/** Converters in chains, in circles and beside what is not calculated: never an exception, never NaN. */
@SuppressWarnings("NullAway") // a null fails the test
class AwkwardConversionTest {
    @Test
    void converters_in_a_chain() {
        Study s = AwkwardTest.sound(Sketch.dc(48)
                .system("24", 24)
                .system("12", 12)
                .supply("G", 50, 0.05)
                .add("T1", new Conversion.PlainConverter(24.0, 0.01, 0.9, 2), "S", "24")
                .add("T2", new Conversion.PlainConverter(12.0, 0.01, 0.8, 1), "24", "12")
                .add("E1", Sketch.load(orlop.drawing.LoadBehaviour.POWER, 100), "12")
                .link("G.1", "T1.1")
                .link("T1.2", "T2.1")
                .link("T2.2", "E1.1"));
        TerminalResult in2 = s.governing().components().get("T2").terminals().get(0);
        TerminalResult out2 = s.governing().components().get("T2").terminals().get(1);
        TerminalResult in1 = s.governing().components().get("T1").terminals().get(0);
        TerminalResult out1 = s.governing().components().get("T1").terminals().get(1);

        assertThat(out2.powerW()).isCloseTo(100, within(1e-6));
        assertThat(in2.powerW()).isCloseTo(100 / 0.8 + 1, within(1e-6));
        assertThat(in1.powerW()).isCloseTo(out1.powerW() / 0.9 + 2, within(1e-6));
    }

    @Test
    void a_converter_that_feeds_its_own_input() {
        Study s = AwkwardTest.sound(Sketch.dc(24)
                .bar("B")
                .add("T1", new Conversion.PlainConverter(24.0, 0.01, 0.9, 2), "S", "S")
                .resistance("E1", 3)
                .link("B.a", "T1.1")
                .link("B.b", "T1.2")
                .link("B.c", "E1.1"));

        assertThat(s.governing().components().get("E1").live()).isFalse(); // nothing starts it
    }

    @Test
    void an_inverter_takes_the_power_of_what_it_feeds_and_its_leads_are_sized_for_all_it_gives() {
        Sketch sketch = Sketch.dc(24)
                .supply("G", 25, 0.001)
                .add("TB1", new Conversion.Inverter(2_000.0, 0.9, 10, null, null, null), "S", "230")
                .add("E1", Sketch.load(orlop.drawing.LoadBehaviour.POWER, 450), "230")
                .ohm("W1", "G.1", "TB1.1", 0.001)
                .auto("W2", "TB1.2", "E1.1", 5);
        sketch.change(d -> d.with(orlop.drawing.ElectricalSystem.of("230", orlop.drawing.Nature.AC1, 230)));
        Study s = AwkwardTest.sound(sketch);

        assertThat(s.governing().components().get("TB1").terminals().get(0).powerW())
                .isCloseTo((450 + s.governing().cables().get("W2").lossW()) / 0.9 + 10, within(1e-6));
        assertThat(s.governing().cables().get("W1").designCurrentA()).isCloseTo(2_000 / 0.9 / 24, within(1e-9));
        assertThat(s.governing().cables().get("W2").areaMm2()).isNotNull();
        assertThat(s.governing().components().get("E1").live()).isTrue();
    }

    @Test
    void an_inverter_takes_the_rated_power_of_what_it_feeds_where_that_is_not_calculated() {
        orlop.drawing.Consumer.Heater heater = new orlop.drawing.Consumer.Heater(450.0, orlop.drawing.Phase.L1, false);
        Sketch sketch = Sketch.dc(24)
                .supply("G", 25, 0.001)
                .add("TB1", new Conversion.Inverter(2_000.0, 0.9, 10, null, null, null), "S", "?")
                .add("E1", heater, "?")
                .ohm("W1", "G.1", "TB1.1", 0.001)
                .auto("W2", "TB1.2", "E1.1", 5);
        sketch.change(d -> d.with(orlop.drawing.ElectricalSystem.of("?", orlop.drawing.Nature.AC1, 0)));
        Study s = AwkwardTest.sound(sketch);

        assertThat(s.governing().components().get("TB1").terminals().get(0).powerW())
                .isCloseTo(450 / 0.9 + 10, within(1e-6));
        assertThat(s.governing().cables().get("W2").areaMm2())
                .as("not calculated: never guessed")
                .isNull();
        assertThat(s.governing().components().get("E1").live()).isTrue();
        assertThat(Checker.check(s)).extracting(Finding::rule).contains("not-calculated");
    }
}
