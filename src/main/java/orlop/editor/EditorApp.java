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
    private EditorApp() {}

    /**
     * Opens a window on a drawing, and offers what an earlier crash has left. Returns when the window is there; the
     * program lives on until the last window is closed. Any thread.
     *
     * @param file where the drawing is kept; null for a new one or a sample
     */
    public static void open(Drawing drawing, @Nullable Path file) {
        Runnable opening = () -> {
            Settings settings = Settings.ofUser();
            boolean first = settings.fresh() && file == null;
            Windows windows = new Windows(settings, Review::of);
            MainWindow opened = window(windows, drawing, file, settings);
            opened.show();
            SwingUtilities.invokeLater(() -> {
                SwingPrompts prompts = new SwingPrompts(opened.frame());
                Preferences.tellOfSymbols(prompts);
                new Recovering(windows, settings, prompts).offer();
                if (first) {
                    settings.rememberFlag("begun", true);
                    new FirstStart(prompts, opened.bench().files()).offer();
                }
            });
        };
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
        return window(new Windows(settings, Review::of), drawing, file, settings);
    }

    static MainWindow window(Windows windows, Drawing drawing, @Nullable Path file, Settings settings) {
        new Preferences(settings).install();
        if (file == null) {
            return windows.window(drawing, null, true);
        }
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
