package orlop.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import orlop.drawing.Drawing;
import orlop.store.DrawingFile;
import orlop.store.FileClaim;
import orlop.store.FileProblem;
import orlop.store.Fingerprint;

/** A drawing's file as one window has it: claimed against other windows, and with what it held when last seen. */
public final class OpenFile implements AutoCloseable {
    private final Path path;
    private final FileClaim claim;
    private Fingerprint seen;

    private OpenFile(Path path, FileClaim claim) {
        this.path = path;
        this.claim = claim;
        this.seen = Fingerprint.of(path);
    }

    /**
     * Claims a file; empty if another window has it.
     *
     * @param userFolder where the claim lies if it can't lie beside the file
     */
    public static Optional<OpenFile> claim(Path file, Path userFolder) {
        return FileClaim.of(file, userFolder).map(c -> new OpenFile(file, c));
    }

    /** The file as it was named. */
    public Path path() {
        return path;
    }

    /** Whether that is the same file, by whatever name. */
    public boolean is(Path other) {
        try {
            return path.equals(other) || Files.isSameFile(path, other);
        } catch (IOException e) {
            return path.toAbsolutePath()
                    .normalize()
                    .equals(other.toAbsolutePath().normalize());
        }
    }

    /** Whether somebody else has written or removed it since it was last seen here. */
    public boolean changedOutside() {
        return !Fingerprint.of(path).equals(seen);
    }

    /** Whether nothing is there any longer: it was removed, has another name now, or its disk is away. */
    public boolean gone() {
        return Files.notExists(path);
    }

    /** Takes the file as it is now for seen. */
    public void see() {
        seen = Fingerprint.of(path);
    }

    /**
     * Reads it.
     *
     * @throws FileProblem as {@link DrawingFile#load(Path)}
     */
    public Drawing load() throws FileProblem {
        Fingerprint before = Fingerprint.of(path);
        Drawing drawing = DrawingFile.load(path);
        seen = before; // if it was written in between, that is seen as a change, not missed
        return drawing;
    }

    /**
     * Writes it.
     *
     * @throws FileProblem as {@link DrawingFile#save}
     */
    public void save(Drawing drawing) throws FileProblem {
        DrawingFile.save(path, drawing);
        seen = Fingerprint.of(DrawingFile.write(drawing));
    }

    /** Gives the file free. */
    @Override
    public void close() {
        claim.close();
    }
}
