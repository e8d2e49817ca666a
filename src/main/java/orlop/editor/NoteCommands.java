package orlop.editor;

import java.util.Optional;
import java.util.Set;
import orlop.desk.NoteEdits;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Checks;
import orlop.drawing.Message;
import orlop.drawing.Note;
import orlop.drawing.Point;

/** Writes notes on the sheet, and changes them. */
final class NoteCommands {
    private final Session session;
    private final SheetCanvas canvas;
    private final Prompts prompts;

    NoteCommands(Session session, SheetCanvas canvas, Prompts prompts) {
        this.session = session;
        this.canvas = canvas;
        this.prompts = prompts;
    }

    void addTo(Commands c) {
        c.add(
                CommandId.NOTE,
                () -> canvas.use(new NoteTool(canvas, this::place)),
                () -> session.state().shownSheet().isPresent());
    }

    /** Asks for the words of a new note at this place, and puts it there. */
    void place(double xMm, double yMm) {
        NoteForm form = new NoteForm("", NoteEdits.USUAL_HEIGHT_MM);
        prompts.form(Texts.of("editor.note.title"), form.panel(), () -> placed(form, new Point(xMm, yMm)));
    }

    private Optional<Message> placed(NoteForm form, Point at) {
        try {
            SessionState s = session.state();
            Note n = NoteEdits.fresh(s.drawing(), s.sheet(), at, form.text(), form.heightMm());
            return session.apply(NoteEdits.place(n), Set.of(n.id()));
        } catch (Checks.OutOfRange e) {
            return Optional.of(e.reason());
        }
    }

    /** Asks for other words. */
    void edit(String id) {
        Note n = session.state().drawing().notes().get(id);
        if (n != null) {
            NoteForm form = new NoteForm(n.text(), n.heightMm());
            prompts.form(
                    Texts.of("editor.note.title"),
                    form.panel(),
                    () -> session.apply(NoteEdits.write(id, form.text(), form.heightMm())));
        }
    }
}
