package orlop.study.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The exact choice against an exhaustive search that tries every combination of options: written for itself, with
 * nothing of the search under test but the numbers that describe the tree.
 */
@SuppressWarnings("NullAway") // a null fails the test
class LeastCopperTest {
    private static final double[] OHM_M_MM2 = {0.0195, 0.02, 0.0199, 0.0198, 0.0198, 0.0191, 0.0194};
    private static final double[] AREAS = {1, 1.5, 2.5, 4, 6, 10, 16};

    /** A random tree: branch i hangs on one before it or on the root. */
    private static final class Tree {
        final int[] parent;
        final double[][] dropV;
        final double[][] kg;
        final double[] budgetV;

        Tree(long seed) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(6);
            parent = new int[n];
            dropV = new double[n][];
            kg = new double[n][];
            budgetV = new double[n];
            for (int i = 0; i < n; i++) {
                parent[i] = random.nextInt(i + 1) - 1;
                int options = random.nextInt(8) == 0 ? 1 : 2 + random.nextInt(n > 5 ? 3 : 5);
                double amps = 1 + 30 * random.nextDouble();
                double metres = random.nextInt(12) == 0 ? 0 : 1 + 20 * random.nextDouble();
                int first = random.nextInt(AREAS.length - options + 1);
                dropV[i] = new double[options];
                kg[i] = new double[options];
                for (int o = 0; o < options; o++) {
                    dropV[i][o] = amps * 2 * metres * OHM_M_MM2[first + o] / AREAS[first + o];
                    kg[i][o] = 2 * metres * AREAS[first + o] * 8.96e-3;
                }
                budgetV[i] = random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : 0.3 + 8 * random.nextDouble();
            }
        }

        LeastCopper.Choice find() {
            LeastCopper search = new LeastCopper();
            for (int i = 0; i < parent.length; i++) {
                search.branch(parent[i], dropV[i], kg[i], budgetV[i]);
            }
            return search.find(1_000_000);
        }

        boolean holds(int[] option) {
            double[] at = new double[parent.length];
            for (int i = 0; i < parent.length; i++) {
                at[i] = (parent[i] < 0 ? 0 : at[parent[i]]) + dropV[i][option[i]];
                if (at[i] > budgetV[i] + 1e-9) {
                    return false;
                }
            }
            return true;
        }

        double mass(int[] option) {
            double sum = 0;
            for (int i = 0; i < option.length; i++) {
                sum += kg[i][option[i]];
            }
            return sum;
        }

        /** Every combination, one after the other; infinite if none holds. */
        double leastByTryingAll() {
            double least = Double.POSITIVE_INFINITY;
            int[] option = new int[parent.length];
            while (true) {
                if (holds(option)) {
                    least = Math.min(least, mass(option));
                }
                int digit = 0;
                while (digit < option.length && ++option[digit] == dropV[digit].length) {
                    option[digit++] = 0;
                }
                if (digit == option.length) {
                    return least;
                }
            }
        }
    }

    private static int[] options(LeastCopper.Choice choice, Tree tree) {
        return IntStream.range(0, tree.parent.length).map(choice::option).toArray();
    }

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void the_choice_is_as_light_as_the_lightest_of_all_that_hold(int seed) {
        Tree tree = new Tree(seed);
        double least = tree.leastByTryingAll();
        LeastCopper.Choice choice = tree.find();

        if (least == Double.POSITIVE_INFINITY) {
            assertThat(choice).isNull();
        } else {
            assertThat(tree.holds(options(choice, tree))).isTrue();
            assertThat(tree.mass(options(choice, tree))).isCloseTo(least, within(1e-9));
            assertThat(choice.kg()).isCloseTo(least, within(1e-9));
        }
    }

    @Test
    void the_seeds_hold_trees_that_can_be_met_and_trees_that_cannot_and_some_where_the_thinnest_do_not_do() {
        long met = seeds().filter(s -> new Tree(s).find() != null).count();
        long thick = seeds().mapToObj(Tree::new)
                .filter(t -> t.find() != null && !t.holds(new int[t.parent.length]))
                .count();

        assertThat(met).isBetween(150L, 290L);
        assertThat(thick).isGreaterThan(60);
    }

    @Test
    void beyond_the_permitted_work_there_is_no_answer() {
        LeastCopper search = new LeastCopper();
        search.branch(-1, new double[] {2, 1}, new double[] {1, 2}, 1.5);

        assertThat(search.find(1)).isNull();
        assertThat(search.find(1_000).option(0)).isEqualTo(1);
    }
}
