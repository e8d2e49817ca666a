package orlop.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.OperatingCondition;
import orlop.study.Sketch;

/** Islands, loops and bridges against flooding the network with a connection taken away. */
class LoopsTest {
    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    /** All pins that are joined to this one by closed connections other than {@code without}. */
    private static Set<Integer> flood(Network n, int from, int without) {
        Set<Integer> wet = new HashSet<>(Set.of(from));
        Deque<Integer> edge = new ArrayDeque<>(wet);
        while (!edge.isEmpty()) {
            int pin = edge.remove();
            for (int e = 0; e < n.connections().size(); e++) {
                Connection c = n.connections().get(e);
                if (e != without && c.closed() && (c.a() == pin || c.b() == pin) && wet.add(c.other(pin))) {
                    edge.add(c.other(pin));
                }
            }
        }
        return wet;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void islands_loops_and_bridges_are_those_of_flooding(int seed) {
        Network n = RandomWiring.network(RandomWiring.drawing(seed));
        Loops loops = new Loops(n);
        Set<Set<Integer>> islands = new HashSet<>();
        for (int pin = 0; pin < n.pinCount(); pin++) {
            Set<Integer> wet = flood(n, pin, -1);
            islands.add(wet);
            int number = loops.islandOf(pin);
            Set<Integer> same = new HashSet<>();
            for (int other = 0; other < n.pinCount(); other++) {
                if (loops.islandOf(other) == number) {
                    same.add(other);
                }
            }
            assertThat(same).isEqualTo(wet);
        }
        assertThat(loops.islandCount()).isEqualTo(islands.size());
        for (int e = 0; e < n.connections().size(); e++) {
            Connection c = n.connections().get(e);
            boolean parts = c.closed() && !flood(n, c.a(), e).contains(c.b());
            assertThat(loops.isBridge(e)).as(c.item()).isEqualTo(parts);
        }
        long closed = n.connections().stream().filter(Connection::closed).count();
        long independent = 0;
        for (int i = 0; i < loops.islandCount(); i++) {
            independent += loops.chords(i).size();
            for (int chord : loops.chords(i)) {
                assertThat(loops.islandOf(n.connections().get(chord).a())).isEqualTo(i);
                closesUp(n, loops.loop(chord), loops);
            }
        }
        assertThat(independent).as("edges − vertices + parts").isEqualTo(closed - n.pinCount() + islands.size());
    }

    private static void closesUp(Network n, List<Integer> loop, Loops loops) {
        int start = n.connections().get(loop.get(0)).a();
        int at = start;
        Set<Integer> passed = new HashSet<>();
        int chords = 0;
        for (int e : loop) {
            Connection c = n.connections().get(e);
            assertThat(c.closed() && (c.a() == at || c.b() == at)).isTrue();
            at = c.other(at);
            assertThat(passed.add(at)).as("each pin once").isTrue();
            chords += loops.chords(loops.islandOf(at)).contains(e) ? 1 : 0;
        }
        assertThat(at).isEqualTo(start);
        assertThat(chords)
                .as("all others are of the tree, so the loops are independent")
                .isEqualTo(1);
    }

    @Test
    void a_cable_from_a_bar_to_itself_is_a_loop() {
        Sketch s = Sketch.dc(12).bar("A").cable("W1", "A.1", "A.2", 3, 6);
        Network n = Network.of(s.drawing(), OperatingCondition.asDrawn("x", ""));
        Loops loops = new Loops(n);

        assertThat(loops.chords(0)).containsExactly(0);
        assertThat(loops.loop(0)).containsExactly(0);
        assertThat(loops.isBridge(0)).isFalse();
    }
}
