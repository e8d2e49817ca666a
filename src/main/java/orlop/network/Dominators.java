package orlop.network;

import java.util.Arrays;

/**
 * Which vertex lies on every way from a root to another: the dominator tree of a directed graph, by T. Lengauer and R.
 * E. Tarjan (1979), the simple variant: O(m log n), no recursion. Immutable.
 */
final class Dominators {
    private final int[] start; // of each vertex's arcs in heads
    private final int[] heads;
    private final int[] number; // by vertex, in the order of the search; −1 where the root doesn't reach it
    private final int[] vertex; // by number
    private final int[] parent; // by number, as all below
    private final int[] semi;
    private final int[] label;
    private final int[] ancestor;
    private final int[] idom;
    private final int[] place;
    private final int[] size;
    private int reached;

    /**
     * @param vertices how many there are
     * @param from by arc: where it starts
     * @param to by arc: where it ends
     */
    Dominators(int vertices, int root, int[] from, int[] to) {
        start = starts(vertices, from);
        heads = sorted(start, from, to);
        number = new int[vertices];
        vertex = new int[vertices];
        parent = new int[vertices];
        Arrays.fill(number, -1);
        search(root);
        semi = new int[reached];
        label = new int[reached];
        ancestor = new int[reached];
        idom = new int[reached];
        size = new int[reached];
        place = new int[reached];
        dominate(from, to);
        number();
    }

    private static int[] starts(int vertices, int[] ends) {
        int[] start = new int[vertices + 1];
        for (int end : ends) {
            start[end + 1]++;
        }
        for (int v = 0; v < vertices; v++) {
            start[v + 1] += start[v];
        }
        return start;
    }

    private static int[] sorted(int[] start, int[] by, int[] values) {
        int[] next = start.clone();
        int[] sorted = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            sorted[next[by[i]]++] = values[i];
        }
        return sorted;
    }

    private void search(int root) {
        int[] next = start.clone();
        int at = root;
        number[root] = reached;
        vertex[reached++] = root;
        parent[0] = -1;
        while (at >= 0) {
            if (next[at] == start[at + 1]) {
                int up = parent[number[at]];
                at = up < 0 ? -1 : vertex[up];
                continue;
            }
            int head = heads[next[at]++];
            if (number[head] < 0) {
                parent[reached] = number[at];
                number[head] = reached;
                vertex[reached++] = head;
                at = head;
            }
        }
    }

    private void dominate(int[] from, int[] to) {
        int[] before = starts(number.length, to);
        int[] tails = sorted(before, to, from);
        int[] bucket = new int[reached]; // first of those that wait for this one's link; −1 for none
        int[] waiting = new int[reached];
        Arrays.fill(bucket, -1);
        Arrays.fill(ancestor, -1);
        for (int w = 0; w < reached; w++) {
            semi[w] = w;
            label[w] = w;
        }
        for (int w = reached - 1; w > 0; w--) {
            for (int i = before[vertex[w]]; i < before[vertex[w] + 1]; i++) {
                int tail = number[tails[i]];
                if (tail >= 0) {
                    semi[w] = Math.min(semi[w], semi[best(tail)]);
                }
            }
            waiting[w] = bucket[semi[w]];
            bucket[semi[w]] = w;
            ancestor[w] = parent[w];
            for (int v = bucket[parent[w]]; v >= 0; v = waiting[v]) {
                int u = best(v);
                idom[v] = semi[u] < semi[v] ? u : parent[w];
            }
            bucket[parent[w]] = -1;
        }
        for (int w = 1; w < reached; w++) {
            idom[w] = idom[w] == semi[w] ? idom[w] : idom[idom[w]];
        }
    }

    private int[] path = new int[16];

    /** The vertex of least semidominator on the way up to, but without, the root of its tree; shortens that way. */
    private int best(int v) {
        if (ancestor[v] < 0) {
            return label[v];
        }
        int length = 0;
        for (int at = v; ancestor[ancestor[at]] >= 0; at = ancestor[at]) {
            if (length == path.length) {
                path = Arrays.copyOf(path, 2 * length);
            }
            path[length++] = at;
        }
        while (length > 0) {
            int at = path[--length];
            int up = ancestor[at];
            label[at] = semi[label[up]] < semi[label[at]] ? label[up] : label[at];
            ancestor[at] = ancestor[up];
        }
        return label[v];
    }

    /** Places in the order of the dominator tree: what a vertex dominates follows it without a gap. */
    private void number() {
        Arrays.fill(size, 1);
        for (int w = reached - 1; w > 0; w--) {
            size[idom[w]] += size[w];
        }
        int[] free = new int[reached];
        free[0] = 1;
        for (int w = 1; w < reached; w++) {
            place[w] = free[idom[w]];
            free[idom[w]] += size[w];
            free[w] = place[w] + 1;
        }
    }

    /** How many vertices the root reaches, itself included. */
    int reached() {
        return reached;
    }

    /** Place of a vertex in the dominator tree, 0 for the root; −1 where the root doesn't reach it. */
    int place(int v) {
        return number[v] < 0 ? -1 : place[number[v]];
    }

    /** How many vertices it dominates, itself included: they have the places from its own on. 0 where not reached. */
    int size(int v) {
        return number[v] < 0 ? 0 : size[number[v]];
    }
}
