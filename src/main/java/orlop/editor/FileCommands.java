package orlop.editor;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;
import orlop.desk.OpenFile;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Message;
import orlop.store.DrawingFile;
import orlop.store.FileProblem;

/** The commands of the menu File that open, save and close. */
final class FileCommands {
    private final Session session;
    private final Prompts prompts;
    private final Settings settings;
    private final Desks desks;
    private final Runnable onOpen;
    private final Runnable onClose;
    private @Nullable OpenFile file;
    /** The file of which a person has been told that it was changed, and left it so. */
    private @Nullable OpenFile left;

    private boolean asking;
    private boolean closed;
    private final Executor background;
    private final Executor ui;
    /** What is being read: one after the other, so that what was asked for first is there first. */
    private CompletableFuture<Void> reading = CompletableFuture.completedFuture(null);

    /**
     * @param background reads files: a slow disk doesn't hold the window
     * @param ui takes what was read, on the event thread
     * @param onOpen told when another drawing lies on the desk
     * @param onClose told when the window may go
     */
    FileCommands(
            Session session,
            Prompts prompts,
            Settings settings,
            Desks desks,
            Executor background,
            Executor ui,
            Runnable onOpen,
            Runnable onClose) {
        this.session = session;
        this.prompts = prompts;
        this.settings = settings;
        this.desks = desks;
        this.background = background;
        this.ui = ui;
        this.onOpen = onOpen;
        this.onClose = onClose;
    }

    void addTo(Commands c) {
        c.add(CommandId.NEW, this::begin);
        c.add(CommandId.OPEN, () -> prompts.open(near()).ifPresent(this::open));
        c.add(CommandId.SAVE, this::save, () -> state().dirty() || state().file() == null);
        c.add(CommandId.SAVE_AS, this::saveAs);
        c.add(CommandId.SAVE_COPY, this::saveCopy);
        c.add(CommandId.REVERT, (Runnable) this::revert, () -> state().dirty() && file != null);
        c.add(CommandId.CLOSE, this::close);
        c.add(CommandId.QUIT, desks::quit);
    }

    /** A file in the folder in which one will look for another: this one, or that which was open last. */
    private Optional<Path> near() {
        return Optional.ofNullable(state().file())
                .or(() -> settings.recent().stream().findFirst());
    }

    private SessionState state() {
        return session.state();
    }

    /** Whether nobody has done anything here that another drawing could push aside. */
    private boolean untouched() {
        return state().file() == null && !state().dirty() && state().undo() == null;
    }

    /** Asks for what a new drawing begins with, and lays it on the desk. */
    void begin() {
        NewDrawingForm form = new NewDrawingForm(new Preferences(settings).ruleSet());
        if (prompts.form(Texts.of("editor.new.title"), form.panel())) {
            lay(form.drawing(), null);
        }
    }

    /** Reads a file and opens it: here if nothing would be pushed aside by then, else in a window of its own. */
    void open(Path path) {
        if (has(path) || desks.show(path)) {
            return;
        }
        Message told = Message.of("editor.say.reading", String.valueOf(path.getFileName()));
        session.say(told);
        reading = reading.exceptionally(e -> null)
                .thenRunAsync(
                        () -> {
                            Runnable then = read(path);
                            ui.execute(() -> {
                                if (!closed && told.equals(state().notice())) {
                                    session.say(null);
                                }
                                then.run();
                            });
                        },
                        background);
    }

    /** Claims and reads a file, on any thread; what is to be done with it on the event thread. */
    private Runnable read(Path path) {
        OpenFile claimed = OpenFile.claim(path, settings.home()).orElse(null);
        try {
            Drawing drawing = claimed == null ? DrawingFile.load(path) : claimed.load();
            return () -> opened(path, drawing, claimed);
        } catch (FileProblem e) {
            free(claimed);
            Path folder = path.toAbsolutePath().getParent();
            boolean gone =
                    Files.notExists(path) && folder != null && Files.isDirectory(folder); // and no disk that is away
            return () -> unread(path, gone, e);
        } catch (RuntimeException | Error e) {
            free(claimed);
            return () -> {
                throw e;
            };
        }
    }

    private static void free(@Nullable OpenFile claimed) {
        if (claimed != null) {
            claimed.close();
        }
    }

    private void opened(Path path, Drawing drawing, @Nullable OpenFile claimed) {
        if (closed) {
            free(claimed); // who asked for it has gone
        } else if (claimed != null) {
            settings.opened(path);
            lay(drawing, claimed);
        } else if (!has(path) && !desks.show(path) && prompts.openAsCopy(String.valueOf(path.getFileName()))) {
            lay(drawing, null);
        }
    }

    private void unread(Path path, boolean gone, FileProblem e) {
        if (gone) {
            settings.gone(path);
        }
        if (!closed) {
            problem(e);
        }
    }

    private void lay(Drawing drawing, @Nullable OpenFile claimed) {
        if (untouched()) {
            take(claimed);
            session.open(drawing, claimed == null ? null : claimed.path());
            onOpen.run();
        } else {
            desks.open(drawing, claimed);
        }
    }

    /** From now on this is the window's file; the one before is given free. */
    void take(@Nullable OpenFile claimed) {
        free(file);
        file = claimed;
    }

