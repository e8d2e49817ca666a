package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Place;
import orlop.drawing.Poles;
import orlop.drawing.Sheet;
import orlop.drawing.Switching;

/** Devices stand in poles that their system has. */
class PolesFitTest {
    private final Drawing d = Drawing.empty("a vessel")
            .with(Sheet.of("1", ""))
            .with(ElectricalSystem.of("24", Nature.DC, 24))
            .with(ElectricalSystem.of("230", Nature.AC1, 230))
            .with(ElectricalSystem.of("400", Nature.AC3N, 400));

    private Component fresh(Kind kind, String system) {
        return Placings.fresh(d, kind, Place.at("1", 0, 0), system);
    }

    private static Poles poles(Component c) {
        return (Poles) java.util.Objects.requireNonNull(RecordParts.get((Record) c.particulars(), "poles"));
    }

    @Test
    void a_new_device_opens_the_live_pole_of_its_system() {
        assertThat(poles(fresh(Kind.FUSE, "24"))).isEqualTo(Poles.POSITIVE);
        assertThat(poles(fresh(Kind.CIRCUIT_BREAKER, "230"))).isEqualTo(Poles.L);
        assertThat(poles(fresh(Kind.ISOLATOR, "400"))).isEqualTo(Poles.L3);
    }

    @Test
    void a_changeover_of_alternating_current_opens_the_neutral_too() {
        assertThat(poles(fresh(Kind.CHANGEOVER_SWITCH, "230"))).isEqualTo(Poles.L_N);
        assertThat(poles(fresh(Kind.CHANGEOVER_SWITCH, "400"))).isEqualTo(Poles.L3_N);
        assertThat(poles(fresh(Kind.CHANGEOVER_SWITCH, "24"))).isEqualTo(Poles.POSITIVE);
    }

    @Test
    void whoever_changes_the_system_on_the_card_changes_the_poles_with_it_and_back() {
        Component fuse = Component.of("FC1", Kind.FUSE, Place.at("1", 0, 0), List.of("24"));
        Component both = Component.of("QB1", Kind.ISOLATOR, Place.at("1", 20, 0), List.of("24"))
                .withParticulars(new Switching.Isolator(null, null, Poles.BOTH, orlop.drawing.Position.CLOSED));
        Drawing moved = CardEdits.set("FC1", "systems.0", "230", "")
                .applyTo(d.with(fuse).with(both));
        moved = CardEdits.set("QB1", "systems.0", "230", "").applyTo(moved);

        assertThat(poles(moved.components().require("FC1"))).isEqualTo(Poles.L);
        assertThat(poles(moved.components().require("QB1"))).isEqualTo(Poles.L_N);
        Drawing back = CardEdits.set("QB1", "systems.0", "24", "").applyTo(moved);
        assertThat(poles(back.components().require("QB1"))).isEqualTo(Poles.BOTH);
    }

    @Test
    void the_card_offers_the_poles_that_there_are_and_what_it_has() {
        Component fuse = Component.of("FC1", Kind.FUSE, Place.at("1", 0, 0), List.of("230"));

        assertThat(offered(fuse)).containsExactly(Poles.POSITIVE, Poles.L, Poles.L_N);
        assertThat(offered(PolesFit.fitted(d, fuse))).containsExactly(Poles.L, Poles.L_N);
    }

    private List<Object> offered(Component c) {
        return CardFields.of(d.with(c), c.id(), "").stream()
                .filter(f -> f.name().equals("poles"))
                .flatMap(f -> f.choices().stream().map(CardField.Choice::value))
                .toList();
    }
}
