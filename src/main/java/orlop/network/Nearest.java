package orlop.network;

import java.util.Arrays;
import java.util.List;

/**
 * Shortest ways from several pins at once over closed connections (E. W. Dijkstra, 1959), on bare arrays: it runs for
 * every network of a study, where an iterator over a graph of objects took longer than solving the network.
 *
 * <p>Of pins equally near, the one that was seen first comes first; of ways equally long, the one found first stays.
 */
final class Nearest {
    /** By pin, the last connection of the way to it; −1 where a way starts and where none leads. */
    final int[] via;

    /** By pin, length of the way to it; NaN where none leads. */
    final double[] lengthM;

    private final List<Connection> connections;
    private final int[] start; // of a pin's connections
    private final int[] edges;
    private final boolean[] settled; // by pin
    private final int[] seen; // by pin, the number under which it was first seen
    private final int[] heap;
    private final int[] place; // of a pin in the heap
    private int size;
    private int count;

    Nearest(int pins, List<Connection> connections) {
        this.connections = connections;
        start = new int[pins + 1];
        for (Connection c : connections) {
            if (c.closed()) {
                start[c.a()]++;
                start[c.b()]++;
            }
        }
        int sum = 0;
        for (int v = 0; v <= pins; v++) {
            sum += start[v];
            start[v] = sum;
        }
        edges = new int[sum];
        for (int e = connections.size() - 1; e >= 0; e--) { // from behind, so that each pin's ascend
            if (connections.get(e).closed()) {
                edges[--start[connections.get(e).b()]] = e;
                edges[--start[connections.get(e).a()]] = e;
            }
        }
        via = new int[pins];
        lengthM = new double[pins];
        settled = new boolean[pins];
        seen = new int[pins];
        heap = new int[pins];
        place = new int[pins];
        Arrays.fill(via, -1);
        Arrays.fill(lengthM, Double.NaN);
    }

    /**
     * Walks from these pins to all that no walk has been to before.
     *
     * @param order where the pins are put, nearest first
     * @param from first free place in it
     * @return first free place afterwards
     */
    int walk(int[] starts, int[] order, int from) {
        for (int pin : starts) {
            meet(pin, -1, 0);
        }
        int free = from;
        while (size > 0) {
            int pin = take();
            order[free++] = pin;
            settled[pin] = true;
            for (int i = start[pin]; i < start[pin + 1]; i++) {
                Connection c = connections.get(edges[i]);
                if (c.kind() != Connection.Kind.DIODE || c.a() == pin) {
                    meet(c.other(pin), edges[i], lengthM[pin] + c.lengthM());
                }
            }
        }
        return free;
    }

    private void meet(int pin, int edge, double metres) {
        if (Double.isNaN(lengthM[pin])) {
            seen[pin] = count++;
            place[pin] = size;
            heap[size++] = pin;
        } else if (settled[pin] || !(metres < lengthM[pin])) {
            return;
        }
        via[pin] = edge;
        lengthM[pin] = metres;
        rise(pin);
    }

    private boolean before(int p, int q) {
        return lengthM[p] < lengthM[q] || (lengthM[p] == lengthM[q] && seen[p] < seen[q]);
    }

    private void put(int pin, int at) {
        heap[at] = pin;
        place[pin] = at;
    }

    private void rise(int pin) {
        int at = place[pin];
        while (at > 0 && before(pin, heap[(at - 1) / 2])) {
            put(heap[(at - 1) / 2], at);
            at = (at - 1) / 2;
        }
        put(pin, at);
    }

    private int take() {
        int first = heap[0];
        int pin = heap[--size];
        int at = 0;
        while (2 * at + 1 < size) {
            int child = 2 * at + 1;
            if (child + 1 < size && before(heap[child + 1], heap[child])) {
                child++;
            }
            if (!before(heap[child], pin)) {
                break;
            }
            put(heap[child], at);
            at = child;
        }
        if (size > 0) {
            put(pin, at);
        }
        return first;
    }
}
