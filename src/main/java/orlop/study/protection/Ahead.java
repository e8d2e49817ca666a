package orlop.study.protection;

import java.util.Arrays;

/**
 * What a search along the network has still before it, the nearest first: a binary heap (J. W. J. Williams, 1964) of
 * numbers. Of places equally near none comes first by rule, but the same ones always do.
 */
final class Ahead {
    private double[] metres = new double[32];
    private int[] pins = new int[32];
    private int[] ways = new int[32];
    private int size;

    boolean isEmpty() {
        return size == 0;
    }

    void clear() {
        size = 0;
    }

    /** Distance of the nearest. */
    double leastM() {
        return metres[0];
    }

    /** The pin of the nearest. */
    int pin() {
        return pins[0];
    }

    /** The connection by which the nearest is reached. */
    int via() {
        return ways[0];
    }

    void add(int pin, int via, double distanceM) {
        if (size == pins.length) {
            metres = Arrays.copyOf(metres, 2 * size);
            pins = Arrays.copyOf(pins, 2 * size);
            ways = Arrays.copyOf(ways, 2 * size);
        }
        int at = size++;
        while (at > 0 && distanceM < metres[(at - 1) / 2]) {
            move((at - 1) / 2, at);
            at = (at - 1) / 2;
        }
        put(at, pin, via, distanceM);
    }

    /** Takes the nearest away. */
    void remove() {
        size--;
        double distanceM = metres[size];
        int at = 0;
        while (2 * at + 1 < size) {
            int child = 2 * at + 1;
            child += child + 1 < size && metres[child] > metres[child + 1] ? 1 : 0;
            if (distanceM <= metres[child]) {
                break;
            }
            move(child, at);
            at = child;
        }
        put(at, pins[size], ways[size], distanceM);
    }

    private void move(int from, int to) {
        put(to, pins[from], ways[from], metres[from]);
    }

    private void put(int at, int pin, int via, double distanceM) {
        pins[at] = pin;
        ways[at] = via;
        metres[at] = distanceM;
    }
}
