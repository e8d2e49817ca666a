package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Soundness;

class ForeignSystemsTest {
    private static final ElectricalSystem TWELVE = ElectricalSystem.of("A", Nature.DC, 12);
    private static final ElectricalSystem MAINS = ElectricalSystem.of("A", Nature.AC1, 230);

    private static Drawing vessel(ElectricalSystem... systems) {
        Drawing d = Drawing.empty("Nameless").with(orlop.drawing.Sheet.of("1", "Sheet"));
        for (ElectricalSystem s : systems) {
            d = d.with(s);
        }
        return d;
    }

    /** A lamp of the system A of that vessel, pasted into this one: its voltage stays what it was. */
    private static Drawing pasted(ElectricalSystem from, Drawing into) throws Exception {
        Drawing d = vessel(from).with(Component.of("EA1", Kind.LIGHTING, Place.at("1", 50, 50), List.of("A")));
        Clip clip = Clip.read(Clip.write(d, Set.of("EA1")));
        Drawing after = clip.onto(into, "1", 0, 0).edit().applyTo(into);
        assertThat(Soundness.flaws(after)).isEmpty();
        return after;
    }

    private static ElectricalSystem ofLamp(Drawing d) {
        return d.systems().require(d.components().require("EA1").systems().get(0));
    }

    @Test
    void a_system_of_the_same_name_and_voltage_is_the_same() throws Exception {
        Drawing after = pasted(TWELVE, vessel(TWELVE));
        assertThat(ofLamp(after)).isEqualTo(TWELVE);
        assertThat(after.systems().size()).isEqualTo(1);
    }

    @Test
    void a_system_whose_name_means_another_voltage_here_comes_under_another_name() throws Exception {
        Drawing after = pasted(TWELVE, vessel(MAINS));
        assertThat(ofLamp(after).nominalV()).isEqualTo(12);
        assertThat(ofLamp(after).id()).isEqualTo("A-2");
        assertThat(after.systems().require("A")).isEqualTo(MAINS);
    }

    @Test
    void or_joins_the_one_of_its_voltage_that_is_there() throws Exception {
        ElectricalSystem own = ElectricalSystem.of("12", Nature.DC, 12);
        Drawing after = pasted(TWELVE, vessel(MAINS, own));
        assertThat(ofLamp(after)).isEqualTo(own);
        assertThat(after.systems().size()).isEqualTo(2);
    }
}
