package orlop.study.protection;

import java.util.Arrays;

/** Connections without which a network falls apart (R. E. Tarjan, 1974), and what lies beyond each of them. */
final class Bridges {
    private final Grid grid;
    private final boolean[] counts;
    private final int[] via;
    private final int[] parent;
    private final int[] order;
    private final boolean[] bridge;
    private final int[] root;
    private int places;

    /** @param counts by connection: whether it is there */
    Bridges(Grid grid, boolean[] counts) {
        this.grid = grid;
        this.counts = counts;
        int pins = grid.pins();
        int[] place = new int[pins];
        int[] low = new int[pins];
        int[] next = new int[pins];
        via = new int[pins];
        parent = new int[pins];
        order = new int[pins];
        root = new int[pins];
        bridge = new boolean[grid.count()];
        Arrays.fill(place, -1);
        for (int v = 0; v < pins; v++) {
            if (place[v] < 0) {
                search(v, place, low, next);
            }
        }
    }

    private void enter(int v, int from, int edge, int top) {
        order[places++] = v;
        parent[v] = from;
        via[v] = edge;
        root[v] = top;
    }

    private void search(int top, int[] place, int[] low, int[] next) {
        place[top] = low[top] = places;
        enter(top, -1, -1, top);
        int v = top;
        while (v >= 0) {
            if (next[v] < grid.degree(v)) {
                int e = grid.edge(grid.start(v) + next[v]++);
                int w = grid.other(e, v);
                if (!counts[e] || e == via[v]) {
                    continue;
                }
                if (place[w] < 0) {
                    place[w] = low[w] = places;
                    enter(w, v, e, top);
                    v = w;
                } else {
                    low[v] = Math.min(low[v], place[w]);
                }
            } else {
                int up = parent[v];
                if (up >= 0) {
                    low[up] = Math.min(low[up], low[v]);
                    bridge[via[v]] = low[v] == place[v];
                }
                v = up;
            }
        }
    }

    boolean[] all() {
        return bridge;
    }

    /** Whether two pins hang together. */
    int rootOf(int pin) {
        return root[pin];
    }

    /** Turns something by pin into its sums over what hangs below each pin in the search; a root's has them all. */
    void below(double[] sum) {
        for (int i = places - 1; i >= 0; i--) {
            int v = order[i];
            if (parent[v] >= 0) {
                sum[parent[v]] += sum[v];
            }
        }
    }

    /** With {@link #below}: how much lies at this end of a bridge and behind it. */
    double behind(int edge, int pin, double[] below) {
        boolean child = via[pin] == edge;
        int other = grid.other(edge, pin);
        return child ? below[pin] : below[root[pin]] - below[other];
    }
}
