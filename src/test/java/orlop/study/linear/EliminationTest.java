package orlop.study.linear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The eliminations beside EJML's dense ones, from bare trees to networks of which most is one dense block. */
class EliminationTest {
    private int[] a = {};
    private int[] b = {};
    private double[] value = {};

    /** A tree, or a forest, with so many closing pairs, some of them listed twice. */
    private void grow(int count, int closing, Random random) {
        int pairs = count - 1 + closing;
        a = new int[pairs];
        b = new int[pairs];
        value = new double[pairs];
        for (int e = 0; e < pairs; e++) {
            a[e] = e < count - 1 ? e + 1 : random.nextInt(count);
            b[e] = e < count - 1 ? random.nextInt(e + 1) : (a[e] + 1 + random.nextInt(count - 1)) % count;
            value[e] = 0.1 + random.nextDouble();
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "2, 0", "60, 0", "60, 1", "60, 6", "60, 60", "160, 300", "300, 900", "300, 5000"})
    void solutions_and_the_inverse_are_those_of_a_dense_solver(int count, int closing) {
        Random random = new Random(count * 31L + closing);
        grow(count, closing, random);
        Elimination sparse = new Elimination(new Patterns(), count, a, b);
        SimpleMatrix dense = new SimpleMatrix(count, count);
        for (int v = 0; v < count; v++) {
            sparse.addDiagonal(v, 0.01);
            dense.set(v, v, 0.01);
        }
        for (int e = 0; e < a.length; e++) {
            sparse.addBetween(a[e], b[e], value[e]);
            put(dense, a[e], b[e], value[e]);
        }
        double[] x = new double[count];
        SimpleMatrix right = new SimpleMatrix(count, 1);
        for (int v = 0; v < count; v++) {
            x[v] = random.nextDouble() - 0.5;
            right.set(v, x[v]);
        }

        assertThat(sparse.factor()).isTrue();
        sparse.solve(x);

        SimpleMatrix expected = dense.solve(right);
        SimpleMatrix inverse = dense.invert();
        Elimination.Inverse z = sparse.inverse();
        for (int v = 0; v < count; v++) {
            assertThat(x[v]).isCloseTo(expected.get(v), within(1e-9));
            assertThat(z.diagonal(v)).isCloseTo(inverse.get(v, v), within(1e-9));
        }
        for (int e = 0; e < a.length; e++) {
            assertThat(z.pair(sparse.slot(a[e], b[e]))).isCloseTo(inverse.get(a[e], b[e]), within(1e-9));
        }
    }

    private static void put(SimpleMatrix dense, int a, int b, double value) {
        dense.set(a, a, dense.get(a, a) + value);
        dense.set(b, b, dense.get(b, b) + value);
        dense.set(a, b, dense.get(a, b) - value);
        dense.set(b, a, dense.get(b, a) - value);
    }

    @ParameterizedTest
    @CsvSource({"60, 0", "60, 6", "160, 300", "300, 2000"})
    void complex_equations_hold_with_the_solution_and_the_inverse(int count, int closing) {
        Random random = new Random(count * 17L + closing);
        grow(count, closing, random);
        ComplexElimination sparse = new ComplexElimination(new Patterns(), count, a, b);
        for (int v = 0; v < count; v++) {
            sparse.addDiagonal(v, new Complex(0.02, -0.01));
        }
        for (int e = 0; e < a.length; e++) {
            Complex y = new Complex(value[e], -0.5 * value[e]);
            sparse.addDiagonal(a[e], y);
            sparse.addDiagonal(b[e], y);
            sparse.addPair(a[e], b[e], y.times(-1));
        }
        double[] re = new double[count];
        double[] im = new double[count];
        re[count / 2] = 1;

        assertThat(sparse.factor()).isTrue();
        sparse.solve(re, im);

        assertThat(residual(re, im, count / 2)).isLessThan(1e-9);
        Complex own = sparse.inverse().at(count / 2);
        assertThat(own.minus(new Complex(re[count / 2], im[count / 2])).magnitude())
                .isLessThan(1e-9);
        for (int e = 0; e < a.length; e++) {
            if (a[e] == count / 2) {
                Complex there = new Complex(re[b[e]], im[b[e]]);
                Complex transfer = sparse.inverse().between(a[e], b[e]);
                assertThat(transfer.minus(there).magnitude()).isLessThan(1e-9);
            }
        }
    }

    /** Greatest failure of the equations for one ampere into an unknown. */
    private double residual(double[] re, double[] im, int into) {
        Complex[] out = new Complex[re.length];
        for (int v = 0; v < out.length; v++) {
            out[v] = new Complex(re[v], im[v]).times(new Complex(0.02, -0.01));
        }
        out[into] = out[into].minus(new Complex(1, 0));
        for (int e = 0; e < a.length; e++) {
            Complex across = new Complex(re[a[e]] - re[b[e]], im[a[e]] - im[b[e]]);
            Complex amps = across.times(new Complex(value[e], -0.5 * value[e]));
            out[a[e]] = out[a[e]].plus(amps);
            out[b[e]] = out[b[e]].minus(amps);
        }
        double most = 0;
        for (Complex amps : out) {
            most = Math.max(most, amps.magnitude());
        }
        return most;
    }

    @Test
    void a_system_that_is_not_positive_definite_is_refused() {
        Elimination m = new Elimination(new Patterns(), 2, new int[] {0}, new int[] {1});
        m.addBetween(0, 1, 1); // nothing holds either against the reference

        assertThat(m.factor()).isFalse();
    }

    @Test
    void unknowns_without_any_pair_stand_alone() {
        Elimination m = new Elimination(new Patterns(), 3, new int[] {0}, new int[] {2});
        m.addDiagonal(1, 4);
        m.addDiagonal(0, 1);
        m.addBetween(0, 2, 1);
        double[] x = {1, 8, 0};

        assertThat(m.factor()).isTrue();
        m.solve(x);

        assertThat(x).containsExactly(new double[] {1, 2, 1}, within(1e-12));
    }
}
