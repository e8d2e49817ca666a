package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Cable;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Kind;
import orlop.drawing.Point;
import orlop.drawing.Soundness;
import orlop.drawing.TerminalRef;

/** An end of a cable is led to another terminal by its card. */
class CableEndsTest {
    private final Drawing d = boat();

    /** The small boat with a bar, a second lamp to which nothing leads yet, and a consumer of another system. */
    private static Drawing boat() {
        Drawing d = SmallBoat.put(SmallBoat.drawing(), "WC1", Kind.BUSBAR, 200, 60);
        d = SmallBoat.put(d, "EA2", Kind.LIGHTING, 200, 140);
        d = SmallBoat.run(d, "W3", "QB1.1", "WC1.a", 1);
        d = d.with(d.components().require("EA2").withSystems(List.of("230")));
        Cable w = d.cables().require("W2");
        return d.with(w.withAreaMm2(6.0).withBends(List.of(new Point(100, 90))));
    }

    private Drawing led(String cable, String path, String to) {
        return CardEdits.set(cable, path, to, "").applyTo(d);
    }

    private CardField field(String name) {
        return CardFields.of(d, "W2", "").stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_card_names_where_it_is_and_where_it_could_be() {
        assertThat(field("from").value()).isEqualTo("QB1.1");
        assertThat(field("to").value()).isEqualTo("EA1.1");
        assertThat(field("from").choices())
                .extracting(CardField.Choice::value)
                .contains("QB1.1", "QB1.2", "GB1.1", "WC1", "EA2.1")
                .doesNotContain("EA1.1");
    }

    @Test
    void all_that_is_offered_is_taken_and_nothing_else_would_be() {
        for (String name : List.of("from", "to")) {
            List<Object> offered =
                    field(name).choices().stream().map(CardField.Choice::value).toList();
            for (orlop.drawing.Component c : d.components().values()) {
                for (String t :
                        c.kind() == Kind.BUSBAR ? List.of("") : c.particulars().terminals()) {
                    String place = t.isEmpty() ? c.id() : c.id() + "." + t;
                    boolean taken = true;
                    try {
                        assertThat(led("W2", name, place).cables().contains("W2"))
                                .isTrue();
                    } catch (Edit.Refusal e) {
                        taken = false;
                    }
                    assertThat(offered.contains(place))
                            .as("%s at %s", name, place)
                            .isEqualTo(taken);
                }
            }
        }
    }

    @Test
    void an_end_is_led_elsewhere_and_the_cable_keeps_the_rest() {
        Drawing after = led("W2", "from", "GB1.1");

        Cable w = after.cables().require("W2");
        assertThat(w.from()).isEqualTo(TerminalRef.parse("GB1.1", "from"));
        assertThat(w.to()).isEqualTo(TerminalRef.parse("EA1.1", "to"));
        assertThat(w.lengthM()).isEqualTo(6.5);
        assertThat(w.areaMm2()).isEqualTo(6.0);
        assertThat(w.bends()).as("those of the old way").isEmpty();
        assertThat(Soundness.flaws(after)).isEmpty();
    }

    @Test
    void at_a_bar_it_takes_a_free_tap_and_what_is_free_takes_its_system() {
        Drawing onBar = led("W2", "from", "WC1");
        assertThat(onBar.cables().require("W2").from().component()).isEqualTo("WC1");
        assertThat(onBar.cables().require("W2").from()).isNotEqualTo(TerminalRef.parse("WC1.a", "from"));

        Drawing atLamp = led("W2", "to", "EA2.1");
        assertThat(atLamp.components().require("EA2").systems()).containsExactly("12");
        assertThat(Soundness.flaws(atLamp)).isEmpty();
    }

    @Test
    void the_same_place_is_no_change_and_a_locked_cable_stays() {
        assertThat(led("W2", "from", "QB1.1")).isEqualTo(d);
        Drawing locked = Locks.set(Set.of("W2"), true).applyTo(d);
        assertThatThrownBy(() -> CardEdits.set("W2", "from", "GB1.1", "").applyTo(locked))
                .isInstanceOf(Edit.Refusal.class);
        assertThatThrownBy(() -> led("W2", "from", "EA1.1")).isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void several_cables_have_no_end_in_common() {
        assertThat(CardFields.common(d, Set.of("W2", "W3"), ""))
                .extracting(CardField::name)
                .contains("lengthM")
                .doesNotContain("from", "to");
    }
}
