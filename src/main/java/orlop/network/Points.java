package orlop.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Kind;

/** Contracts pins to points, names them, and finds which of them are the common negative. */
final class Points {
    private final Wiring wiring;
    private final Pins pins;
    private final int[] pointOfPin;
    private final List<NetPoint> all = new ArrayList<>();
    private final boolean[] negative;
    private final boolean[] inReturn;

    Points(Wiring wiring) {
        this.wiring = wiring;
        pins = wiring.pins();
        pointOfPin = new int[pins.count()];
        Arrays.fill(pointOfPin, -1);
        Joints joints = new Joints(pins.count());
        for (Connection c : wiring.connections()) {
            if (c.contracted()) {
                joints.join(c.a(), c.b());
            }
        }
        number(joints);
        negative = new boolean[all.size()];
        inReturn = new boolean[all.size()];
        groundReturns();
    }

    List<NetPoint> all() {
        return all;
    }

    int of(int pin) {
        return pointOfPin[pin];
    }

    boolean isCommonNegative(int point) {
        return negative[point];
    }

    boolean isReturn(int point) {
        return inReturn[point];
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
            if (rank(pin) < rank(namedBy[point])) {
                namedBy[point] = pin;
            }
        }
        name(n, namedBy);
    }

    /** A bar before a junction before anything else. */
    private int rank(int pin) {
        return switch (pins.componentOf(pin).kind()) {
            case BUSBAR, DISTRIBUTION_BOARD, HULL, ENGINE_BLOCK, PROTECTIVE_EARTH_BAR -> 0;
            case JUNCTION -> 1;
            default -> 2;
        };
    }

    private void name(int count, int[] namedBy) {
        List<List<String>> terminals = terminals(count);
        boolean[] taken = new boolean[wiring.numbering().componentCount()];
        for (int i = 0; i < count; i++) {
            int by = namedBy[i];
            String id = pins.componentOf(by).id();
            if (taken[pins.positionOf(by)]) {
                id = id + "." + pins.terminalOf(by);
            }
            taken[pins.positionOf(by)] = true;
            all.add(new NetPoint(id, pins.systemOf(by), terminals.get(i)));
        }
    }

    /** By point; the lists of points of one pin are those of the numbering. */
    private List<List<String>> terminals(int count) {
        List<List<String>> terminals = new ArrayList<>(Collections.nCopies(count, List.of()));
        boolean[] own = new boolean[count];
        for (int pin = 0; pin < pins.count(); pin++) {
            int point = pointOfPin[pin];
            if (point >= 0) {
                List<String> names = wiring.numbering().terminals(pin);
                List<String> before = terminals.get(point);
                if (own[point]) {
                    before.addAll(names);
                } else if (before.isEmpty()) {
                    terminals.set(point, names);
                } else {
                    List<String> joined = new ArrayList<>(before);
                    joined.addAll(names);
                    terminals.set(point, joined);
                    own[point] = true;
                }
            }
        }
        return terminals;
    }

    /**
     * Where returns are drawn, they must meet the common negative somewhere: at the first bar or earth of each drawn
     * return, else at its first terminal.
     */
    private void groundReturns() {
        Joints passive = new Joints(all.size());
        for (Connection c : wiring.connections()) {
            int a = pointOfPin[c.a()];
            int b = pointOfPin[c.b()];
            if (c.closed() && c.kind() != Connection.Kind.DIODE && a >= 0 && b >= 0) {
                passive.join(a, b);
            }
        }
        boolean[] live = new boolean[all.size()];
        boolean[] drawnReturn = new boolean[all.size()];
        for (Attachment t : wiring.attachments()) {
            mark(live, passive, t.pin());
            mark(live, passive, t.outputPin());
            mark(drawnReturn, passive, t.returnPin());
        }
        int[] groundOf = new int[all.size()];
        Arrays.fill(groundOf, -1);
        for (int pin = 0; pin < pins.count(); pin++) {
            int point = pointOfPin[pin];
            int group = point < 0 ? -1 : passive.find(point);
            if (group >= 0 && !live[group] && (drawnReturn[group] || wiring.isEarth(pin))) {
                int best = groundOf[group];
                groundOf[group] = best < 0 || rank(pin) < rank(best) ? pin : best;
                inReturn[point] = true;
            }
        }
        for (int pin : groundOf) {
            if (pin >= 0) {
                negative[pointOfPin[pin]] = true;
            }
        }
    }

    private void mark(boolean[] of, Joints passive, int pin) {
        @Nullable Integer point = pin < 0 ? null : pointOfPin[pin];
        if (point != null && point >= 0) {
            of[passive.find(point)] = true;
        }
    }
}
