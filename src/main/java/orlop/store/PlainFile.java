package orlop.store;

import java.nio.file.Path;

/** Writes any file as carefully as a drawing: whatever fails, what stood there before is still there, whole. */
public final class PlainFile {
    private PlainFile() {}

    /**
     * Puts these bytes into a file, in the place of what it held.
     *
     * @throws FileProblem if the folder is missing or may not be written, the disk is full …; the file is as it was
     */
    public static void write(Path file, byte[] bytes) throws FileProblem {
        AtomicFile.write(file, bytes);
    }
}
