package orlop.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;
import orlop.drawing.Message;
import orlop.drawing.Words;
import orlop.editor.EditorApp;
import orlop.store.DrawingFile;

/** Opens the editor, or does what can be done without a display. */
final class Start {
    /** What no reader of options and no file system takes for something else than the name of a drawing. */
    private static final Pattern PLAIN_NAME =
            Pattern.compile("[\\p{L}\\p{N}_./][\\p{L}\\p{N} _./-]*" + Pattern.quote(DrawingFile.SUFFIX));

    private final Supplier<Display.State> display;
    private final PrintWriter out;

    Start(Supplier<Display.State> display, PrintWriter out) {
        this.display = display;
        this.out = out;
    }

    /**
     * Whether nothing was typed, or no more than the name of a drawing: then there is no need to read options, which takes
     * the tenth part of a start.
     */
    static boolean isPlain(String[] args) {
        return args.length == 0
                || (args.length == 1 && PLAIN_NAME.matcher(args[0]).matches());
    }

    /** @param file null for the main sample */
    void open(@Nullable Path file) throws UserError {
        switch (display.get()) {
            case NONE -> say(Message.of("cli.no-display"));
            case DEAD -> say(Message.of("cli.dead-display", String.valueOf(System.getenv("DISPLAY"))));
            case LIVE -> {
                EditorApp editor = EditorApp.prepare();
                Drawing drawing = file == null ? Opened.mainSampleDrawing() : Opened.load(file);
                editor.open(drawing, file);
                return;
            }
        }
        System.setProperty("java.awt.headless", "true"); // before the first AWT class: a dead display poisons it
        new HeadlessJob(out).run(file);
    }

    private void say(Message line) {
        out.println(Words.english().text(line));
    }
}
