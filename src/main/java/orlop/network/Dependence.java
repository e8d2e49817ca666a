package orlop.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import orlop.drawing.Component;

/**
 * What depends on one connection alone: the components that no source feeds any more once it is taken away.
 *
 * <p>It follows switch positions and diodes as they stand, converters from their input to their output, and lets an
 * inverter/charger take over from its battery when its input fails. Only feeding counts: a cable in a drawn return has no
 * dependents here. Built in time hardly more than in proportion to the size of the network; counts are at hand, lists
 * are made when asked for. Immutable.
 */
public final class Dependence {
    private final Network network;
    private final Dominators dominators;
    private final int[] order; // components that are fed, by their place in the dominator tree
    private final int[] before; // by place: how many components have a lower one

    /** Of a network as it stands in its condition. */
    public Dependence(Network network) {
        this.network = network;
        Arcs arcs = new Arcs(network);
        dominators = new Dominators(arcs.vertexCount(), arcs.root(), arcs.from(), arcs.to());
        int[] componentAt = new int[dominators.reached()];
        Arrays.fill(componentAt, -1);
        for (int c = 0; c < network.componentCount(); c++) {
            int place = dominators.place(arcs.component(c));
            if (place >= 0) {
                componentAt[place] = c;
            }
        }
        before = new int[componentAt.length + 1];
        int n = 0;
        int[] found = new int[network.componentCount()];
        for (int place = 0; place < componentAt.length; place++) {
            before[place] = n;
            if (componentAt[place] >= 0) {
                found[n++] = componentAt[place];
            }
        }
        before[componentAt.length] = n;
        order = Arrays.copyOf(found, n);
    }

    /** How many components depend on the connection of this number alone; 0 if it is open or nothing feeds it. */
    public int count(int connection) {
        int place = dominators.place(network.pinCount() + connection);
        return place < 0 ? 0 : before[end(connection)] - before[place];
    }

    private int end(int connection) {
        int vertex = network.pinCount() + connection;
        return dominators.place(vertex) + dominators.size(vertex);
    }

    /**
     * The components that depend on it alone, in the order of the drawing.
     *
     * @param most of how many at most; the list is cut off there
     */
    public List<Component> on(int connection, int most) {
        int place = dominators.place(network.pinCount() + connection);
        if (place < 0) {
            return List.of();
        }
        int[] found = Arrays.copyOfRange(order, before[place], before[end(connection)]);
        Arrays.sort(found);
        List<Component> components = new ArrayList<>();
        for (int i = 0; i < found.length && i < most; i++) {
            components.add(network.component(found[i]));
        }
        return components;
    }

    /** As {@link #on(int, int)}, all of them. */
    public List<Component> on(int connection) {
        return on(connection, Integer.MAX_VALUE);
    }
}
