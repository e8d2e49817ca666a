package orlop.study.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Sets of switch positions that a path needs: which way of a changeover, which device of an interlock. Every set has a
 * number; 0 needs nothing.
 */
final class Positions {
    private static final int[] NOTHING = {};

    private final List<int[]> sets = new ArrayList<>();
    private final Map<List<Integer>, Integer> numbers = new HashMap<>();
    private final Map<String, Integer> groups = new HashMap<>();
    private final List<Map<String, Integer>> members = new ArrayList<>();

    Positions() {
        sets.add(NOTHING);
        numbers.put(List.of(), 0);
    }

    /** A need, as one number: that of this group the one member holds. Both names are free. */
    int need(String group, String member) {
        int g = groups.computeIfAbsent(group, k -> groups.size());
        if (g == members.size()) {
            members.add(new HashMap<>());
        }
        Map<String, Integer> of = members.get(g);
        return g * 1_024 + of.computeIfAbsent(member, k -> of.size());
    }

    /** The set with more needs; −1 if two of its needs exclude each other. */
    int with(int set, int[] needs) {
        int now = set;
        for (int need : needs) {
            now = now < 0 ? -1 : with(now, need);
        }
        return now;
    }

    private int with(int set, int need) {
        int[] old = sets.get(set);
        for (int n : old) {
            if (n / 1_024 == need / 1_024) {
                return n == need ? set : -1;
            }
        }
        int[] more = Arrays.copyOf(old, old.length + 1);
        more[old.length] = need;
        Arrays.sort(more);
        List<Integer> key = Arrays.stream(more).boxed().toList();
        return numbers.computeIfAbsent(key, k -> {
            sets.add(more);
            return sets.size() - 1;
        });
    }

    /** Both together; −1 if they exclude each other. */
    int both(int one, int other) {
        return with(one, sets.get(other));
    }

    /** Whether all needs of the first are needs of the second. */
    boolean within(int first, int second) {
        if (first == second || first == 0) {
            return true;
        }
        for (int n : sets.get(first)) {
            if (Arrays.binarySearch(sets.get(second), n) < 0) {
                return false;
            }
        }
        return true;
    }
}
