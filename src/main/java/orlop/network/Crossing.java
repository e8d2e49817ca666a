package orlop.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Conductors;
import orlop.drawing.Earth;
import orlop.drawing.Kind;
import orlop.drawing.Switching;

/**
 * Ways through a network on which no two switch positions exclude each other: a changeover stands in one position, of the
 * contactors of one interlock one is closed. Transformers are passed too, either way.
 *
 * <p>Positions are not enumerated: the shortest way is looked for, and where two of its positions exclude each other,
 * both are forbidden in turn.
 */
final class Crossing {
    /** So many searches for one pair at most; beyond it the last way is given, as if nothing were shown to part them. */
    private static final int MOST_SEARCHES = 2_000;

    private final Network network;
    private final int[] a;
    private final int[] b;
    private final int[] group; // by edge: of those in one group only one member can be passed; −1 for all else
    private final int[] member;
    private final boolean[] shut;
    private final int[][] at;
    private final Joints together;
    private int searches;

    /** @param asItStands whether only what is closed in this network can be passed; else whatever can be closed */
    Crossing(Network network, boolean asItStands) {
        this.network = network;
        List<Connection> ways = network.connections();
        List<Attachment> transformers = network.attachments().stream()
                .filter(t -> t.component().kind() == Kind.TRANSFORMER && (!asItStands || t.on()))
                .toList();
        int count = ways.size() + transformers.size();
        a = new int[count];
        b = new int[count];
        group = new int[count];
        member = new int[count];
        shut = new boolean[count];
        Arrays.fill(group, -1);
        Map<String, Integer> groups = new HashMap<>();
        for (int e = 0; e < ways.size(); e++) {
            Connection c = ways.get(e);
            a[e] = c.a();
            b[e] = c.b();
            member[e] = e;
            String name = asItStands ? "" : group(c);
            group[e] = name.isEmpty() ? -1 : groups.computeIfAbsent(name, k -> groups.size());
            shut[e] = (asItStands && !c.closed()) || isEarth(c);
        }
        for (int i = 0; i < transformers.size(); i++) {
            a[ways.size() + i] = transformers.get(i).pin();
            b[ways.size() + i] = transformers.get(i).outputPin();
        }
        at = adjacency();
        Joints joints = new Joints(network.pinCount());
        for (int e = 0; e < count; e++) {
            if (!shut[e]) {
                joints.join(a[e], b[e]);
            }
        }
        together = joints;
    }

    private boolean isEarth(Connection c) {
        boolean conductor = c.cable() != null && c.cable().conductors() == Conductors.PE;
        return conductor
                || network.componentOf(c.a()).particulars() instanceof Earth
                || network.componentOf(c.b()).particulars() instanceof Earth;
    }

    private static String group(Connection c) {
        if (c.kind() == Connection.Kind.WAY) {
            return "way of " + c.item();
        }
        Component d = c.device();
        return d != null
                        && d.particulars() instanceof Switching.Contactor k
                        && !k.interlock().isEmpty()
                ? "interlock " + k.interlock()
                : "";
    }

    private int[][] adjacency() {
        int[] degree = new int[network.pinCount()];
        for (int e = 0; e < a.length; e++) {
            degree[a[e]]++;
            degree[b[e]]++;
        }
        int[][] found = new int[degree.length][];
        for (int v = 0; v < found.length; v++) {
            found[v] = new int[degree[v]];
        }
        for (int e = a.length - 1; e >= 0; e--) {
            found[a[e]][--degree[a[e]]] = e;
            found[b[e]][--degree[b[e]]] = e;
        }
        return found;
    }

    /** Forbids or permits the way through an inverter with a transfer switch: while it inverts, it passes nothing. */
    void forbid(Component inverter, boolean forbidden) {
        for (int e : at[network.pin(inverter, 3)]) {
            boolean transfer = e < network.connections().size()
                    && network.connections().get(e).device() != null
                    && network.connections().get(e).theDevice().id().equals(inverter.id());
            shut[e] = transfer ? forbidden : shut[e];
        }
    }

    /** The edges of a way from one pin to another; null if there is none. */
    @Nullable
    List<Integer> way(int from, int to) {
        searches = 0;
        return together.find(from) == together.find(to) ? search(from, to) : null;
    }

    private @Nullable List<Integer> search(int from, int to) {
        List<Integer> way = shortest(from, to);
        int[] clash = way == null ? null : clash(way);
        if (clash == null || ++searches > MOST_SEARCHES) {
            return way;
        }
        for (int e : clash) {
            shut[e] = true;
            List<Integer> other = search(from, to);
            shut[e] = false;
            if (other != null) {
                return other;
            }
        }
        return null;
    }

    /** Two edges of a way that exclude each other; null if there are none. */
    private int @Nullable [] clash(List<Integer> way) {
        Map<Integer, Integer> held = new HashMap<>();
        for (int e : way) {
            Integer other = group[e] < 0 ? null : held.putIfAbsent(group[e], e);
            if (other != null && member[other] != member[e]) {
                return new int[] {other, e};
            }
        }
        return null;
    }

    private @Nullable List<Integer> shortest(int from, int to) {
        int[] via = new int[at.length];
        Arrays.fill(via, -1);
        int[] open = new int[at.length];
        int first = 0;
        int last = 0;
        open[last++] = from;
        while (first < last && via[to] < 0 && from != to) {
            int v = open[first++];
            for (int e : at[v]) {
                int w = other(e, v);
                if (!shut[e] && w != from && via[w] < 0) {
                    via[w] = e;
                    open[last++] = w;
                }
            }
        }
        if (from != to && via[to] < 0) {
            return null;
        }
        List<Integer> way = new ArrayList<>();
        for (int v = to; v != from; v = other(via[v], v)) {
            way.add(via[v]);
        }
        Collections.reverse(way);
        return way;
    }

    private int other(int e, int pin) {
        return a[e] == pin ? b[e] : a[e];
    }

    /** What stands on a way, from pin to pin: components and cables, each once. */
    List<String> tags(int from, List<Integer> way) {
        List<String> tags = new ArrayList<>();
        int here = from;
        add(tags, network.componentOf(here).id());
        for (int e : way) {
            if (e < network.connections().size()) {
                Connection c = network.connections().get(e);
                if (c.cable() != null) {
                    add(tags, c.item());
                }
            }
            here = other(e, here);
            add(tags, network.componentOf(here).id());
        }
        return tags;
    }

    private static void add(List<String> tags, String tag) {
        if (tags.isEmpty() || !tags.get(tags.size() - 1).equals(tag)) {
            tags.add(tag);
        }
    }
}
