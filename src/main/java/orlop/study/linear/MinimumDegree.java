package orlop.study.linear;

import java.util.Arrays;

/**
 * Orders the core of a symmetric system so that elimination fills in little: always the unknown with the fewest neighbours
 * next (H. M. Markowitz, 1957; W. F. Tinney and J. W. Walker, 1967). Once most of those that are left are neighbours of
 * each other, the rest is taken as if all were: nothing is gained by choosing then.
 */
final class MinimumDegree {
    /** So few are always chosen one by one. */
    private static final int DENSE_FROM = 100;

    private final int[][] neighbours;
    private final int[] used;
    private final int[] degree;
    private final boolean[] gone;
    private final int[] mark;
    private int stamp;
    // buckets of unknowns by degree, doubly linked
    private final int[] head;
    private final int[] next;
    private final int[] previous;
    private int least;

    /** The core's unknowns in the order of elimination. */
    final int[] order;

    /** By place in that order: the neighbours that are eliminated later. */
    final int[][] later;

    MinimumDegree(Peeling trees) {
        int all = trees.degree.length;
        int count = all - trees.peeled;
        neighbours = new int[all][];
        used = new int[all];
        degree = new int[all];
        gone = new boolean[all];
        mark = new int[all];
        head = new int[count + 1];
        next = new int[all];
        previous = new int[all];
        later = new int[count][];
        order = new int[count];
        Arrays.fill(head, -1);
        for (int v = all - 1; v >= 0 && count > 0; v--) {
            if (trees.isCore(v)) {
                fill(v, trees);
                push(v);
            }
        }
        int step = 0;
        while (step < count && !isDense(count - step)) {
            eliminate(step++);
        }
        takeAll(step);
    }

    private void fill(int v, Peeling trees) {
        int[] list = new int[trees.degree[v]];
        int n = 0;
        for (int i = trees.neighbours.start[v]; i < trees.neighbours.start[v + 1]; i++) {
            int w = trees.neighbours.of[i];
            if (trees.isCore(w)) {
                list[n++] = w;
            }
        }
        neighbours[v] = list;
        used[v] = n;
        degree[v] = n;
    }

    private boolean isDense(int left) {
        while (head[least] < 0) {
            least++;
        }
        return left >= DENSE_FROM && 2 * least >= left;
    }

    private void takeAll(int from) {
        int step = from;
        for (int d = least; step < order.length; d++) {
            for (int v = head[d]; v >= 0; v = next[v]) {
                order[step++] = v;
            }
        }
        for (step = from; step < order.length; step++) {
            later[step] = Arrays.copyOfRange(order, step + 1, order.length);
        }
    }

    private void append(int to, int neighbour) {
        if (used[to] == neighbours[to].length) {
            neighbours[to] = Arrays.copyOf(neighbours[to], 2 * used[to]);
        }
        neighbours[to][used[to]++] = neighbour;
    }

    private void push(int v) {
        int d = degree[v];
        previous[v] = -1;
        next[v] = head[d];
        if (head[d] >= 0) {
            previous[head[d]] = v;
        }
        head[d] = v;
        least = Math.min(least, d);
    }

    private void pull(int v) {
        if (previous[v] >= 0) {
            next[previous[v]] = next[v];
        } else {
            head[degree[v]] = next[v];
        }
        if (next[v] >= 0) {
            previous[next[v]] = previous[v];
        }
    }

    private void eliminate(int step) {
        int v = head[least];
        pull(v);
        gone[v] = true;
        int[] rest = alive(v);
        order[step] = v;
        later[step] = rest;
        for (int w : rest) {
            pull(w);
            degree[w]--;
        }
        join(rest);
        for (int w : rest) {
            push(w);
        }
        neighbours[v] = rest;
    }

    private int[] alive(int v) {
        int n = 0;
        int[] list = neighbours[v];
        for (int i = 0; i < used[v]; i++) {
            if (!gone[list[i]]) {
                list[n++] = list[i];
            }
        }
        used[v] = n;
        return Arrays.copyOf(list, n);
    }

    /** Joins all pairs; the lists of the one with most neighbours, last in the row, are never searched. */
    private void join(int[] rest) {
        for (int i = 1; i < rest.length; i++) {
            if (degree[rest[i - 1]] > degree[rest[i]]) {
                int swap = rest[i];
                rest[i] = rest[i - 1];
                rest[i - 1] = swap;
            }
        }
        for (int i = 0; i + 1 < rest.length; i++) {
            int u = rest[i];
            stamp++;
            for (int w : alive(u)) {
                mark[w] = stamp;
            }
            for (int j = i + 1; j < rest.length; j++) {
                int w = rest[j];
                if (mark[w] != stamp) {
                    append(u, w);
                    append(w, u);
                    degree[u]++;
                    degree[w]++;
                }
            }
        }
    }
}
