package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.History;
import orlop.drawing.Kind;
import orlop.drawing.Place;
import orlop.drawing.Point;
import orlop.layout.Rect;

class ArrangingTest {
    private final Drawing d = SmallBoat.put(
            SmallBoat.put(
                    SmallBoat.put(SmallBoat.drawing(), "FC1", Kind.FUSE, 82.5, 97.5), "EA2", Kind.LIGHTING, 180, 170),
            "EA3",
            Kind.LIGHTING,
            235,
            140);
    private final Set<String> three = new LinkedHashSet<>(List.of("EA1", "EA2", "EA3"));

    private static Map<String, Rect> boxes(Drawing d, Set<String> ids) {
        return Arranging.boxes(Drawn.of(d), ids);
    }

    private Rect box(Set<String> ids, String id) {
        return boxes(d, ids).getOrDefault(id, Rect.of(0, 0, 0, 0));
    }

    private static Point at(Drawing d, String id) {
        return d.components().require(id).place().at();
    }

    @Test
    void edges_come_to_the_outermost_edge() {
        Set<String> ids = Set.of("GB1", "FC1", "EA2");
        Drawing left = Arranging.align(boxes(d, ids), Arranging.Line.LEFT).applyTo(d);
        Drawing low = Arranging.align(boxes(d, ids), Arranging.Line.BOTTOM).applyTo(d);

        double edge = Math.floor(box(ids, "GB1").minX() / 2.5);
        assertThat(boxes(left, ids).values()).allMatch(b -> Math.floor(b.minX() / 2.5 + 1e-6) == edge);
        double foot = Math.ceil(box(ids, "EA2").maxY() / 2.5);
        assertThat(boxes(low, ids).values()).allMatch(b -> Math.ceil(b.maxY() / 2.5 - 1e-6) == foot);
        assertThat(at(left, "GB1")).as("the outermost stays").isEqualTo(at(d, "GB1"));
        assertThat(at(left, "EA2").yMm()).as("only sideways").isEqualTo(170);
    }

    @Test
    void centres_meet_on_the_line_of_the_grid_in_the_middle() {
        Drawing row = Arranging.align(boxes(d, three), Arranging.Line.ROW).applyTo(d);
        Drawing column = Arranging.align(boxes(d, three), Arranging.Line.COLUMN).applyTo(d);

        assertThat(three).allSatisfy(id -> {
            assertThat(at(row, id).yMm()).isEqualTo(155);
            assertThat(at(row, id).xMm()).isEqualTo(at(d, id).xMm());
            assertThat(at(column, id).xMm()).isEqualTo(192.5);
        });
    }

    @ParameterizedTest
    @EnumSource(Arranging.Line.class)
    void what_is_in_line_stays_as_it_is(Arranging.Line line) {
        Drawing once = Arranging.align(boxes(d, three), line).applyTo(d);
        Drawing twice = Arranging.align(boxes(once, three), line).applyTo(once);

        assertThat(once).isNotEqualTo(d);
        assertThat(twice).isEqualTo(once);
        assertThat(three).allSatisfy(id -> {
            assertThat(at(once, id)).isEqualTo(at(once, id).onGrid(2.5));
            assertThat(once.components().require(id).place().rotationDegree()).isZero();
        });
    }

    @Test
    void the_others_come_to_what_is_locked() {
        Drawing locked = Locks.set(Set.of("EA3"), true).applyTo(d);

        Drawing row = Arranging.align(boxes(locked, three), Arranging.Line.ROW).applyTo(locked);

        assertThat(three).allSatisfy(id -> assertThat(at(row, id).yMm()).isEqualTo(140));
    }

    @Test
    void what_stands_beside_the_grid_comes_onto_it() {
        Drawing off = d.with(d.components().require("EA2").withPlace(Place.at("1", 181.2, 170)));

        Drawing column = Arranging.align(boxes(off, three), Arranging.Line.LEFT).applyTo(off);

        assertThat(at(column, "EA2").xMm()).isEqualTo(150);
    }

