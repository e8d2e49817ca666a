package orlop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jgrapht.traverse.ClosestFirstIterator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Shortest ways beside those of JGraphT's iterator, with diodes, open ways, parallel ones and ones of no length. */
class NearestTest {
    private static final int PINS = 30;

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    private static List<Connection> connections(Random random) {
        List<Connection> all = new ArrayList<>();
        int count = 10 + random.nextInt(60);
        for (int e = 0; e < count; e++) {
            Connection.Kind kind = random.nextInt(4) == 0 ? Connection.Kind.DIODE : Connection.Kind.CABLE;
            int a = random.nextInt(PINS);
            int b = (a + 1 + random.nextInt(PINS - 1)) % PINS;
            boolean closed = random.nextInt(8) > 0;
            all.add(new Connection(kind, "W" + e, a, b, random.nextInt(5), 0, closed, false, null, null, null));
        }
        return all;
    }

    private static double[] byJGraphT(List<Connection> all, int... starts) {
        List<Connection> closed = all.stream().filter(Connection::closed).toList();
        boolean[] oneWay = new boolean[closed.size()];
        for (int e = 0; e < oneWay.length; e++) {
            oneWay[e] = closed.get(e).kind() == Connection.Kind.DIODE;
        }
        ArrayGraph graph = new ArrayGraph(
                PINS,
                closed.stream().mapToInt(Connection::a).toArray(),
                closed.stream().mapToInt(Connection::b).toArray(),
                closed.stream().mapToDouble(Connection::lengthM).toArray(),
                oneWay);
        graph.startAt(starts, v -> false);
        ClosestFirstIterator<Integer, Integer> closest = new ClosestFirstIterator<>(graph, graph.extra());
        closest.next();
        double[] lengthM = new double[PINS];
        Arrays.fill(lengthM, Double.NaN);
        while (closest.hasNext()) {
            int pin = closest.next();
            lengthM[pin] = closest.getShortestPathLength(pin);
        }
        return lengthM;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ways_are_as_long_as_those_of_a_library_and_lead_back_to_a_start(int seed) {
        Random random = new Random(seed);
        List<Connection> all = connections(random);
        int first = random.nextInt(PINS);
        int second = (first + 1 + random.nextInt(PINS - 1)) % PINS;
        Nearest nearest = new Nearest(PINS, all);
        int[] order = new int[PINS];

        int reached = nearest.walk(new int[] {first, second}, order, 0);

        assertThat(nearest.lengthM).containsExactly(byJGraphT(all, first, second), within(1e-9));
        double last = 0;
        for (int k = 0; k < reached; k++) {
            int pin = order[k];
            assertThat(nearest.lengthM[pin]).isGreaterThanOrEqualTo(last);
            last = nearest.lengthM[pin];
            int via = nearest.via[pin];
            if (via < 0) {
                assertThat(pin).isIn(first, second);
            } else {
                double before = nearest.lengthM[all.get(via).other(pin)];
                assertThat(before + all.get(via).lengthM()).isEqualTo(last);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_later_walk_leaves_alone_what_an_earlier_one_has_reached(int seed) {
        Random random = new Random(seed);
        List<Connection> all = connections(random);
        Nearest nearest = new Nearest(PINS, all);
        int[] order = new int[PINS];
        int reached = nearest.walk(new int[] {0}, order, 0);
        double[] before = nearest.lengthM.clone();

        int after = nearest.walk(new int[] {1}, order, reached);

        for (int k = 0; k < reached; k++) {
            assertThat(nearest.lengthM[order[k]]).isEqualTo(before[order[k]]);
        }
        assertThat(Arrays.stream(order, 0, after).distinct().count()).isEqualTo(after);
    }
}
