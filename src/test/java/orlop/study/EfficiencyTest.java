package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.drawing.Conversion;
import orlop.drawing.EfficiencyByLoad;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.Phase;
import orlop.drawing.Source;

/**
 * Efficiency by load: output over efficiency and idle power, by hand beside each figure; over whole networks what the
 * sources give is what loads, cables and converters take.
 */
@SuppressWarnings("NullAway") // a null fails the test
class EfficiencyTest {
    private static final EfficiencyByLoad SHEET = EfficiencyByLoad.read("10:80 25:88 50:91 100:89");

    private static TerminalResult terminal(Results r, String component, int n) {
        return r.components().get(component).terminals().get(n - 1);
    }

    /** 200 W rated, 12.5 V held: 1 A is 6.25 %, 4 A 25 %, 12 A 75 %, 24 A 150 % of the load. */
    @ParameterizedTest
    @CsvSource({"1, 0.80", "4, 0.88", "12, 0.90"})
    void a_converter_of_direct_current_takes_what_its_sheet_says(double amps, double efficiency) {
        var converter = new Conversion.DcDcConverter(200.0, 12.5, 0, 0.5, 3, true, null, true, SHEET);
        Sketch s = Sketch.dc(24).system("12", 12).supply("G", 25, 0).add("T", converter, "S", "12");
        s.add("E", OracleNetwork.load(orlop.drawing.LoadBehaviour.CURRENT, amps), "12");
        Results r = s.link("G.1", "T.1").link("T.2", "E.1").study().governing();

        double input = 12.5 * amps / efficiency + 3;
        assertThat(terminal(r, "T", 1).powerW()).isCloseTo(input, within(1e-6));
        assertThat(terminal(r, "G", 1).currentA()).isCloseTo(input / 25, within(1e-7));
    }

    /** One for what no trade kind fits beyond its rating: 24 A at 12.5 V of 200 W are 150 %. */
    @Test
    void beyond_the_last_step_the_efficiency_stays() {
        var converter = new Conversion.PlainConverter(12.5, 0, 0.5, 3, 200.0, SHEET);
        Sketch s = Sketch.dc(24).system("12", 12).supply("G", 25, 0).add("T", converter, "S", "12");
        s.add("E", OracleNetwork.load(orlop.drawing.LoadBehaviour.CURRENT, 24), "12");
        Results r = s.link("G.1", "T.1").link("T.2", "E.1").study().governing();

        assertThat(terminal(r, "T", 1).powerW()).isCloseTo(300 / 0.89 + 3, within(1e-6));
    }

    /** 35 A at 25 V and more into a bank charge; 900 W of 2,000 W invert, 45 % of its load. */
    @Test
    void an_inverter_charger_follows_its_load_both_ways() {
        Sketch s = AcSketch.of(Nature.AC1, 230).system("24", 24);
        s.add("XD", new Source.Supply(230.0, 0, 0.2, 0, false));
        s.add("B", new Source.Supply(25.0, 0, 0.005, 0, false), "24");
        s.add(
                "TB",
                new Conversion.InverterCharger(2_000.0, 0.5, 10, 35.0, 16.0, null, 40.0, null, Phase.ALL, SHEET),
                "24",
                "S");
        s.add("E", AcSketch.power(900, 100));
        s.link("B.1", "TB.1").link("XD.1", "TB.3").link("TB.2", "E.1");
        s.condition("shore").condition("sea").source("sea", "XD", "off");
        Study study = s.study();

        Results shore = study.of("shore");
        double charge = 35 * terminal(shore, "B", 1).voltageV();
        double percent = 100 * charge / (35 * 28.8); // the system's highest voltage is 1.2 times nominal
        double efficiency = 0.91 - 0.02 * (percent - 50) / 50;
        assertThat(terminal(shore, "XD", 1).powerW()).isCloseTo(900 + charge / efficiency + 10, within(1e-3));
        double at45 = 0.88 + 0.03 * 20 / 25;
        assertThat(terminal(study.of("sea"), "B", 1).powerW()).isCloseTo(900 / at45 + 10, within(1e-6));
    }

