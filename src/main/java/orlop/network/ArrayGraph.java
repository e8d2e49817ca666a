package orlop.network;

import java.util.AbstractSet;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import org.jgrapht.GraphType;
import org.jgrapht.graph.AbstractGraph;
import org.jgrapht.graph.DefaultGraphType;
import org.jspecify.annotations.Nullable;

/**
 * A read-only view of our arrays as a JGraphT graph, so that its algorithms run on them without a copy.
 *
 * <p>Vertices are 0 to n; vertex n is an extra one, joined without length to every root. A diode is left out of the
 * outgoing edges of its cathode, as is every edge that leads to a hidden vertex.
 */
final class ArrayGraph extends AbstractGraph<Integer, Integer> {
    private final int[] from;
    private final int[] to;
    private final double[] length;
    private final boolean[] oneWay;
    private final int[] start;
    private final int[] edges;
    private final int vertexCount;
    private int[] roots = {};
    private IntPredicate hidden = v -> false;

    ArrayGraph(int pins, int[] from, int[] to, double[] length, boolean[] oneWay) {
        this.from = from;
        this.to = to;
        this.length = length;
        this.oneWay = oneWay;
        vertexCount = pins + 1;
        start = new int[vertexCount + 1];
        for (int e = 0; e < from.length; e++) {
            start[from[e] + 1]++;
            start[to[e] + 1]++;
        }
        for (int v = 0; v < vertexCount; v++) {
            start[v + 1] += start[v];
        }
        edges = new int[start[vertexCount]];
        int[] next = start.clone();
        for (int e = 0; e < from.length; e++) {
            edges[next[from[e]]++] = e;
            edges[next[to[e]]++] = e;
        }
    }

    /** Joins the extra vertex to these pins and hides what need not be visited again. */
    void startAt(int[] rootPins, IntPredicate isHidden) {
        roots = rootPins;
        hidden = isHidden;
    }

    /** The vertex from which every root is reached. */
    int extra() {
        return vertexCount - 1;
    }

    /** Whether an edge is one of the array, not one to a root. */
    boolean isReal(int edge) {
        return edge < from.length;
    }

    private boolean leadsOn(int edge, int at) {
        boolean blocked = oneWay[edge] && to[edge] == at;
        return !blocked && !hidden.test(from[edge] == at ? to[edge] : from[edge]);
    }

    @Override
    public Set<Integer> outgoingEdgesOf(Integer vertex) {
        int v = vertex;
        if (v == extra()) {
            return new Range(0, roots.length, i -> true, i -> from.length + i);
        }
        return new Range(start[v], start[v + 1], i -> leadsOn(edges[i], v), i -> edges[i]);
    }

    @Override
    public Set<Integer> edgesOf(Integer vertex) {
        int v = vertex;
        return v == extra() ? outgoingEdgesOf(v) : new Range(start[v], start[v + 1], i -> true, i -> edges[i]);
    }

    @Override
    public Set<Integer> incomingEdgesOf(Integer vertex) {
        return edgesOf(vertex);
    }

    @Override
    public Integer getEdgeSource(Integer edge) {
        return isReal(edge) ? from[edge] : extra();
    }

    @Override
    public Integer getEdgeTarget(Integer edge) {
        return isReal(edge) ? to[edge] : roots[edge - from.length];
    }

    @Override
    public double getEdgeWeight(Integer edge) {
        return isReal(edge) ? length[edge] : 0;
    }

    @Override
    public boolean containsVertex(Integer vertex) {
        return vertex >= 0 && vertex < vertexCount;
    }

    @Override
    public boolean containsEdge(Integer edge) {
        return edge >= 0 && edge < from.length + roots.length;
    }

    @Override
    public Set<Integer> vertexSet() {
        return new Range(0, vertexCount, i -> true, i -> i);
    }

    @Override
    public Set<Integer> edgeSet() {
        return new Range(0, from.length + roots.length, i -> true, i -> i);
    }

    @Override
    public int degreeOf(Integer vertex) {
        return edgesOf(vertex).size();
    }

    @Override
    public int inDegreeOf(Integer vertex) {
        return degreeOf(vertex);
    }

    @Override
    public int outDegreeOf(Integer vertex) {
        return outgoingEdgesOf(vertex).size();
    }

    @Override
    public GraphType getType() {
        return new DefaultGraphType.Builder()
                .undirected()
                .weighted(true)
                .modifiable(false)
                .allowMultipleEdges(true)
                .allowSelfLoops(true)
                .build();
    }

    @Override
    public Set<Integer> getAllEdges(Integer source, Integer target) {
        int v = source;
        return new Range(start[v], start[v + 1], i -> from[edges[i]] + to[edges[i]] - v == (int) target, i -> edges[i]);
    }

    @Override
    public @Nullable Integer getEdge(Integer source, Integer target) {
        Iterator<Integer> all = getAllEdges(source, target).iterator();
        return all.hasNext() ? all.next() : null;
    }

    @Override
    public @Nullable Supplier<Integer> getVertexSupplier() {
        return null;
    }

    @Override
    public @Nullable Supplier<Integer> getEdgeSupplier() {
        return null;
    }

    @Override
    public Integer addEdge(Integer source, Integer target) {
        throw readOnly();
    }

    @Override
    public boolean addEdge(Integer source, Integer target, Integer edge) {
        throw readOnly();
    }

    @Override
    public Integer addVertex() {
        throw readOnly();
    }

    @Override
    public boolean addVertex(Integer vertex) {
        throw readOnly();
    }

    @Override
    public Integer removeEdge(Integer source, Integer target) {
        throw readOnly();
    }

    @Override
    public boolean removeEdge(Integer edge) {
        throw readOnly();
    }

    @Override
    public boolean removeVertex(Integer vertex) {
        throw readOnly();
    }

    @Override
    public void setEdgeWeight(Integer edge, double weight) {
        throw readOnly();
    }

    private static UnsupportedOperationException readOnly() {
        return new UnsupportedOperationException("a view of the network is read-only");
    }

    /** Turns a position into a number. */
    private interface Pick {
        int at(int position);
    }

    /** The picked numbers of a range of positions, those that don't pass left out. */
    private static final class Range extends AbstractSet<Integer> {
        private final int low;
        private final int high;
        private final IntPredicate passes;
        private final Pick pick;

        Range(int low, int high, IntPredicate passes, Pick pick) {
            this.low = low;
            this.high = high;
            this.passes = passes;
            this.pick = pick;
        }

        @Override
        public Iterator<Integer> iterator() {
            return new Iterator<>() {
                private int at = skip(low);

                @Override
                public boolean hasNext() {
                    return at < high;
                }

                @Override
                public Integer next() {
                    if (at >= high) {
                        throw new NoSuchElementException();
                    }
                    int picked = pick.at(at);
                    at = skip(at + 1);
                    return picked;
                }
            };
        }

        private int skip(int position) {
            int at = position;
            while (at < high && !passes.test(at)) {
                at++;
            }
            return at;
        }

        @Override
        public int size() {
            int n = 0;
            for (int i = skip(low); i < high; i = skip(i + 1)) {
                n++;
            }
            return n;
        }
    }
}
