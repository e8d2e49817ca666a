package orlop.desk;

import java.io.IOException;
import java.io.InputStream;
import orlop.drawing.Drawing;
import orlop.store.DrawingFile;
import orlop.store.FileProblem;

/** The shipped samples, by name. */
public final class Sample {
    private Sample() {}

    /** A sample of this name, without its ending. */
    public static Drawing of(String name) {
        String file = name + ".orlop";
        try (InputStream in = Sample.class.getResourceAsStream("/sample-drawings/" + file)) {
            if (in == null) {
                throw new IllegalArgumentException("no sample " + name);
            }
            return DrawingFile.load(in.readAllBytes(), file);
        } catch (IOException | FileProblem e) {
            throw new IllegalStateException(e);
        }
    }
}
