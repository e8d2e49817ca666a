package orlop.study.linear;

/**
 * As {@link Elimination}, for complex symmetric systems (symmetric, not Hermitian): the nodal equations of alternating
 * current. One object serves one thread.
 */
public final class ComplexElimination {
    private final Pattern pattern;
    private final double[] diagonalRe;
    private final double[] diagonalIm;
    private final double[] offRe;
    private final double[] offIm;
    private final double[] magnitude; // greatest diagonal contribution, what a pivot is compared with

    /**
     * Prepares a system of this structure with all values zero.
     *
     * @param patterns those of systems prepared before
     * @param count unknowns, 0 or more
     * @param a one end of each off-diagonal pair
     * @param b the other end; pairs may be listed more than once, none has equal ends
     */
    public ComplexElimination(Patterns patterns, int count, int[] a, int[] b) {
        pattern = patterns.of(count, a, b);
        diagonalRe = new double[count];
        diagonalIm = new double[count];
        magnitude = new double[count];
        offRe = new double[pattern.row.length];
        offIm = new double[pattern.row.length];
    }

    /** Sets every value to zero. */
    public void clear() {
        for (double[] values : new double[][] {diagonalRe, diagonalIm, magnitude, offRe, offIm}) {
            java.util.Arrays.fill(values, 0);
        }
    }

    /** Adds to the diagonal value of an unknown. */
    public void addDiagonal(int unknown, Complex value) {
        int v = pattern.place[unknown];
        diagonalRe[v] += value.re();
        diagonalIm[v] += value.im();
        magnitude[v] += value.magnitude();
    }

    /** Adds to the value of a pair that was named at the start. */
    public void addPair(int a, int b, Complex value) {
        int slot = pattern.slot(a, b);
        offRe[slot] += value.re();
        offIm[slot] += value.im();
    }

    /**
     * Factors the values in place; for new values, {@link #clear} first.
     *
     * @return false if the matrix is singular: a resonance without resistance
     */
    public boolean factor() {
        for (int v = 0; v < pattern.count; v++) {
            double re = diagonalRe[v];
            double im = diagonalIm[v];
            double square = re * re + im * im;
            if (!(Math.sqrt(square) > 1e-14 * magnitude[v])) {
                return false;
            }
            eliminate(v, re / square, -im / square);
        }
        return true;
    }

    private void eliminate(int v, double inverseRe, double inverseIm) {
        int high = pattern.start[v + 1];
        for (int i = pattern.start[v]; i < high; i++) {
            double shareRe = offRe[i] * inverseRe - offIm[i] * inverseIm;
            double shareIm = offRe[i] * inverseIm + offIm[i] * inverseRe;
            int w = pattern.row[i];
            diagonalRe[w] -= shareRe * offRe[i] - shareIm * offIm[i];
            diagonalIm[w] -= shareRe * offIm[i] + shareIm * offRe[i];
            int target = pattern.start[w];
            for (int j = i + 1; j < high; j++) {
                target = pattern.entryFrom(target, w, pattern.row[j]);
                offRe[target] -= shareRe * offRe[j] - shareIm * offIm[j];
                offIm[target] -= shareRe * offIm[j] + shareIm * offRe[j];
            }
        }
        for (int i = pattern.start[v]; i < high; i++) {
            double re = offRe[i];
            offRe[i] = re * inverseRe - offIm[i] * inverseIm;
            offIm[i] = re * inverseIm + offIm[i] * inverseRe;
        }
    }

    /** Solves in place: the right-hand side goes in, the solution comes out. */
    public void solve(double[] re, double[] im) {
        double[] orderedRe = ordered(re);
        double[] orderedIm = ordered(im);
        solveOrdered(orderedRe, orderedIm);
        for (int u = 0; u < pattern.count; u++) {
            re[u] = orderedRe[pattern.place[u]];
            im[u] = orderedIm[pattern.place[u]];
        }
    }

    private double[] ordered(double[] byUnknown) {
        double[] byPlace = new double[pattern.count];
        for (int u = 0; u < pattern.count; u++) {
            byPlace[pattern.place[u]] = byUnknown[u];
        }
        return byPlace;
    }

    private void solveOrdered(double[] re, double[] im) {
        for (int v = 0; v < pattern.count; v++) {
            for (int i = pattern.start[v]; i < pattern.start[v + 1]; i++) {
                int w = pattern.row[i];
                re[w] -= offRe[i] * re[v] - offIm[i] * im[v];
                im[w] -= offRe[i] * im[v] + offIm[i] * re[v];
            }
        }
        for (int v = pattern.count - 1; v >= 0; v--) {
            double square = diagonalRe[v] * diagonalRe[v] + diagonalIm[v] * diagonalIm[v];
            double valueRe = (re[v] * diagonalRe[v] + im[v] * diagonalIm[v]) / square;
            double valueIm = (im[v] * diagonalRe[v] - re[v] * diagonalIm[v]) / square;
            for (int i = pattern.start[v]; i < pattern.start[v + 1]; i++) {
                int w = pattern.row[i];
                valueRe -= offRe[i] * re[w] - offIm[i] * im[w];
                valueIm -= offRe[i] * im[w] + offIm[i] * re[w];
            }
            re[v] = valueRe;
            im[v] = valueIm;
        }
    }

    /** Those entries of the inverse that stand where the factors have entries. */
    public final class Inverse {
        private final Complex[] diagonal;
        private final Complex[] off;

        private Inverse(Complex[] diagonal, Complex[] off) {
            this.diagonal = diagonal;
            this.off = off;
        }

        /** The impedance of an unknown against the reference. */
        public Complex at(int unknown) {
            return diagonal[pattern.place[unknown]];
        }

        /** The transfer impedance of a pair that was named at the start. */
        public Complex between(int a, int b) {
            return off[pattern.slot(a, b)];
        }
    }

    /** The inverse of what was factored. */
    public Inverse inverse() {
        Complex[] zDiagonal = new Complex[pattern.count];
        Complex[] zOff = new Complex[offRe.length];
        java.util.Arrays.fill(zOff, Complex.ZERO);
        for (int v = pattern.count - 1; v >= 0; v--) {
            int high = pattern.start[v + 1];
            for (int i = pattern.start[v]; i < high; i++) { // K. Takahashi, J. Fagan, M.-S. Chin, 1973
                zOff[i] = zOff[i].minus(off(i).times(zDiagonal[pattern.row[i]]));
                int w = pattern.row[i];
                int target = pattern.start[w];
                for (int j = i + 1; j < high; j++) {
                    target = pattern.entryFrom(target, w, pattern.row[j]);
                    Complex z = zOff[target];
                    zOff[i] = zOff[i].minus(off(j).times(z));
                    zOff[j] = zOff[j].minus(off(i).times(z));
                }
            }
            Complex z = new Complex(diagonalRe[v], diagonalIm[v]).inverse();
            for (int i = pattern.start[v]; i < high; i++) {
                z = z.minus(off(i).times(zOff[i]));
            }
            zDiagonal[v] = z;
        }
        return new Inverse(zDiagonal, zOff);
    }

    private Complex off(int i) {
        return new Complex(offRe[i], offIm[i]);
    }
}
