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
    private final int[] order;
    private final int[] place; // of an unknown in the order
    private final int[] start; // of an unknown's off-diagonal entries
    private final int[] column; // which unknown an entry belongs to
    private final int[] pairStart; // of the updates that eliminating an unknown causes
    private final int[] pairTarget; // entry that an update goes to
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
        MinimumDegree ordering = new MinimumDegree(count, a, b);
        order = ordering.order;
        place = new int[count];
        for (int i = 0; i < count; i++) {
            place[order[i]] = i;
        }
        start = new int[count + 1];
        pairStart = new int[count + 1];
        for (int v = 0; v < count; v++) {
            int n = ordering.later[v].length;
            start[v + 1] = start[v] + n;
            pairStart[v + 1] = pairStart[v] + n * (n - 1) / 2;
        }
        column = new int[start[count]];
        for (int v = 0; v < count; v++) {
            System.arraycopy(ordering.later[v], 0, column, start[v], ordering.later[v].length);
            sortByPlace(start[v], start[v + 1]);
        }
        pairTarget = new int[pairStart[count]];
        findTargets();
        diagonal = new double[count];
        off = new double[column.length];
        factorDiagonal = new double[count];
        factorOff = new double[column.length];
    }

    /** Sorts entries by the place of their unknown in the order, so that the first of a pair owns their entry. */
    private void sortByPlace(int low, int high) {
        long[] keys = new long[high - low];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = ((long) place[column[low + i]] << 32) | column[low + i];
        }
        Arrays.sort(keys);
        for (int i = 0; i < keys.length; i++) {
            column[low + i] = (int) keys[i];
        }
    }

    private void findTargets() {
        for (int v = 0; v < count; v++) {
            int at = pairStart[v];
            for (int i = start[v]; i < start[v + 1]; i++) {
                for (int j = i + 1; j < start[v + 1]; j++) {
                    pairTarget[at++] = entry(column[i], column[j]);
                }
            }
        }
    }

    /** The entry of a pair of which {@code first} is eliminated first. */
    private int entry(int first, int second) {
        int low = start[first];
        int high = start[first + 1] - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int way = Integer.compare(place[column[middle]], place[second]);
            if (way == 0) {
                return middle;
            }
            if (way < 0) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        throw new IllegalArgumentException("no entry for " + first + " and " + second);
    }

    /** The slot of a pair that was named at the start. */
    public int slot(int a, int b) {
        return place[a] < place[b] ? entry(a, b) : entry(b, a);
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
