package orlop.drawing;

import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;

/**
 * A node of a persistent height-balanced search tree (Adelson-Velsky and Landis, 1962): no operation changes a node,
 * each copies the path from the root to what it touches. Null stands for the empty tree.
 */
record Branch<K extends Comparable<K>, V>(
        K key,
        V value,
        @Nullable Branch<K, V> left,
        @Nullable Branch<K, V> right,
        int size,
        byte height) {

    static int count(@Nullable Branch<?, ?> b) {
        return b == null ? 0 : b.size;
    }

    private static int height(@Nullable Branch<?, ?> b) {
        return b == null ? 0 : b.height;
    }

    private static <K extends Comparable<K>, V> Branch<K, V> node(
            K key, V value, @Nullable Branch<K, V> left, @Nullable Branch<K, V> right) {
        int height = Math.max(height(left), height(right)) + 1;
        return new Branch<>(key, value, left, right, count(left) + count(right) + 1, (byte) height);
    }

    static <K extends Comparable<K>, V> @Nullable V find(@Nullable Branch<K, V> root, K key) {
        Branch<K, V> at = root;
        while (at != null) {
            int c = key.compareTo(at.key);
            if (c == 0) {
                return at.value;
            }
            at = c < 0 ? at.left : at.right;
        }
        return null;
    }

    static <K extends Comparable<K>, V> Branch<K, V> put(@Nullable Branch<K, V> at, K key, V value) {
        if (at == null) {
            return node(key, value, null, null);
        }
        int c = key.compareTo(at.key);
        if (c == 0) {
            return node(at.key, value, at.left, at.right);
        }
        return c < 0
                ? balanced(at.key, at.value, put(at.left, key, value), at.right)
                : balanced(at.key, at.value, at.left, put(at.right, key, value));
    }

    static <K extends Comparable<K>, V> @Nullable Branch<K, V> remove(@Nullable Branch<K, V> at, K key) {
        if (at == null) {
            return null;
        }
        int c = key.compareTo(at.key);
        if (c < 0) {
            return balanced(at.key, at.value, remove(at.left, key), at.right);
        }
        if (c > 0) {
            return balanced(at.key, at.value, at.left, remove(at.right, key));
        }
        if (at.left == null || at.right == null) {
            return at.left == null ? at.right : at.left;
        }
        Branch<K, V> next = first(at.right);
        return balanced(next.key, next.value, at.left, remove(at.right, next.key));
    }

    private static <K extends Comparable<K>, V> Branch<K, V> first(Branch<K, V> from) {
        Branch<K, V> at = from;
        while (at.left != null) {
            at = at.left;
        }
        return at;
    }

    private static <K extends Comparable<K>, V> Branch<K, V> balanced(
            K key, V value, @Nullable Branch<K, V> left, @Nullable Branch<K, V> right) {
        int lean = height(left) - height(right);
        if (lean > 1) {
            Branch<K, V> l = present(left);
            if (height(l.left) >= height(l.right)) {
                return node(l.key, l.value, l.left, node(key, value, l.right, right));
            }
            Branch<K, V> lr = present(l.right);
            return node(lr.key, lr.value, node(l.key, l.value, l.left, lr.left), node(key, value, lr.right, right));
        }
        if (lean < -1) {
            Branch<K, V> r = present(right);
            if (height(r.right) >= height(r.left)) {
                return node(r.key, r.value, node(key, value, left, r.left), r.right);
            }
            Branch<K, V> rl = present(r.left);
            return node(rl.key, rl.value, node(key, value, left, rl.left), node(r.key, r.value, rl.right, r.right));
        }
        return node(key, value, left, right);
    }

    private static <K extends Comparable<K>, V> Branch<K, V> present(@Nullable Branch<K, V> b) {
        if (b == null) {
            throw new NoSuchElementException("a leaning tree has a child on that side");
        }
        return b;
    }
}
