package orlop.network;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Tags of the components and cables from a source to a pin, read off the network when first looked at: all paths
 * together would grow with the square of the size of a long chain. Read-only; safe for several threads.
 */
public final class FeedingPath extends AbstractList<String> {
    private final Supplier<List<String>> reading;
    private volatile @Nullable List<String> tags;

    FeedingPath(Supplier<List<String>> reading) {
        this.reading = reading;
    }

    private List<String> tags() {
        List<String> read = tags;
        if (read == null) {
            read = reading.get();
            tags = read;
        }
        return read;
    }

    /** This path if it is one, else an unmodifiable copy of a list. */
    public static List<String> keep(List<String> path) {
        return path instanceof FeedingPath ? path : List.copyOf(path);
    }

    @Override
    public String get(int position) {
        return tags().get(position);
    }

    @Override
    public int size() {
        return tags().size();
    }
}
