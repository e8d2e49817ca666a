package orlop.editor;

import java.awt.Component;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Errors that nobody foresaw: they go to a log, the person is told once, and the drawing stays as it was. */
final class Unexpected implements Thread.UncaughtExceptionHandler {
    private final Path log;
    private final Supplier<@Nullable Component> owner;
    private final Runnable first;
    private boolean telling;

    /** @param first done before anything is told: what is not saved is written down */
    Unexpected(Path log, Supplier<@Nullable Component> owner, Runnable first) {
        this.log = log;
        this.owner = owner;
        this.first = first;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable error) {
        EventThread ui = new EventThread();
        if (ui.isCurrent()) {
            tell(error);
        } else {
            ui.execute(() -> tell(error));
        }
    }

    /** On the event thread. */
    void tell(Throwable error) {
        first.run();
        boolean logged = log(error);
        Component window = owner.get();
        if (telling || window == null) {
            return; // one box is enough, however many errors a broken painting throws
        }
        telling = true;
        try {
            new SwingPrompts(window)
                    .tell(
                            Texts.of("editor.unexpected.title"),
                            Texts.of(
                                    logged ? "editor.unexpected" : "editor.unexpected.no-log",
                                    String.valueOf(error),
                                    log.toString()));
        } finally {
            telling = false;
        }
    }

    private boolean log(Throwable error) {
        StringWriter s = new StringWriter();
        error.printStackTrace(new PrintWriter(s, true));
        try {
            Path folder = log.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Files.writeString(log, s + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
