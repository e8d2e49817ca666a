package orlop.study.fault;

/** Which parts end at which node. */
final class PartEnds {
    private PartEnds() {}

    /** By node: the positions of the parts of which one end is there. */
    static int[][] byNode(int[] a, int[] b, int nodes) {
        int[] degree = new int[nodes];
        for (int i = 0; i < a.length; i++) {
            degree[a[i]]++;
            degree[b[i]]++;
        }
        int[][] at = new int[nodes][];
        for (int v = 0; v < nodes; v++) {
            at[v] = new int[degree[v]];
        }
        for (int i = 0; i < a.length; i++) {
            at[a[i]][--degree[a[i]]] = i;
            at[b[i]][--degree[b[i]]] = i;
        }
        return at;
    }
}
