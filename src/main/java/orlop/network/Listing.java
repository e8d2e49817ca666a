package orlop.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import orlop.drawing.Component;
import orlop.drawing.Kind;

/** Numbers and names groups of joined pins. */
final class Listing {
    private final Wiring wiring;
    private final Numbering numbering;
    private final Pins pins;
    private final int[] pointOfPin;
    private final int[] nextPin; // of the same point; −1 after the last
    private int[] firstPin = {}; // by point
    private final List<NetPoint> all = new ArrayList<>();

    Listing(Wiring wiring, Joints joints) {
        this.wiring = wiring;
        numbering = wiring.numbering();
        pins = wiring.pins();
        pointOfPin = new int[pins.count()];
        Arrays.fill(pointOfPin, -1);
        nextPin = new int[pointOfPin.length];
        number(joints);
    }

    List<NetPoint> all() {
        return all;
    }

    /** Number of the pin's group; −1 for a return terminal to which nothing is drawn. */
    int of(int pin) {
        return pointOfPin[pin];
    }

    private boolean shown(int pin) {
        if (wiring.used(pin)) {
            return true;
        }
        Component c = pins.componentOf(pin);
        return c.kind().terminals() != Kind.Terminals.TWO
                || pins.of(c, 1) == pin
                || !(c.kind().group() == orlop.drawing.Group.SOURCES || c.kind() == Kind.LOAD);
    }

    private void number(Joints joints) {
        int[] pointOfRoot = new int[pins.count()];
        Arrays.fill(pointOfRoot, -1);
        int[] namedBy = new int[pins.count()];
        int n = 0;
        for (int pin = 0; pin < pins.count(); pin++) {
            if (!shown(pin)) {
                continue;
            }
            int root = joints.find(pin);
            if (pointOfRoot[root] < 0) {
                namedBy[n] = pin;
                pointOfRoot[root] = n++;
            }
            int point = pointOfRoot[root];
            pointOfPin[pin] = point;
            if (rank(pins, pin) < rank(pins, namedBy[point])) {
                namedBy[point] = pin;
            }
        }
        name(n, namedBy);
    }

    /** A bar before a junction before anything else. */
    static int rank(Pins pins, int pin) {
        return switch (pins.componentOf(pin).kind()) {
            case BUSBAR, DISTRIBUTION_BOARD, HULL, ENGINE_BLOCK, PROTECTIVE_EARTH_BAR -> 0;
            case JUNCTION -> 1;
            default -> 2;
        };
    }

    private void name(int count, int[] namedBy) {
        boolean[] taken = new boolean[wiring.numbering().componentCount()];
        chain(count);
        for (int i = 0; i < count; i++) {
            int point = i;
            int by = namedBy[i];
            String id = pins.componentOf(by).id();
            if (taken[pins.positionOf(by)]) {
                id = id + "." + pins.terminalOf(by);
            }
            taken[pins.positionOf(by)] = true;
            all.add(new NetPoint(id, pins.systemOf(by), new ReadLater<>(() -> terminals(point))));
        }
    }

    /** Strings the pins of each point together, in the order of the drawing. */
    private void chain(int count) {
        firstPin = new int[count];
        Arrays.fill(firstPin, -1);
        for (int pin = pins.count() - 1; pin >= 0; pin--) {
            int point = pointOfPin[pin];
            if (point >= 0) {
                nextPin[pin] = firstPin[point];
                firstPin[point] = pin;
            }
        }
    }

    private List<String> terminals(int point) {
        List<String> terminals = new ArrayList<>(2);
        for (int pin = firstPin[point]; pin >= 0; pin = nextPin[pin]) {
            terminals.addAll(numbering.terminals(pin));
        }
        return List.copyOf(terminals);
    }
}
