package orlop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.graph.Pseudograph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Drawing;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Position;
import orlop.study.Sketch;

/** Pins, points, feeding paths and zones. */
class NetworkTest {
    private static Network network(Drawing d) {
        return Network.of(d, OperatingCondition.asDrawn("as-drawn", ""));
    }

    private static Sketch board() {
        return Sketch.dc(24)
                .supply("GB1", 25, 0.01)
                .isolator("Q1", Position.CLOSED)
                .fuse("F1", "gg", 63)
                .bar("BAR")
                .power("E1", 100)
                .link("GB1.1", "Q1.1", 0.2)
                .link("Q1.2", "F1.1", 0.1)
                .cable("W1", "F1.2", "BAR.a", 3, 16)
                .cable("W2", "BAR.b", "E1.1", 4, 6)
                .cable("W3", "BAR.b", "BAR.c", 0, 6);
    }

    @Test
    void what_has_no_impedance_is_one_point_named_by_its_bar() {
        Network n = network(board().drawing());

        assertThat(n.points()).extracting(NetPoint::id).containsExactly("GB1", "BAR", "E1");
        assertThat(n.points().get(0).terminals()).containsExactly("GB1.1", "Q1.1", "Q1.2", "F1.1", "F1.2");
        assertThat(n.points().get(1).terminals()).containsExactlyInAnyOrder("BAR.a", "BAR.b", "BAR.c");
    }

    @Test
    void an_open_switch_parts_points() {
        Network n = network(board().isolator("Q1", Position.OPEN).drawing());

        assertThat(n.points()).extracting(NetPoint::id).containsExactly("GB1", "Q1", "BAR", "E1");
    }

    @Test
    void the_feeding_path_says_all_that_it_passes() {
        Network n = network(board().drawing());
        int load = n.pin(Sketch.t("E1.1"));

        assertThat(n.feedingPath(load)).containsExactly("GB1", "Q1", "F1", "W1", "BAR", "W2", "E1");
        assertThat(n.feeding().lengthM(load)).isCloseTo(7.3, within(1e-12));
    }

    @Test
    void the_shortest_path_feeds() {
        Sketch s = board().fuse("F2", "gg", 63).link("Q1.2", "F2.1").cable("W9", "F2.2", "E1.1", 2, 6);

        assertThat(network(s.drawing()).feedingPath(network(s.drawing()).pin(Sketch.t("E1.1"))))
                .containsExactly("GB1", "Q1", "F2", "W9", "E1");
    }

    @Test
    void what_is_to_be_removed_is_not_there() {
        Drawing d = board().drawing();
        var q = d.components().require("Q1");
        var gone = new orlop.drawing.Component(
                q.id(),
                q.name(),
                q.place(),
                q.systems(),
                orlop.drawing.RefitStatus.TO_BE_REMOVED,
                q.stage(),
                q.location(),
                q.locked(),
                q.particulars(),
                q.extras());
        Network n = network(d.with(gone));

        assertThat(n.feeding().feeds(n.pin(Sketch.t("E1.1")))).isFalse();
    }

    /** Bridges and what lies beyond them, against JGraphT's biconnectivity. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void zones_find_the_bridges_that_jgrapht_finds(int seed) {
        Random random = new Random(seed);
        int bars = 4 + random.nextInt(12);
        Sketch s = Sketch.dc(24);
        Pseudograph<Integer, Integer> graph = new Pseudograph<>(null, null, false);
        for (int i = 0; i < bars; i++) {
            s.bar("B" + i);
            graph.addVertex(i);
        }
        int edges = bars + random.nextInt(4) - 2;
        for (int e = 0; e < edges; e++) {
            int a = random.nextInt(bars);
            int b = random.nextInt(bars);
            s.fuse("F" + e, "gg", 10).link("B" + a + ".t" + e, "F" + e + ".1").link("B" + b + ".u" + e, "F" + e + ".2");
            graph.addEdge(a, b, e);
        }
        Network n = Network.reach(s.drawing());
        boolean[] cut = new boolean[n.connections().size()];
        for (int e = 0; e < cut.length; e++) {
            cut[e] = n.connections().get(e).device() != null;
        }
        int[] strong = new int[n.pinCount()];
        strong[n.pin(Sketch.t("B0.x"))] = 1;
        Zones zones = new Zones(n, cut, strong, new double[n.pinCount()]);
        Set<Integer> bridges = new BiconnectivityInspector<>(graph).getBridges();

        Set<Integer> found = new HashSet<>();
        for (int e = 0; e < cut.length; e++) {
            Connection c = n.connections().get(e);
            if (cut[e] && zones.isBridge(e)) {
                found.add(Integer.parseInt(c.item().substring(1)));
                assertThat(List.of(zones.strongBeyond(e, c.a()), zones.strongBeyond(e, c.b())))
                        .as("the source lies on one side, or in another part")
                        .isIn(List.of(0, 1), List.of(1, 0), List.of(0, 0));
            }
        }
        assertThat(found).isEqualTo(bridges);
    }
}
