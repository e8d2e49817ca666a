package orlop.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The files on which this program holds a lock. Such a file must not be opened a second time here, not even to look at it:
 * on some systems (POSIX) a program loses its lock as soon as it closes the file anywhere.
 *
 * <p>Safe to use from any thread.
 */
final class OwnLocks {
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private OwnLocks() {}

    /** @return false if it is held already */
    static boolean take(Path path) {
        return HELD.add(whole(path));
    }

    static boolean held(Path path) {
        return HELD.contains(whole(path));
    }

    static void drop(Path path) {
        HELD.remove(whole(path));
    }

    /** The same for a file that is reached by another way: over a link to its folder. */
    private static Path whole(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        Path folder = whole.getParent();
        try {
            return folder == null ? whole : folder.toRealPath().resolve(whole.getFileName());
        } catch (IOException e) {
            return whole; // there is no such folder, so nothing in it is held
        }
    }
}