    /** 99 W of the array reach a controller of 20 A at 14.4 V, 288 W: about a third of its load, by trial at 0.888. */
    @Test
    void a_controller_gives_what_it_takes_times_the_efficiency_of_what_it_gives() {
        Source.PvArray array = new Source.PvArray(100.0, 22.0, 6.0, 18.0, 5.5, -0.3, null, 2, 1, 0, null, 0);
        Results r = Sketch.dc(12)
                .supply("GB", 12.8, 0.01)
                .add("GC", array, "PV")
                .add("TC", new Conversion.ChargeController(20.0, 75.0, 14.4, 0.5, 0, SHEET), "PV", "S")
                .ohm("W1", "GC.1", "TC.1", 0.1)
                .link("TC.2", "GB.1")
                .change(d -> d.with(ElectricalSystem.of("PV", Nature.PV, 36)))
                .study()
                .governing();
        double given = terminal(r, "TC", 2).powerW();
        double percent = 100 * given / 288;
        assertThat(percent).isBetween(50.0, 100.0);
        assertThat(terminal(r, "TC", 1).powerW() * (0.91 - 0.02 * (percent - 50) / 50))
                .isCloseTo(given, within(1e-6));
    }

    /** A chain from 48 V by 24 V to 230 V with a charger back to 12 V: what goes in comes out or is lost. */
    @Test
    void what_goes_in_comes_out_or_is_lost() {
        Sketch s =
                AcSketch.of(Nature.AC1, 230).system("48", 48).system("24", 24).system("12", 12);
        s.add("G", new Source.Supply(52.0, 0, 0.01, 0, false), "48");
        s.add("T1", new Conversion.DcDcConverter(2_000.0, 25.0, 0.01, 0.5, 8, true, null, true, SHEET), "48", "24");
        s.add("T2", new Conversion.Inverter(1_500.0, 0.5, 12, null, 20.0, null, SHEET), "24", "S");
        s.add("T3", new Conversion.Charger(20.0, 13.8, 0.5, 4, true, Phase.ALL, SHEET), "S", "12");
        s.add("E1", AcSketch.power(400, 150));
        s.add("E2", OracleNetwork.load(orlop.drawing.LoadBehaviour.RESISTANCE, 2), "12");
        s.ohm("W1", "G.1", "T1.1", 0.02).ohm("W2", "T1.2", "T2.1", 0.01).ohm("W4", "T3.2", "E2.1", 0.05);
        s.bar("N");
        AcSketch.impedance(s, "W3", "T2.2", "N.a", 0.1, 0.01);
        Results r = s.link("N.b", "E1.1").link("N.c", "T3.1").study().governing();

        assertThat(r.converged()).isTrue();
        double converted = 0;
        double[] rated = {2_000, 1_500, 20 * 13.8};
        double[] idle = {8, 12, 4};
        for (int k = 0; k < 3; k++) {
            double in = terminal(r, "T" + (k + 1), 1).powerW();
            double out = terminal(r, "T" + (k + 1), 2).powerW();
            double load = 100 * out / rated[k];
            double efficiency = load < 10
                    ? 0.8
                    : load < 25
                            ? 0.8 + 0.08 * (load - 10) / 15
                            : load < 50 ? 0.88 + 0.03 * (load - 25) / 25 : 0.91 - 0.02 * (load - 50) / 50;
            assertThat(in).as("T%d at %.1f %%", k + 1, load).isCloseTo(out / efficiency + idle[k], within(1e-6));
            converted += in - out;
        }
        double lost =
                r.cables().values().stream().mapToDouble(CableResult::lossW).sum();
        double taken = terminal(r, "E1", 1).powerW() + terminal(r, "E2", 1).powerW();
        assertThat(terminal(r, "G", 1).powerW()).isCloseTo(taken + lost + converted, within(1e-5));
    }

    @Test
    void steps_without_a_rating_are_not_used_and_that_is_said() {
        var converter = new Conversion.PlainConverter(12.5, 0, 0.5, 3, null, SHEET);
        Sketch s = Sketch.dc(24).system("12", 12).supply("G", 25, 0).add("T", converter, "S", "12");
        s.add("E", OracleNetwork.load(orlop.drawing.LoadBehaviour.CURRENT, 4), "12");
        Results r = s.link("G.1", "T.1").link("T.2", "E.1").study().governing();

        assertThat(terminal(r, "T", 1).powerW()).isCloseTo(50 / 0.5 + 3, within(1e-6));
        assertThat(r.remarks())
                .anyMatch(m -> m.item().equals("T") && m.message().key().equals("study.assumed.efficiency"));
    }
}
