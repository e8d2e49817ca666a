package orlop.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import org.jgrapht.traverse.BreadthFirstIterator;

/**
 * Galvanic islands and their independent loops: those that the connections outside a spanning tree close.
 *
 * <p>Pins joined by closed connections, diodes among them, are one island. Time and memory in proportion to the size of
 * the network; a loop is put together when it is asked for, for the loops of a large network can be longer together
 * than its square. Immutable.
 */
public final class Loops {
    private final List<Connection> connections;
    private final int[] island;
    private final int[] via; // connection that leads up the tree, −1 at the top
    private final int[] depth;
    private final boolean[] inLoop;
    private final List<List<Integer>> chords = new ArrayList<>();

    /** Of a network as it stands in its condition. */
    public Loops(Network network) {
        connections = network.connections();
        int pins = network.pinCount();
        island = new int[pins];
        via = new int[pins];
        depth = new int[pins];
        inLoop = new boolean[connections.size()];
        tree(new ClosedGraph(network, false), pins);
        int[] up = new int[pins]; // the highest pin that is reached over connections known to lie in a loop
        Arrays.setAll(up, v -> v);
        for (int e = 0; e < connections.size(); e++) {
            Connection c = connections.get(e);
            if (c.closed() && via[c.a()] != e && via[c.b()] != e) {
                chords.get(island[c.a()]).add(e);
                inLoop[e] = true;
                mark(c.a(), c.b(), up);
            }
        }
    }

    private void tree(ClosedGraph closed, int pins) {
        BreadthFirstIterator<Integer, Integer> walk = new BreadthFirstIterator<>(closed.graph());
        while (walk.hasNext()) {
            int pin = walk.next();
            if (pin >= pins) {
                continue; // the graph's extra vertex
            }
            depth[pin] = walk.getDepth(pin);
            if (depth[pin] == 0) {
                via[pin] = -1;
                island[pin] = chords.size();
                chords.add(new ArrayList<>(0));
            } else {
                via[pin] = closed.connection(walk.getSpanningTreeEdge(pin));
                island[pin] = island[before(pin)];
            }
        }
    }

    private int before(int pin) {
        return connections.get(via[pin]).other(pin);
    }

    private void mark(int a, int b, int[] up) {
        int p = top(a, up);
        int q = top(b, up);
        while (p != q) {
            int deeper = depth[p] >= depth[q] ? p : q;
            inLoop[via[deeper]] = true;
            up[deeper] = before(deeper);
            p = top(p, up);
            q = top(q, up);
        }
    }

    private static int top(int pin, int[] up) {
        int at = pin;
        while (up[at] != at) {
            up[at] = up[up[at]];
            at = up[at];
        }
        return at;
    }

    /** How many islands there are; a pin that nothing is connected to is one of its own. */
    public int islandCount() {
        return chords.size();
    }

    /** Number of the island of a pin, from 0. */
    public int islandOf(int pin) {
        return island[pin];
    }

    /** Numbers of the connections that close the independent loops of an island, one a loop. */
    public List<Integer> chords(int islandNumber) {
        return List.copyOf(chords.get(islandNumber));
    }

    /** Whether a closed connection lies in no loop: without it its island falls apart. */
    public boolean isBridge(int connection) {
        return connections.get(connection).closed() && !inLoop[connection];
    }

    /**
     * The loop that one of the {@link #chords} closes with the spanning tree: numbers of its connections in their order
     * round it, the chord first.
     */
    public List<Integer> loop(int chord) {
        Deque<Integer> there = new ArrayDeque<>();
        List<Integer> round = new ArrayList<>();
        round.add(chord);
        int p = connections.get(chord).b();
        int q = connections.get(chord).a();
        while (p != q) {
            if (depth[p] >= depth[q]) {
                round.add(via[p]);
                p = before(p);
            } else {
                there.push(via[q]);
                q = before(q);
            }
        }
        round.addAll(there);
        return round;
    }
}
