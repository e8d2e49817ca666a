package orlop.study.linear;

import java.util.Arrays;

/**
 * Orders the unknowns of a symmetric system so that elimination fills in little: always the one with the fewest
 * neighbours next (H. M. Markowitz, 1957; W. F. Tinney and J. W. Walker, 1967). A tree has no fill at all.
 */
final class MinimumDegree {
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

    /** For each unknown, in the order of elimination: the neighbours that are eliminated later. */
    final int[][] later;

    final int[] order;

    MinimumDegree(int count, int[] a, int[] b) {
        neighbours = new int[count][];
        used = new int[count];
        degree = new int[count];
        gone = new boolean[count];
        mark = new int[count];
        head = new int[count + 1];
        next = new int[count];
        previous = new int[count];
        later = new int[count][];
        order = new int[count];
        fill(a, b);
        Arrays.fill(head, -1);
        for (int v = count - 1; v >= 0; v--) {
            degree[v] = used[v];
            push(v);
        }
        for (int step = 0; step < count; step++) {
            order[step] = eliminate();
        }
    }

    private void fill(int[] a, int[] b) {
        for (int v = 0; v < neighbours.length; v++) {
            neighbours[v] = new int[2];
        }
        for (int e = 0; e < a.length; e++) {
            append(a[e], b[e]);
            append(b[e], a[e]);
        }
        for (int v = 0; v < neighbours.length; v++) { // drop what is listed twice
            stamp++;
            mark[v] = stamp;
            int n = 0;
            for (int i = 0; i < used[v]; i++) {
                int w = neighbours[v][i];
                if (mark[w] != stamp) {
                    mark[w] = stamp;
                    neighbours[v][n++] = w;
                }
            }
            used[v] = n;
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

    private int eliminate() {
        while (head[least] < 0) {
            least++;
        }
        int v = head[least];
        pull(v);
        gone[v] = true;
        int[] rest = alive(v);
        later[v] = rest;
        for (int w : rest) {
            pull(w);
            degree[w]--;
        }
        join(rest);
        for (int w : rest) {
            push(w);
        }
        neighbours[v] = new int[0];
        return v;
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
