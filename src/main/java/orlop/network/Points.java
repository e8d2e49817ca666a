package orlop.network;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Contracts pins to points, names them, and finds which of them are the common negative. */
final class Points {
    private final Wiring wiring;
    private final Pins pins;
    private final Listing points;
    private final Listing listed;
    private final boolean[] negative;
    private final boolean[] inReturn;

    Points(Wiring wiring) {
        this.wiring = wiring;
        pins = wiring.pins();
        points = new Listing(wiring, joints(true));
        listed = wiring.numbering().hasUnknownLength() ? new Listing(wiring, joints(false)) : points;
        negative = new boolean[all().size()];
        inReturn = new boolean[negative.length];
        groundReturns();
    }

    private Joints joints(boolean overUnknownLength) {
        Joints joints = new Joints(pins.count());
        for (int e = 0; e < wiring.connections().size(); e++) {
            Connection c = wiring.connections().get(e);
            if (c.contracted() && (overUnknownLength || !wiring.numbering().isOfUnknownLength(e))) {
                joints.join(c.a(), c.b());
            }
        }
        return joints;
    }

    List<NetPoint> all() {
        return points.all();
    }

    int of(int pin) {
        return points.of(pin);
    }

    /** The points with those apart that only a cable of unknown length joins. */
    Listing listed() {
        return listed;
    }

    boolean isCommonNegative(int point) {
        return negative[point];
    }

    boolean isReturn(int point) {
        return inReturn[point];
    }

    /**
     * Where returns are drawn, they must meet the common negative somewhere: at the first bar or earth of each drawn
     * return, else at its first terminal.
     */
    private void groundReturns() {
        Joints passive = new Joints(all().size());
        for (Connection c : wiring.connections()) {
            int a = of(c.a());
            int b = of(c.b());
            if (c.closed() && c.kind() != Connection.Kind.DIODE && a >= 0 && b >= 0) {
                passive.join(a, b);
            }
        }
        boolean[] live = new boolean[all().size()];
        boolean[] drawnReturn = new boolean[all().size()];
        for (Attachment t : wiring.attachments()) {
            mark(live, passive, t.pin());
            mark(live, passive, t.outputPin());
            mark(drawnReturn, passive, t.returnPin());
        }
        int[] groundOf = new int[all().size()];
        Arrays.fill(groundOf, -1);
        for (int pin = 0; pin < pins.count(); pin++) {
            int point = of(pin);
            int group = point < 0 ? -1 : passive.find(point);
            if (group >= 0 && !live[group] && (drawnReturn[group] || wiring.isEarth(pin))) {
                int best = groundOf[group];
                groundOf[group] = best < 0 || Listing.rank(pins, pin) < Listing.rank(pins, best) ? pin : best;
                inReturn[point] = true;
            }
        }
        for (int pin : groundOf) {
            if (pin >= 0) {
                negative[of(pin)] = true;
            }
        }
    }

    private void mark(boolean[] of, Joints passive, int pin) {
        @Nullable Integer point = pin < 0 ? null : of(pin);
        if (point != null && point >= 0) {
            of[passive.find(point)] = true;
        }
    }
}
