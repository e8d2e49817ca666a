package orlop.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jgrapht.traverse.ClosestFirstIterator;

/**
 * Which sources feed a pin, and over what length: each on its own shortest way, cables and links counted, as switches
 * and diodes stand. A converter counts as a source of what hangs on its output if something feeds its input.
 *
 * <p>Each question costs a search of the pin's island, no more is kept. Not safe for several threads.
 */
public final class Reaches {
    private final Network network;
    private final ArrayGraph graph;
    private final List<List<Integer>> startingAt = new ArrayList<>();

    /**
     * A source that feeds a place.
     *
     * @param source id of the source, or of the converter
     * @param lengthM of the shortest way from it
     */
    public record FedFrom(String source, double lengthM) {}

    /** Of a network as it stands in its condition. */
    public Reaches(Network network) {
        this.network = network;
        graph = new ClosedGraph(network, true).graph();
        for (int pin = 0; pin < network.pinCount(); pin++) {
            startingAt.add(List.of());
        }
        for (int i = 0; i < network.attachments().size(); i++) {
            int pin = start(i);
            if (pin >= 0) {
                List<Integer> here = new ArrayList<>(startingAt.get(pin));
                here.add(i);
                startingAt.set(pin, here);
            }
        }
    }

    /** The pin from which an attachment feeds; −1 if it doesn't. */
    private int start(int attachment) {
        Attachment t = network.attachments().get(attachment);
        if (!t.on() || t.role() == Attachment.Role.LOAD) {
            return -1;
        }
        boolean converter = t.role() == Attachment.Role.CONVERTER;
        return !converter ? t.pin() : network.feeding().feeds(t.pin()) ? t.outputPin() : -1;
    }

    /** The sources that feed a pin, nearest first, of equal ones in the order of the drawing. */
    public List<FedFrom> fedFrom(int pin) {
        List<Integer> found = new ArrayList<>();
        graph.startAt(new int[] {pin}, v -> false);
        ClosestFirstIterator<Integer, Integer> closest = new ClosestFirstIterator<>(graph, graph.extra());
        closest.next(); // the extra vertex itself
        double[] lengthM = new double[network.attachments().size()];
        while (closest.hasNext()) {
            int at = closest.next();
            for (int i : startingAt.get(at)) {
                lengthM[i] = closest.getShortestPathLength(at);
                found.add(i);
            }
        }
        found.sort(Comparator.<Integer>comparingDouble(i -> lengthM[i]).thenComparing(i -> i));
        return found.stream()
                .map(i -> new FedFrom(network.attachments().get(i).component().id(), lengthM[i]))
                .toList();
    }
}
