package orlop.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Drawing;

/**
 * What one window has not saved yet, so that a crash loses nothing: the whole drawing, written over itself by an atomic
 * move, because an edit is a function and can't be written down.
 *
 * <p>A journal holds a system lock on a file beside it for as long as it is open. The system lets go of the lock however
 * the program ends, so that a journal without its lock is one that a crash has left.
 *
 * <p>Safe to use from any thread.
 */
public final class Journal implements AutoCloseable {
    static final String SUFFIX = ".orlop-journal";
    private static final String LOCK_SUFFIX = ".lock";
    private static final AtomicInteger JOURNALS = new AtomicInteger();

    private final Path path;
    private final Path lockPath;
    private final FileChannel channel;
    private final FileLock lock;

    private Journal(Path path, Path lockPath, FileChannel channel, FileLock lock) {
        this.path = path;
        this.lockPath = lockPath;
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Begins a journal; nothing is written before the first drawing is.
     *
     * @param folder where journals lie; made where it is missing
     * @throws FileProblem if nothing can be written there
     */
    public static Journal begin(Path folder) throws FileProblem {
        try {
            Files.createDirectories(folder);
            while (true) {
                Path path = folder.resolve(name());
                Path lockPath = lockOf(path);
                if (!Files.exists(path) && !Files.exists(lockPath)) {
                    return begin(path, lockPath);
                }
            }
        } catch (IOException e) {
            throw FileProblem.whole(folder.toString(), "store.no-journal", folder.toString());
        }
    }

    private static Journal begin(Path path, Path lockPath) throws IOException {
        OwnLocks.take(lockPath);
        try {
            FileChannel channel = FileChannel.open(lockPath, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            return new Journal(path, lockPath, channel, channel.lock());
        } catch (IOException e) {
            OwnLocks.drop(lockPath);
            throw e;
        }
    }

    /** Makes ready what the first writing needs, so that it isn't late. Any thread; not needed. */
    public static void warmUp() {
        JournalText.of(Drawing.empty(""), null);
    }

    private static String name() {
        long process = ProcessHandle.current().pid();
        return String.format(Locale.ROOT, "%08x-%04x%s", process, JOURNALS.incrementAndGet(), SUFFIX);
    }

    private static Path lockOf(Path journal) {
        return journal.resolveSibling(journal.getFileName() + LOCK_SUFFIX);
    }

    /**
     * Writes the drawing down; what the journal held before is gone.
     *
     * @param file where the drawing is kept, null if nowhere yet
     * @throws FileProblem if it can't be written; what the journal held before is still there
     */
    public synchronized void write(Drawing drawing, @Nullable Path file) throws FileProblem {
        if (channel.isOpen()) {
            AtomicFile.write(path, JournalText.of(drawing, file));
        }
    }

    /** Nothing is unsaved now. */
    public synchronized void clear() {
        delete(path);
    }

    /** Nothing is unsaved, and nothing more will be written. */
    @Override
    public synchronized void close() {
        delete(path);
        try {
            if (channel.isOpen()) {
                lock.release();
                channel.close();
            }
        } catch (IOException e) {
            // the system lets go of it when the program ends
        }
        delete(lockPath);
        OwnLocks.drop(lockPath);
    }

    private static void delete(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // found again at the next start, and asked about: nothing is lost
        }
    }

    /**
     * The journals that no program holds any more, the newest first. Locks without a journal are swept away.
     *
     * @param folder where journals lie; it need not exist
     */
    public static List<LeftJournal> left(Path folder) {
        List<LeftJournal> left = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return left;
        }
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*" + SUFFIX + "*")) {
            for (Path p : all) {
                String name = p.getFileName().toString();
                if (name.endsWith(SUFFIX) && !held(lockOf(p))) {
                    left.add(new LeftJournal(
                            p, lockOf(p), Files.getLastModifiedTime(p).toInstant()));
                } else if (name.endsWith(LOCK_SUFFIX) && !Files.exists(journalOf(p)) && !held(p)) {
                    delete(p);
                }
            }
        } catch (IOException | java.nio.file.DirectoryIteratorException e) {
            return left; // what could be listed is offered; the rest stays where it is
        }
        left.sort(Comparator.comparing(LeftJournal::written).reversed());
        return left;
    }

    private static Path journalOf(Path lock) {
        String name = lock.getFileName().toString();
        return lock.resolveSibling(name.substring(0, name.length() - LOCK_SUFFIX.length()));
    }

    private static boolean held(Path lockPath) {
        if (OwnLocks.held(lockPath)) {
            return true; // by another window of this very program
        }
        if (!Files.exists(lockPath)) {
            return false;
        }
        try (FileChannel c = FileChannel.open(lockPath, StandardOpenOption.WRITE)) {
            FileLock l = c.tryLock();
            if (l == null) {
                return true;
            }
            l.release();
            return false;
        } catch (OverlappingFileLockException e) {
            return true; // taken by this very program just now
        } catch (IOException e) {
            return false;
        }
    }
}
