package orlop.layout;

import java.util.Arrays;

/** The tables of searches, used again from one to the next: an entry of an earlier search counts as empty. */
final class SearchTables {
    final OpenStates open = new OpenStates();
    final GoalSide goalSide = new GoalSide();
    private double[] best = {};
    private int[] before = {};
    private int[] stateRun = {};
    private boolean[] done = {};
    private double[] right = {};
    private double[] down = {};
    private byte[] corners = {};
    private int[] nodeRun = {};
    private int run;

    void begin(int nodes) {
        run++;
        open.clear();
        if (nodes > nodeRun.length) {
            right = new double[nodes];
            down = new double[nodes];
            corners = new byte[nodes];
            nodeRun = new int[nodes];
            best = new double[4 * nodes];
            before = new int[4 * nodes];
            done = new boolean[4 * nodes];
            stateRun = new int[4 * nodes];
            Arrays.fill(nodeRun, run - 1);
            Arrays.fill(stateRun, run - 1);
        }
    }

    private void touchState(int state) {
        if (stateRun[state] != run) {
            stateRun[state] = run;
            best[state] = Double.POSITIVE_INFINITY;
            before[state] = -1;
            done[state] = false;
        }
    }

    private void touchNode(int node) {
        if (nodeRun[node] != run) {
            nodeRun[node] = run;
            right[node] = Double.NaN;
            down[node] = Double.NaN;
            corners[node] = 0;
        }
    }

    double best(int state) {
        touchState(state);
        return best[state];
    }

    /** The state from which this one was reached, -1 at a start. */
    int before(int state) {
        touchState(state);
        return before[state];
    }

    void reach(int state, int from, double cost) {
        touchState(state);
        best[state] = cost;
        before[state] = from;
    }

    /** Marks a state as settled; false if it was already. */
    boolean settle(int state) {
        touchState(state);
        boolean first = !done[state];
        done[state] = true;
        return first;
    }

    /** Cost of the leg from a node to its right or lower neighbour, NaN if not asked yet. */
    double leg(int node, boolean lying) {
        touchNode(node);
        return lying ? right[node] : down[node];
    }

    void leg(int node, boolean lying, double cost) {
        touchNode(node);
        (lying ? right : down)[node] = cost;
    }

    /** 0 not asked yet, 1 free, 2 blocked. */
    byte corner(int node) {
        touchNode(node);
        return corners[node];
    }

    void corner(int node, boolean blocked) {
        touchNode(node);
        corners[node] = (byte) (blocked ? 2 : 1);
    }
}
