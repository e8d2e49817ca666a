package orlop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lengths from every source to every pin against relaxing all connections until nothing gets shorter. */
class ReachesTest {
    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    private static double[] relaxed(Network n, int start) {
        double[] lengthM = new double[n.pinCount()];
        Arrays.fill(lengthM, Double.POSITIVE_INFINITY);
        lengthM[start] = 0;
        boolean shorter = true;
        while (shorter) {
            shorter = false;
            for (Connection c : n.connections()) {
                boolean there = c.closed() && lengthM[c.a()] + c.lengthM() < lengthM[c.b()];
                boolean back = c.closed()
                        && c.kind() != Connection.Kind.DIODE
                        && lengthM[c.b()] + c.lengthM() < lengthM[c.a()];
                lengthM[c.b()] = there ? lengthM[c.a()] + c.lengthM() : lengthM[c.b()];
                lengthM[c.a()] = back ? lengthM[c.b()] + c.lengthM() : lengthM[c.a()];
                shorter |= there || back;
            }
        }
        return lengthM;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_source_that_feeds_a_pin_is_given_with_its_shortest_way(int seed) {
        Network n = RandomWiring.network(RandomWiring.drawing(seed));
        Map<String, double[]> lengths = new HashMap<>();
        for (Attachment t : n.attachments()) {
            boolean converter = t.role() == Attachment.Role.CONVERTER;
            if (t.on() && (t.isSource() || (converter && n.feeding().feeds(t.pin())))) {
                lengths.put(t.component().id(), relaxed(n, converter ? t.outputPin() : t.pin()));
            }
        }
        Reaches reaches = new Reaches(n);
        for (int pin = 0; pin < n.pinCount(); pin++) {
            int at = pin;
            List<String> expected = lengths.keySet().stream()
                    .filter(id -> lengths.getOrDefault(id, new double[0])[at] < Double.POSITIVE_INFINITY)
                    .toList();
            List<Reaches.FedFrom> found = reaches.fedFrom(pin);

            assertThat(found).extracting(Reaches.FedFrom::source).containsExactlyInAnyOrderElementsOf(expected);
            assertThat(found).extracting(Reaches.FedFrom::lengthM).isSorted();
            assertThat(found.isEmpty()).isNotEqualTo(n.feeding().feeds(pin));
            for (Reaches.FedFrom f : found) {
                assertThat(f.lengthM()).isCloseTo(lengths.getOrDefault(f.source(), new double[0])[pin], within(1e-9));
            }
        }
    }
}
