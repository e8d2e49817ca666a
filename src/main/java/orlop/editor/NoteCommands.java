package orlop.editor;

import java.util.Optional;
import java.util.Set;
import orlop.desk.NoteEdits;
import orlop.desk.Session;
import orlop.drawing.Checks;
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
        Forms.ask(prompts, Texts.of("editor.note.title"), form.panel(), () -> {
            try {
                Note n = NoteEdits.fresh(
                        session.state().drawing(),
                        session.state().sheet(),
                        new Point(xMm, yMm),
                        form.text(),
                        form.heightMm());
                return session.apply(NoteEdits.place(n), Set.of(n.id()));
            } catch (Checks.OutOfRange e) {
                return Optional.of(e.reason());
            }
        });
    }

    /** Asks for other words. */
    void edit(String id) {
        Note n = session.state().drawing().notes().get(id);
        if (n != null) {
            NoteForm form = new NoteForm(n.text(), n.heightMm());
            Forms.ask(
                    prompts,
                    Texts.of("editor.note.title"),
                    form.panel(),
                    () -> session.apply(NoteEdits.write(id, form.text(), form.heightMm())));
        }
    }
}
