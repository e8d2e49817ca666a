package orlop.layout;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Looks from the goals of a search whether any way can lead there at all. Where the goals are walled in, a search from the
 * other side would find that out only after it had looked over the whole sheet.
 */
final class GoalSide {
    /** So many states are looked at: what is walled in no closer is left to the search itself. */
    static final int MOST = 4_000;

    private final int[] states = new int[MOST];
    private int[] lookRun = {};
    private int run;
    private int size;

    /** The states from which a state can be reached by one step. */
    interface Before {
        void of(int state, GoalSide to);
    }

    /** Is told, while it looks, of a state from which a goal can be reached. */
    void add(int state) {
        if (state < lookRun.length && lookRun[state] != run) {
            lookRun[state] = run;
            if (size < MOST) {
                states[size] = state;
            }
            size++;
        }
    }

    /**
     * Whether no way leads from a start to a goal.
     *
     * @param count of all states
     * @param isStart whether a way may start in this state
     * @return false if there may be one
     */
    boolean walledIn(int count, int[] goals, Before before, IntPredicate isStart) {
        if (lookRun.length < count) {
            lookRun = new int[count];
            run = 0;
        }
        run++;
        size = 0;
        Arrays.stream(goals).forEach(this::add);
        for (int at = 0; at < size; at++) {
            if (size > MOST || isStart.test(states[at])) {
                return false;
            }
            before.of(states[at], this);
        }
        return true;
    }
}
