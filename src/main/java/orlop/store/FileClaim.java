package orlop.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * The claim of one window on one drawing's file, so that two windows never write it in turn. It is a system lock on a
 * small file beside the drawing, or in the user's folder where nothing can be written beside it. The system lets go of
 * it however the program ends: one left by a crash holds nothing.
 *
 * <p>Safe to use from any thread.
 */
public final class FileClaim implements AutoCloseable {
    private static final String SUFFIX = ".claim";

    private static final AtomicInteger CLAIMS = new AtomicInteger();
    private static final long BEHIND_THE_TEXT = Long.MAX_VALUE - 1; // some systems let nobody read what is locked
    private static final int TRIES = 20;

    private final Path path;
    private final @Nullable FileChannel channel;

    private FileClaim(Path path, @Nullable FileChannel channel) {
        this.path = path;
        this.channel = channel;
    }

    /**
     * Claims a file.
     *
     * @param userFolder where the claim lies if it can't lie beside the file
     * @return empty if another window has it. Where no lock can be had at all, as on some network disks, the claim is
     *     given and holds nothing: that two write is still seen by the file's {@link Fingerprint}.
     */
    public static Optional<FileClaim> of(Path file, Path userFolder) {
        Path whole = whole(file);
        Path beside = whole.resolveSibling("." + whole.getFileName() + SUFFIX);
        try {
            return claim(beside);
        } catch (IOException e) {
            return inUserFolder(whole, userFolder);
        }
    }

    private static Optional<FileClaim> inUserFolder(Path whole, Path userFolder) {
        String digest = Fingerprint.of(whole.toString().getBytes(UTF_8)).digest();
        Path claim = userFolder.resolve(digest.substring(0, 32) + SUFFIX);
        try {
            Files.createDirectories(userFolder);
            return claim(claim);
        } catch (IOException e) {
            return Optional.of(new FileClaim(claim, null));
        }
    }

    private static Path whole(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize();
        }
    }

    private static Optional<FileClaim> claim(Path path) throws IOException {
        if (!OwnLocks.take(path)) {
            return Optional.empty(); // another window of this very program
        }
        Optional<FileClaim> claim = Optional.empty();
        try {
            claim = locked(path);
            return claim;
        } finally {
            if (claim.isEmpty()) {
                OwnLocks.drop(path);
            }
        }
    }

    private static Optional<FileClaim> locked(Path path) throws IOException {
        String mark = "Orlop, process " + ProcessHandle.current().pid() + ", claim " + CLAIMS.incrementAndGet() + "\n";
        for (int i = 0; i < TRIES; i++) {
            Object before = key(path);
            FileChannel c = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!lock(c)) {
                c.close();
                return Optional.empty();
            }
            c.truncate(0);
            c.write(ByteBuffer.wrap(mark.getBytes(UTF_8)));
            if (same(path, before, mark)) {
                return Optional.of(new FileClaim(path, c));
            }
            c.close(); // its former owner has just removed the file that was locked here, or it was made just now
        }
        throw new IOException("the claim is taken away again and again");
    }

    /**
     * Whether the file that was locked is still the one that lies there. It is told by its key in the file system, and not
     * by a look into it, which would cost the lock; where files have no key, a look costs nothing.
     */
    private static boolean same(Path path, @Nullable Object before, String mark) throws IOException {
        if (!Files.exists(path)) {
            return false;
        }
        Object now = key(path);
        return now == null ? Files.readString(path).equals(mark) : now.equals(before);
    }

    /** What a file system knows a file by; null if nothing is there, or where there are no such keys. */
    private static @Nullable Object key(Path path) {
        try {
            return Files.readAttributes(path, BasicFileAttributes.class).fileKey();
        } catch (IOException e) {
            return null;
        }
    }

    private static boolean lock(FileChannel c) throws IOException {
        try {
            return c.tryLock(BEHIND_THE_TEXT, 1, false) != null;
        } catch (OverlappingFileLockException e) {
            return false; // taken by this very program, by another name
        } catch (IOException e) {
            c.close();
            throw e;
        }
    }

    /** Gives the file free. */
    @Override
    public void close() {
        if (channel == null || !channel.isOpen()) {
            return;
        }
        try {
            Files.deleteIfExists(path); // while it is still locked: whoever comes next makes a new one
            channel.close();
        } catch (IOException e) {
            // a claim that is left over holds nothing
        }
        OwnLocks.drop(path);
    }
}
