package orlop.study;

import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.flow.PinCurrents;
import orlop.study.linear.Complex;
import orlop.study.model.AcOperation;
import orlop.study.model.Operation;
import orlop.study.model.Plan;

/** Currents of one condition through what has no impedance, direct and alternating. */
final class PointCurrents {
    private final Plan plan;
    private final Operation operation;
    private final Network network;
    private final PinCurrents direct;
    private final PinCurrents active;
    private final PinCurrents reactive;

    PointCurrents(Plan plan, Operation operation) {
        this.plan = plan;
        this.operation = operation;
        network = operation.network();
        boolean[] contracted = contracted(true);
        double[] leaving = new double[network.pinCount()];
        double[] re = new double[leaving.length];
        double[] im = new double[leaving.length];
        for (int e = 0; e < contracted.length; e++) {
            Connection c = network.connections().get(e);
            if (operation.isAc(c.a())) {
                Complex amps = operation.alternating().connection(e);
                pass(re, amps.re(), c.a(), c.b());
                pass(im, amps.im(), c.a(), c.b());
            } else {
                pass(leaving, operation.currentOfConnection(e), c.a(), c.b());
            }
        }
        for (int i = 0; i < network.attachments().size(); i++) {
            attachment(i, leaving, re, im);
        }
        direct = new PinCurrents(network, leaving, contracted);
        boolean[] alternating = contracted(false);
        active = new PinCurrents(network, re, alternating);
        reactive = new PinCurrents(network, im, alternating);
    }

    private boolean[] contracted(boolean dc) {
        boolean[] contracted = new boolean[network.connections().size()];
        for (int e = 0; e < contracted.length; e++) {
            Connection c = network.connections().get(e);
            boolean of = plan.isDc(c.a());
            contracted[e] = c.contracted() && of == dc;
        }
        return contracted;
    }

    private void attachment(int i, double[] leaving, double[] re, double[] im) {
        Attachment t = network.attachments().get(i);
        if (operation.isAc(t.pin())) {
            Complex amps = operation.alternating().attachment(i);
            boolean balanced = plan.system(t.pin()).nature().isThreePhase();
            int back = balanced ? -1 : t.returnPin();
            pass(re, amps.re(), t.pin(), back);
            pass(im, amps.im(), t.pin(), back);
        } else {
            pass(leaving, operation.currentOfAttachment(i), t.pin(), t.returnPin());
        }
        if (t.outputPin() >= 0 && operation.isAc(t.outputPin())) {
            Complex amps = operation.alternating().output(i);
            pass(re, amps.re(), t.outputPin(), -1);
            pass(im, amps.im(), t.outputPin(), -1);
        } else if (t.outputPin() >= 0) {
            pass(leaving, operation.currentOfOutput(i), t.outputPin(), -1);
        }
    }

    private static void pass(double[] leaving, double amps, int a, int b) {
        if (!Double.isNaN(amps)) {
            leaving[a] += amps;
            if (b >= 0) {
                leaving[b] -= amps;
            }
        }
    }

    /** Current from a to b of a connection without impedance; NaN where it is not determined or has an impedance. */
    double of(int connection) {
        int a = network.connections().get(connection).a();
        if (!operation.isAc(a)) {
            return direct.of(connection);
        }
        return AcOperation.signed(new Complex(active.of(connection), reactive.of(connection)), operation.phasor(a));
    }

    /** Alternating current from a to b of any connection; NaN where it is not determined. */
    Complex phasor(int connection) {
        return network.connections().get(connection).contracted()
                ? new Complex(active.of(connection), reactive.of(connection))
                : operation.alternating().connection(connection);
    }
}
