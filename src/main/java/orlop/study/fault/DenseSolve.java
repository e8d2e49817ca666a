package orlop.study.fault;

/** Gauss elimination with row exchange for a handful of equations. */
final class DenseSolve {
    private static final double LEAST_PIVOT = 1e-13;

    private DenseSolve() {}

    /**
     * Solves in place.
     *
     * @param m rows of coefficients with the right-hand side behind; overwritten
     * @param x takes the solution
     * @return false if the rows depend on each other
     */
    static boolean solve(double[][] m, double[] x, int count) {
        double[] scale = new double[count];
        for (int r = 0; r < count; r++) {
            for (int c = 0; c < count; c++) {
                scale[r] = Math.max(scale[r], Math.abs(m[r][c]));
            }
        }
        for (int c = 0; c < count; c++) {
            int best = c;
            for (int r = c; r < count; r++) {
                best = relative(m, scale, r, c) > relative(m, scale, best, c) ? r : best;
            }
            if (!(relative(m, scale, best, c) > LEAST_PIVOT)) {
                return false;
            }
            double[] row = m[best];
            m[best] = m[c];
            m[c] = row;
            double s = scale[best];
            scale[best] = scale[c];
            scale[c] = s;
            clearBelow(m, c, count);
        }
        for (int r = count - 1; r >= 0; r--) {
            double sum = m[r][count];
            for (int c = r + 1; c < count; c++) {
                sum -= m[r][c] * x[c];
            }
            x[r] = sum / m[r][r];
        }
        return true;
    }

    private static double relative(double[][] m, double[] scale, int r, int c) {
        return scale[r] > 0 ? Math.abs(m[r][c]) / scale[r] : 0;
    }

    private static void clearBelow(double[][] m, int c, int count) {
        for (int r = c + 1; r < count; r++) {
            double share = m[r][c] / m[c][c];
            if (share != 0) {
                for (int k = c; k <= count; k++) {
                    m[r][k] -= share * m[c][k];
                }
            }
        }
    }
}
