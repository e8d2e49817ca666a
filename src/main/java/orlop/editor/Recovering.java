package orlop.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.desk.OpenFile;
import orlop.store.DrawingFile;
import orlop.store.FileProblem;
import orlop.store.Journal;
import orlop.store.LeftJournal;

/** Offers what crashes have left unsaved, one drawing after the other. On the event thread. */
final class Recovering {
    private final Windows windows;
    private final Settings settings;
    private final Prompts prompts;

    Recovering(Windows windows, Settings settings, Prompts prompts) {
        this.windows = windows;
        this.settings = settings;
        this.prompts = prompts;
    }

    void offer() {
        settings.journals().map(Journal::left).ifPresent(left -> left.forEach(this::offer));
    }

    private void offer(LeftJournal left) {
        LeftJournal.Content content;
        try {
            content = left.read();
        } catch (FileProblem e) {
            unreadable(left, e);
            return;
        }
        if (stands(content)) {
            left.discard(); // it was saved, and the program ended before it could tidy up
            return;
        }
        Optional<Instant> since = writtenSince(left, content);
        String later =
                since.map(t -> Texts.of("editor.ask.recover.newer", words(t))).orElse("");
        switch (prompts.recover(name(content), words(left.written()), later)) {
            case RESTORE -> restore(left, content, since.isPresent());
            case DISCARD -> left.discard();
            case LATER -> {}
        }
    }

    private void unreadable(LeftJournal left, FileProblem e) {
        int answer = prompts.choose(
                Texts.of("editor.ask.recover.title"),
                Texts.of("editor.recover.unreadable", FileCommands.words(e)),
                Texts.of("editor.recover.unreadable.leave"),
                Texts.of("editor.ask.recover.no"));
        if (answer == 1) {
            left.discard();
        }
    }

    /** Whether its file holds that very drawing. */
    private static boolean stands(LeftJournal.Content content) {
        try {
            Path file = content.file();
            return file != null && Files.exists(file) && DrawingFile.load(file).equals(content.drawing());
        } catch (FileProblem e) {
            return false; // what cannot be read holds nothing
        }
    }

    /** When its file was written after what was left of it; empty if it wasn't. */
    private static Optional<Instant> writtenSince(LeftJournal left, LeftJournal.Content content) {
        try {
            Path file = content.file();
            return file == null
                    ? Optional.empty()
                    : Optional.of(Files.getLastModifiedTime(file).toInstant()).filter(t -> t.isAfter(left.written()));
        } catch (IOException e) {
            return Optional.empty(); // it is gone
        }
    }

    private static String name(LeftJournal.Content content) {
        Path file = content.file();
        return file == null ? content.drawing().vessel().name() : String.valueOf(file.getFileName());
    }

    private static String words(Instant when) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .format(when.atZone(ZoneId.systemDefault()));
    }

    /**
     * Where the file is open already, there; else in a window of its own. That window's own journal holds the drawing
     * before the old one goes. What is older than its file doesn't get the file: saving would write over what is newer.
     */
    private void restore(LeftJournal left, LeftJournal.Content content, boolean older) {
        Path of = content.file();
        if (of != null && windows.recovered(of, content.drawing())) {
            left.discard();
            return;
        }
        @Nullable
        OpenFile file = of == null || older || windows.show(of)
                ? null
                : OpenFile.claim(of, settings.home()).orElse(null);
        windows.window(content.drawing(), file, false).show();
        left.discard();
    }
}
