package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Note;
import orlop.drawing.Point;
import orlop.scene.Role;
import orlop.store.DrawingFile;
import orlop.store.FileProblem;

class LocksAndNotesTest {
    private final Drawing d = SmallBoat.drawing();
    private final Drawing noted = NoteEdits.place(
                    NoteEdits.fresh(d, "1", new Point(31, 29), "bilge is dry here\ncheck yearly", 2.5))
            .applyTo(d);

    private static void refused(Drawing d, Edit e, String key) {
        assertThatThrownBy(() -> e.applyTo(d))
                .isInstanceOfSatisfying(
                        Edit.Refusal.class, r -> assertThat(r.reason().key()).isEqualTo(key));
    }

    @Test
    void what_is_locked_is_neither_moved_nor_deleted() {
        Drawing locked = Locks.set(Set.of("QB1", "W1"), true).applyTo(d);

        refused(locked, Edits.move(Set.of("GB1", "QB1"), 5, 0, "key"), "drawing.refuse.locked");
        refused(locked, Edits.delete(Set.of("EA1", "QB1")), "drawing.refuse.locked");
        assertThat(Locks.any(locked, Set.of("QB1"))).isTrue();
        assertThat(Locks.anyFree(locked, Set.of("QB1", "W1")))
                .as("a cable can't be locked")
                .isFalse();
        assertThat(Locks.set(Set.of("QB1"), false).applyTo(locked)).isEqualTo(d);
    }

    @Test
    void a_note_stands_on_the_grid_and_on_the_scene() throws FileProblem {
        Note n = noted.notes().require("N1");

        assertThat(n.at()).isEqualTo(new Point(30, 30));
        assertThat(Drawn.of(noted).item(Role.NOTE, "N1")).isPresent();
        assertThat(DrawingFile.load(DrawingFile.write(noted), "text")).isEqualTo(noted);
    }

    @Test
    void a_note_moves_with_components() {
        Drawing after = Edits.move(Set.of("GB1", "N1"), 5, 2.5, "key").applyTo(noted);

        assertThat(after.notes().require("N1").at()).isEqualTo(new Point(35, 32.5));
        assertThat(after.components().require("GB1").place().at()).isEqualTo(new Point(55, 152.5));
    }

    @Test
    void a_note_gets_other_words_and_goes_when_it_has_none() {
        Drawing after = NoteEdits.write("N1", "dry\nsince May", 3.5).applyTo(noted);

        assertThat(after.notes().require("N1").text()).isEqualTo("dry\nsince May");
        assertThat(after.notes().require("N1").heightMm()).isEqualTo(3.5);
        assertThat(NoteEdits.write("N1", " \n", 3.5).applyTo(noted)).isEqualTo(d);
        refused(d, NoteEdits.place(NoteEdits.fresh(d, "1", new Point(0, 0), " ", 2.5)), "desk.note.blank");
        refused(d, NoteEdits.write("N1", "x", 2.5), "desk.note.gone");
        refused(noted, NoteEdits.place(noted.notes().require("N1")), "drawing.refuse.tag-taken");
        refused(noted, NoteEdits.write("N1", "x", 40), "drawing.range.between");
    }

    @Test
    void a_note_is_copied_under_an_id_of_its_own() throws FileProblem {
        Clip.Pasted p = Clip.read(Clip.write(noted, Set.of("N1", "EA1"))).onto(noted, "2", 10, 10);

        Drawing after = p.edit().applyTo(noted);

        assertThat(p.ids()).containsExactly("EA2", "N2");
        assertThat(after.notes().require("N2").at()).isEqualTo(new Point(40, 40));
        assertThat(after.notes().require("N2").sheet()).isEqualTo("2");
    }
}
