package orlop.study.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;

/** Finds out, for one operating point, which source delivers to which pin. */
final class Delivering {
    /** Below this many amperes a way carries nothing. */
    private static final double NOTHING_A = 1e-9;

    private final Operation operation;
    private final Network network;
    private final List<Connection> connections;
    private final int[] start; // closed connections at each pin
    private final int[] edges;
    private final int[] source;
    private final int[] via;
    private final double[] lengthM;

    private record Giver(int attachment, int pin, double voltageV) {}

    private record Step(int pin, int via, int source, double lengthM) {}

    Delivering(Operation operation) {
        this.operation = operation;
        network = operation.network();
        connections = network.connections();
        int pins = network.pinCount();
        start = new int[pins + 1];
        source = new int[pins];
        via = new int[pins];
        lengthM = new double[pins];
        List<Giver> givers = givers();
        Arrays.fill(source, -1);
        Arrays.fill(via, -1);
        Arrays.fill(lengthM, Double.NaN);
        if (isForest(givers)) {
            edges = new int[0];
        } else {
            edges = adjacency();
            deliver(givers);
        }
        likeFeeding();
    }

    Delivery found() {
        return new Delivery(network, source, via, lengthM);
    }

    private void deliver(List<Giver> givers) {
        for (int first = 0; first < givers.size(); ) {
            int next = first + 1;
            while (next < givers.size() && alike(givers.get(first), givers.get(next))) {
                next++;
            }
            spread(givers.subList(first, next));
            first = next;
        }
        idle(givers);
    }

    private static boolean alike(Giver a, Giver b) {
        return a.voltageV() - b.voltageV() <= 1e-9 * a.voltageV();
    }

    /** All that give current, the highest voltage first. */
    private List<Giver> givers() {
        List<Giver> givers = new ArrayList<>();
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            if (t.on() && (converter || t.isSource())) {
                double amps = converter ? -operation.currentOfOutput(i) : -operation.currentOfAttachment(i);
                int pin = converter ? t.outputPin() : t.pin();
                double volts = amps > NOTHING_A ? operation.voltage(pin) : Double.NaN;
                if (!Double.isNaN(volts)) {
                    givers.add(new Giver(i, pin, volts));
                }
            }
        }
        givers.sort(Comparator.comparingDouble(g -> -g.voltageV()));
        return givers;
    }

    /** Whether no closed connection closes a ring and every source has a tree to itself: then the ways are given. */
    private boolean isForest(List<Giver> givers) {
        for (Giver g : givers) {
            if (network.feeding().via(g.pin()) >= 0 || network.feeding().root(g.pin()) != g.attachment()) {
                return false;
            }
        }
        int inner = 0; // pins that something feeds, without the roots
        for (int pin = 0; pin < source.length; pin++) {
            inner += network.feeding().via(pin) >= 0 ? 1 : 0;
        }
        for (Connection c : connections) {
            inner -= c.closed()
                            && network.feeding().feeds(c.a())
                            && network.feeding().feeds(c.b())
                    ? 1
                    : 0;
        }
        return inner == 0;
    }

    private int[] adjacency() {
        for (Connection c : connections) {
            if (c.closed()) {
                start[c.a() + 1]++;
                start[c.b() + 1]++;
            }
        }
        for (int pin = 0; pin < source.length; pin++) {
            start[pin + 1] += start[pin];
        }
        int[] found = new int[start[source.length]];
        int[] next = start.clone();
        for (int e = 0; e < connections.size(); e++) {
            Connection c = connections.get(e);
            if (c.closed()) {
                found[next[c.a()]++] = e;
                found[next[c.b()]++] = e;
            }
        }
        return found;
    }

    private void spread(List<Giver> givers) {
        PriorityQueue<Step> open = new PriorityQueue<>(Comparator.comparingDouble(Step::lengthM));
        for (Giver g : givers) {
            open.add(new Step(g.pin(), -1, g.attachment(), 0));
        }
        walk(open, false);
    }

    /** Carries on to pins that no current reaches, over what carries nothing. */
    private void idle(List<Giver> givers) {
        int[] rank = new int[network.attachments().size()];
        for (int i = 0; i < givers.size(); i++) {
            rank[givers.get(i).attachment()] = i > 0 && alike(givers.get(i - 1), givers.get(i))
                    ? rank[givers.get(i - 1).attachment()]
                    : i;
        }
        PriorityQueue<Step> open = new PriorityQueue<>(
                Comparator.<Step>comparingInt(s -> rank[s.source()]).thenComparingDouble(Step::lengthM));
        for (int pin = 0; pin < source.length; pin++) {
            if (source[pin] >= 0) {
                go(pin, true, open);
            }
        }
        walk(open, true);
    }

    private void walk(PriorityQueue<Step> open, boolean idle) {
        while (!open.isEmpty()) {
            Step s = open.remove();
            if (source[s.pin()] < 0) {
                source[s.pin()] = s.source();
                via[s.pin()] = s.via();
                lengthM[s.pin()] = s.lengthM();
                go(s.pin(), idle, open);
            }
        }
    }

    private void go(int pin, boolean idle, PriorityQueue<Step> open) {
        for (int i = start[pin]; i < start[pin + 1]; i++) {
            Connection c = connections.get(edges[i]);
            int other = c.other(pin);
            if (source[other] < 0 && passes(edges[i], c, pin, idle)) {
                open.add(new Step(other, edges[i], source[pin], lengthM[pin] + c.lengthM()));
            }
        }
    }

    private boolean passes(int edge, Connection c, int from, boolean idle) {
        if (c.contracted()) {
            return true;
        }
        double amps = operation.currentOfConnection(edge);
        double onward = c.a() == from ? amps : -amps;
        boolean forward = c.kind() != Connection.Kind.DIODE || c.a() == from;
        return onward > NOTHING_A || (idle && forward && !(Math.abs(amps) > NOTHING_A));
    }

    /** Takes the feeding path, of the pins for which nothing has been found. */
    private void likeFeeding() {
        for (int pin = 0; pin < source.length; pin++) {
            if (source[pin] < 0) {
                source[pin] = network.feeding().feeds(pin) ? network.feeding().root(pin) : -1;
                via[pin] = network.feeding().via(pin);
                lengthM[pin] = network.feeding().lengthM(pin);
            }
        }
    }
}
