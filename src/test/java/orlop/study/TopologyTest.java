package orlop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import orlop.drawing.Poles;
import orlop.drawing.Position;
import orlop.drawing.Switching;
import orlop.network.Reaches.FedFrom;

/** What hangs on what, by tags and conditions. */
class TopologyTest {
    /** Two batteries on a changeover, a board fed from it, a ring of three cables behind. */
    private static Sketch boat() {
        return Sketch.dc(12)
                .supply("GB1", 12.8, 0.01)
                .supply("GB2", 12.6, 0.01)
                .add("Q1", new Switching.Changeover(2, null, Poles.POSITIVE, 1, ""))
                .bar("MAIN")
                .bar("FORE")
                .bar("AFT")
                .isolator("Q2", Position.CLOSED)
                .power("E1", 10)
                .power("E2", 10)
                .cable("W1", "GB1.1", "Q1.1", 2, 35)
                .cable("W2", "GB2.1", "Q1.2", 3, 35)
                .cable("W3", "Q1.3", "MAIN.a", 1, 35)
                .cable("W4", "MAIN.b", "FORE.a", 8, 10)
                .cable("W5", "FORE.b", "AFT.a", 12, 10)
                .cable("W6", "AFT.b", "Q2.1", 6, 10)
                .link("Q2.2", "MAIN.c", 0.2)
                .cable("W7", "FORE.c", "E1.1", 4, 2.5)
                .cable("W8", "AFT.c", "E2.1", 5, 2.5)
                .condition("one")
                .condition("two")
                .position("two", "Q1", "2")
                .position("two", "Q2", "open");
    }

    @Test
    void a_ring_leaves_only_its_spurs_dependent_and_opening_it_changes_that() {
        Study s = boat().study();
        Topology one = Topology.of(s, "one");
        Topology two = Topology.of(s, "two");

        assertThat(one.dependents("W4")).isEmpty();
        assertThat(one.dependents("W7")).containsExactly("E1");
        assertThat(one.dependents("W3")).containsExactly("MAIN", "FORE", "AFT", "Q2", "E1", "E2");
        assertThat(one.dependentCount("W2")).isZero();
        assertThat(two.dependents("W4")).containsExactly("FORE", "AFT", "E1", "E2");
        assertThat(two.dependents("W1")).isEmpty();
    }

    @Test
    void the_governing_dependents_are_those_of_the_condition_with_most() {
        Topology governing = Topology.of(boat().study(), Results.GOVERNING);

        assertThat(governing.dependents("W4")).containsExactly("FORE", "AFT", "E1", "E2");
        assertThat(governing.dependentCount("W1"))
                .as("the changeover has the other battery")
                .isEqualTo(6);
        assertThat(governing.dependentCount("W99")).isNull();
    }

    @Test
    void a_place_says_which_sources_feed_it_over_what_length() {
        Study s = boat().study();

        assertThat(Topology.of(s, "one").fedFromComponent("E2")).singleElement().satisfies(f -> {
            assertThat(f.source()).isEqualTo("GB1");
            assertThat(f.lengthM()).isCloseTo(2 + 1 + 0.2 + 6 + 5, within(1e-12));
        });
        assertThat(Topology.of(s, "two").fedFromPoint("AFT")).containsExactly(new FedFrom("GB2", 3 + 1 + 8 + 12));
        assertThat(Topology.of(s, Results.GOVERNING).fedFromPoint("MAIN"))
                .as("each condition has its own source")
                .containsExactly(new FedFrom("GB1", 3), new FedFrom("GB2", 4));
    }

    @Test
    void an_island_lists_its_sources_and_its_loops() {
        Study s = boat().study();

        assertThat(Topology.of(s, "one").islands()).first().satisfies(i -> {
            assertThat(i.id()).isEqualTo("GB1");
            assertThat(i.sources()).containsExactly("GB1");
            assertThat(i.loopCount()).isEqualTo(1);
            assertThat(i.loops())
                    .singleElement()
                    .satisfies(l ->
                            assertThat(l).containsExactlyInAnyOrder("MAIN", "W4", "FORE", "W5", "AFT", "W6", "Q2"));
        });
        assertThat(Topology.of(s, "two").islands()).allMatch(i -> i.loopCount() == 0);
    }

    @Test
    void what_hangs_on_a_drawn_return_is_not_worked_out() {
        Study s = Sketch.dc(12)
                .supply("G", 12.8, 0.01)
                .bar("NEG")
                .power("E1", 10)
                .cable("W1", "G.1", "E1.1", 3, 6)
                .cable("W2", "G.2", "NEG.a", 1, 6)
                .cable("W3", "E1.2", "NEG.b", 3, 6)
                .study();
        Topology t = Topology.of(s, Results.GOVERNING);

        assertThat(t.dependentCount("W1")).isEqualTo(1);
        assertThat(t.dependentCount("W3")).isNull();
        assertThat(t.dependents("W3")).isEmpty();
    }
}
