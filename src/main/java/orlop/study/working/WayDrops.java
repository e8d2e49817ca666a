package orlop.study.working;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Unit;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.model.Delivery;
import orlop.study.model.Operation;

/** What is lost on the way from the source to a pin, piece by piece. */
final class WayDrops {
    private final Operation operation;
    private final Network network;

    WayDrops(Operation operation) {
        this.operation = operation;
        network = operation.network();
    }

    /** The loss, symbol ΔU, over each cable and device; in alternating current the difference of the two ends. */
    Working to(int pin) {
        Delivery d = operation.delivery();
        int top = d.topPin(pin);
        double lost = operation.lostV(top, pin);
        String source = network.componentOf(top).id();
        List<Working> pieces = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        int at = top;
        for (int edge : d.fallTo(pin)) {
            Connection c = network.connections().get(edge);
            int next = c.other(at);
            double piece = operation.voltage(at) - operation.voltage(next);
            if (!c.contracted()) {
                sum += piece;
                String symbol = "ΔU" + (pieces.size() + 1);
                formula.append(pieces.isEmpty() ? "" : " + ").append(symbol);
                pieces.add(Working.given(Say.what("drop-over", c.item()), symbol, piece, Unit.VOLT, null));
            }
            at = next;
        }
        boolean whole = !pieces.isEmpty() && Math.abs(sum - lost) <= 1e-9 * Math.max(1, Math.abs(lost));
        if (whole) {
            return Working.found(Say.what("drop-way", source), "ΔU", formula.toString(), lost, Unit.VOLT, pieces);
        }
        double here = operation.voltage(top);
        double there = operation.voltage(pin);
        Working lostV = Working.given(Say.what("drop-way", source), "ΔU", lost, Unit.VOLT, Say.from("worst-phase"));
        return Math.abs(here - there - lost) > 1e-9 * Math.max(1, Math.abs(here))
                ? lostV
                : Working.found(
                        Say.what("drop-way", source),
                        "ΔU",
                        "U1 − U2",
                        lost,
                        Unit.VOLT,
                        List.of(
                                Working.given(Say.what("volts-at", source), "U1", here, Unit.VOLT, null),
                                Working.given(Say.what("volts-here"), "U2", there, Unit.VOLT, null)));
    }
}
