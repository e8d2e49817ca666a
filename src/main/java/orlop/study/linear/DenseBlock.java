package orlop.study.linear;

/**
 * The last places of a system, which all have entries with each other: what remains when nothing is sparse any more. Does
 * exactly the sums of {@link Elimination} in exactly their order, but several rows at a time, so that a value once
 * fetched from memory is used more than once.
 */
final class DenseBlock {
    /** So many rows are finished before what follows is touched. */
    private static final int PANEL = 32;

    private final Pattern pattern;
    private final int from;
    private final int count;
    private final double[] scratch;
    private final double[][] rows; // of the panel, before they are divided by their pivots; by place less from

    /** @param pattern has at least one place from {@link Pattern#fullFrom} on */
    DenseBlock(Pattern pattern) {
        this.pattern = pattern;
        from = pattern.fullFrom;
        count = pattern.count;
        rows = new double[Math.min(PANEL, count - from)][count - from];
        scratch = new double[count - from];
    }

    /** Where the entry of place v with place 0 would stand: entries of a full row lie side by side. */
    private int base(int v) {
        return pattern.start[v] - v - 1;
    }

    /** As {@link Elimination#factor}, from the first full place on; both arrays hold what is left there by then. */
    boolean factor(double[] original, double[] diagonal, double[] off) {
        for (int low = from; low < count; low += PANEL) {
            int high = Math.min(count, low + PANEL);
            for (int v = low; v < high; v++) {
                update(v, low, v, diagonal, off);
                double pivot = diagonal[v];
                if (!(pivot > original[v] * 1e-14) || !(pivot > 0)) {
                    return false;
                }
                keep(v, rows[v - low], pivot, off);
            }
            for (int v = high; v < count; v++) {
                update(v, low, high, diagonal, off);
            }
        }
        return true;
    }

    private void keep(int v, double[] row, double pivot, double[] off) {
        int base = base(v) + from;
        for (int j = v + 1 - from; j < count - from; j++) {
            double value = off[base + j];
            row[j] = value;
            off[base + j] = value / pivot;
        }
    }

    /** Takes the shares of the panel's rows up to {@code high} from row v. */
    private void update(int v, int low, int high, double[] diagonal, double[] off) {
        int here = v - from;
        int length = count - v - 1;
        double[] mine = scratch;
        System.arraycopy(off, pattern.start[v], mine, here + 1, length);
        double own = diagonal[v];
        int u = low;
        for (; u + 3 < high; u += 4) {
            double[] r0 = rows[u - low];
            double[] r1 = rows[u - low + 1];
            double[] r2 = rows[u - low + 2];
            double[] r3 = rows[u - low + 3];
            double s0 = off[base(u) + v];
            double s1 = off[base(u + 1) + v];
            double s2 = off[base(u + 2) + v];
            double s3 = off[base(u + 3) + v];
            own = own - s0 * r0[here] - s1 * r1[here] - s2 * r2[here] - s3 * r3[here];
            take(mine, here + 1, mine.length, r0, r1, r2, r3, s0, s1, s2, s3);
        }
        for (; u < high; u++) {
            double[] row = rows[u - low];
            double share = off[base(u) + v];
            own -= share * row[here];
            for (int j = here + 1; j < count - from; j++) {
                mine[j] -= share * row[j];
            }
        }
        diagonal[v] = own;
        System.arraycopy(mine, here + 1, off, pattern.start[v], length);
    }

    /**
     * As {@link Elimination#inverse}, from the last place down to the first full one. Here places are counted from the
     * last one back, so that the entries of all rows stand at the same numbers.
     */
    void inverse(double[] diagonal, double[] off, double[] zDiagonal, double[] zOff) {
        int n = count - from;
        double[][] z = new double[n][];
        double[] f = new double[n];
        for (int v = 0; v < n; v++) {
            int start = pattern.start[count - 1 - v];
            for (int k = 0; k < v; k++) {
                f[v - 1 - k] = off[start + k];
            }
            double[] w = new double[v];
            int i = v - 1;
            for (; i >= 3; i -= 4) {
                spread(i, f, zDiagonal, z, w);
            }
            for (; i >= 0; i--) {
                w[i] -= f[i] * zDiagonal[count - 1 - i];
                w[i] -= rest(i, 0, f, z[i], w);
            }
            double own = 1 / diagonal[count - 1 - v];
            for (int k = v - 1; k >= 0; k--) {
                own -= f[k] * w[k];
                zOff[start + v - 1 - k] = w[k];
            }
            z[v] = w;
            zDiagonal[count - 1 - v] = own;
        }
    }

    /** What row i adds to its entries down to {@code low}; returns what those add to entry i. */
    private static double rest(int i, int low, double[] f, double[] z, double[] w) {
        double sum = 0;
        for (int k = i - 1; k >= low; k--) {
            sum += f[k] * z[k];
            w[k] -= f[i] * z[k];
        }
        return sum;
    }

    /** Four rows at once: first among themselves, then with all that are left. */
    private void spread(int i, double[] f, double[] zDiagonal, double[][] z, double[] w) {
        double[] sum = new double[4];
        for (int k = 0; k < 4; k++) {
            w[i - k] -= f[i - k] * zDiagonal[count - 1 - i + k];
            sum[k] = rest(i - k, i - 3, f, z[i - k], w);
        }
        add(f, z[i], z[i - 1], z[i - 2], z[i - 3], sum);
        take(w, 0, i - 3, z[i], z[i - 1], z[i - 2], z[i - 3], f[i], f[i - 1], f[i - 2], f[i - 3]);
        for (int k = 0; k < 4; k++) {
            w[i - k] -= sum[k];
        }
    }

    /** Four sums, each in its own order. */
    private static void add(double[] f, double[] z0, double[] z1, double[] z2, double[] z3, double[] sum) {
        double s0 = sum[0];
        double s1 = sum[1];
        double s2 = sum[2];
        double s3 = sum[3];
        for (int k = z3.length - 1; k >= 0; k--) {
            double share = f[k];
            s0 += share * z0[k];
            s1 += share * z1[k];
            s2 += share * z2[k];
            s3 += share * z3[k];
        }
        sum[0] = s0;
        sum[1] = s1;
        sum[2] = s2;
        sum[3] = s3;
    }

    /** Takes shares of four rows from one. */
    private static void take(
            double[] mine,
            int first,
            int end,
            double[] r0,
            double[] r1,
            double[] r2,
            double[] r3,
            double s0,
            double s1,
            double s2,
            double s3) {
        for (int j = first; j < end; j++) {
            mine[j] = mine[j] - s0 * r0[j] - s1 * r1[j] - s2 * r2[j] - s3 * r3[j];
        }
    }
}
