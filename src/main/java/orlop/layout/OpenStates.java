package orlop.layout;

import java.util.Arrays;

/** The states that a search has still to look at, the cheapest first; of equals the latest, for it is the deepest. */
final class OpenStates {
    private double[] estimates = new double[256];
    private int[] serials = new int[256];
    private int[] states = new int[256];
    private int size;
    private int serial;

    void clear() {
        size = 0;
        serial = 0;
    }

    boolean isEmpty() {
        return size == 0;
    }

    void add(int state, double estimate) {
        if (size == states.length) {
            estimates = Arrays.copyOf(estimates, 2 * size);
            serials = Arrays.copyOf(serials, 2 * size);
            states = Arrays.copyOf(states, 2 * size);
        }
        int at = size++;
        int number = serial++;
        while (at > 0) {
            int up = (at - 1) / 2;
            if (!before(estimate, number, estimates[up], serials[up])) {
                break;
            }
            move(up, at);
            at = up;
        }
        put(at, state, estimate, number);
    }

    /** Takes out the first. Not to be asked of none. */
    int poll() {
        int first = states[0];
        size--;
        double estimate = estimates[size];
        int number = serials[size];
        int state = states[size];
        int at = 0;
        while (2 * at + 1 < size) {
            int down = 2 * at + 1;
            if (down + 1 < size && before(estimates[down + 1], serials[down + 1], estimates[down], serials[down])) {
                down++;
            }
            if (!before(estimates[down], serials[down], estimate, number)) {
                break;
            }
            move(down, at);
            at = down;
        }
        put(at, state, estimate, number);
        return first;
    }

    private static boolean before(double estimate, int number, double otherEstimate, int otherNumber) {
        return estimate < otherEstimate || (estimate == otherEstimate && number > otherNumber);
    }

    private void move(int from, int to) {
        put(to, states[from], estimates[from], serials[from]);
    }

    private void put(int at, int state, double estimate, int number) {
        estimates[at] = estimate;
        serials[at] = number;
        states[at] = state;
    }
}
