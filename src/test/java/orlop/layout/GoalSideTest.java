package orlop.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.traverse.BreadthFirstIterator;
import org.junit.jupiter.api.Test;

/** Checked against JGraphT, which asks from the starts on along the edges. */
class GoalSideTest {
    private static final int STATES = 60;

    private final GoalSide side = new GoalSide();

    @Test
    void goals_are_walled_in_when_a_search_from_the_starts_does_not_come_to_them() {
        Random random = new Random(7);
        int walledIn = 0;

        for (int round = 0; round < 400; round++) {
            Graph<Integer, DefaultEdge> steps = steps(random);
            int start = random.nextInt(STATES);
            int[] goals = {random.nextInt(STATES), random.nextInt(STATES)};

            boolean none = none(steps, start, goals);

            assertThat(asked(steps, STATES, start, goals)).as("round %d", round).isEqualTo(none);
            walledIn += none ? 1 : 0;
        }
        assertThat(walledIn).as("both happen").isBetween(50, 350);
    }

    @Test
    void what_is_walled_in_by_far_is_left_to_the_search() {
        Graph<Integer, DefaultEdge> line = new DefaultDirectedGraph<>(DefaultEdge.class);
        int end = GoalSide.MOST + 10;
        for (int i = 0; i <= end; i++) {
            line.addVertex(i);
            if (i > 1) {
                line.addEdge(i - 1, i); // nothing leads from 0
            }
        }

        assertThat(asked(line, end + 1, 0, new int[] {end})).isFalse();
        assertThat(asked(line, end + 1, 0, new int[] {20})).isTrue();
    }

    private static Graph<Integer, DefaultEdge> steps(Random random) {
        Graph<Integer, DefaultEdge> steps = new DefaultDirectedGraph<>(DefaultEdge.class);
        for (int i = 0; i < STATES; i++) {
            steps.addVertex(i);
        }
        for (int i = 0; i < STATES * 3 / 2; i++) {
            steps.addEdge(random.nextInt(STATES), random.nextInt(STATES));
        }
        return steps;
    }

    private static boolean none(Graph<Integer, DefaultEdge> steps, int start, int[] goals) {
        BreadthFirstIterator<Integer, DefaultEdge> on = new BreadthFirstIterator<>(steps, start);
        while (on.hasNext()) {
            int met = on.next();
            if (met == goals[0] || met == goals[1 % goals.length]) {
                return false;
            }
        }
        return true;
    }

    private boolean asked(Graph<Integer, DefaultEdge> steps, int count, int start, int[] goals) {
        return side.walledIn(
                count,
                goals,
                (state, to) -> steps.incomingEdgesOf(state).forEach(e -> to.add(steps.getEdgeSource(e))),
                s -> s == start);
    }
}
