package orlop.study.linear;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Solves sparse symmetric systems of one structure and changing values by L·D·Lᵀ without pivoting, trees first,
 * then in minimum-degree order. Radial networks cost time in proportion to their size. One object serves one thread.
 *
 * <p>Use: {@link #slot} once for each pair; then {@link #clear}, {@link #add}, {@link #factor}; then {@link #solve} as
 * often as wanted, and {@link #inverse}.
 */
public final class Elimination {
    /** Fewer places than these are done row by row. */
    private static final int DENSE_FROM = 16;

    private final int count;
    private final Pattern pattern;
    private final int[] place; // these three are the pattern's own
    private final int[] start;
    private final int[] row;
    private final double[] diagonal;
    private final double[] off;
    private final double[] factorDiagonal;
    private final double[] factorOff;
    private final double[] work;
    private final int sparse; // so many places come before the dense ones
    private final @Nullable DenseBlock dense;

    /**
     * Prepares systems of this structure.
     *
     * @param patterns those of systems prepared before
     * @param count unknowns, 0 or more
     * @param a one end of each off-diagonal pair
     * @param b the other end; pairs may be listed more than once, none has equal ends
     */
    public Elimination(Patterns patterns, int count, int[] a, int[] b) {
        this.count = count;
        pattern = patterns.of(count, a, b);
        place = pattern.place;
        start = pattern.start;
        row = pattern.row;
        diagonal = new double[count];
        off = new double[row.length];
        factorDiagonal = new double[count];
        factorOff = new double[row.length];
        work = new double[count];
        boolean block = count - pattern.fullFrom >= DENSE_FROM;
        sparse = block ? pattern.fullFrom : count;
        dense = block ? new DenseBlock(pattern) : null;
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
        diagonal[place[unknown]] += value;
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
        for (int v = 0; v < sparse; v++) {
            double pivot = factorDiagonal[v];
            if (!(pivot > diagonal[v] * 1e-14) || !(pivot > 0)) {
                return false;
            }
            int low = start[v];
            int high = start[v + 1];
            if (high == low + 1) { // of a tree, all are such
                double off = factorOff[low];
                factorOff[low] = off / pivot;
                factorDiagonal[row[low]] -= factorOff[low] * off;
                continue;
            }
            System.arraycopy(factorOff, low, work, 0, high - low);
            for (int i = low; i < high; i++) {
                double share = work[i - low] / pivot;
                factorDiagonal[row[i]] -= share * work[i - low];
                factorOff[i] = share;
                if (i + 1 < high) {
                    update(v, i, share);
                }
            }
        }
        return dense == null || dense.factor(diagonal, factorDiagonal, factorOff);
    }

    /** Takes a share of the later entries of v, which stand in the work array, from the row of entry i. */
    private void update(int v, int i, double share) {
        int from = i + 1 - start[v];
        int to = start[v + 1] - start[v];
        int target = row[i];
        int at = start[target];
        if (!pattern.isFull(target)) {
            for (int j = from; j < to; j++) {
                while (row[at] != row[start[v] + j]) {
                    at++;
                }
                factorOff[at] -= share * work[j];
            }
        } else if (pattern.isFull(v)) {
            int shift = at - from;
            for (int j = from; j < to; j++) {
                factorOff[shift + j] -= share * work[j];
            }
        } else {
            int base = at - target - 1;
            for (int j = from; j < to; j++) {
                factorOff[base + row[start[v] + j]] -= share * work[j];
            }
        }
    }

    /** Solves in place: the right-hand side goes in, the solution comes out. */
    public void solve(double[] x) {
        double[] y = work;
        for (int u = 0; u < count; u++) {
            y[place[u]] = x[u];
        }
        for (int v = 0; v < count; v++) {
            double value = y[v];
            if (value != 0) {
                for (int i = start[v]; i < start[v + 1]; i++) {
                    y[row[i]] -= factorOff[i] * value;
                }
            }
        }
        for (int v = count - 1; v >= 0; v--) {
            double value = y[v] / factorDiagonal[v];
            for (int i = start[v]; i < start[v + 1]; i++) {
                value -= factorOff[i] * y[row[i]];
            }
            y[v] = value;
        }
        for (int u = 0; u < count; u++) {
            x[u] = y[place[u]];
        }
    }

    /** The inverse, as far as the structure of the factors reaches: its diagonal and all pairs named at the start. */
    public Inverse inverse() {
        double[] zDiagonal = new double[count];
        double[] zOff = new double[off.length];
        if (dense != null) {
            dense.inverse(factorDiagonal, factorOff, zDiagonal, zOff);
        }
        for (int v = sparse - 1; v >= 0; v--) {
            int low = start[v];
            int high = start[v + 1];
            Arrays.fill(work, 0, high - low, 0);
            for (int i = low; i < high; i++) { // K. Takahashi, J. Fagan, M.-S. Chin, 1973
                work[i - low] -= factorOff[i] * zDiagonal[row[i]];
                if (i + 1 < high) {
                    spread(v, i, zOff);
                }
            }
            double z = 1 / factorDiagonal[v];
            for (int i = low; i < high; i++) {
                z -= factorOff[i] * work[i - low];
            }
            System.arraycopy(work, 0, zOff, low, high - low);
            zDiagonal[v] = z;
        }
        return new Inverse(place, zDiagonal, zOff);
    }

    /** What the inverse's values of entry i's row with the later entries of v add to those of v, in the work array. */
    private void spread(int v, int i, double[] zOff) {
        int low = start[v];
        int to = start[v + 1] - low;
        int target = row[i];
        int at = start[target];
        boolean full = pattern.isFull(target);
        double mine = factorOff[i];
        double sum = 0;
        for (int j = i + 1 - low; j < to; j++) {
            if (full) {
                at = start[target] + row[low + j] - target - 1;
            } else {
                while (row[at] != row[low + j]) {
                    at++;
                }
            }
            sum += factorOff[low + j] * zOff[at];
            work[j] -= mine * zOff[at];
        }
        work[i - low] -= sum;
    }

    /** Part of an inverse. */
    public static final class Inverse {
        private final int[] place;
        private final double[] diagonal;
        private final double[] off;

        private Inverse(int[] place, double[] diagonal, double[] off) {
            this.place = place;
            this.diagonal = diagonal;
            this.off = off;
        }

        /** The inverse's diagonal value of an unknown. */
        public double diagonal(int unknown) {
            return diagonal[place[unknown]];
        }

        /** The inverse's value of a pair's slot. */
        public double pair(int slot) {
            return off[slot];
        }
    }
}
