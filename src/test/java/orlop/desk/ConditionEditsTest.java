package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import orlop.desk.ConditionTable.Cell;
import orlop.desk.ConditionTable.Figure;
import orlop.desk.ConditionTable.Row;
import orlop.desk.ConditionTable.Sort;
import orlop.drawing.DayPlan;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Message;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Soundness;

class ConditionEditsTest {
    private final Drawing d = SmallBoat.put(SmallBoat.drawing(), "QC1", Kind.CHANGEOVER_SWITCH, 90, 50);

    private Row row(Sort sort, String id) {
        return ConditionTable.of(d).rows().stream()
                .filter(r -> r.sort() == sort && r.item().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Cell cell(Drawing in, Row row, Figure figure) {
        return ConditionTable.cell(row, in.conditions().require("sail"), figure);
    }

    @Test
    void sources_stand_before_switches_before_loads() {
        ConditionTable t = ConditionTable.of(d);

        assertThat(t.rows()).extracting(r -> r.item().id()).containsExactly("GB1", "QB1", "QC1", "EA1");
        assertThat(t.conditions()).extracting(OperatingCondition::id).containsExactly("sail");
    }

    @Test
    void a_cell_is_turned_over() {
        Row battery = row(Sort.SOURCE, "GB1");
        Row lamp = row(Sort.LOAD, "EA1");
        Row change = row(Sort.SWITCH, "QC1");
        Drawing after = ConditionEdits.turn(battery, "sail").applyTo(d);
        after = ConditionEdits.turn(lamp, "sail").applyTo(after);
        String was = cell(after, change, Figure.SIMULTANEITY).position();
        after = ConditionEdits.turn(change, "sail").applyTo(after);

        assertThat(cell(after, battery, Figure.SIMULTANEITY).on()).isFalse();
        assertThat(cell(after, lamp, Figure.SIMULTANEITY).on()).isFalse();
        assertThat(cell(after, change, Figure.SIMULTANEITY).position()).isNotEqualTo(was);
        assertThat(cell(ConditionEdits.turn(battery, "sail").applyTo(after), battery, Figure.SIMULTANEITY)
                        .on())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"0,8; 0.8", "0.25; 0.25", "35 %; 0.35", "1; 1", "0; 0"})
    void a_share_is_typed_with_comma_or_point_or_percent(String typed, double share) {
        Row lamp = row(Sort.LOAD, "EA1");
        Drawing off =
                ConditionEdits.type(lamp, "sail", Figure.SIMULTANEITY, "off").applyTo(d);

        Drawing after =
                ConditionEdits.type(lamp, "sail", Figure.SIMULTANEITY, typed).applyTo(off);

        assertThat(cell(after, lamp, Figure.SIMULTANEITY)).isEqualTo(new Cell(true, "", share));
        assertThat(cell(after, lamp, Figure.AVERAGE).share()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"1,5", "-1", "much", "1.234,5"})
    void what_is_no_share_is_refused(String typed) {
        Edit edit = ConditionEdits.type(row(Sort.LOAD, "EA1"), "sail", Figure.AVERAGE, typed);

        assertThatThrownBy(() -> edit.applyTo(d)).isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void positions_are_typed_by_word_or_number_and_others_are_refused() {
        Row isolator = row(Sort.SWITCH, "QB1");
        Drawing after = ConditionEdits.type(isolator, "sail", Figure.SIMULTANEITY, "Open")
                .applyTo(d);
        after = ConditionEdits.type(row(Sort.SWITCH, "QC1"), "sail", Figure.SIMULTANEITY, "2")
                .applyTo(after);

        assertThat(cell(after, isolator, Figure.SIMULTANEITY)).isEqualTo(new Cell(false, "open", 1));
        assertThat(after.conditions().require("sail").switches().get("QC1")).isEqualTo("2");
        assertThat(Soundness.flaws(after)).isEmpty();
        assertThatThrownBy(() -> ConditionEdits.type(isolator, "sail", Figure.SIMULTANEITY, "3")
                        .applyTo(d))
                .isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void what_stands_there_already_is_no_step() {
        assertThat(ConditionEdits.type(row(Sort.LOAD, "EA1"), "sail", Figure.SIMULTANEITY, "1")
                        .applyTo(d))
                .isSameAs(d);
    }

    @Test
    void a_copy_says_what_its_model_says_under_a_name_of_its_own() {
        Drawing off = ConditionEdits.turn(row(Sort.SOURCE, "GB1"), "sail").applyTo(d);

        Drawing after = ConditionEdits.duplicate("sail", ConditionEdits.freeId(off), "Motoring")
                .applyTo(off);

        OperatingCondition copy = after.conditions().require("c1");
        assertThat(copy.name()).isEqualTo("Motoring");
        assertThat(copy.sourceOn("GB1")).isFalse();
        assertThat(after.conditions().require("sail").name()).isEqualTo("Under sail");
    }

    @Test
    void a_condition_is_renamed_reordered_and_deleted() {
        Drawing two = ConditionEdits.add("c1", "Motoring").applyTo(d);
        two = ConditionEdits.rename("c1", "Motoring by night").applyTo(two);
        two = ConditionEdits.reorder("c1", 0).applyTo(two);

        assertThat(two.conditions().stream().map(OperatingCondition::title))
                .containsExactly("Motoring by night", "Under sail");
        assertThat(ConditionEdits.delete("c1").applyTo(two).conditions().size()).isEqualTo(1);
        assertThatThrownBy(() -> ConditionEdits.rename("sail", " ").applyTo(d)).isInstanceOf(Edit.Refusal.class);
    }

    /** A day keeps its 24 hours. */
    @Test
    void the_hours_of_a_deleted_condition_pass_to_the_one_beside_it_in_the_plan() {
        Drawing three = ConditionEdits.add("c2", "Moored")
                .applyTo(ConditionEdits.add("c1", "Motoring").applyTo(d));
        DayPlan plan = new DayPlan(
                "p",
                "Passage",
                List.of(
                        new DayPlan.Step("c1", 3),
                        new DayPlan.Step("sail", 9),
                        new DayPlan.Step("c1", 2),
                        new DayPlan.Step("c2", 10)),
                Extras.NONE);
        Drawing planned = RecordParts.with(three, "dayPlans", three.dayPlans().with("p", plan));

        Drawing after = ConditionEdits.delete("c1").applyTo(planned);

        assertThat(after.dayPlans().require("p").steps())
                .containsExactly(new DayPlan.Step("sail", 14), new DayPlan.Step("c2", 10));
        assertThat(Soundness.flaws(after)).isEmpty();
        assertThat(ConditionEdits.saidOfDeleting(planned, "c1").map(Message::key))
                .contains("desk.condition.hours");
        assertThat(ConditionEdits.saidOfDeleting(three, "c1")).isEmpty();
    }

    @Test
    void a_condition_of_which_a_day_plan_consists_is_not_deleted() {
        DayPlan plan = new DayPlan("p", "Passage", List.of(new DayPlan.Step("sail", 24)), Extras.NONE);
        Drawing planned = RecordParts.with(d, "dayPlans", d.dayPlans().with("p", plan));

        assertThatThrownBy(() -> ConditionEdits.delete("sail").applyTo(planned))
                .isInstanceOfSatisfying(
                        Edit.Refusal.class, r -> assertThat(r.reason().key()).isEqualTo("desk.condition.planned"));
    }
}
