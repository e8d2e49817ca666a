package orlop.editor;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import orlop.desk.OwnSymbols;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.desk.SheetExport;
import orlop.drawing.Message;
import orlop.render.PngExport;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.scene.Scene;
import orlop.store.FileProblem;
import orlop.store.PlainFile;

/** The commands of the menu File that write the sheet for others to read. */
final class ExportCommands {
    private static final double PNG_DPI = 200;

    private final Session session;
    private final ShownScene shown;
    private final Prompts prompts;
    private final Executor background;
    private final Executor ui;
    private boolean busy;
    private volatile boolean givenUp;

    /** Makes and writes files; says what was done. */
    @FunctionalInterface
    private interface Work {
        Message done() throws FileProblem;
    }

    /**
     * @param background runs what takes long: each file is there whole or not at all, however the program ends
     * @param ui runs what tells of it, on the event thread
     */
    ExportCommands(Session session, ShownScene shown, Prompts prompts, Executor background, Executor ui) {
        this.session = session;
        this.shown = shown;
        this.prompts = prompts;
        this.background = background;
        this.ui = ui;
    }

    void addTo(Commands c) {
        c.add(CommandId.EXPORT_SHEETS, this::exportSheets, this::ready);
        c.add(CommandId.EXPORT_SVG, () -> export(".svg"), this::ready);
        c.add(CommandId.EXPORT_PNG, () -> export(".png"), this::ready);
        c.add(CommandId.GIVE_UP, this::giveUp, () -> busy);
    }

    /** Gives up what is being written, if anything is: its file stays as it was. Whether there was anything. */
    boolean giveUp() {
        givenUp = true;
        return busy;
    }

    private boolean ready() {
        return !busy && session.state().shownSheet().isPresent();
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
        Supplier<Optional<Message>> taken = () ->
                form.export().sheets().isEmpty() ? Optional.of(Message.of("desk.export.sheets")) : Optional.empty();
        if (!prompts.form(Texts.of("editor.form.export.title"), form.panel(), taken)) {
            return;
        }
        SheetExport export = form.export();
        String suffix = export.form().suffix();
        Path file = s.file();
        String name = file == null ? s.drawing().vessel().name() : String.valueOf(file.getFileName());
        prompts.save(suggestion(s, name, "", suffix), suffix).ifPresent(to -> write(export, review, to));
    }

    private void write(SheetExport export, Review review, Path to) {
        work(to, () -> {
            List<Path> written = export.write(review, to, () -> givenUp, this::mayReplace);
            String first = String.valueOf(written.get(0).getFileName());
            return written.size() == 1
                    ? Message.of("editor.say.exported", first)
                    : Message.of("editor.say.exported-all", written.size(), first);
        });
    }

    /** Asks on the event thread, and waits for the answer on the one that writes. */
    private boolean mayReplace(List<Path> there) {
        if (new EventThread().isCurrent()) {
            return askToReplace(there); // it is written there, and would wait for itself
        }
        CompletableFuture<Boolean> answer = new CompletableFuture<>();
        ui.execute(() -> {
            try {
                answer.complete(askToReplace(there));
            } finally {
                answer.complete(false); // a box that could not be shown is no yes
            }
        });
        return answer.join();
    }

    private boolean askToReplace(List<Path> there) {
        String names = there.stream().map(p -> String.valueOf(p.getFileName())).collect(Collectors.joining(", "));
        return prompts.choose(
                        Texts.of("editor.ask.replace.title"),
                        Texts.of("editor.ask.replace.several", names),
                        Texts.of("editor.ask.replace.yes-all"),
                        Texts.of("editor.ask.cancel"))
                == 0;
    }

    private void work(Path to, Work work) {
        busy = true;
        givenUp = false;
        session.say(Message.of("editor.say.exporting", String.valueOf(to.getFileName())));
        background.execute(() -> {
            Runnable told = told(work);
            ui.execute(() -> {
                busy = false;
                told.run();
            });
        });
    }

    private Runnable told(Work work) {
        try {
            Message done = work.done();
            return () -> session.say(done);
        } catch (FileProblem e) {
            return () -> {
                session.say(null);
                prompts.tell(Texts.of("editor.problem.title"), FileCommands.words(e));
            };
        } catch (CancellationException e) {
            return () -> session.say(Message.of("editor.say.given-up"));
        } catch (RuntimeException | Error e) {
            return () -> {
                session.say(null); // it is not being written any longer
                throw e;
            };
        }
    }

    /** Beside the drawing's own file if it has one. */
    static Path suggestion(SessionState s, String drawing, String sheet, String suffix) {
        Path file = s.file();
        String stem = drawing.replaceAll("\\.orlop$", "").strip();
        String name = (stem.isEmpty() ? "drawing" : stem).replaceAll("[\\\\/:*?\"<>|]", "-") + sheet + suffix;
        return file == null ? Path.of(name) : file.toAbsolutePath().resolveSibling(name);
    }

    private void export(Path file, String suffix) {
        SessionState s = session.state();
        if (!s.fresh()) {
            session.say(Message.of("editor.say.not-yet"));
            return;
        }
        Supplier<List<Scene>> paper = shown.onPaper(s);
        work(file, () -> {
            List<Scene> pages = paper.get();
            byte[] bytes = suffix.equals(".svg")
                    ? SvgExport.write(pages.get(0), Palette.LIGHT, OwnSymbols.library())
                    : PngExport.write(pages.get(0), Palette.LIGHT, PNG_DPI, OwnSymbols.library());
            if (givenUp) {
                throw new CancellationException("the export was given up");
            }
            PlainFile.write(file, bytes);
            String name = String.valueOf(file.getFileName());
            return pages.size() == 1
                    ? Message.of("editor.say.exported", name)
                    : Message.of("editor.say.exported-first", name);
        });
    }
}
