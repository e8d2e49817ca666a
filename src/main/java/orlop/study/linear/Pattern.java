package orlop.study.linear;

import java.util.Arrays;

/** Which entries the factors of a sparse symmetric system have, and what each step of the elimination updates. */
final class Pattern {
    final int count;
    final int[] order;
    final int[] place; // of an unknown in the order
    final int[] start; // of an unknown's off-diagonal entries
    final int[] column; // which unknown an entry belongs to
    final int[] pairStart; // of the updates that eliminating an unknown causes
    final int[] pairTarget; // entry that an update goes to

    Pattern(int count, int[] a, int[] b) {
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

    /** The entry of a pair of neighbours, whichever is eliminated first. */
    int slot(int a, int b) {
        return place[a] < place[b] ? entry(a, b) : entry(b, a);
    }
}
