package orlop.editor;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import orlop.desk.Review;
import orlop.desk.Session;
import orlop.drawing.Drawing;

/** The way into the editor. A live display is needed: whoever calls has made sure of it. */
public final class EditorApp {
    private EditorApp() {}

    /**
     * Opens a window on a drawing. Returns when the window is there; the program lives on until it is closed. Any thread.
     *
     * @param file where the drawing is kept; null for a new one or a sample
     */
    public static void open(Drawing drawing, @Nullable Path file) {
        Runnable opening = () -> window(drawing, file, Settings.ofUser()).show();
        if (SwingUtilities.isEventDispatchThread()) {
            opening.run();
            return;
        }
        try {
            SwingUtilities.invokeAndWait(opening);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the window could not be opened", e.getCause());
        }
    }

    /** A window, not shown yet. On the event thread. */
    static MainWindow window(Drawing drawing, @Nullable Path file, Settings settings) {
        return window(drawing, file, settings, Review::of);
    }

    static MainWindow window(Drawing drawing, @Nullable Path file, Settings settings, Review.Maker maker) {
        Look.install(settings.dark());
        ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
            Thread t = new Thread(task, "orlop-study");
            t.setDaemon(true);
            return t;
        });
        MainWindow[] made = new MainWindow[1];
        Unexpected unexpected =
                new Unexpected(Settings.folder().resolve("error.log"), () -> made[0] == null ? null : made[0].frame());
        Thread.currentThread().setUncaughtExceptionHandler(unexpected);
        Session session = new Session(drawing, file, maker, worker, new EventThread(), unexpected::tell);
        if (file != null) {
            settings.opened(file);
        }
        made[0] = new MainWindow(session, settings, worker::shutdown);
        return made[0];
    }
}
