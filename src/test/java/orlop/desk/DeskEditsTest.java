package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import orlop.drawing.Checks;
import orlop.drawing.Conductors;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Laying;
import orlop.drawing.Place;
import orlop.drawing.Soundness;
import orlop.drawing.SwitchPositions;
import orlop.store.FileProblem;
import orlop.study.ComponentResult;
import orlop.study.Results;
import orlop.study.TerminalResult;

class DeskEditsTest {
    private final Drawing d = SmallBoat.drawing();

    @Test
    void the_lines_of_a_card_write_back_what_they_show() {
        Drawing after =
                CardEdits.set("W1", "construction.laying", Laying.CONDUIT, "").applyTo(d);
        after = CardEdits.set("W1", "conductors", Conductors.SINGLE, "").applyTo(after);
        after = CardEdits.set("GB1", "particulars.capacityAh", 230.0, "").applyTo(after);
        after = CardEdits.set("EA1", "condition.running", false, "sail").applyTo(after);
        after = CardEdits.set("EA1", "name", "saloon", "").applyTo(after);

        assertThat(value(after, "W1", "construction.laying")).isEqualTo(Laying.CONDUIT);
        assertThat(value(after, "W1", "conductors")).isEqualTo(Conductors.SINGLE);
        assertThat(value(after, "GB1", "particulars.capacityAh")).isEqualTo(230.0);
        assertThat(value(after, "EA1", "condition.running")).isEqualTo(false);
        assertThat(value(after, "EA1", "name")).isEqualTo("saloon");
    }

    @Test
    void not_known_can_be_entered_where_it_may_be() {
        Drawing after = CardEdits.set("W1", "lengthM", null, "").applyTo(d);

        assertThat(after.cables().require("W1").lengthM()).isNull();
        assertThat(field(after, "W1", "lengthM").optional()).isTrue();
        assertThat(field(after, "W1", "construction.insulationC").optional()).isFalse();
    }

    @Test
    void a_record_refuses_for_itself() {
        assertThatThrownBy(() -> RecordParts.with(d.cables().require("W1"), "lengthM", -1.0))
                .isInstanceOf(Checks.OutOfRange.class);
    }

    @Test
    void the_steps_of_an_efficiency_are_typed_as_text() {
        String path = "particulars.efficiencyByLoad";
        Drawing with = d.with(orlop.drawing.Component.of(
                "TB9",
                orlop.drawing.Kind.CHARGER.defaults(),
                orlop.drawing.Place.at("1", 200, 200),
                List.of("12", "12")));
        assertThat(field(with, "TB9", path).optional()).isTrue();
        assertThat(value(with, "TB9", path)).isNull();

        Drawing after = CardEdits.set("TB9", path, "12,5:80 50:91,5", "").applyTo(with);
        assertThat(value(after, "TB9", path)).hasToString("12.5:80 50:91.5");
        assertThat(value(CardEdits.set("TB9", path, " ", "").applyTo(after), "TB9", path))
                .isNull();
        assertThatThrownBy(() -> CardEdits.set("TB9", path, "50:91 25:88", "").applyTo(with))
                .isInstanceOf(orlop.drawing.Edit.Refusal.class)
                .hasMessageContaining("drawing.range.rising");
    }

    private static @Nullable Object value(Drawing d, String item, String path) {
        return field(d, item, path).value();
    }

    private static CardField field(Drawing d, String item, String path) {
        return CardFields.of(d, item, "sail").stream()
                .filter(f -> f.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_switch_moves_in_the_condition_that_is_shown_and_else_as_drawn() {
        var q = d.components().require("QB1");

        Drawing here = SwitchEdits.next(d, q, "sail").orElseThrow().applyTo(d);
        Drawing drawn = SwitchEdits.next(d, q, Results.GOVERNING).orElseThrow().applyTo(d);

        assertThat(SwitchPositions.in(here.conditions().require("sail"), q)).isEqualTo("open");
        assertThat(here.components()).isEqualTo(d.components());
        assertThat(SwitchPositions.drawn(drawn.components().require("QB1").particulars()))
                .isEqualTo("open");
        assertThat(SwitchEdits.next(d, d.components().require("GB1"), "sail")).isEmpty();
    }

    @Test
    void loads_and_sources_do_not_stand_in_a_line() {
        assertThat(Insertions.inline(Kind.FUSE)).isTrue();
        assertThat(Insertions.inline(Kind.SHUNT)).isTrue();
        assertThat(Insertions.inline(Kind.MOTOR)).isFalse();
        assertThat(Insertions.inline(Kind.BATTERY)).isFalse();
        assertThat(Insertions.inline(Kind.CHARGER)).isFalse();
    }

    @Test
    void a_clip_is_put_in_under_fresh_tags() throws FileProblem {
        String text = Clip.write(d, Set.of("GB1", "QB1"));

        Clip.Pasted p = Clip.read(text).onto(d, "2", 10, 0);
        Drawing after = p.edit().applyTo(d);

        assertThat(p.ids()).containsExactly("GB2", "QB2", "W3");
        assertThat(after.components().require("GB2").place().sheet()).isEqualTo("2");
        assertThat(after.cables().require("W3").from().component()).isEqualTo("GB2");
        assertThat(Soundness.flaws(after)).isEmpty();
    }

    @Test
    void a_converter_gets_the_two_systems_that_it_most_likely_joins() {
        assertThat(Placings.systems(d, Kind.INVERTER, "")).containsExactly("12", "230");
        assertThat(Placings.systems(d, Kind.CHARGER, "")).containsExactly("230", "12");
        assertThat(Placings.systems(d, Kind.SHORE_INLET, "12")).containsExactly("230");
        assertThat(Placings.systems(d, Kind.HEATER, "230")).containsExactly("230");
        assertThat(Placings.fresh(d, Kind.BATTERY, Place.at("1", 0, 0), "").id())
                .isEqualTo("GB2");
    }

    /** A hand calculation: loads of 12 V × 5 A and 12 V × 3 A, 8 A out of the battery. */
    @Test
    void a_balance_sums_batteries_and_loads_by_system() {
        Map<String, ComponentResult> parts = new LinkedHashMap<>();
        parts.put("GB1", result("GB1", Kind.BATTERY, 8, 96));
        parts.put("EA1", result("EA1", Kind.LIGHTING, 5, 60));
        parts.put("EA2", result("EA2", Kind.LIGHTING, 3, 36));

        assertThat(Balance.of(d, new Results("sail", "", true, 0, Map.of(), Map.of(), parts, List.of())))
                .containsExactly(new Balance("12", -8.0, 96.0));
    }

    private static ComponentResult result(String id, Kind kind, double currentA, double powerW) {
        TerminalResult t = new TerminalResult("1", "12", 12.0, null, currentA, powerW);
        return new ComponentResult(id, kind, true, List.of(t), null, null, List.of());
    }
}
