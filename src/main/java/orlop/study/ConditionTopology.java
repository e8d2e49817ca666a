package orlop.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Dependence;
import orlop.network.Loops;
import orlop.network.NetPoint;
import orlop.network.Network;
import orlop.network.Reaches;
import orlop.network.Reaches.FedFrom;

/** {@link Topology} of one condition: ids in place of pins and numbers. */
final class ConditionTopology {
    /** Above this many pins only the nearest source is given, and this many tags of loops altogether at most. */
    private static final int ALL_UP_TO = 4_000;

    private static final int LOOP_TAGS = 10_000;

    private final Drawing drawing;
    private final Network network;
    private final Reaches reaches;
    private final Map<String, Integer> cables = new HashMap<>();
    private final Map<String, Integer> pinOfPoint = new HashMap<>();
    private @Nullable Dependence dependence;

    ConditionTopology(Drawing drawing, Network network) {
        this.drawing = drawing;
        this.network = network;
        reaches = new Reaches(network);
        for (int e = 0; e < network.connections().size(); e++) {
            if (network.connections().get(e).cable() != null) {
                cables.put(network.connections().get(e).item(), e);
            }
        }
        double[] nearest = new double[network.points().size()];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        for (int pin = 0; pin < network.pinCount(); pin++) {
            int point = network.pointOf(pin);
            double lengthM = network.feeding().feeds(pin) ? network.feeding().lengthM(pin) : Double.NaN;
            if (point >= 0 && lengthM < nearest[point]) {
                nearest[point] = lengthM;
                pinOfPoint.put(network.points().get(point).id(), pin);
            }
        }
    }

    private Dependence dependence() {
        if (dependence == null) {
            dependence = new Dependence(network);
        }
        return dependence;
    }

    /** Whether the drawing has the cable in this condition and it lies in no drawn return. */
    boolean feeds(String cable) {
        Integer e = cables.get(cable);
        return e != null
                && !network.isReturn(
                        network.pointOf(network.connections().get(e).a()))
                && !network.isReturn(
                        network.pointOf(network.connections().get(e).b()));
    }

    int dependentCount(String cable) {
        Integer e = cables.get(cable);
        return e == null ? 0 : dependence().count(e);
    }

    List<String> dependents(String cable, int most) {
        Integer e = cables.get(cable);
        return e == null
                ? List.of()
                : dependence().on(e, most).stream().map(Component::id).toList();
    }

    List<FedFrom> fedFromPoint(String point) {
        Integer pin = pinOfPoint.get(point);
        return pin == null ? List.of() : fedFrom(pin);
    }

    List<FedFrom> fedFromComponent(String id) {
        Component c = drawing.components().get(id);
        int terminals = c == null || c.kind().isOnePiece()
                ? 1
                : c.particulars().terminals().size();
        for (int n = 1; c != null && n <= terminals; n++) { // of a converter, its input comes first
            int pin = network.pin(c, n);
            if (network.feeding().feeds(pin)) {
                return fedFrom(pin);
            }
        }
        return List.of();
    }

    private List<FedFrom> fedFrom(int pin) {
        if (network.pinCount() <= ALL_UP_TO) {
            return reaches.fedFrom(pin);
        }
        Attachment root = network.attachments().get(network.feeding().root(pin));
        return List.of(new FedFrom(root.component().id(), network.feeding().lengthM(pin)));
    }

    List<IslandResult> islands() {
        Loops loops = new Loops(network);
        NetPoint[] first = new NetPoint[loops.islandCount()];
        int[] points = new int[loops.islandCount()];
        boolean[] seen = new boolean[network.points().size()];
        for (int pin = 0; pin < network.pinCount(); pin++) {
            int point = network.pointOf(pin);
            int island = loops.islandOf(pin);
            if (point >= 0 && !seen[point] && network.feeding().feeds(pin)) {
                seen[point] = true;
                points[island]++;
                first[island] = first[island] == null ? network.points().get(point) : first[island];
            }
        }
        List<List<String>> sources = sources(loops);
        List<IslandResult> found = new ArrayList<>();
        int room = LOOP_TAGS;
        for (int i = 0; i < first.length; i++) {
            NetPoint p = first[i];
            if (p != null) {
                List<List<String>> rounds = rounds(loops, i, room);
                room -= rounds.stream().mapToInt(List::size).sum();
                found.add(new IslandResult(
                        p.id(),
                        p.system(),
                        points[i],
                        sources.get(i),
                        loops.chords(i).size(),
                        rounds));
            }
        }
        return found;
    }

    private List<List<String>> sources(Loops loops) {
        List<List<String>> sources = new ArrayList<>();
        for (int i = 0; i < loops.islandCount(); i++) {
            sources.add(new ArrayList<>(1));
        }
        for (Attachment t : network.attachments()) {
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            boolean feeds =
                    t.on() && (t.isSource() || (converter && network.feeding().feeds(t.pin())));
            if (feeds) {
                sources.get(loops.islandOf(converter ? t.outputPin() : t.pin()))
                        .add(t.component().id());
            }
        }
        return sources;
    }

    private List<List<String>> rounds(Loops loops, int island, int room) {
        List<List<String>> rounds = new ArrayList<>();
        int left = room;
        for (int chord : loops.chords(island)) {
            List<Integer> round = left > 0 ? loops.loop(chord) : List.of();
            left -= round.size();
            if (left >= 0 && !round.isEmpty()) {
                rounds.add(tags(round));
            }
        }
        return rounds;
    }

    /** Cables and devices as they are, links by the component at their far end. */
    private List<String> tags(List<Integer> round) {
        List<String> tags = new ArrayList<>();
        int at = network.connections().get(round.get(0)).a();
        for (int e : round) {
            Connection c = network.connections().get(e);
            if (c.cable() != null || c.device() != null) {
                add(tags, c.item());
            }
            at = c.other(at);
            add(tags, network.componentOf(at).id());
        }
        if (tags.size() > 1 && tags.get(0).equals(tags.get(tags.size() - 1))) {
            tags.remove(tags.size() - 1);
        }
        return tags;
    }

    private static void add(List<String> tags, String tag) {
        if (tags.isEmpty() || !tags.get(tags.size() - 1).equals(tag)) {
            tags.add(tag);
        }
    }
}
