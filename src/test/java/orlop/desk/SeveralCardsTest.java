package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.RefitStatus;

/** One card for several items. */
class SeveralCardsTest {
    private final Drawing d = SmallBoat.put(SmallBoat.drawing(), "EA2", Kind.LIGHTING, 200, 150);
    private final Set<String> lamps = new LinkedHashSet<>(List.of("EA1", "EA2"));

    private static CardField field(Drawing d, Set<String> ids, String path) {
        return CardFields.common(d, ids, "sail").stream()
                .filter(f -> f.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> paths(Drawing d, Set<String> ids) {
        return CardFields.common(d, ids, "sail").stream().map(CardField::path).toList();
    }

    @Test
    void alike_items_have_every_line_and_unlike_ones_those_they_share() {
        assertThat(paths(d, lamps))
                .isEqualTo(CardFields.of(d, "EA1", "sail").stream()
                        .map(CardField::path)
                        .toList());
        assertThat(paths(d, Set.of("EA1", "GB1")))
                .contains("name", "systems.0", "refit", "stage", "locked")
                .doesNotContain("particulars.capacityAh", "condition.running");
        assertThat(paths(d, Set.of("EA1", "W1"))).containsExactlyInAnyOrder("name", "refit", "stage", "locked");
        assertThat(paths(d, Set.of())).isEmpty();
    }

    @Test
    void values_that_differ_make_a_mixed_line() {
        Drawing two = CardEdits.set("W1", "areaMm2", 16.0, "").applyTo(d);

        assertThat(field(two, Set.of("W1", "W2"), "areaMm2")).satisfies(f -> {
            assertThat(f.mixed()).isTrue();
            assertThat(f.value()).isNull();
        });
        assertThat(field(two, Set.of("W1", "W2"), "parallel"))
                .extracting(CardField::mixed, CardField::value)
                .containsExactly(false, 1);
    }

    @Test
    void setting_a_line_sets_all() {
        Drawing after =
                CardEdits.setAll(Set.of("W1", "W2"), "areaMm2", 16.0, "").applyTo(d);
        after = CardEdits.setAll(Set.of("W1", "GB1"), "refit", RefitStatus.EXISTING, "")
                .applyTo(after);
        after = CardEdits.setAll(lamps, "condition.simultaneity", 0.5, "sail").applyTo(after);
        after = CardEdits.setAll(lamps, "particulars.powerW", 10.0, "").applyTo(after);

        assertThat(field(after, Set.of("W1", "W2"), "areaMm2").value()).isEqualTo(16.0);
        assertThat(field(after, Set.of("W1", "GB1"), "refit").value()).isEqualTo(RefitStatus.EXISTING);
        assertThat(field(after, lamps, "condition.simultaneity").value()).isEqualTo(0.5);
        assertThat(field(after, lamps, "particulars.powerW").value()).isEqualTo(10.0);
    }

    @Test
    void joined_components_change_their_system_together_or_not_at_all() {
        Set<String> all = Set.of("GB1", "QB1", "EA1");
        Drawing after = CardEdits.setAll(all, "systems.0", "230", "").applyTo(d);

        assertThat(field(after, all, "systems.0").value()).isEqualTo("230");
        assertThatThrownBy(() -> CardEdits.setAll(Set.of("GB1", "QB1"), "systems.0", "230", "")
                        .applyTo(d))
                .isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void what_one_record_refuses_is_set_nowhere() {
        assertThatThrownBy(() -> CardEdits.setAll(Set.of("W1", "W2"), "lengthM", -1.0, "")
                        .applyTo(d))
                .isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void direct_current_has_no_power_factor_and_no_phases() {
        Drawing motors = d.with(Component.of("MA1", Kind.MOTOR, Place.at("1", 20, 20), List.of("12")))
                .with(Component.of("MA2", Kind.MOTOR, Place.at("1", 60, 20), List.of("230")));

        assertThat(CardFields.of(motors, "MA1", "").stream().map(CardField::name))
                .contains("shaftW", "efficiency")
                .doesNotContain("powerFactor", "phase");
        assertThat(CardFields.of(motors, "MA2", "").stream().map(CardField::name))
                .contains("powerFactor")
                .doesNotContain("phase");
        assertThat(CardFields.of(motors, "W1", "").stream().map(CardField::name))
                .contains("loopResistanceOhm")
                .doesNotContain("loopReactanceOhm", "conductorResistanceOhm");
    }

    @Test
    void what_was_given_is_shown_though_it_means_nothing() {
        Drawing given = d.with(RecordParts.with(
                d.cables().require("W1"),
                "measured",
                RecordParts.with(orlop.drawing.Cable.Measured.NOTHING, "loopReactanceOhm", 0.01)));

        assertThat(CardFields.of(given, "W1", "").stream().map(CardField::name)).contains("loopReactanceOhm");
    }

    @Test
    void a_plain_load_shows_what_its_behaviour_counts() {
        Drawing load = d.with(Component.of("E1", Kind.LOAD, Place.at("1", 20, 20), List.of("230")));
        Drawing current = CardEdits.set("E1", "particulars.behaviour", orlop.drawing.LoadBehaviour.CURRENT, "")
                .applyTo(load);

        assertThat(CardFields.of(load, "E1", "").stream().map(CardField::name))
                .contains("powerW", "reactiveVar")
                .doesNotContain("currentA", "resistanceOhm");
        assertThat(CardFields.of(current, "E1", "").stream().map(CardField::name))
                .contains("currentA", "powerFactor")
                .doesNotContain("powerW", "resistanceOhm");
    }
}
