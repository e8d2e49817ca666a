package orlop.study.flow;

import java.util.ArrayDeque;
import java.util.Deque;

/** Currents through parts that tie potentials: Kirchhoff's law from the leaves of their tree towards the reference. */
final class TieCurrents {
    private static final int[] NONE = {};

    private final int[] a;
    private final int[] b;
    private final int[] ties;
    private final double[] leaving;
    private final int reference;
    private final int[][] at;

    /**
     * @param tied which parts are edges of the tree
     * @param ties how many of them end at each node
     * @param leaving sum of the other currents that leave each node
     */
    TieCurrents(int[] a, int[] b, boolean[] tied, int[] ties, double[] leaving, int reference) {
        this.a = a;
        this.b = b;
        this.ties = ties;
        this.leaving = leaving;
        this.reference = reference;
        int ends = 0;
        for (int n : ties) {
            ends += n;
        }
        at = new int[ends == 0 ? 0 : ties.length][];
        if (ends == 0) {
            return;
        }
        int[] filled = new int[ties.length];
        for (int v = 0; v < ties.length; v++) {
            at[v] = ties[v] == 0 ? NONE : new int[ties[v]];
        }
        for (int i = 0; i < a.length; i++) {
            if (tied[i]) {
                at[a[i]][filled[a[i]]++] = i;
                at[b[i]][filled[b[i]]++] = i;
            }
        }
    }

    void into(double[] current) {
        if (at.length == 0) {
            return; // nothing ties
        }
        boolean[] done = new boolean[current.length];
        Deque<Integer> leaves = new ArrayDeque<>();
        for (int v = 0; v < ties.length; v++) {
            if (ties[v] == 1 && v != reference) {
                leaves.add(v);
            }
        }
        while (!leaves.isEmpty()) {
            int v = leaves.remove();
            for (int i : at[v]) {
                if (!done[i]) {
                    done[i] = true;
                    settle(v, i, current);
                    int w = a[i] == v ? b[i] : a[i];
                    if (--ties[w] == 1 && w != reference) {
                        leaves.add(w);
                    }
                }
            }
        }
    }

    private void settle(int leaf, int i, double[] current) {
        double outward = -leaving[leaf];
        current[i] = a[i] == leaf ? outward : -outward;
        leaving[leaf] = 0;
        leaving[a[i] == leaf ? b[i] : a[i]] -= outward;
    }
}
