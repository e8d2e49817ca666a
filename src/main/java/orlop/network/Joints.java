package orlop.network;

/** Which numbers belong together: union-find with path halving. Not safe for several threads. */
final class Joints {
    private final int[] parent;

    Joints(int count) {
        parent = new int[count];
        for (int i = 0; i < count; i++) {
            parent[i] = i;
        }
    }

    int find(int x) {
        int at = x;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** The lower root stays, so that the outcome does not depend on the order of joining. */
    boolean join(int a, int b) {
        int ra = find(a);
        int rb = find(b);
        if (ra == rb) {
            return false;
        }
        parent[Math.max(ra, rb)] = Math.min(ra, rb);
        return true;
    }
}
