package orlop.study.flow;

import java.util.Arrays;
import java.util.List;
import orlop.network.Connection;
import orlop.network.Network;

/**
 * Currents through what has no impedance: within a point Kirchhoff's law fixes them, as long as its connections form
 * a tree. Where they form a ring, the shares in the ring are not determined: NaN.
 */
public final class PinCurrents {
    private final List<Connection> connections;
    private final double[] current;
    private final int[] via;
    private final int[] before;
    private final int[] depth;
    private final int[] jump;

    /**
     * @param leaving by pin: sum of the currents that leave the pin through parts; is used up
     * @param contracted which connections count as having no impedance
     */
    public PinCurrents(Network network, double[] leaving, boolean[] contracted) {
        connections = network.connections();
        int pins = any(contracted) ? network.pinCount() : 0;
        current = new double[connections.size()];
        Arrays.fill(current, Double.NaN);
        via = new int[pins];
        before = new int[pins];
        depth = new int[pins];
        jump = new int[pins];
        Arrays.fill(depth, -1);
        int[] order = tree(pins, contracted);
        for (int k = pins - 1; k >= 0; k--) {
            int pin = order[k];
            if (via[pin] >= 0) {
                Connection c = connections.get(via[pin]);
                current[via[pin]] = c.a() == pin ? -leaving[pin] : leaving[pin];
                leaving[before[pin]] += leaving[pin];
            }
        }
        for (int e = 0; e < current.length; e++) {
            Connection c = connections.get(e);
            if (contracted[e] && via[c.a()] != e && via[c.b()] != e) {
                ring(c.a(), c.b());
            }
        }
    }

    private static boolean any(boolean[] contracted) {
        for (boolean c : contracted) {
            if (c) {
                return true;
            }
        }
        return false;
    }

    private int[] tree(int pins, boolean[] contracted) {
        int[] start = new int[pins + 1];
        for (int e = 0; e < contracted.length; e++) {
            if (contracted[e]) {
                start[connections.get(e).a() + 1]++;
                start[connections.get(e).b() + 1]++;
            }
        }
        for (int v = 0; v < pins; v++) {
            start[v + 1] += start[v];
        }
        int[] edges = new int[start[pins]];
        int[] next = start.clone();
        for (int e = 0; e < contracted.length; e++) {
            if (contracted[e]) {
                edges[next[connections.get(e).a()]++] = e;
                edges[next[connections.get(e).b()]++] = e;
            }
        }
        int[] order = new int[pins];
        int filled = 0;
        for (int first = 0; first < pins; first++) {
            if (depth[first] >= 0) {
                continue;
            }
            root(first);
            int at = filled;
            order[filled++] = first;
            while (at < filled) {
                int pin = order[at++];
                for (int i = start[pin]; i < start[pin + 1]; i++) {
                    int other = connections.get(edges[i]).other(pin);
                    if (depth[other] < 0) {
                        hang(other, pin, edges[i]);
                        order[filled++] = other;
                    }
                }
            }
        }
        return order;
    }

    private void root(int pin) {
        depth[pin] = 0;
        via[pin] = -1;
        before[pin] = -1;
        jump[pin] = pin;
    }

    private void hang(int pin, int from, int edge) {
        depth[pin] = depth[from] + 1;
        via[pin] = edge;
        before[pin] = from;
        jump[pin] = pin;
    }

    /** The highest pin that is reached from this one over connections already known to lie in a ring. */
    private int top(int pin) {
        int at = pin;
        while (jump[at] != at) {
            jump[at] = jump[jump[at]];
            at = jump[at];
        }
        return at;
    }

    private void ring(int a, int b) {
        int p = top(a);
        int q = top(b);
        while (p != q) {
            int deeper = depth[p] >= depth[q] ? p : q;
            current[via[deeper]] = Double.NaN;
            jump[deeper] = before[deeper];
            if (deeper == p) {
                p = top(p);
            } else {
                q = top(q);
            }
        }
    }

    /** Current from a to b of a connection; NaN where it is not determined or has an impedance. */
    public double of(int connection) {
        return current[connection];
    }
}
