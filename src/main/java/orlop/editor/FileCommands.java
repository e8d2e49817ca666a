package orlop.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.desk.Session;
import orlop.desk.SessionState;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.render.PngExport;
import orlop.render.SvgExport;
import orlop.scene.Palette;
import orlop.store.DrawingFile;
import orlop.store.FileProblem;

/** The commands of the menu File. */
final class FileCommands {
    private static final double PNG_DPI = 200;

    private final Session session;
    private final ShownScene shown;
    private final Prompts prompts;
    private final Settings settings;
    private final Runnable onOpen;
    private final Runnable onQuit;

    /**
     * @param onOpen told when another drawing lies on the desk
     * @param onQuit told when the window may go
     */
    FileCommands(
            Session session, ShownScene shown, Prompts prompts, Settings settings, Runnable onOpen, Runnable onQuit) {
        this.session = session;
        this.shown = shown;
        this.prompts = prompts;
        this.settings = settings;
        this.onOpen = onOpen;
        this.onQuit = onQuit;
    }

    void addTo(Commands c) {
        c.add(CommandId.NEW, this::begin);
        c.add(CommandId.OPEN, () -> {
            if (mayLeave()) {
                prompts.open().ifPresent(this::load);
            }
        });
        c.add(CommandId.SAVE, this::save, () -> state().dirty() || state().file() == null);
        c.add(CommandId.SAVE_AS, this::saveAs);
        c.add(CommandId.EXPORT_SVG, () -> export(".svg"), this::hasSheet);
        c.add(CommandId.EXPORT_PNG, () -> export(".png"), this::hasSheet);
        c.add(CommandId.QUIT, this::quit);
    }

    private SessionState state() {
        return session.state();
    }

    private boolean hasSheet() {
        return state().shownSheet().isPresent();
    }

    private void begin() {
        if (mayLeave()) {
            NewDrawingForm form = new NewDrawingForm();
            if (prompts.form(Texts.of("editor.new.title"), form.panel())) {
                session.open(form.drawing(), null);
                onOpen.run();
            }
        }
    }

    /** Opens a file that was open before. */
    void openRecent(Path file) {
        if (mayLeave()) {
            load(file);
        }
    }

    private void load(Path file) {
        try {
            Drawing d = DrawingFile.load(file);
            session.open(d, file);
            settings.opened(file);
            onOpen.run();
        } catch (FileProblem e) {
            problem(e);
        }
    }

    private void problem(FileProblem e) {
        StringBuilder s = new StringBuilder(e.file());
        if (e.line() > 0) {
            s.append('\n').append(Texts.of("editor.problem.at", e.line(), e.column(), e.place()));
        }
        s.append("\n\n").append(Texts.title(e.reason()));
        e.cure().ifPresent(c -> s.append("\n\n").append(Texts.title(c)));
        prompts.tell(Texts.of("editor.problem.title"), s.toString());
    }

    /** The name under which a person knows the drawing. */
    String name() {
        Path file = state().file();
        return file == null ? state().drawing().vessel().name() : String.valueOf(file.getFileName());
    }

    /** Whether the drawing may be left: it is saved, or needn't be. */
    private boolean mayLeave() {
        if (!state().dirty()) {
            return true;
        }
        return switch (prompts.unsaved(name())) {
            case SAVE -> save();
            case DISCARD -> true;
            case STAY -> false;
        };
    }

    void quit() {
        if (mayLeave()) {
            onQuit.run();
        }
    }

    private boolean save() {
        Path file = state().file();
        return file == null ? saveAs() : write(file);
    }

    private boolean saveAs() {
        Optional<Path> file = prompts.save(suggestion(DrawingFile.SUFFIX), DrawingFile.SUFFIX);
        return file.isPresent() && write(file.get());
    }

    private Path suggestion(String suffix) {
        Path file = state().file();
        String stem = name().replaceAll("\\.orlop$", "").strip();
        String sheet = suffix.equals(DrawingFile.SUFFIX)
                ? ""
                : state().shownSheet().map(s -> "-" + s.number()).orElse("");
        String name = (stem.isEmpty() ? "drawing" : stem).replaceAll("[\\\\/:*?\"<>|]", "-") + sheet + suffix;
        return file == null ? Path.of(name) : file.resolveSibling(name);
    }

    private boolean write(Path file) {
        try {
            DrawingFile.save(file, state().drawing());
        } catch (FileProblem e) {
            problem(e);
            return false;
        }
        session.saved(file);
        settings.opened(file);
        return true;
    }

    private void export(String suffix) {
        prompts.save(suggestion(suffix), suffix).ifPresent(file -> export(file, suffix));
    }

    private void export(Path file, String suffix) {
        if (!state().fresh()) {
            session.say(Message.of("editor.say.not-yet"));
            return;
        }
        byte[] bytes = suffix.equals(".svg")
                ? SvgExport.write(shown.onPaper(state()), Palette.LIGHT)
                : PngExport.write(shown.onPaper(state()), Palette.LIGHT, PNG_DPI);
        @Nullable String failure = written(file, bytes);
        if (failure == null) {
            session.say(Message.of("editor.say.exported", String.valueOf(file.getFileName())));
        } else {
            prompts.tell(Texts.of("editor.problem.title"), failure);
        }
    }

    private static @Nullable String written(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
            return null;
        } catch (IOException e) {
            return Texts.of("editor.problem.write", file.toString());
        }
    }
}
