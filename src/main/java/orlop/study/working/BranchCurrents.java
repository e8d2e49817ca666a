package orlop.study.working;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Unit;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.model.Operation;

/** The current of a connection of direct current as the sum of what hangs behind it, where there is no way round it. */
final class BranchCurrents {
    private static final int MOST = 40;

    private final Operation operation;
    private final Network network;

    BranchCurrents(Operation operation) {
        this.operation = operation;
        network = operation.network();
    }

    /**
     * The sum; null in alternating current, where another way leads round it, or where too much hangs there to be read.
     *
     * @param amps what the sum has to give, 0 or more
     */
    @Nullable
    Working through(int edge, double amps) {
        Connection c = network.connections().get(edge);
        if (operation.isAc(c.a())) {
            return null;
        }
        double flowing = operation.currentOfConnection(edge);
        int far = flowing >= 0 ? c.b() : c.a();
        boolean[] beyond = beyond(edge, far);
        if (beyond == null) {
            return null;
        }
        List<Working> inputs = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            double taken = 0;
            if (beyond[t.pin()]) {
                taken += orZero(operation.currentOfAttachment(i));
            }
            if (t.outputPin() >= 0 && beyond[t.outputPin()]) {
                taken += orZero(operation.currentOfOutput(i));
            }
            if (taken != 0) {
                String symbol = "I" + (inputs.size() + 1);
                formula.append(inputs.isEmpty() ? "" : " + ").append(symbol);
                String word = taken < 0 ? "given-by" : "taken-by";
                inputs.add(Working.given(
                        Say.what(word, t.component().id(), t.component().name()), symbol, taken, Unit.AMPERE, null));
                sum += taken;
            }
        }
        boolean whole = !inputs.isEmpty() && inputs.size() <= MOST && Math.abs(sum - amps) <= 1e-6 * Math.max(1, amps);
        return whole ? Working.found(Say.what("current"), "I", formula.toString(), amps, Unit.AMPERE, inputs) : null;
    }

    private static double orZero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    /** The pins that are reached from the far end without this connection; null if the near end is one of them. */
    private boolean @Nullable [] beyond(int edge, int far) {
        List<List<Integer>> at = new ArrayList<>();
        for (int pin = 0; pin < network.pinCount(); pin++) {
            at.add(new ArrayList<>(2));
        }
        for (int e = 0; e < network.connections().size(); e++) {
            Connection c = network.connections().get(e);
            if (c.closed() && e != edge) {
                at.get(c.a()).add(e);
                at.get(c.b()).add(e);
            }
        }
        boolean[] seen = new boolean[network.pinCount()];
        Deque<Integer> open = new ArrayDeque<>(List.of(far));
        seen[far] = true;
        while (!open.isEmpty()) {
            int pin = open.remove();
            for (int e : at.get(pin)) {
                int next = network.connections().get(e).other(pin);
                if (!seen[next]) {
                    seen[next] = true;
                    open.add(next);
                }
            }
        }
        return seen[network.connections().get(edge).other(far)] ? null : seen;
    }
}
