package orlop.study.linear;

import java.util.Arrays;

/**
 * Which entries the factors of a sparse symmetric system have. Everything is numbered by place in the order of
 * elimination; the entries of one place are sorted, and nothing is stored beside them: what a step updates is found by
 * walking two sorted rows at once, which costs no more than the update.
 */
final class Pattern {
    final int count;

    /** Place of an unknown in the order of elimination. */
    final int[] place;

    /** By place: where its entries start; one more at the end. */
    final int[] start;

    /** The later places of which a place's entries are, ascending. */
    final int[] row;

    /** From this place on all have entries with each other. */
    final int fullFrom;

    Pattern(int count, int[] a, int[] b) {
        this.count = count;
        Peeling trees = new Peeling(count, a, b);
        MinimumDegree core = new MinimumDegree(trees);
        place = new int[count];
        for (int s = 0; s < trees.peeled; s++) {
            place[trees.order[s]] = s;
        }
        for (int s = 0; s < core.order.length; s++) {
            place[core.order[s]] = trees.peeled + s;
        }
        start = new int[count + 1];
        for (int s = 0; s < trees.peeled; s++) {
            start[s + 1] = start[s] + (trees.parent[trees.order[s]] < 0 ? 0 : 1);
        }
        for (int s = trees.peeled; s < count; s++) {
            start[s + 1] = Math.addExact(start[s], core.later[s - trees.peeled].length);
        }
        row = new int[start[count]];
        for (int s = 0; s < trees.peeled; s++) {
            if (start[s + 1] > start[s]) {
                row[start[s]] = place[trees.parent[trees.order[s]]];
            }
        }
        for (int s = trees.peeled; s < count; s++) {
            int at = start[s];
            for (int v : core.later[s - trees.peeled]) {
                row[at++] = place[v];
            }
            Arrays.sort(row, start[s], at);
        }
        int full = count;
        while (full > 0 && isFull(full - 1)) {
            full--;
        }
        fullFrom = full;
    }

    /** Whether a place has an entry with every later place: entries then stand side by side. */
    boolean isFull(int at) {
        return start[at + 1] - start[at] == count - 1 - at;
    }

    /** The entry of places {@code of} and {@code with}, found from an entry of {@code of} that is none later. */
    int entryFrom(int low, int of, int with) {
        if (isFull(of)) {
            return start[of] + with - of - 1;
        }
        int at = low;
        while (row[at] != with) {
            at++;
        }
        return at;
    }

    /** The entry of a pair of unknowns that was named at the start. */
    int slot(int a, int b) {
        int first = Math.min(place[a], place[b]);
        int second = Math.max(place[a], place[b]);
        int found = Arrays.binarySearch(row, start[first], start[first + 1], second);
        if (found < 0) {
            throw new IllegalArgumentException("no entry for " + a + " and " + b);
        }
        return found;
    }
}
