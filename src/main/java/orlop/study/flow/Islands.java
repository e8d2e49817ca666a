package orlop.study.flow;

import java.util.Arrays;
import java.util.List;

/** Parts a circuit into galvanic islands; the common reference joins nothing. Immutable. */
public final class Islands {
    private final Circuit circuit;
    private final int[] number;
    private int count;

    /**
     * @param live nodes that a source may feed; an island without any is left out
     */
    public Islands(Circuit circuit, boolean[] live) {
        this.circuit = circuit;
        Potentials joined = new Potentials(circuit.nodeCount()); // used as a plain union-find
        for (int p = 0; p < circuit.partCount(); p++) {
            if (circuit.a(p) >= 0 && circuit.b(p) >= 0) {
                joined.tie(circuit.a(p), circuit.b(p), 0);
            }
        }
        boolean[] liveRoot = new boolean[circuit.nodeCount()];
        for (int v = 0; v < circuit.nodeCount(); v++) {
            liveRoot[joined.root(v)] |= live[v];
        }
        int[] ofRoot = new int[circuit.nodeCount()];
        Arrays.fill(ofRoot, -1);
        number = new int[circuit.nodeCount()];
        for (int v = 0; v < circuit.nodeCount(); v++) {
            int root = joined.root(v);
            if (liveRoot[root] && ofRoot[root] < 0) {
                ofRoot[root] = count++;
            }
            number[v] = liveRoot[root] ? ofRoot[root] : -1;
        }
    }

    /** Number of a node's island, −1 for one that is left out. */
    public int of(int node) {
        return number[node];
    }

    /** How many there are. */
    public int count() {
        return count;
    }

    /** Number of a part's island, −1 for one that is left out. */
    public int ofPart(int part) {
        return islandOfPart(part);
    }

    void into(List<Island> islands, int[] islandOf, int[] localOf) {
        int[] nodeCount = new int[count];
        for (int v = 0; v < number.length; v++) {
            islandOf[v] = number[v];
            localOf[v] = number[v] < 0 ? -1 : nodeCount[number[v]]++;
        }
        int[] partCount = new int[count];
        for (int p = 0; p < circuit.partCount(); p++) {
            int i = islandOfPart(p);
            if (i >= 0) {
                partCount[i]++;
            }
        }
        int[][] nodes = new int[count][];
        int[][] parts = new int[count][];
        for (int i = 0; i < count; i++) {
            nodes[i] = new int[nodeCount[i]];
            parts[i] = new int[partCount[i]];
        }
        for (int v = 0; v < number.length; v++) {
            if (number[v] >= 0) {
                nodes[number[v]][localOf[v]] = v;
            }
        }
        Arrays.fill(partCount, 0);
        for (int p = 0; p < circuit.partCount(); p++) {
            int i = islandOfPart(p);
            if (i >= 0) {
                parts[i][partCount[i]++] = p;
            }
        }
        for (int i = 0; i < count; i++) {
            islands.add(new Island(circuit, nodes[i], parts[i], localOf));
        }
    }

    private int islandOfPart(int p) {
        int node = circuit.a(p) >= 0 ? circuit.a(p) : circuit.b(p);
        return node < 0 ? -1 : number[node];
    }
}