    /** Whether this window has that file. */
    boolean has(Path path) {
        return file != null && file.is(path);
    }

    private void problem(FileProblem e) {
        prompts.tell(Texts.of("editor.problem.title"), words(e));
    }

    static String words(FileProblem e) {
        StringBuilder s = new StringBuilder(e.file());
        if (e.line() > 0) {
            s.append('\n').append(Texts.of("editor.problem.at", e.line(), e.column()));
            s.append(e.place().isEmpty() ? "" : ": " + e.place());
        }
        s.append("\n\n").append(Texts.title(e.reason()));
        e.cure().ifPresent(c -> s.append("\n\n").append(Texts.title(c)));
        return s.toString();
    }

    /** The name under which a person knows the drawing. */
    String name() {
        Path path = state().file();
        return path == null ? state().drawing().vessel().name() : String.valueOf(path.getFileName());
    }

    /** Closes the window unless the person wants to stay; whether it is closed. */
    boolean close() {
        if (!mayLeave()) {
            return false;
        }
        take(null);
        closed = true;
        onClose.run();
        return true;
    }

    private boolean mayLeave() {
        if (file != null && file.gone()) {
            lookOutside(); // what stands nowhere any more is not saved
        }
        if (!state().dirty()) {
            return true;
        }
        return switch (prompts.unsaved(name())) {
            case SAVE -> save();
            case DISCARD -> true;
            case STAY -> false;
        };
    }

    private boolean save() {
        if (file == null) {
            return saveAs();
        }
        if (file.gone() || !file.changedOutside()) {
            return write(file);
        }
        asking = true; // the window comes to the front again when the question goes
        try {
            return switch (prompts.changedOutside(name())) {
                case OVERWRITE -> write(file);
                case SAVE_AS -> saveAs();
                case STAY -> stay(file);
            };
        } finally {
            asking = false;
        }
    }

    /** Not to be asked a second time of the same; the next save asks again. */
    private boolean stay(OpenFile of) {
        left = of;
        return false;
    }

    private boolean saveAs() {
        Optional<Path> chosen = prompts.save(suggestion(), DrawingFile.SUFFIX);
        if (chosen.isEmpty()) {
            return false;
        }
        Path path = chosen.get();
        if (file != null && file.is(path)) {
            return write(file);
        }
        Optional<OpenFile> claimed = OpenFile.claim(path, settings.home());
        if (claimed.isEmpty()) {
            prompts.tell(Texts.of("editor.problem.title"), Texts.of("editor.problem.in-use", path.toString()));
            return false;
        }
        if (!write(claimed.get())) {
            claimed.get().close();
            return false;
        }
        take(claimed.get());
        return true;
    }

    private Path suggestion() {
        return ExportCommands.suggestion(state(), name(), "", DrawingFile.SUFFIX);
    }

    private boolean write(OpenFile target) {
        left = null;
        try {
            target.save(state().drawing());
        } catch (FileProblem e) {
            problem(e);
            return false;
        }
        session.saved(target.path());
        settings.opened(target.path());
        return true;
    }

    /** A name that no file has yet: what is suggested must not be the work itself. */
    private Path copySuggestion() {
        String copy = " " + Texts.of("editor.copy");
        Path free = ExportCommands.suggestion(state(), name(), copy, DrawingFile.SUFFIX);
        for (int n = 2; Files.exists(free); n++) {
            free = ExportCommands.suggestion(state(), name(), copy + " " + n, DrawingFile.SUFFIX);
        }
        return free;
    }

    private void saveCopy() {
        prompts.save(copySuggestion(), DrawingFile.SUFFIX).ifPresent(path -> {
            if (has(path)) {
                save();
                return;
            }
            try {
                DrawingFile.save(path, state().drawing());
                session.say(Message.of("editor.say.copy-saved", String.valueOf(path.getFileName())));
            } catch (FileProblem e) {
                problem(e);
            }
        });
    }

    /** Back to what the file holds, as one step that can be undone; whether that could be read. */
    private boolean revert() {
        if (file == null) {
            return false;
        }
        try {
            Drawing inFile = file.load();
            session.apply(Edit.of(Message.of("editor.edit.revert"), before -> inFile));
            session.saved(file.path(), Message.of("editor.say.reverted", name()));
            return true;
        } catch (FileProblem e) {
            problem(e);
            return false;
        }
    }

    /** When the window comes to the front: whether somebody else has written or removed the file meanwhile. */
    @SuppressWarnings("ReferenceEquality") // the very file that is open
    void lookOutside() {
        if (asking || file == null || file == left || !file.changedOutside()) {
            return;
        }
        asking = true;
        try {
            if (file.gone()) {
                keep(file);
                prompts.tell(Texts.of("editor.gone.title"), Texts.of("editor.gone", name()));
            } else if (!prompts.readAgain(name(), state().dirty()) || !revert()) {
                keep(file);
            }
        } finally {
            asking = false;
        }
    }

    /** What is here stands in no file now, and isn't asked about a second time. */
    private void keep(OpenFile of) {
        of.see();
        session.unsaved();
        session.say(Message.of("editor.say.kept", name()));
    }
}
