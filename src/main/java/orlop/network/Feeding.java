package orlop.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jgrapht.traverse.ClosestFirstIterator;

/**
 * What feeds what: for each pin the shortest path, by length, from a source.
 *
 * <p>A source that holds a voltage comes before one that charges, and that before the output of a converter, which
 * feeds only what nothing else does. Arrays are by pin; they are handed out as they are and must not be written to.
 */
public final class Feeding {
    private final List<Connection> connections;
    private final int[] via;
    private final int[] root;
    private final double[] lengthM;
    private final int[] order;
    private int reached;

    Feeding(int pins, List<Connection> connections, List<Attachment> attachments) {
        this.connections = connections;
        via = new int[pins];
        root = new int[pins];
        lengthM = new double[pins];
        order = new int[pins];
        Arrays.fill(via, -1);
        Arrays.fill(root, -1);
        Arrays.fill(lengthM, Double.NaN);
        ArrayGraph graph = graph(pins);
        spread(graph, attachments, Attachment.Role.VOLTAGE_SOURCE);
        spread(graph, attachments, Attachment.Role.OTHER_SOURCE);
        int before;
        do { // a converter may feed the next
            before = reached;
            spread(graph, attachments, Attachment.Role.CONVERTER);
        } while (reached > before);
    }

    private ArrayGraph graph(int pins) {
        List<Connection> closed =
                connections.stream().filter(Connection::closed).toList();
        int[] from = new int[closed.size()];
        int[] to = new int[closed.size()];
        double[] length = new double[closed.size()];
        boolean[] oneWay = new boolean[closed.size()];
        for (int i = 0; i < closed.size(); i++) {
            Connection c = closed.get(i);
            from[i] = c.a();
            to[i] = c.b();
            length[i] = c.lengthM();
            oneWay[i] = c.kind() == Connection.Kind.DIODE;
        }
        closedIndex = new int[closed.size()];
        int n = 0;
        for (int i = 0; i < connections.size(); i++) {
            if (connections.get(i).closed()) {
                closedIndex[n++] = i;
            }
        }
        return new ArrayGraph(pins, from, to, length, oneWay);
    }

    private int[] closedIndex = {};

    private void spread(ArrayGraph graph, List<Attachment> attachments, Attachment.Role role) {
        int[] rootOfPin = new int[via.length];
        Arrays.fill(rootOfPin, -1);
        int[] roots = new int[attachments.size()];
        int n = 0;
        for (int i = 0; i < attachments.size(); i++) {
            Attachment t = attachments.get(i);
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            int pin = converter ? t.outputPin() : t.pin();
            boolean starts = t.role() == role && t.on() && root[pin] < 0 && rootOfPin[pin] < 0;
            if (starts && (!converter || root[t.pin()] >= 0)) {
                rootOfPin[pin] = i;
                roots[n++] = pin;
            }
        }
        if (n > 0) {
            walk(graph, Arrays.copyOf(roots, n), rootOfPin);
        }
    }

    private void walk(ArrayGraph graph, int[] roots, int[] rootOfPin) {
        boolean[] done = new boolean[via.length];
        for (int v = 0; v < via.length; v++) {
            done[v] = root[v] >= 0;
        }
        graph.startAt(roots, v -> done[v]);
        ClosestFirstIterator<Integer, Integer> closest = new ClosestFirstIterator<>(graph, graph.extra());
        closest.next(); // the extra vertex itself
        while (closest.hasNext()) {
            int pin = closest.next();
            int edge = closest.getSpanningTreeEdge(pin);
            boolean real = graph.isReal(edge);
            via[pin] = real ? closedIndex[edge] : -1;
            root[pin] = real ? root[connections.get(via[pin]).other(pin)] : rootOfPin[pin];
            lengthM[pin] = closest.getShortestPathLength(pin);
            order[reached++] = pin;
        }
    }

    /** Whether a source feeds the pin. */
    public boolean feeds(int pin) {
        return pin >= 0 && root[pin] >= 0;
    }

    /** Number of the attachment at which the pin's feeding path starts; −1 where nothing feeds it. */
    public int root(int pin) {
        return root[pin];
    }

    /** Number of the last connection of the pin's feeding path; −1 at its start and where nothing feeds the pin. */
    public int via(int pin) {
        return via[pin];
    }

    /** The pin before this one on its feeding path; −1 at its start and where nothing feeds it. */
    public int before(int pin) {
        return via[pin] < 0 ? -1 : connections.get(via[pin]).other(pin);
    }

    /** Length of the feeding path, cables and links; NaN where nothing feeds the pin. */
    public double lengthM(int pin) {
        return lengthM[pin];
    }

    /** All pins that are fed, each after the one that feeds it. */
    public int[] order() {
        return Arrays.copyOf(order, reached);
    }

    /** Numbers of the connections from the source to the pin, in that order. */
    public List<Integer> pathTo(int pin) {
        List<Integer> path = new ArrayList<>();
        for (int at = pin; at >= 0 && via[at] >= 0; at = before(at)) {
            path.add(via[at]);
        }
        Collections.reverse(path);
        return path;
    }
}
