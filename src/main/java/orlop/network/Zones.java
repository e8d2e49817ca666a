package orlop.network;

import java.util.Arrays;
import java.util.List;

/**
 * A network parted at certain connections, its devices against overcurrent: what lies between them are zones. Says for
 * each device which sources lie on its other side. Time in proportion to the size of the network.
 */
public final class Zones {
    private final List<Connection> connections;
    private final boolean[] cut;
    private final int[] zoneOfPin;
    private final int zones;
    private final int[] strong; // by zone, then of the whole subtree
    private final double[] limited;
    private final int[] total; // sources of the component, by its first zone
    private final double[] totalLimited;
    private final int[] home; // first zone of the component
    private final int[] parentEdge;
    private final boolean[] bridge;

    /**
     * @param cut by connection: whether the network is parted there
     * @param strongAt by pin: how many sources that nothing limits
     * @param limitedAt by pin: sum of the limits of the others, in amperes
     */
    public Zones(Network network, boolean[] cut, int[] strongAt, double[] limitedAt) {
        connections = network.connections();
        this.cut = cut.clone();
        int pins = network.pinCount();
        Joints joints = new Joints(pins);
        for (int e = 0; e < connections.size(); e++) {
            if (!cut[e] && connections.get(e).closed()) {
                joints.join(connections.get(e).a(), connections.get(e).b());
            }
        }
        zoneOfPin = new int[pins];
        int n = 0;
        for (int pin = 0; pin < pins; pin++) {
            zoneOfPin[pin] = joints.find(pin) == pin ? n++ : zoneOfPin[joints.find(pin)];
        }
        zones = n;
        strong = new int[n];
        limited = new double[n];
        for (int pin = 0; pin < pins; pin++) {
            strong[zoneOfPin[pin]] += strongAt[pin];
            limited[zoneOfPin[pin]] += limitedAt[pin];
        }
        total = new int[n];
        totalLimited = new double[n];
        home = new int[n];
        parentEdge = new int[n];
        bridge = new boolean[connections.size()];
        search();
    }

    private int[][] adjacency() {
        int[] degree = new int[zones];
        for (int e = 0; e < cut.length; e++) {
            if (cut[e]) {
                degree[zoneOfPin[connections.get(e).a()]]++;
                degree[zoneOfPin[connections.get(e).b()]]++;
            }
        }
        int[][] at = new int[zones][];
        for (int z = 0; z < zones; z++) {
            at[z] = new int[degree[z]];
        }
        for (int e = 0; e < cut.length; e++) {
            if (cut[e]) {
                int za = zoneOfPin[connections.get(e).a()];
                int zb = zoneOfPin[connections.get(e).b()];
                at[za][--degree[za]] = e;
                at[zb][--degree[zb]] = e;
            }
        }
        return at;
    }

    private int other(int edge, int zone) {
        int za = zoneOfPin[connections.get(edge).a()];
        return za == zone ? zoneOfPin[connections.get(edge).b()] : za;
    }

    /** Depth-first search with the lowest place that each subtree reaches (J. Hopcroft and R. Tarjan, 1973). */
    private void search() {
        int[][] at = adjacency();
        int[] place = new int[zones];
        int[] low = new int[zones];
        int[] next = new int[zones];
        int[] stack = new int[zones];
        Arrays.fill(place, -1);
        int places = 0;
        for (int first = 0; first < zones; first++) {
            if (place[first] >= 0) {
                continue;
            }
            int depth = 0;
            stack[depth++] = first;
            parentEdge[first] = -1;
            place[first] = low[first] = places++;
            home[first] = first;
            while (depth > 0) {
                int z = stack[depth - 1];
                if (next[z] < at[z].length) {
                    int e = at[z][next[z]++];
                    int w = other(e, z);
                    if (place[w] < 0) {
                        place[w] = low[w] = places++;
                        parentEdge[w] = e;
                        home[w] = first;
                        stack[depth++] = w;
                    } else if (e != parentEdge[z]) {
                        low[z] = Math.min(low[z], place[w]);
                    }
                } else {
                    depth--;
                    leave(z, depth > 0 ? stack[depth - 1] : -1, low, place);
                }
            }
            total[first] = strong[first];
            totalLimited[first] = limited[first];
        }
    }

    private void leave(int z, int parent, int[] low, int[] place) {
        if (parent >= 0) {
            low[parent] = Math.min(low[parent], low[z]);
            bridge[parentEdge[z]] = low[z] == place[z];
            strong[parent] += strong[z];
            limited[parent] += limited[z];
        }
    }

    /** Number of the zone in which a pin lies. */
    public int zoneOf(int pin) {
        return zoneOfPin[pin];
    }

    public int count() {
        return zones;
    }

    /** Whether the network falls apart without this cut connection. */
    public boolean isBridge(int connection) {
        return bridge[connection];
    }

    /**
     * How many sources that nothing limits lie beyond a cut connection, as seen from the zone of {@code pin}, one of
     * its ends. In a ring every source of the ring does.
     */
    public int strongBeyond(int connection, int pin) {
        int zone = zoneOfPin[pin];
        int all = total[home[zone]];
        if (!bridge[connection]) {
            return all;
        }
        int child = child(connection);
        return child == zone ? all - strong[child] : strong[child];
    }

    /** As {@link #strongBeyond}: the sum of the limits of the limited sources there, in amperes. */
    public double limitedBeyond(int connection, int pin) {
        int zone = zoneOfPin[pin];
        double all = totalLimited[home[zone]];
        if (!bridge[connection]) {
            return all;
        }
        int child = child(connection);
        return child == zone ? all - limited[child] : limited[child];
    }

    private int child(int connection) {
        int za = zoneOfPin[connections.get(connection).a()];
        return parentEdge[za] == connection
                ? za
                : zoneOfPin[connections.get(connection).b()];
    }
}
