package orlop.editor;

import java.awt.Component;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;

/** Errors that nobody foresaw: they go to a log, the person is told once, and the drawing stays as it was. */
final class Unexpected implements Thread.UncaughtExceptionHandler {
    /** A painting that fails does so many times a second: when the log is so large, it is begun anew. */
    static final long MOST_BYTES = 1 << 20;

    private static final int LINES = 8;

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
        String details = details(error);
        boolean logged = log(details);
        Component window = owner.get();
        if (telling || window == null) {
            return; // one box is enough, however many errors a broken painting throws
        }
        telling = true;
        try {
            String text = logged ? "editor.unexpected" : "editor.unexpected.no-log";
            new SwingPrompts(window)
                    .tell(
                            Texts.of("editor.unexpected.title"),
                            box(Texts.of(text, String.valueOf(error), log.toString()), details));
        } finally {
            telling = false;
        }
    }

    /** What happened in words, and the details to be copied from. */
    private static JComponent box(String text, String details) {
        JPanel page = Forms.said(text, 0);
        page.getComponent(0).setFocusable(true);
        page.getComponent(0).setName("said");
        JTextArea area = new JTextArea(details, LINES, 1);
        area.setName("details");
        area.setEditable(false);
        area.setFont(Look.small());
        area.setCaretPosition(0);
        area.getAccessibleContext().setAccessibleName(Texts.of("editor.unexpected.details"));
        page.add(new JScrollPane(area));
        return Forms.fitting(page);
    }

    private static String details(Throwable error) {
        StringWriter s = new StringWriter();
        String version = Unexpected.class.getPackage().getImplementationVersion();
        s.append(Instant.now() + " · Orlop " + (version == null ? "" : version) + " · Java "
                + System.getProperty("java.version") + " · " + System.getProperty("os.name") + "\n");
        error.printStackTrace(new PrintWriter(s, true));
        return s.toString();
    }

    private boolean log(String details) {
        try {
            Path folder = log.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            boolean full = Files.exists(log) && Files.size(log) > MOST_BYTES;
            Files.writeString(
                    log,
                    details + "\n",
                    StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE,
                    full ? StandardOpenOption.TRUNCATE_EXISTING : StandardOpenOption.APPEND);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
