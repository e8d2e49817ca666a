package orlop.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

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
        root = new int[pins];
        order = new int[pins];
        Arrays.fill(root, -1);
        Nearest nearest = new Nearest(pins, connections);
        via = nearest.via;
        lengthM = nearest.lengthM;
        spread(nearest, attachments, Attachment.Role.VOLTAGE_SOURCE);
        spread(nearest, attachments, Attachment.Role.OTHER_SOURCE);
        int before;
        do { // a converter may feed the next
            before = reached;
            spread(nearest, attachments, Attachment.Role.CONVERTER);
        } while (reached > before);
    }

    private void spread(Nearest nearest, List<Attachment> attachments, Attachment.Role role) {
        int[] rootOfPin = new int[root.length];
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
        int first = reached;
        reached = nearest.walk(Arrays.copyOf(roots, n), order, first);
        for (int k = first; k < reached; k++) {
            int before = before(order[k]);
            root[order[k]] = before < 0 ? rootOfPin[order[k]] : root[before];
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
