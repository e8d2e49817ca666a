package orlop.study.fault;

/** Which parts end at which node. */
final class PartEnds {
    private final int[] start;
    private final int[] parts;

    /** @param a by position of the part, one of its ends; {@code b} the other */
    PartEnds(int[] a, int[] b, int nodes) {
        start = new int[nodes + 1];
        for (int i = 0; i < a.length; i++) {
            start[a[i]]++;
            start[b[i]]++;
        }
        int sum = 0;
        for (int v = 0; v <= nodes; v++) {
            sum += start[v];
            start[v] = sum;
        }
        parts = new int[sum];
        for (int i = 0; i < a.length; i++) {
            parts[--start[a[i]]] = i;
            parts[--start[b[i]]] = i;
        }
    }

    /** Where the parts of a node start; they end where those of the next node start. */
    int start(int node) {
        return start[node];
    }

    /** Position of a part. */
    int part(int at) {
        return parts[at];
    }
}
