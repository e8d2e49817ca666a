package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.Set;
import org.junit.jupiter.api.Test;

class HistoryTest {
    private final Drawing start = Sketch.make();
    private final History history = new History(start);

    private static Edit move(Object key) {
        return Edits.move(Set.of("E1"), 5, 0, key);
    }

    @Test
    void undo_restores_the_very_same_drawing_and_redo_the_later_one() {
        history.apply(move("a"));
        Drawing moved = history.current();
        history.apply(Edits.rename("E1", "E9"));
        Drawing renamed = history.current();

        history.undo();
        assertThat(history.current()).isSameAs(moved);
        history.undo();
        assertThat(history.current()).isSameAs(start);
        history.undo();
        assertThat(history.current()).isSameAs(start);
        history.redo();
        history.redo();
        history.redo();
        assertThat(history.current()).isSameAs(renamed);
    }

    @Test
    void labels_name_what_undo_and_redo_would_do() {
        assertThat(history.undoLabel()).isEmpty();
        assertThat(history.redoLabel()).isEmpty();
        history.apply(Edits.rename("E1", "E9"));
        assertThat(history.undoLabel()).contains(Message.of("drawing.edit.rename", "E1", "E9"));
        history.undo();
        assertThat(history.undoLabel()).isEmpty();
        assertThat(history.redoLabel()).contains(Message.of("drawing.edit.rename", "E1", "E9"));
    }

    @Test
    void a_new_edit_after_undo_forgets_what_was_undone() {
        history.apply(Edits.rename("E1", "E9"));
        history.undo();
        history.apply(Edits.rename("E1", "E8"));
        assertThat(history.redoLabel()).isEmpty();
        history.undo();
        assertThat(history.current()).isSameAs(start);
    }

    @Test
    void edits_of_one_key_are_one_step_until_sealed() {
        history.apply(move("drag"));
        history.apply(move("drag"));
        Drawing first = history.current();
        history.seal();
        history.apply(move("drag"));
        history.apply(move("other"));

        history.undo();
        history.undo();
        assertThat(history.current()).isSameAs(first);
        history.undo();
        assertThat(history.current()).isSameAs(start);
    }

    @Test
    void edits_of_one_key_that_end_where_they_began_leave_no_step() {
        history.apply(Edits.rename("E2", "E9"));
        Drawing renamed = history.current();
        history.seal();
        history.apply(Edits.move(Set.of("E1"), 5, 0, "a"));
        history.apply(Edits.move(Set.of("E1"), -5, 0, "a"));

        assertThat(history.current()).isSameAs(renamed);
        assertThat(history.undoLabel()).contains(Message.of("drawing.edit.rename", "E2", "E9"));
        assertThat(history.redoLabel()).isEmpty();
    }

    @Test
    void undo_and_redo_seal() {
        history.apply(move("drag"));
        history.undo();
        history.redo();
        Drawing once = history.current();
        history.apply(move("drag"));
        history.undo();
        assertThat(history.current()).isSameAs(once);
    }

    @Test
    void one_edit_made_twice_is_two_steps_unless_it_says_otherwise() {
        Edit grow = Edit.of(
                Message.of("drawing.edit.vessel"),
                d -> d.withNotes(d.notes()
                        .with("more" + d.notes().size(), new Note("x", "1", new Point(0, 0), "", 2.5, Extras.NONE))));
        history.apply(grow);
        Drawing once = history.current();
        history.apply(grow);
        history.undo();
        assertThat(history.current()).isSameAs(once);
    }

    @Test
    void an_edit_that_changes_nothing_leaves_no_step() {
        assertThat(history.apply(Edits.move(Set.of("E1"), 0, 0, "x"))).isFalse();
        assertThat(history.current()).isSameAs(start);
        assertThat(history.undoLabel()).isEmpty();
    }

    @Test
    void a_refused_edit_leaves_everything_as_it_was() {
        history.apply(Edits.rename("E1", "E9"));
        Drawing before = history.current();
        history.undo();

        assertThatExceptionOfType(Edit.Refusal.class).isThrownBy(() -> history.apply(Edits.rename("E1", "E2")));

        assertThat(history.current()).isSameAs(start);
        history.redo();
        assertThat(history.current()).isSameAs(before);
    }

    @Test
    void undo_back_to_the_saved_drawing_is_clean_again() {
        assertThat(history.dirty()).isFalse();
        history.apply(move("a"));
        assertThat(history.dirty()).isTrue();
        history.undo();
        assertThat(history.dirty()).isFalse();
        history.redo();
        history.markSaved();
        assertThat(history.dirty()).isFalse();
        history.apply(move("a"));
        history.undo();
        assertThat(history.dirty()).as("saving sealed the step").isFalse();
        history.undo();
        assertThat(history.dirty()).isTrue();
    }
}
