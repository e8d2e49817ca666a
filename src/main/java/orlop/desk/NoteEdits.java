package orlop.desk;

import java.util.Set;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.Extras;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.Point;
import orlop.drawing.Tags;

/** Free texts on a sheet. */
public final class NoteEdits {
    /** The height of letters of a new note: as that of annotations on paper, and a little more. */
    public static final double USUAL_HEIGHT_MM = 2.5;

    private NoteEdits() {}

    /** A new note of this drawing, its upper left corner on the grid. */
    public static Note fresh(Drawing d, String sheet, Point at, String text, double heightMm) {
        Point p = new Point(Arranging.onGrid(at.xMm()), Arranging.onGrid(at.yMm()));
        return new Note(Tags.nextNote(d), sheet, p, text, heightMm, Extras.NONE);
    }

    /** Puts a new note on its sheet. A blank one is refused: nobody would ever find it. */
    public static Edit place(Note note) {
        return Edit.of(Message.of("desk.note.place"), d -> {
            if (note.text().isBlank()) {
                throw new Edit.Refusal(Message.of("desk.note.blank"));
            }
            if (d.hasItem(note.id()) || d.notes().contains(note.id())) {
                throw new Edit.Refusal(Message.of("drawing.refuse.tag-taken", note.id()));
            }
            return Edits.sound(d, d.withNotes(d.notes().with(note.id(), note)));
        });
    }

    /** Gives a note another text and height. A blank text takes the note away. */
    public static Edit write(String id, String text, double heightMm) {
        return Edit.of(Message.of(text.isBlank() ? "desk.note.delete" : "desk.note.write"), d -> {
            Note n = d.notes().get(id);
            if (n == null) {
                throw new Edit.Refusal(Message.of("desk.note.gone"));
            }
            if (text.isBlank()) {
                return Edits.delete(Set.of(id)).applyTo(d);
            }
            Note changed = n.withText(text).withHeightMm(heightMm);
            return d.withNotes(d.notes().with(id, changed));
        });
    }
}
