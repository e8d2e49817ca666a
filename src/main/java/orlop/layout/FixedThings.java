package orlop.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What differs between the things that stay where they are in two states of a sheet.
 *
 * @param changed what is in one of them and not in the other, or more often in one than in the other
 * @param sameOrder whether all that is in both stands in the same order in both
 */
record FixedThings(List<Rect> changed, boolean sameOrder) {

    /** Most of both is the same: what they begin and what they end with is left out at once. */
    static FixedThings compare(List<Ground.Solid.Key> was, List<Ground.Solid.Key> is) {
        int first = 0;
        int least = Math.min(was.size(), is.size());
        while (first < least && was.get(first).equals(is.get(first))) {
            first++;
        }
        int last = 0;
        while (last < least - first && was.get(was.size() - 1 - last).equals(is.get(is.size() - 1 - last))) {
            last++;
        }
        List<Ground.Solid.Key> old = was.subList(first, was.size() - last);
        List<Ground.Solid.Key> now = is.subList(first, is.size() - last);
        List<Rect> changed = new ArrayList<>();
        boolean sameOrder = common(old, now, changed).equals(common(now, old, changed));
        return new FixedThings(changed, sameOrder);
    }

    /** What is in both, as often as it is in both; the rest is a change. */
    private static List<Ground.Solid.Key> common(
            List<Ground.Solid.Key> of, List<Ground.Solid.Key> in, List<Rect> changed) {
        Map<Ground.Solid.Key, Integer> left = new HashMap<>();
        in.forEach(k -> left.merge(k, 1, Integer::sum));
        List<Ground.Solid.Key> both = new ArrayList<>();
        for (Ground.Solid.Key k : of) {
            if (left.merge(k, -1, Integer::sum) >= 0) {
                both.add(k);
            } else {
                changed.add(k.rect());
            }
        }
        return both;
    }
}
