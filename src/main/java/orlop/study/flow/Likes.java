package orlop.study.flow;

/** Equal ideal sources side by side: nothing says how they share their current, so they share it alike. */
final class Likes {
    private Likes() {}

    static void share(Circuit circuit, int[] parts, int[] localA, int[] localB, boolean[] redundant, double[] current) {
        for (int i = 0; i < parts.length; i++) {
            if (redundant[i] && circuit.part(parts[i]) == Part.EMF) {
                shareWith(i, circuit, parts, localA, localB, current);
            }
        }
    }

    private static void shareWith(int i, Circuit circuit, int[] parts, int[] localA, int[] localB, double[] current) {
        double sum = 0;
        int likes = 0;
        for (int k = 0; k < parts.length; k++) {
            if (alike(circuit, parts, localA, localB, i, k)) {
                sum += current[k];
                likes++;
            }
        }
        for (int k = 0; k < parts.length; k++) {
            if (alike(circuit, parts, localA, localB, i, k)) {
                current[k] = sum / likes;
            }
        }
    }

    private static boolean alike(Circuit circuit, int[] parts, int[] localA, int[] localB, int i, int k) {
        return circuit.part(parts[k]) == Part.EMF
                && circuit.second(parts[k]) == 0
                && localA[k] == localA[i]
                && localB[k] == localB[i];
    }
}
