package orlop.editor;

import java.nio.file.Path;
import java.util.List;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.desk.SheetExport;
import orlop.drawing.Message;
import orlop.render.PngExport;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.store.FileProblem;
import orlop.store.PlainFile;

/** The commands of the menu File that write the sheet for others to read. */
final class ExportCommands {
    private static final double PNG_DPI = 200;

    private final Session session;
    private final ShownScene shown;
    private final Prompts prompts;

    ExportCommands(Session session, ShownScene shown, Prompts prompts) {
        this.session = session;
        this.shown = shown;
        this.prompts = prompts;
    }

    void addTo(Commands c) {
        c.add(CommandId.EXPORT_SHEETS, this::exportSheets, this::hasSheet);
        c.add(CommandId.EXPORT_SVG, () -> export(".svg"), this::hasSheet);
        c.add(CommandId.EXPORT_PNG, () -> export(".png"), this::hasSheet);
    }

    private boolean hasSheet() {
        return session.state().shownSheet().isPresent();
    }

    private void export(String suffix) {
        SessionState s = session.state();
        Path file = s.file();
        String name = file == null ? s.drawing().vessel().name() : String.valueOf(file.getFileName());
        String sheet =
                s.shownSheet().map(shownSheet -> "-" + shownSheet.number()).orElse("");
        prompts.save(suggestion(s, name, sheet, suffix), suffix).ifPresent(to -> export(to, suffix));
    }

    private void exportSheets() {
        SessionState s = session.state();
        Review review = s.review();
        if (review == null || !s.fresh()) {
            session.say(Message.of("editor.say.not-yet"));
            return;
        }
        ExportForm form = new ExportForm(s);
        if (!prompts.form(Texts.of("editor.form.export.title"), form.panel())) {
            return;
        }
        SheetExport export = form.export();
        if (export.sheets().isEmpty()) {
            session.say(Message.of("desk.export.sheets"));
            return;
        }
        String suffix = export.form().suffix();
        Path file = s.file();
        String name = file == null ? s.drawing().vessel().name() : String.valueOf(file.getFileName());
        prompts.save(suggestion(s, name, "", suffix), suffix).ifPresent(to -> write(export, review, to));
    }

    private void write(SheetExport export, Review review, Path to) {
        try {
            List<Path> written = export.write(review, to);
            String first = String.valueOf(written.get(0).getFileName());
            session.say(
                    written.size() == 1
                            ? Message.of("editor.say.exported", first)
                            : Message.of("editor.say.exported-all", written.size(), first));
        } catch (FileProblem e) {
            prompts.tell(Texts.of("editor.problem.title"), FileCommands.words(e));
        }
    }

    /** Beside the drawing's own file if it has one. */
    static Path suggestion(SessionState s, String drawing, String sheet, String suffix) {
        Path file = s.file();
        String stem = drawing.replaceAll("\\.orlop$", "").strip();
        String name = (stem.isEmpty() ? "drawing" : stem).replaceAll("[\\\\/:*?\"<>|]", "-") + sheet + suffix;
        return file == null ? Path.of(name) : file.resolveSibling(name);
    }

    private void export(Path file, String suffix) {
        SessionState s = session.state();
        if (!s.fresh()) {
            session.say(Message.of("editor.say.not-yet"));
            return;
        }
        byte[] bytes = suffix.equals(".svg")
                ? SvgExport.write(shown.onPaper(s), Palette.LIGHT)
                : PngExport.write(shown.onPaper(s), Palette.LIGHT, PNG_DPI);
        try {
            PlainFile.write(file, bytes);
            session.say(Message.of("editor.say.exported", String.valueOf(file.getFileName())));
        } catch (FileProblem e) {
            prompts.tell(Texts.of("editor.problem.title"), FileCommands.words(e));
        }
    }
}
