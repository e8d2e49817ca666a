package orlop.study.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The exact choice over several conditions against an exhaustive search over every combination of options. */
@SuppressWarnings("NullAway") // a null fails the test
class JointCopperTest {
    private static final double[] OHM_M_MM2 = {0.0195, 0.02, 0.0199, 0.0198, 0.0198, 0.0191, 0.0194};
    private static final double[] AREAS = {1, 1.5, 2.5, 4, 6, 10, 16};

    /** A random tree whose cables carry another current in each condition, some none. */
    private static final class Tree {
        final int conditions;
        final int[] parent;
        final double[][][] dropV; // branch, option, condition
        final double[][] kg;
        final double[][] budgetV;

        Tree(long seed) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(6);
            conditions = 2 + random.nextInt(3);
            parent = new int[n];
            dropV = new double[n][][];
            kg = new double[n][];
            budgetV = new double[n][conditions];
            for (int i = 0; i < n; i++) {
                parent[i] = random.nextInt(i + 1) - 1;
                int options = 2 + random.nextInt(n > 5 ? 3 : 5);
                int first = random.nextInt(AREAS.length - options + 1);
                double metres = 1 + 20 * random.nextDouble();
                dropV[i] = new double[options][conditions];
                kg[i] = new double[options];
                for (int c = 0; c < conditions; c++) {
                    double amps = random.nextInt(4) == 0 ? 0 : 30 * random.nextDouble();
                    for (int o = 0; o < options; o++) {
                        dropV[i][o][c] = amps * 2 * metres * OHM_M_MM2[first + o] / AREAS[first + o];
                    }
                    budgetV[i][c] = random.nextInt(2) == 0 ? Double.POSITIVE_INFINITY : 0.5 + 9 * random.nextDouble();
                }
                for (int o = 0; o < options; o++) {
                    kg[i][o] = 2 * metres * AREAS[first + o] * 8.96e-3;
                }
            }
        }

        int[] find(long work) {
            JointCopper search = new JointCopper(conditions);
            for (int i = 0; i < parent.length; i++) {
                search.branch(parent[i], dropV[i], kg[i]);
                for (int c = 0; c < conditions; c++) {
                    search.limit(i, c, budgetV[i][c]);
                }
            }
            return search.find(work);
        }

        boolean holds(int[] option, int conditions) {
            for (int c = 0; c < conditions; c++) {
                double[] at = new double[parent.length];
                for (int i = 0; i < parent.length; i++) {
                    at[i] = (parent[i] < 0 ? 0 : at[parent[i]]) + dropV[i][option[i]][c];
                    if (at[i] > budgetV[i][c] + 1e-9) {
                        return false;
                    }
                }
            }
            return true;
        }

        double mass(int[] option) {
            return IntStream.range(0, option.length)
                    .mapToDouble(i -> kg[i][option[i]])
                    .sum();
        }

        /** Every combination, one after the other; infinite if none holds. */
        double leastByTryingAll(int conditions) {
            double least = Double.POSITIVE_INFINITY;
            int[] option = new int[parent.length];
            while (true) {
                if (holds(option, conditions)) {
                    least = Math.min(least, mass(option));
                }
                int digit = 0;
                while (digit < option.length && ++option[digit] == kg[digit].length) {
                    option[digit++] = 0;
                }
                if (digit == option.length) {
                    return least;
                }
            }
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 400);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_choice_is_as_light_as_the_lightest_that_holds_in_every_condition(int seed) {
        Tree tree = new Tree(seed);
        double least = tree.leastByTryingAll(tree.conditions);
        int[] choice = tree.find(10_000_000);

        if (least == Double.POSITIVE_INFINITY) {
            assertThat(choice).isNull();
        } else {
            assertThat(tree.holds(choice, tree.conditions)).isTrue();
            assertThat(tree.mass(choice)).isCloseTo(least, within(1e-9));
        }
    }

    @Test
    void in_many_of_the_trees_a_second_condition_asks_for_more_than_the_first() {
        long met = seeds().mapToObj(Tree::new)
                .filter(t -> t.find(10_000_000) != null)
                .count();
        long more = seeds().mapToObj(Tree::new)
                .filter(t -> t.find(10_000_000) != null)
                .filter(t -> t.leastByTryingAll(t.conditions) > t.leastByTryingAll(1) + 1e-9)
                .count();

        assertThat(met).isBetween(150L, 390L);
        assertThat(more).isGreaterThan(60);
    }

    @Test
    void beyond_the_permitted_work_there_is_no_answer() {
        assertThat(new Tree(1).find(0)).isNull();
    }
}
