package orlop.study.flow;

import java.util.Arrays;

/**
 * Nodes tied by ideal voltages: union-find that keeps each node's voltage above its root. The last node is the
 * reference.
 */
public final class Potentials {
    private final int[] parent; // of a root, minus the number of its nodes
    private final double[] above;

    /** Nodes 0 to {@code nodes} − 1, none tied. */
    public Potentials(int nodes) {
        parent = new int[nodes];
        above = new double[nodes];
        Arrays.fill(parent, -1);
    }

    /** The node that stands for all that are tied to this one. */
    public int root(int node) {
        int up = parent[node];
        return up < 0 ? node : parent[up] < 0 ? up : flattened(node);
    }

    /** Hangs everything on the way straight to the root, which it returns. */
    private int flattened(int node) {
        int top = node;
        double sum = 0;
        while (parent[top] >= 0) {
            sum += above[top];
            top = parent[top];
        }
        int at = node;
        while (at != top) {
            int up = parent[at];
            double rest = sum - above[at];
            parent[at] = top;
            above[at] = sum;
            sum = rest;
            at = up;
        }
        return top;
    }

    /** Voltage of the node above its root. */
    public double above(int node) {
        root(node);
        return above[node];
    }

    /** Ties a to lie {@code voltage} above b; false if they are tied already. */
    public boolean tie(int a, int b, double voltage) {
        int ra = root(a);
        int rb = root(b);
        if (ra == rb) {
            return false;
        }
        // v(a) = v(ra) + above(a), v(b) = v(rb) + above(b), v(a) = v(b) + voltage
        double difference = above[b] + voltage - above[a];
        boolean under = parent[ra] >= parent[rb]; // the smaller tree goes under the greater
        int child = under ? ra : rb;
        int top = under ? rb : ra;
        parent[top] += parent[child];
        parent[child] = top;
        above[child] = under ? difference : 0 - difference;
        return true;
    }

    /** Voltage of a above b, which are tied. */
    public double difference(int a, int b) {
        return above(a) - above(b);
    }
}
