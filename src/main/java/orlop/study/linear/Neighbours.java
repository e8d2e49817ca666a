package orlop.study.linear;

import java.util.Arrays;

/** For each unknown those that it is paired with, each once. */
final class Neighbours {
    final int[] start;
    final int[] of;

    Neighbours(int count, int[] a, int[] b) {
        int[] end = new int[count + 1];
        for (int e = 0; e < a.length; e++) {
            end[a[e]]++;
            end[b[e]]++;
        }
        start = new int[count + 1];
        for (int v = 0; v < count; v++) {
            start[v + 1] = start[v] + end[v];
            end[v] = start[v];
        }
        of = new int[start[count]];
        for (int e = 0; e < a.length; e++) {
            of[end[a[e]]++] = b[e];
            of[end[b[e]]++] = a[e];
        }
        dropRepeated(count);
    }

    private void dropRepeated(int count) {
        int[] last = new int[count]; // for whom it was last listed
        Arrays.fill(last, -1);
        int kept = 0;
        int low = 0;
        for (int v = 0; v < count; v++) {
            int high = start[v + 1];
            start[v] = kept;
            for (int i = low; i < high; i++) {
                if (last[of[i]] != v) {
                    last[of[i]] = v;
                    of[kept++] = of[i];
                }
            }
            low = high;
        }
        start[count] = kept;
    }
}
