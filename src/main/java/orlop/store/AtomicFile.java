package orlop.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Writes a file so that a crash at any moment leaves the old or the new one, whole: a temporary file in the same
 * folder, forced to the disk, then moved over the old one in one step.
 */
final class AtomicFile {
    static final String TEMP_MARK = ".orlop-";
    static final String TEMP_END = ".tmp";

    private static final Duration STALE = Duration.ofHours(1);
    private static final int MAX_LINKS = 40;
    private static final AtomicInteger SAVES = new AtomicInteger();

    /** The steps that can fail; a test makes them fail. */
    interface Steps {
        default void write(FileChannel channel, ByteBuffer bytes) throws IOException {
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
        }

        default void force(FileChannel channel) throws IOException {
            channel.force(true);
        }

        default void move(Path temp, Path target) throws IOException {
            Files.move(temp, target, StandardCopyOption.ATOMIC_MOVE);
        }

        /**
         * The room that is left on the disk of a folder, asked only after a step has failed. Where nothing is kept, as in
         * {@code /proc}, no room is counted at all, and so it can't be used up.
         */
        default long freeBytes(Path folder) throws IOException {
            FileStore disk = Files.getFileStore(folder);
            return disk.getTotalSpace() == 0 ? Long.MAX_VALUE : disk.getUsableSpace();
        }

        /** Whether the disk of a folder can only be read. */
        default boolean readOnly(Path folder) throws IOException {
            return Files.getFileStore(folder).isReadOnly();
        }
    }

    private AtomicFile() {}

    static void write(Path file, byte[] bytes) throws FileProblem {
        write(file, bytes, new Steps() {});
    }

    static void write(Path file, byte[] bytes, Steps steps) throws FileProblem {
        String name = file.toString();
        try {
            Path target = target(file.toAbsolutePath());
            if (Files.isDirectory(target)) {
                throw FileProblem.whole(name, "store.directory");
            }
            Path folder = target.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw FileProblem.whole(name, "store.no-folder");
            }
            if (steps.readOnly(folder)) {
                throw FileProblem.whole(name, "store.read-only-disk");
            }
            if (Files.exists(target) && !Files.isWritable(target)) {
                throw FileProblem.whole(name, "store.read-only");
            }
            replace(folder, target, bytes, steps);
            sweep(folder, target);
        } catch (AccessDeniedException e) {
            throw FileProblem.whole(name, "store.read-only-folder");
        } catch (IOException e) {
            throw failed(file, bytes.length, steps, e);
        }
    }

    private static FileProblem failed(Path file, long bytes, Steps steps, IOException e) {
        String name = file.toString();
        if (full(file, bytes, steps)) {
            return FileProblem.whole(name, "store.disk-full");
        }
        return e instanceof NoSuchFileException // the folder is there, and yet no file can be made in it
                ? FileProblem.whole(name, "store.no-files-here")
                : FileProblem.whole(name, "store.save-failed", cause(e));
    }

    /** What the system says, without the name of the temporary file. */
    private static String cause(IOException e) {
        String said = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
        return said == null || said.isBlank() ? e.getClass().getSimpleName() : said;
    }

    /** Where a chain of symbolic links ends, whether or not a file is there. */
    private static Path target(Path file) throws IOException {
        Path at = file;
        for (int i = 0; Files.isSymbolicLink(at); i++) {
            if (i == MAX_LINKS) {
                throw new IOException("symbolic links lead in a circle");
            }
            at = at.resolveSibling(Files.readSymbolicLink(at)).normalize();
        }
        return at;
    }

    private static void replace(Path folder, Path target, byte[] bytes, Steps steps) throws IOException {
        Set<PosixFilePermission> mode = mode(target);
        Path temp = temp(folder, target);
        boolean moved = false;
        try {
            // no createTempFile: it would leave a new file readable by its owner alone, whatever the umask
            try (FileChannel channel =
                    FileChannel.open(temp, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                if (mode != null) {
                    Files.setPosixFilePermissions(temp, mode);
                }
                steps.write(channel, ByteBuffer.wrap(bytes));
                steps.force(channel);
            }
            steps.move(temp, target);
            moved = true;
        } finally {
            if (!moved) {
                Files.deleteIfExists(temp);
            }
        }
        forceFolder(folder);
    }

    private static @Nullable Set<PosixFilePermission> mode(Path target) throws IOException {
        boolean posix = Files.getFileStore(posixProbe(target)).supportsFileAttributeView("posix");
        return posix && Files.exists(target) ? EnumSet.copyOf(Files.getPosixFilePermissions(target)) : null;
    }

    private static Path posixProbe(Path target) {
        Path folder = target.getParent();
        return folder == null ? target : folder;
    }

    /** A name that no other save has: this process and its how-many-eth; one left by a crash is passed over. */
    private static Path temp(Path folder, Path target) {
        long process = ProcessHandle.current().pid() & 0xffff_ffffL;
        while (true) {
            String serial = String.format(Locale.ROOT, "%08x%08x", process, SAVES.incrementAndGet());
            Path temp = folder.resolve("." + target.getFileName() + TEMP_MARK + serial + TEMP_END);
            if (!Files.exists(temp, LinkOption.NOFOLLOW_LINKS)) {
                return temp;
            }
        }
    }

    /**
     * Removes temporary files that a crash has left: ours by their name, and older than any save takes. Their age is
     * counted from the file just written: the disk's own clock, which on a network may differ from this machine's.
     */
    private static void sweep(Path folder, Path justWritten) {
        try (DirectoryStream<Path> temps = Files.newDirectoryStream(folder, AtomicFile::isTemp)) {
            FileTime limit = FileTime.from(
                    Files.getLastModifiedTime(justWritten).toInstant().minus(STALE));
            for (Path temp : temps) {
                if (Files.getLastModifiedTime(temp, LinkOption.NOFOLLOW_LINKS).compareTo(limit) < 0) {
                    Files.deleteIfExists(temp);
                }
            }
        } catch (IOException | java.nio.file.DirectoryIteratorException e) {
            // what is left over takes space and nothing else; the save itself will tell what is wrong
        }
    }

    private static boolean isTemp(Path path) {
        return path.getFileName().toString().matches("\\..+\\.orlop-[0-9a-f]{16}\\.tmp")
                && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
    }

    /** Makes the move itself last; not every system lets a folder be opened, and then it does so by itself. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // the file is whole either way
        }
    }

    private static boolean full(Path file, long bytes, Steps steps) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            return folder != null && steps.freeBytes(folder) < bytes;
        } catch (IOException e) {
            return false;
        }
    }
}
