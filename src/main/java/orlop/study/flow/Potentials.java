package orlop.study.flow;

/**
 * Nodes tied by ideal voltages: union-find that keeps each node's voltage above its root. The last node is the
 * reference.
 */
public final class Potentials {
    private final int[] parent;
    private final double[] above;

    /** Nodes 0 to {@code nodes} − 1, none tied. */
    public Potentials(int nodes) {
        parent = new int[nodes];
        above = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            parent[i] = i;
        }
    }

    /** The node that stands for all that are tied to this one. */
    public int root(int node) {
        int top = node;
        double sum = 0;
        while (parent[top] != top) {
            sum += above[top];
            top = parent[top];
        }
        int at = node;
        while (parent[at] != at) { // hang everything on the way straight to the root
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
        parent[ra] = rb;
        above[ra] = above[b] + voltage - above[a];
        return true;
    }

    /** Voltage of a above b, which are tied. */
    public double difference(int a, int b) {
        return above(a) - above(b);
    }
}
