package orlop.study.linear;

import java.util.Arrays;

/**
 * Solves sparse symmetric systems of one structure and changing values by L·D·Lᵀ in minimum-degree order, without
 * pivoting. Radial networks cost time in proportion to their size. One object serves one thread.
 *
 * <p>Use: {@link #slot} once for each pair; then {@link #clear}, {@link #add}, {@link #factor}; then {@link #solve} as
 * often as wanted, and {@link #inverse}.
 */
public final class Elimination {
    private final int count;
    private final Pattern pattern;
    private final int[] order; // these five are the pattern's own
    private final int[] start;
    private final int[] column;
    private final int[] pairStart;
    private final int[] pairTarget;
    private final double[] diagonal;
    private final double[] off;
    private final double[] factorDiagonal;
    private final double[] factorOff;

    /**
     * Prepares systems of this structure.
     *
     * @param count unknowns, 0 or more
     * @param a one end of each off-diagonal pair
     * @param b the other end; pairs may be listed more than once, none has equal ends
     */
    public Elimination(int count, int[] a, int[] b) {
        this.count = count;
        pattern = new Pattern(count, a, b);
        order = pattern.order;
        start = pattern.start;
        column = pattern.column;
        pairStart = pattern.pairStart;
        pairTarget = pattern.pairTarget;
        diagonal = new double[count];
        off = new double[column.length];
        factorDiagonal = new double[count];
        factorOff = new double[column.length];
    }

    /** The slot of a pair that was named at the start. */
    public int slot(int a, int b) {
        return pattern.slot(a, b);
    }

    /** How many unknowns there are. */
    public int count() {
        return count;
    }

    /** Sets every value to zero. */
    public void clear() {
        Arrays.fill(diagonal, 0);
        Arrays.fill(off, 0);
    }

    /** Adds to the diagonal value of an unknown. */
    public void addDiagonal(int unknown, double value) {
        diagonal[unknown] += value;
    }

    /** Adds to the value of a pair. */
    public void add(int slot, double value) {
        off[slot] += value;
    }

    /**
     * Adds a conductance between two unknowns.
     *
     * @param a an unknown; negative for a node of known voltage
     * @param b the other; as {@code a} if both ends are the same, which adds nothing
     */
    public void addBetween(int a, int b, double siemens) {
        if (a == b) {
            return;
        }
        if (a >= 0) {
            addDiagonal(a, siemens);
        }
        if (b >= 0) {
            addDiagonal(b, siemens);
        }
        if (a >= 0 && b >= 0) {
            add(slot(a, b), -siemens);
        }
    }

    /**
     * Factors the values.
     *
     * @return false if the matrix is not positive definite: the network then has no stable operating point there
     */
    public boolean factor() {
        System.arraycopy(diagonal, 0, factorDiagonal, 0, count);
        System.arraycopy(off, 0, factorOff, 0, off.length);
        for (int step = 0; step < count; step++) {
            int v = order[step];
            double pivot = factorDiagonal[v];
            if (!(pivot > diagonal[v] * 1e-14) || !(pivot > 0)) {
                return false;
            }
            int pair = pairStart[v];
            for (int i = start[v]; i < start[v + 1]; i++) {
                double share = factorOff[i] / pivot;
                factorDiagonal[column[i]] -= share * factorOff[i];
                for (int j = i + 1; j < start[v + 1]; j++) {
                    factorOff[pairTarget[pair++]] -= share * factorOff[j];
                }
            }
            for (int i = start[v]; i < start[v + 1]; i++) {
                factorOff[i] /= pivot;
            }
        }
        return true;
    }

    /** Solves in place: the right-hand side goes in, the solution comes out. */
    public void solve(double[] x) {
        for (int step = 0; step < count; step++) {
            int v = order[step];
            double value = x[v];
            if (value != 0) {
                for (int i = start[v]; i < start[v + 1]; i++) {
                    x[column[i]] -= factorOff[i] * value;
                }
            }
        }
        for (int step = count - 1; step >= 0; step--) {
            int v = order[step];
            double value = x[v] / factorDiagonal[v];
            for (int i = start[v]; i < start[v + 1]; i++) {
                value -= factorOff[i] * x[column[i]];
            }
            x[v] = value;
        }
    }

    /** The inverse, as far as the structure of the factors reaches: its diagonal and all pairs named at the start. */
    public Inverse inverse() {
        double[] zDiagonal = new double[count];
        double[] zOff = new double[off.length];
        for (int step = count - 1; step >= 0; step--) {
            int v = order[step];
            int low = start[v];
            int high = start[v + 1];
            int pair = pairStart[v];
            for (int i = low; i < high; i++) { // K. Takahashi, J. Fagan, M.-S. Chin, 1973
                zOff[i] -= factorOff[i] * zDiagonal[column[i]];
                for (int j = i + 1; j < high; j++) {
                    double z = zOff[pairTarget[pair++]];
                    zOff[i] -= factorOff[j] * z;
                    zOff[j] -= factorOff[i] * z;
                }
            }
            double z = 1 / factorDiagonal[v];
            for (int i = low; i < high; i++) {
                z -= factorOff[i] * zOff[i];
            }
            zDiagonal[v] = z;
        }
        return new Inverse(zDiagonal, zOff);
    }

    /** Part of an inverse. */
    public static final class Inverse {
        private final double[] diagonal;
        private final double[] off;

        private Inverse(double[] diagonal, double[] off) {
            this.diagonal = diagonal;
            this.off = off;
        }

        /** The inverse's diagonal value of an unknown. */
        public double diagonal(int unknown) {
            return diagonal[unknown];
        }

        /** The inverse's value of a pair's slot. */
        public double pair(int slot) {
            return off[slot];
        }
    }
}
