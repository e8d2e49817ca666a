package orlop.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Source;
import orlop.drawing.Words;
import orlop.study.Sketch;

/** What one figure from a data sheet would put right has that figure as its cure; what is said is said once. */
class NamedCureTest {
    /** An inverter/charger on a bank and ashore, as it comes out of the locker. */
    private static Sketch ashore() {
        return Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.05)
                .change(d -> d.with(ElectricalSystem.of("230", Nature.AC1, 230))
                        .with(fresh("TB1", Kind.INVERTER_CHARGER, "S", "230"))
                        .with(fresh("XD1", Kind.SHORE_INLET, "230")))
                .link("GB1.1", "TB1.1")
                .link("XD1.1", "TB1.3");
    }

    private static Component fresh(String id, Kind kind, String... systems) {
        return Component.of(id, kind.defaults(), Place.at("1", 10, 10), List.of(systems));
    }

    private static Cure cureOf(Sketch s, String rule, String item) {
        return Checker.check(s.study()).stream()
                .filter(f -> f.rule().equals(rule) && f.place().item().equals(item))
                .map(Finding::cure)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void an_inverter_of_unknown_rating_asks_for_it() {
        assertThat(cureOf(ashore(), "not-calculated", "TB1")).isInstanceOfSatisfying(Cure.EnterValue.class, c -> {
            assertThat(c.field()).isEqualTo("ratedVa");
            assertThat(Words.english().text(c.label())).isEqualTo("enter the rated power of TB1");
        });
    }

    @Test
    void a_shore_of_unknown_strength_asks_for_its_highest_fault_current() {
        assertThat(cureOf(ashore(), "assumed", "XD1"))
                .isInstanceOfSatisfying(
                        Cure.EnterValue.class, c -> assertThat(c.field()).isEqualTo("faultMaxA"));
    }

    @Test
    void that_chargers_share_is_said_once_and_of_all_of_them() {
        Sketch s = Sketch.dc(24, "iso13297")
                .supply("GB1", 25, 0.05)
                .add("G1", new Source.LimitedSupply(28.0, 0, 10.0))
                .add("G2", new Source.LimitedSupply(28.0, 0, 10.0))
                .link("GB1.1", "G1.1")
                .link("GB1.1", "G2.1");

        List<String> said = Checker.check(s.study()).stream()
                .map(f -> Words.english().text(f.message()))
                .filter(text -> text.contains("hold the same voltage"))
                .toList();
        assertThat(said).hasSize(1);
        assertThat(said.get(0)).contains("G1, G2 hold");
    }
}
