package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.History;
import orlop.drawing.Point;

class LayeringTest {
    private final Drawing d = SmallBoat.drawing();

    private static Point at(Drawing d, String id) {
        return d.components().require(id).place().at();
    }

    @Test
    void a_sheet_is_drawn_from_its_battery_down_in_one_column_and_one_step() {
        History h = new History(d);
        h.apply(Layering.edit("1", Set.of()));

        Drawing after = h.current();
        assertThat(at(after, "GB1").yMm()).isLessThan(at(after, "QB1").yMm());
        assertThat(at(after, "QB1").yMm()).isLessThan(at(after, "EA1").yMm());
        assertThat(at(after, "EA1").xMm()).isEqualTo(at(after, "QB1").xMm());
        h.undo();
        assertThat(h.current()).isSameAs(d);
    }

    @Test
    void what_is_locked_stays() {
        Drawing locked = Locks.set(Set.of("QB1"), true).applyTo(d);

        Drawing after = Layering.edit("1", Set.of()).applyTo(locked);

        assertThat(at(after, "QB1")).isEqualTo(at(d, "QB1"));
        assertThat(at(after, "EA1")).isNotEqualTo(at(d, "EA1"));
    }

    @Test
    void what_is_chosen_begins_where_it_stood_and_the_rest_stays() {
        Drawing after = Layering.edit("1", Set.of("QB1", "EA1", "W2")).applyTo(d);

        assertThat(at(after, "GB1")).isEqualTo(at(d, "GB1"));
        assertThat(at(after, "QB1").yMm()).isBetween(95.0, 110.0);
        assertThat(at(after, "EA1").xMm()).isEqualTo(at(after, "QB1").xMm());
    }

    @Test
    void corners_and_labels_set_by_hand_are_forgotten_where_a_cables_end_moves() {
        Drawing bent = d.with(
                d.cables().require("W2").withBends(List.of(new Point(100, 100))).withLabelAt(new Point(3, 3)));

        Drawing after = Layering.edit("1", Set.of()).applyTo(bent);

        assertThat(after.cables().require("W2").bends()).isEmpty();
        assertThat(after.cables().require("W2").labelAt()).isNull();
    }

    @Test
    void a_sheet_without_anything_to_move_says_so() {
        assertThatThrownBy(() -> Layering.edit("2", Set.of()).applyTo(d)).isInstanceOf(Edit.Refusal.class);
    }
}
