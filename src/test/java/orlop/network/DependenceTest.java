package orlop.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.study.Sketch;

/** Dependents of each cable against taking that cable out of the drawing and looking what is dead then. */
class DependenceTest {
    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    private static Set<String> live(Drawing d) {
        Network n = RandomWiring.network(d);
        Set<String> live = new LinkedHashSet<>();
        for (Component c : d.components().values()) {
            int pins = c.kind().terminals() == Kind.Terminals.ANY
                    ? 1
                    : c.particulars().terminals().size();
            for (int terminal = 1; terminal <= pins; terminal++) {
                if (n.feeding().feeds(n.pin(c, terminal))) {
                    live.add(c.id());
                }
            }
        }
        return live;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void dependents_are_what_is_dead_without_the_cable(int seed) {
        Drawing d = RandomWiring.drawing(seed);
        Network n = RandomWiring.network(d);
        Dependence dependence = new Dependence(n);
        Set<String> before = live(d);
        for (int e = 0; e < n.connections().size(); e++) {
            Connection c = n.connections().get(e);
            if (c.cable() != null) {
                Set<String> dead = new LinkedHashSet<>(before);
                dead.removeAll(live(d.withCables(d.cables().without(c.item()))));

                assertThat(dependence.on(e))
                        .extracting(Component::id)
                        .as(c.item())
                        .containsExactlyElementsOf(dead);
                assertThat(dependence.count(e)).isEqualTo(dead.size());
                assertThat(dependence.on(e, 2)).hasSize(Math.min(2, dead.size()));
            }
        }
    }

    @Test
    void the_generator_meets_every_case() {
        long dependents = 0;
        long inverters = 0;
        long converters = 0;
        for (int seed = 0; seed < 300; seed++) {
            Network n = RandomWiring.network(RandomWiring.drawing(seed));
            Dependence dependence = new Dependence(n);
            for (int e = 0; e < n.connections().size(); e++) {
                Connection c = n.connections().get(e);
                dependents += c.cable() == null ? 0 : dependence.count(e);
                inverters += c.device() != null && c.closed() && Wiring.hasTransfer(c.theDevice()) ? 1 : 0;
            }
            converters += n.attachments().stream()
                    .filter(t -> t.outputPin() >= 0 && n.feeding().feeds(t.pin()))
                    .count();
        }
        assertThat(dependents).isGreaterThan(1_000);
        assertThat(inverters).as("with their input live").isGreaterThan(20);
        assertThat(converters).isGreaterThan(200);
    }

    @Test
    void a_ring_main_depends_on_no_cable_and_a_spur_on_its_own() {
        Sketch s = Sketch.dc(12)
                .supply("G", 12, 0.01)
                .bar("A")
                .bar("B")
                .bar("C")
                .power("E1", 10)
                .link("G.1", "A.g")
                .cable("W1", "A.1", "B.1", 3, 6)
                .cable("W2", "B.2", "C.1", 3, 6)
                .cable("W3", "C.2", "A.2", 3, 6)
                .cable("W4", "C.3", "E1.1", 3, 6);
        Network n = Network.of(s.drawing(), orlop.drawing.OperatingCondition.asDrawn("x", ""));
        Dependence dependence = new Dependence(n);

        for (int e = 0; e < 4; e++) {
            List<String> expected = e == 3 ? List.of("E1") : List.of();
            assertThat(dependence.on(e)).extracting(Component::id).isEqualTo(expected);
        }
    }

    @Test
    void a_chain_of_a_hundred_thousand_cables_is_done_in_no_time() {
        int n = 100_000;
        int[] from = new int[2 * n];
        int[] to = new int[2 * n];
        for (int i = 0; i < n; i++) {
            from[2 * i] = i;
            to[2 * i] = i + 1;
            from[2 * i + 1] = i + 1;
            to[2 * i + 1] = i;
        }
        Dominators chain = new Dominators(n + 1, 0, from, to);

        for (int v = 0; v <= n; v++) {
            assertThat(chain.place(v) == v && chain.size(v) == n + 1 - v).isTrue();
        }
    }
}
