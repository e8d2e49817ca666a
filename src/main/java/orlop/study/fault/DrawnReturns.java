package orlop.study.fault;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;

/**
 * Which place of a neutral that is drawn by itself belongs to a place of the line. At a load or source it is where its
 * return is connected; on the way from there to the source, a cable back in the line is a cable back in the neutral.
 */
final class DrawnReturns {
    private final Network network;
    private final int[] ofPoint;
    private final int[] upstream; // by pin of a return: beyond its next cable towards the source, −1 at its end

    /** @param wanted false if nobody will ask */
    DrawnReturns(Network network, boolean wanted) {
        this.network = network;
        ofPoint = new int[network.points().size()];
        Arrays.fill(ofPoint, -1);
        upstream = new int[network.pinCount()];
        Arrays.fill(upstream, -1);
        int[] ofPin = new int[network.pinCount()];
        Arrays.fill(ofPin, -1);
        boolean any = false;
        for (Attachment t : network.attachments()) {
            if (wanted && t.returnPin() >= 0) {
                ofPin[t.pin()] = t.returnPin();
                any = true;
            }
        }
        if (any) {
            walkReturns();
            carryUp(ofPin);
        }
    }

    private void walkReturns() {
        List<List<Connection>> at = new ArrayList<>();
        for (int pin = 0; pin < network.pinCount(); pin++) {
            at.add(new ArrayList<>(2));
        }
        for (Connection c : network.connections()) {
            if (c.closed() && network.isReturn(network.pointOf(c.a()))) {
                at.get(c.a()).add(c);
                at.get(c.b()).add(c);
            }
        }
        Deque<Integer> open = new ArrayDeque<>();
        boolean[] seen = new boolean[network.pinCount()];
        for (int pin = 0; pin < seen.length; pin++) {
            if (network.isCommonNegative(network.pointOf(pin))) {
                seen[pin] = true;
                open.add(pin);
            }
        }
        while (!open.isEmpty()) {
            int pin = open.remove();
            for (Connection c : at.get(pin)) {
                int other = c.other(pin);
                if (!seen[other]) {
                    seen[other] = true;
                    upstream[other] = c.cable() != null ? pin : upstream[pin];
                    open.add(other);
                }
            }
        }
    }

    private void carryUp(int[] ofPin) {
        int[] order = network.feeding().order();
        for (int k = order.length - 1; k >= 0; k--) {
            int pin = order[k];
            int back = ofPin[pin];
            if (back < 0) {
                continue;
            }
            int point = network.pointOf(pin);
            ofPoint[point] = ofPoint[point] < 0 ? back : ofPoint[point];
            int up = network.feeding().before(pin);
            if (up >= 0 && ofPin[up] < 0) {
                boolean cable =
                        network.connections().get(network.feeding().via(pin)).cable() != null;
                ofPin[up] = cable ? upstream[back] : back;
            }
        }
    }

    /** A pin of the neutral that belongs to a point; −1 where none is drawn. */
    int of(int point) {
        return ofPoint[point];
    }
}
