package orlop.editor;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import org.jspecify.annotations.Nullable;
import orlop.desk.OpenFile;
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
        try {
            LeftJournal.Content content = left.read();
            switch (prompts.recover(name(content), when(left))) {
                case RESTORE -> restore(left, content);
                case DISCARD -> left.discard();
                case LATER -> {}
            }
        } catch (FileProblem e) {
            prompts.tell(
                    Texts.of("editor.ask.recover.title"), Texts.of("editor.recover.unreadable", FileCommands.words(e)));
        }
    }

    private static String name(LeftJournal.Content content) {
        Path file = content.file();
        return file == null ? content.drawing().vessel().name() : String.valueOf(file.getFileName());
    }

    private static String when(LeftJournal left) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .format(left.written().atZone(ZoneId.systemDefault()));
    }

    /** Where the file is open already, there; else in a window of its own. That window's own journal holds the drawing before the old one goes. */
    private void restore(LeftJournal left, LeftJournal.Content content) {
        if (content.file() != null && windows.recovered(content.file(), content.drawing())) {
            left.discard();
            return;
        }
        @Nullable
        OpenFile file = content.file() == null || windows.show(content.file())
                ? null
                : OpenFile.claim(content.file(), settings.home()).orElse(null);
        windows.window(content.drawing(), file, false).show();
        left.discard();
    }
}
