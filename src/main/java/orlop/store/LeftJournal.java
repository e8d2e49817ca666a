package orlop.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;

/**
 * A journal that its program has not closed: a crash, a kill, a power cut.
 *
 * @param written when it was last written
 */
public record LeftJournal(Path path, Path lock, Instant written) {
    /**
     * What a journal holds.
     *
     * @param file where the drawing is kept, null if it never was
     */
    public record Content(Drawing drawing, @Nullable Path file) {}

    /**
     * Reads it; it stays until it is {@linkplain #discard() thrown away}.
     *
     * @throws FileProblem if it holds no sound drawing
     */
    public Content read() throws FileProblem {
        try {
            return JournalText.read(Files.readAllBytes(path), path.toString());
        } catch (IOException e) {
            throw FileProblem.whole(path.toString(), "store.unreadable");
        }
    }

    /** Throws it away: it was recovered and written down again, or isn't wanted. */
    public void discard() {
        try {
            Files.deleteIfExists(path);
            Files.deleteIfExists(lock);
        } catch (IOException e) {
            // it is offered again at the next start
        }
    }
}
