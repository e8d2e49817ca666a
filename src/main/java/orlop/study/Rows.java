package orlop.study;

import java.util.AbstractCollection;
import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * A read-only map from ids to values in the order of the ids: an array, and an index that all maps over the same ids
 * share. Safe for several threads.
 */
final class Rows<T> extends AbstractMap<String, T> {
    /** Ids with their numbers; numbered when first asked. */
    static final class Index {
        private final List<String> ids;
        private volatile @Nullable Map<String, Integer> numbers;

        /** @param ids all different */
        Index(List<String> ids) {
            this.ids = List.copyOf(ids);
        }

        private Map<String, Integer> numbers() {
            Map<String, Integer> made = numbers;
            if (made == null) {
                made = new HashMap<>(2 * ids.size());
                for (int i = 0; i < ids.size(); i++) {
                    made.put(ids.get(i), i);
                }
                numbers = made;
            }
            return made;
        }
    }

    private final Index index;
    private final List<T> values;

    private Rows(Index index, List<T> values) {
        this.index = index;
        this.values = values;
    }

    /** Values by number. */
    @SuppressWarnings("unchecked") // the array is seen as nothing but a list of T
    static <T> Rows<T> of(Index index, IntFunction<T> value) {
        Object[] values = new Object[index.ids.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value.apply(i);
        }
        return new Rows<>(index, (List<T>) Arrays.asList(values));
    }

    /** Both maps merged, value by value; null if they have different indices. */
    @Nullable
    Rows<T> merged(Rows<T> other, BinaryOperator<T> merge) {
        return index != other.index ? null : of(index, i -> merge.apply(values.get(i), other.values.get(i)));
    }

    @Override
    public int size() {
        return values.size();
    }

    @Override
    public boolean containsKey(@Nullable Object key) {
        return index.numbers().containsKey(key);
    }

    @Override
    public @Nullable T get(@Nullable Object key) {
        Integer i = index.numbers().get(key);
        return i == null ? null : values.get(i);
    }

    private Entry<String, T> entry(int i) {
        return new SimpleImmutableEntry<>(index.ids.get(i), values.get(i));
    }

    @Override
    public Collection<T> values() {
        return new AbstractCollection<>() {
            @Override
            public Iterator<T> iterator() {
                return new Each<>(values.size(), values::get);
            }

            @Override
            public int size() {
                return values.size();
            }
        };
    }

    @Override
    public Set<Entry<String, T>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Entry<String, T>> iterator() {
                return new Each<>(values.size(), Rows.this::entry);
            }

            @Override
            public int size() {
                return values.size();
            }
        };
    }

    /** Numbers 0 to n − 1, each turned into something; removes nothing. */
    private static final class Each<E> implements Iterator<E> {
        private final int count;
        private final IntFunction<E> at;
        private int next;

        Each(int count, IntFunction<E> at) {
            this.count = count;
            this.at = at;
        }

        @Override
        public boolean hasNext() {
            return next < count;
        }

        @Override
        public E next() {
            if (next >= count) {
                throw new java.util.NoSuchElementException();
            }
            return at.apply(next++);
        }
    }
}
