package orlop.study.flow;

/**
 * Equal sources without a slope side by side: nothing says how they share their current, so they share it alike, each up
 * to its limit.
 */
final class Likes {
    private final Circuit circuit;
    private final int[] parts;
    private final int[] localA;
    private final int[] localB;
    private final boolean[] tied;
    private final boolean[] redundant;
    private final double[] current;

    /**
     * @param tied by position: whether the part holds its voltage
     * @param redundant by position: whether it would, but another does already
     * @param current by position: from a to b; put right by {@link #share()}
     */
    Likes(
            Circuit circuit,
            int[] parts,
            int[] localA,
            int[] localB,
            boolean[] tied,
            boolean[] redundant,
            double[] current) {
        this.circuit = circuit;
        this.parts = parts;
        this.localA = localA;
        this.localB = localB;
        this.tied = tied;
        this.redundant = redundant;
        this.current = current;
    }

    /** Puts the currents right. */
    void share() {
        for (int i = 0; i < parts.length; i++) {
            boolean emf = circuit.part(parts[i]) == Part.EMF && redundant[i];
            boolean limited = circuit.part(parts[i]) == Part.LIMITED && tied[i];
            if (emf || limited) {
                shareWith(i);
            }
        }
    }

    private void shareWith(int i) {
        double left = 0;
        int sharing = 0;
        boolean[] open = new boolean[parts.length];
        for (int k = 0; k < parts.length; k++) {
            open[k] = alike(i, k);
            left += open[k] ? current[k] : 0;
            sharing += open[k] ? 1 : 0;
        }
        boolean full = sharing > 1;
        while (full) { // those whose limit is below their share give that; the others share the rest
            full = false;
            for (int k = 0; k < parts.length && sharing > 1; k++) {
                if (open[k] && -left / sharing > limit(k)) {
                    open[k] = false;
                    current[k] = -limit(k);
                    left += limit(k);
                    sharing--;
                    full = true;
                }
            }
        } // the last keeps all of the rest: where that is beyond its limit, it no longer holds the voltage
        for (int k = 0; k < parts.length; k++) {
            current[k] = open[k] ? left / sharing : current[k];
        }
    }

    private double limit(int k) {
        return circuit.part(parts[k]) == Part.LIMITED ? circuit.third(parts[k]) : Double.POSITIVE_INFINITY;
    }

    /** Those that give their limit already, or nothing, no longer take part. */
    private boolean alike(int i, int k) {
        return (tied[k] || redundant[k])
                && circuit.part(parts[k]) == circuit.part(parts[i])
                && circuit.second(parts[k]) == 0
                && circuit.first(parts[k]) == circuit.first(parts[i])
                && localA[k] == localA[i]
                && localB[k] == localB[i];
    }
}
