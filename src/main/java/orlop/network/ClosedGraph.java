package orlop.network;

import java.util.List;

/** The closed connections of a network as a graph for JGraphT's algorithms, and their numbers. */
final class ClosedGraph {
    private final ArrayGraph graph;
    private final int[] numbers;

    /**
     * @param againstTheFlow whether diodes are passed from cathode to anode, and only so: to look for what feeds a pin;
     *     else they are passed either way
     */
    ClosedGraph(Network network, boolean againstTheFlow) {
        List<Connection> all = network.connections();
        numbers = java.util.stream.IntStream.range(0, all.size())
                .filter(e -> all.get(e).closed())
                .toArray();
        int n = numbers.length;
        int[] from = new int[n];
        int[] to = new int[n];
        double[] length = new double[n];
        boolean[] oneWay = new boolean[n];
        for (int i = 0; i < n; i++) {
            Connection c = all.get(numbers[i]);
            from[i] = againstTheFlow ? c.b() : c.a();
            to[i] = againstTheFlow ? c.a() : c.b();
            length[i] = c.lengthM();
            oneWay[i] = againstTheFlow && c.kind() == Connection.Kind.DIODE;
        }
        graph = new ArrayGraph(network.pinCount(), from, to, length, oneWay);
    }

    ArrayGraph graph() {
        return graph;
    }

    /** Number of the connection that an edge of the graph stands for. */
    int connection(int edge) {
        return numbers[edge];
    }
}
