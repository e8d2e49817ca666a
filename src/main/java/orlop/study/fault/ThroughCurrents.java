package orlop.study.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.flow.PinCurrents;
import orlop.study.linear.Complex;
import orlop.study.model.Operation;

/**
 * The greatest current that passes a connection while a fault lies at one of its ends: what one side brings, not what
 * both do.
 */
final class ThroughCurrents {
    /** One way of return: what passes each connection from its a to its b in a fault at the point it lies in. */
    private record Share(AcLoop loop, PinCurrents re, PinCurrents im) {}

    private final Operation operation;
    private final Network network;
    private final List<Share> shares = new ArrayList<>();

    ThroughCurrents(Operation operation, Map<AcLoop.Way, AcLoop> loops) {
        this.operation = operation;
        network = operation.network();
        boolean[] contracted = new boolean[network.connections().size()];
        for (int e = 0; e < contracted.length; e++) {
            contracted[e] = network.connections().get(e).contracted();
        }
        loops.forEach((way, loop) -> {
            if (way != AcLoop.Way.PROTECTIVE) {
                shares.add(share(loop, contracted));
            }
        });
    }

    private Share share(AcLoop loop, boolean[] contracted) {
        double[] re = new double[network.pinCount()];
        double[] im = new double[re.length];
        for (int e = 0; e < contracted.length; e++) {
            Connection c = network.connections().get(e);
            if (operation.isAc(c.a())) {
                bring(re, im, c.a(), loop.brought(e, true));
                bring(re, im, c.b(), loop.brought(e, false));
            }
        }
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            int pin = operation.alternating().feeds(i) ? t.outputPin() : t.pin();
            bring(re, im, pin, loop.brought(i));
        }
        return new Share(loop, new PinCurrents(network, re, contracted), new PinCurrents(network, im, contracted));
    }

    private static void bring(double[] re, double[] im, int pin, Complex amps) {
        if (!amps.isNaN()) {
            re[pin] -= amps.re();
            im[pin] -= amps.im();
        }
    }

    /** Of a connection; NaN where it is not determined. */
    double of(int connection, AcFaults faults) {
        Connection c = network.connections().get(connection);
        int node = operation.assembly().node(c.a());
        double most = Double.NaN;
        for (Share s : shares) {
            double here = c.contracted() ? within(s, connection, node, faults) : along(s.loop(), connection);
            most = Double.isNaN(most) || here > most ? here : most;
        }
        return most;
    }

    private static double along(AcLoop loop, int connection) {
        double most = Math.max(
                loop.brought(connection, true).magnitude(),
                loop.brought(connection, false).magnitude());
        return most > 0 ? most : Double.NaN;
    }

    private double within(Share s, int connection, int node, AcFaults faults) {
        double all = faults.maxA(node);
        if (node < 0 || s.loop().volts(node).isNaN() || !Double.isFinite(all)) {
            return Double.NaN;
        }
        int root = s.loop().root(node);
        if (!s.loop().strong[root] || s.loop().limitA[root] > 0) {
            return all; // what inverters give is not told apart
        }
        Complex own = s.loop().ohm(node);
        Complex one = new Complex(s.re().of(connection), s.im().of(connection));
        Complex total = s.loop().volts(node).times(own.inverse());
        double plus = Math.max(one.magnitude(), total.minus(one).magnitude());
        double minus = Math.max(one.magnitude(), total.plus(one).magnitude());
        return Math.min(plus, minus);
    }
}
