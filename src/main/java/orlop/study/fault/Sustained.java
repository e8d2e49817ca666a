package orlop.study.fault;

import java.util.HashMap;
import java.util.Map;
import orlop.drawing.Conversion;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.flow.Potentials;
import orlop.study.model.AcSourceModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.TransformerModel;

/**
 * What the sources of an island still give, at least, into a fault that lasts: a network as much as at first, a
 * generator what its excitation holds, an inverter its limit as long as it does not shut down.
 */
final class Sustained {
    private final Network network;
    private final Potentials joined; // used as a plain union-find
    private final Map<Integer, Double> heldA = new HashMap<>(); // by root

    Sustained(Plan plan, Operation operation) {
        network = operation.network();
        joined = new Potentials(plan.calculatesAnyAc() ? network.pinCount() : 0);
        if (!plan.calculatesAnyAc()) {
            return;
        }
        for (Connection c : network.connections()) {
            if (c.closed()) {
                joined.tie(c.a(), c.b(), 0);
            }
        }
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            if (plan.transformer(t.component()) == null
                    && operation.alternating().feeds(i)) {
                add(t.outputPin(), ofInverter(plan, t));
            } else if (t.isSource() && t.on() && operation.isAc(t.pin())) {
                AcSourceModel m = plan.acSource(t.component());
                add(t.pin(), m == null ? Double.NaN : of(m));
            }
        }
        behindTransformers(plan, operation);
    }

    private void behindTransformers(Plan plan, Operation operation) {
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            TransformerModel m = t.outputPin() < 0 ? null : plan.transformer(t.component());
            if (m != null && operation.alternating().feeds(i)) {
                add(t.outputPin(), most(t.pin()) / m.ratio());
            }
        }
    }

    private static double of(AcSourceModel m) {
        return switch (m.holding()) {
            case NETWORK -> Double.POSITIVE_INFINITY;
            case HELD -> m.heldA();
            case COLLAPSES -> 0;
            case UNKNOWN -> Double.NaN;
        };
    }

    private static double ofInverter(Plan plan, Attachment t) {
        Double seconds = t.component().particulars() instanceof Conversion.Inverter k
                ? k.faultHoldS()
                : t.component().particulars() instanceof Conversion.InverterCharger k ? k.faultHoldS() : null;
        return seconds == null ? Double.NaN : seconds > 0 ? plan.inverterFaultA(t.component()) : 0;
    }

    /** A network beside anything else is enough; else what is not known of one is not known of all. */
    private void add(int pin, double amps) {
        int root = joined.root(pin);
        Double before = heldA.get(root);
        boolean endless = Double.isInfinite(amps) || (before != null && before.isInfinite());
        heldA.put(root, endless ? Double.POSITIVE_INFINITY : before == null ? (Double) amps : (Double) (before + amps));
    }

    /** The most that lasts at a pin: infinite beside a network, NaN where it is not known. */
    double most(int pin) {
        if (heldA.isEmpty()) {
            return Double.NaN;
        }
        return heldA.getOrDefault(joined.root(pin), Double.NaN);
    }
}