    @Test
    void distances_are_even_to_one_step_of_the_grid_and_the_outermost_stay() {
        Set<String> ids = Set.of("GB1", "FC1", "EA1", "EA3");
        Drawing even =
                Arranging.distribute(boxes(d, ids), Arranging.Direction.ACROSS).applyTo(d);

        assertThat(at(even, "GB1").xMm()).isEqualTo(50);
        assertThat(at(even, "FC1").xMm()).isEqualTo(112.5);
        assertThat(at(even, "EA1").xMm()).isEqualTo(172.5);
        assertThat(at(even, "EA3").xMm()).isEqualTo(235);
        assertThat(at(even, "FC1").yMm()).isEqualTo(97.5);
        Drawing down =
                Arranging.distribute(boxes(d, ids), Arranging.Direction.DOWN).applyTo(d);
        assertThat(at(down, "EA3").yMm()).isEqualTo(115);
    }

    @Test
    void a_locked_component_in_the_midst_is_not_moved_by_making_distances_even() {
        Drawing locked = Locks.set(Set.of("EA2"), true).applyTo(d);
        Edit edit = Arranging.distribute(boxes(locked, three), Arranging.Direction.ACROSS);

        assertThatThrownBy(() -> edit.applyTo(locked)).isInstanceOf(Edit.Refusal.class);
    }

    @Test
    void one_step_of_the_history_takes_it_back_exactly() {
        History h = new History(d);
        h.apply(Arranging.align(boxes(d, three), Arranging.Line.ROW));

        h.undo();

        assertThat(Same.object(h.current(), d)).isTrue();
        assertThat(h.undoLabel()).isEmpty();
    }

    @Test
    void hand_set_bends_follow_where_both_ends_move_alike() {
        Drawing two = SmallBoat.put(d, "FC2", Kind.FUSE, 82.5, 130);
        Drawing bent = two.with(two.cables().require("W1").withBends(List.of(new Point(60, 120))));
        Map<String, Rect> boxes = new LinkedHashMap<>(boxes(bent, Set.of("GB1", "QB1", "FC1", "FC2")));

        Drawing right = Arranging.align(boxes, Arranging.Line.COLUMN).applyTo(bent);

        assertThat(at(right, "GB1").xMm()).isEqualTo(65);
        assertThat(right.cables().require("W1").bends()).containsExactly(new Point(75, 120));
    }

    @Test
    void what_stands_out_of_a_row_comes_to_the_row() {
        Set<String> four = Set.of("EA1", "EA2", "EA3", "GB1");
        Drawing row = Arranging.align(boxes(d, four), Arranging.Line.ROW).applyTo(d);

        assertThat(at(d, "EA1").yMm()).isEqualTo(at(d, "GB1").yMm()).isEqualTo(150);
        assertThat(four).allSatisfy(id -> assertThat(at(row, id).yMm()).isEqualTo(150));
    }

    @Test
    void two_rows_that_are_as_long_meet_in_the_middle() {
        Drawing two = d.with(d.components().require("EA3").withPlace(Place.at("1", 235, 170)));
        Set<String> four = Set.of("EA1", "EA2", "EA3", "GB1");
        Drawing row = Arranging.align(boxes(two, four), Arranging.Line.ROW).applyTo(two);

        assertThat(four).allSatisfy(id -> assertThat(at(row, id).yMm()).isEqualTo(160));
    }

    @Test
    void notes_are_brought_in_line_too() {
        Drawing noted = NoteEdits.place(NoteEdits.fresh(d, "1", new Point(30, 30), "check on board", 2.5))
                .applyTo(d);

        Drawing left = Arranging.align(boxes(noted, Set.of("N1", "EA1")), Arranging.Line.LEFT)
                .applyTo(noted);

        assertThat(left.notes().require("N1").at()).isEqualTo(new Point(30, 30));
        assertThat(at(left, "EA1").xMm()).isLessThan(60);
    }
}
