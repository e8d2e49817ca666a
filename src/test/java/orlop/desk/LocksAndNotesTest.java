package orlop.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Kind;
import orlop.drawing.Note;
import orlop.drawing.Place;
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
        assertThat(Locks.anyFree(locked, Set.of("QB1", "W1"))).isFalse();
        assertThat(Locks.anyFree(locked, Set.of("QB1", "GB1"))).isTrue();
        assertThat(Locks.set(Set.of("QB1", "W1"), false).applyTo(locked)).isEqualTo(d);
    }

    @Test
    void the_way_and_label_of_a_locked_cable_stay_and_nothing_takes_it_away() throws FileProblem {
        Drawing locked = Locks.set(Set.of("W1"), true).applyTo(d);
        var way = java.util.Objects.requireNonNull(Drawn.of(locked).routes().get("W1"));

        refused(locked, Edits.delete(Set.of("W1")), "drawing.refuse.locked");
        refused(locked, Edits.delete(Set.of("GB1")), "drawing.refuse.locked");
        refused(locked, Edits.delete(Set.of("QB1")), "drawing.refuse.locked");
        refused(locked, HandSet.moveLeg(locked, way, 0, 60, "key"), "drawing.refuse.locked");
        refused(locked, HandSet.setBend(way, new Point(60, 120), "key"), "drawing.refuse.locked");
        refused(locked, HandSet.moveLabel("W1", new Point(60, 120), "key"), "drawing.refuse.locked");
        Component fuse = Component.of("FC1", Kind.FUSE, Place.at("1", 50, 125), List.of("12"));
        refused(locked, Edits.insert("W1", fuse, 0.5), "drawing.refuse.locked");

        assertThat(Edits.move(Set.of("GB1"), 5, 0, "key")
                        .applyTo(locked)
                        .cables()
                        .require("W1"))
                .as("it follows what it is connected to")
                .isEqualTo(locked.cables().require("W1"));
        assertThat(Edits.delete(Set.of("W2")).applyTo(locked).cables().contains("W1"))
                .isTrue();
        assertThat(DrawingFile.load(DrawingFile.write(locked), "text")).isEqualTo(locked);
        assertThat(new String(DrawingFile.write(locked), StandardCharsets.UTF_8))
                .containsOnlyOnce("\"locked\"");
        assertThat(new String(DrawingFile.write(d), StandardCharsets.UTF_8)).doesNotContain("\"locked\"");
    }

    @Test
    void a_locked_note_stays_but_its_words_can_be_changed() throws FileProblem {
        Drawing locked = Locks.set(Set.of("N1"), true).applyTo(noted);

        refused(locked, Edits.move(Set.of("N1", "GB1"), 5, 0, "key"), "drawing.refuse.locked");
        refused(locked, Edits.delete(Set.of("N1")), "drawing.refuse.locked");
        refused(locked, NoteEdits.write("N1", " ", 2.5), "drawing.refuse.locked");
        refused(locked, SheetMoves.to(Set.of("N1"), "2"), "drawing.refuse.locked");
        Drawing changed = NoteEdits.write("N1", "dry", 3.5).applyTo(locked);
        assertThat(changed.notes().require("N1").locked()).isTrue();
        assertThat(changed.notes().require("N1").text()).isEqualTo("dry");
        assertThat(DrawingFile.load(DrawingFile.write(locked), "text")).isEqualTo(locked);
        assertThat(Clip.read(Clip.write(locked, Set.of("N1")))
                        .onto(locked, "1", 10, 10)
                        .edit()
                        .applyTo(locked)
                        .notes()
                        .require("N2")
                        .locked())
                .as("a copy is free")
                .isFalse();
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
