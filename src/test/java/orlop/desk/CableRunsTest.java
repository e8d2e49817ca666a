package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Soundness;
import orlop.drawing.TerminalRef;

class CableRunsTest {
    private final Drawing d = SmallBoat.put(SmallBoat.drawing(), "EA2", Kind.LIGHTING, 200, 150);

    @Test
    void a_cable_between_two_terminals_of_a_system_gets_the_next_tag_and_no_length() {
        Drawing after = CableRuns.cable(d, t("QB1", "1"), t("EA2", "1")).applyTo(d);

        assertThat(after.cables().require("W3").lengthM()).isNull();
        assertThat(after.cables().require("W3").auto()).isTrue();
    }

    @Test
    void a_component_that_nothing_is_connected_to_takes_the_system_of_what_it_is_joined_to() {
        Drawing other = d.with(Component.of("EB1", Kind.HEATER, Place.at("1", 20, 20), List.of("230")));

        Drawing after = CableRuns.cable(other, t("QB1", "1"), t("EB1", "1")).applyTo(other);

        assertThat(after.components().require("EB1").systems()).containsExactly("12");
        assertThat(Soundness.flaws(after)).isEmpty();
    }

    @Test
    void terminals_of_two_systems_in_use_are_refused() {
        Drawing other = d.with(Component.of("XD1", Kind.SHORE_INLET, Place.at("1", 20, 20), List.of("230")))
                .with(Component.of("EB1", Kind.HEATER, Place.at("1", 20, 80), List.of("230")));
        Drawing live = CableRuns.cable(other, t("XD1", "1"), t("EB1", "1")).applyTo(other);

        assertThat(CableRuns.refusal(live, t("GB1", "1"), t("EB1", "1")))
                .get()
                .satisfies(m -> assertThat(m.key()).isEqualTo("desk.run.systems"));
        assertThatThrownBy(() ->
                        CableRuns.cable(live, t("GB1", "1"), t("EB1", "1")).applyTo(live))
                .isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void a_cable_leads_to_another_component() {
        assertThat(CableRuns.refusal(d, t("QB1", "1"), t("QB1", "2"))).isPresent();
    }

    @Test
    void a_direct_connection_is_a_link() {
        Drawing after = CableRuns.link(d, t("QB1", "1"), t("EA2", "1")).applyTo(d);

        assertThat(after.links().size()).isEqualTo(1);
        assertThat(after.cables()).isEqualTo(d.cables());
    }

    private static TerminalRef t(String component, String terminal) {
        return new TerminalRef(component, terminal);
    }
}
