package orlop.study.linear;

/**
 * Takes the trees off a network in linear time: again and again an unknown with at most one neighbour left. What remains
 * is the core, in which every unknown lies between others.
 */
final class Peeling {
    /** What was taken off, in that order; only the first {@link #peeled} places count. */
    final int[] order;

    /** By unknown taken off: the neighbour that was left, −1 if there was none. */
    final int[] parent;

    /** By unknown: how many neighbours are left; 0 once it is off itself. */
    final int[] degree;

    final int peeled;
    final Neighbours neighbours;

    Peeling(int count, int[] a, int[] b) {
        neighbours = new Neighbours(count, a, b);
        order = new int[count];
        parent = new int[count];
        degree = new int[count];
        int[] left = new int[count]; // exclusive or of the neighbours left: with one left, that one
        int queued = 0;
        for (int v = 0; v < count; v++) {
            parent[v] = -1;
            degree[v] = neighbours.start[v + 1] - neighbours.start[v];
            for (int i = neighbours.start[v]; i < neighbours.start[v + 1]; i++) {
                left[v] ^= neighbours.of[i];
            }
            if (degree[v] <= 1) {
                order[queued++] = v;
            }
        }
        for (int done = 0; done < queued; done++) {
            int v = order[done];
            if (degree[v] == 1) {
                int w = left[v];
                parent[v] = w;
                left[w] ^= v;
                degree[v] = 0;
                degree[w]--;
                if (degree[w] == 1) {
                    order[queued++] = w;
                }
            }
        }
        peeled = queued;
    }

    boolean isCore(int unknown) {
        return degree[unknown] > 1;
    }
}
