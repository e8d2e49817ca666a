package orlop.network;

import java.util.Arrays;

/**
 * A network as ways that feeding can take: a vertex for each pin, each connection, each component, and one from which
 * every source starts. A connection is a vertex, so that taking it away shuts both of its directions at once.
 */
final class Arcs {
    private final Network network;
    private final int pins;
    private final int connections;
    private int count;
    private int[] from = new int[64];
    private int[] to = new int[64];

    Arcs(Network network) {
        this.network = network;
        pins = network.pinCount();
        connections = network.connections().size();
        for (int e = 0; e < connections; e++) {
            connection(e);
        }
        network.attachments().forEach(this::attachment);
        for (int pin = 0; pin < pins; pin++) {
            arc(pin, component(network.positionOf(pin)));
        }
    }

    private void connection(int e) {
        Connection c = network.connections().get(e);
        int vertex = pins + e;
        if (!c.closed()) {
            return;
        }
        arc(c.a(), vertex);
        arc(vertex, c.b());
        boolean transfer = c.kind() == Connection.Kind.DEVICE && Wiring.hasTransfer(c.theDevice());
        if (transfer) { // if the input failed, the inverter would take over
            arc(network.pin(c.theDevice(), 1), c.b());
        } else if (c.kind() != Connection.Kind.DIODE) {
            arc(c.b(), vertex);
            arc(vertex, c.a());
        }
    }

    private void attachment(Attachment t) {
        if (t.on() && t.isSource()) {
            arc(root(), t.pin());
        } else if (t.on() && t.role() == Attachment.Role.CONVERTER) {
            arc(t.pin(), t.outputPin());
        }
    }

    private void arc(int tail, int head) {
        if (count == from.length) {
            from = Arrays.copyOf(from, 2 * count);
            to = Arrays.copyOf(to, 2 * count);
        }
        from[count] = tail;
        to[count++] = head;
    }

    int vertexCount() {
        return root() + 1;
    }

    int root() {
        return component(network.componentCount());
    }

    /** The vertex of the component at this position in the drawing. */
    int component(int position) {
        return pins + connections + position;
    }

    int[] from() {
        return Arrays.copyOf(from, count);
    }

    int[] to() {
        return Arrays.copyOf(to, count);
    }
}
