package orlop.editor;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import orlop.desk.OpenFile;
import orlop.desk.Review;
import orlop.drawing.Drawing;

/** The way into the editor. A live display is needed: whoever calls has made sure of it. */
public final class EditorApp {
    private final Settings settings = Settings.ofUser();
    private final Readying readying = new Readying();

    private EditorApp() {}

    /**
     * Begins, on other threads, with what a window needs whatever drawing it will show, so that the drawing can be read
     * meanwhile. Any thread.
     */
    public static EditorApp prepare() {
        EditorApp app = new EditorApp();
        new Preferences(app.settings).scaleFromTheStart();
        app.readying.parts();
        SwingUtilities.invokeLater(() -> new Preferences(app.settings).install());
        return app;
    }

    /**
     * Opens a window on a drawing, and offers what an earlier crash has left. Returns when the window is there; the
     * program lives on until the last window is closed. Any thread but the event thread; once.
     *
     * @param file where the drawing is kept; null for a new one or a sample
     */
    public void open(Drawing drawing, @Nullable Path file) {
        Review.Maker maker = readying.review(drawing);
        Runnable opening = () -> {
            boolean first = settings.fresh() && file == null;
            Windows windows = new Windows(settings, maker);
            MainWindow opened = window(windows, drawing, file, settings);
            opened.show();
            Rehearsal.begin(drawing);
            SwingUtilities.invokeLater(() -> {
                SwingPrompts prompts = new SwingPrompts(opened.frame());
                new Preferences(settings).tellOfSymbolsAtStart(prompts, opened::tell);
                new Recovering(windows, settings, prompts).offer();
                if (first) {
                    settings.rememberFlag("begun", true);
                    new FirstStart(prompts, opened.bench().files()).offer();
                }
            });
        };
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
        new Preferences(settings).install();
        return window(new Windows(settings, Review::of), drawing, file, settings);
    }

    private static MainWindow window(Windows windows, Drawing drawing, @Nullable Path named, Settings settings) {
        if (named == null) {
            return windows.window(drawing, null, true);
        }
        Path file = named.toAbsolutePath(); // so that what is told, and what is written beside it, has its folder
        settings.opened(file);
        OpenFile claimed = OpenFile.claim(file, settings.home()).orElse(null);
        if (claimed == null) {
            // another program has it: what is drawn here goes into another file
            MainWindow copy = windows.window(drawing, null, false);
            copy.tellThatItIsACopy(file);
            return copy;
        }
        return windows.window(drawing, claimed, true);
    }
}
