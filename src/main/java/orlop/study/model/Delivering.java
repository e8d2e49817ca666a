package orlop.study.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;

/**
 * Finds out, for one operating point, which source delivers to which pin: first those that hold a voltage, then what
 * only charges. A lead to a bank may carry a great charging current: what that drops is not the loads' concern while a
 * bank holds the voltage behind it, even one that is being charged.
 */
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
    private final int[] top; // the pin of the way where it begins to fall

    /** What a walk may follow. */
    private enum Way {
        ALONG_THE_CURRENT,
        /** Along the current, and over what carries nothing. */
        ALONG_NOTHING,
        ANY
    }

    private record Giver(int attachment, int pin, double voltageV) {}

    private record Step(int pin, int via, int source, double lengthM, int top) {}

    Delivering(Operation operation) {
        this.operation = operation;
        network = operation.network();
        connections = network.connections();
        int pins = network.pinCount();
        start = new int[pins + 1];
        source = new int[pins];
        via = new int[pins];
        lengthM = new double[pins];
        top = new int[pins];
        List<Giver> givers = givers();
        Arrays.fill(source, -1);
        Arrays.fill(via, -1);
        Arrays.fill(top, -1);
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
        return new Delivery(network, source, via, lengthM, top);
    }

    private void deliver(List<Giver> givers) {
        List<Giver> holding = givers.stream().filter(g -> holds(g.attachment())).toList();
        List<Giver> charging =
                givers.stream().filter(g -> !holds(g.attachment())).toList();
        spreadInTurn(holding, Way.ALONG_THE_CURRENT);
        spreadInTurn(charged(), Way.ANY);
        spreadInTurn(charging, Way.ALONG_THE_CURRENT);
        idle(givers);
    }

    private boolean holds(int attachment) {
        return network.attachments().get(attachment).role() == Attachment.Role.VOLTAGE_SOURCE;
    }

    private void spreadInTurn(List<Giver> givers, Way way) {
        for (int first = 0; first < givers.size(); ) {
            int next = first + 1;
            while (next < givers.size() && alike(givers.get(first), givers.get(next))) {
                next++;
            }
            spread(givers.subList(first, next), way);
            first = next;
        }
    }

    private static boolean alike(Giver a, Giver b) {
        return a.voltageV() - b.voltageV() <= 1e-9 * a.voltageV();
    }

    /** All that give current, the highest voltage first. */
    private List<Giver> givers() {
        return sources(true);
    }

    /** All that hold a voltage and give nothing just now, the highest voltage first. */
    private List<Giver> charged() {
        return sources(false).stream().filter(g -> holds(g.attachment())).toList();
    }

    private List<Giver> sources(boolean giving) {
        List<Giver> found = new ArrayList<>();
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            if (t.on() && (converter || t.isSource())) {
                double amps = converter ? -operation.currentOfOutput(i) : -operation.currentOfAttachment(i);
                double volts = operation.voltage(network.livePin(i));
                if (!Double.isNaN(volts) && giving == amps > NOTHING_A) {
                    found.add(new Giver(i, network.livePin(i), volts));
                }
            }
        }
        found.sort(Comparator.comparingDouble(g -> -g.voltageV()));
        return found;
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

    private void spread(List<Giver> givers, Way way) {
        PriorityQueue<Step> open = new PriorityQueue<>(Comparator.comparingDouble(Step::lengthM));
        for (Giver g : givers) {
            open.add(new Step(g.pin(), -1, g.attachment(), 0, g.pin()));
        }
        walk(open, way);
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
                go(pin, Way.ALONG_NOTHING, open);
            }
        }
        walk(open, Way.ALONG_NOTHING);
    }

    private void walk(PriorityQueue<Step> open, Way way) {
        while (!open.isEmpty()) {
            Step s = open.remove();
            if (source[s.pin()] < 0) {
                source[s.pin()] = s.source();
                via[s.pin()] = s.via();
                lengthM[s.pin()] = s.lengthM();
                top[s.pin()] = s.top();
                go(s.pin(), way, open);
            }
        }
    }

    private void go(int pin, Way way, PriorityQueue<Step> open) {
        for (int i = start[pin]; i < start[pin + 1]; i++) {
            Connection c = connections.get(edges[i]);
            int other = c.other(pin);
            if (source[other] < 0 && passes(edges[i], c, pin, way)) {
                int begins = rises(edges[i], c, pin) ? other : top[pin];
                open.add(new Step(other, edges[i], source[pin], lengthM[pin] + c.lengthM(), begins));
            }
        }
    }

    /**
     * Whether a charging current comes back along this connection. To a bank that is being charged the voltage falls:
     * what a load behind the fork loses begins at the fork.
     */
    private boolean rises(int edge, Connection c, int from) {
        double amps = operation.currentOfConnection(edge);
        return !operation.isAc(from) && !c.contracted() && (c.a() == from ? amps : -amps) < -NOTHING_A;
    }

    private boolean passes(int edge, Connection c, int from, Way way) {
        if (c.contracted()) {
            return true;
        }
        double amps = operation.currentOfConnection(edge);
        double onward = c.a() == from ? amps : -amps;
        boolean forward = c.kind() != Connection.Kind.DIODE || c.a() == from;
        boolean free = way == Way.ANY || (way == Way.ALONG_NOTHING && !(Math.abs(amps) > NOTHING_A));
        return onward > NOTHING_A || (forward && free);
    }

    /** Takes the feeding path, of the pins for which nothing has been found. */
    private void likeFeeding() {
        for (int pin = 0; pin < source.length; pin++) {
            if (source[pin] < 0) {
                source[pin] = network.feeding().feeds(pin) ? network.feeding().root(pin) : -1;
                via[pin] = network.feeding().via(pin);
                lengthM[pin] = network.feeding().lengthM(pin);
                top[pin] = source[pin] < 0 ? -1 : network.livePin(source[pin]);
            }
        }
    }
}
