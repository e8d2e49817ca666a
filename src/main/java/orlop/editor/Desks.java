package orlop.editor;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import orlop.desk.OpenFile;
import orlop.drawing.Drawing;

/** The other windows of the program, as one window sees them. */
interface Desks {
    /** Brings the window with this file to the front; whether there is one. */
    boolean show(Path file);

    /**
     * Opens another window.
     *
     * @param file claimed already, null if the drawing is kept nowhere yet
     */
    void open(Drawing drawing, @Nullable OpenFile file);

    /** Closes every window, each asking about what is not saved; stops at the first that stays. */
    void quit();
}
