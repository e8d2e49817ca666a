package orlop.network;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A list that is read off the network when first looked at: all feeding paths together, say, would grow with the square
 * of the size of a long chain. Read-only; safe for several threads.
 */
public final class ReadLater<E> extends AbstractList<E> {
    private final Supplier<List<E>> reading;
    private volatile @Nullable List<E> elements;

    /** @param reading gives the same list whenever it is asked */
    public ReadLater(Supplier<List<E>> reading) {
        this.reading = reading;
    }

    private List<E> elements() {
        List<E> read = elements;
        if (read == null) {
            read = reading.get();
            elements = read;
        }
        return read;
    }

    /** This list if it is one of these, else an unmodifiable copy. */
    public static <E> List<E> keep(List<E> list) {
        return list instanceof ReadLater ? list : List.copyOf(list);
    }

    @Override
    public E get(int position) {
        return elements().get(position);
    }

    @Override
    public int size() {
        return elements().size();
    }
}
