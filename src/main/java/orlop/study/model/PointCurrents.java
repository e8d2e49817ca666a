package orlop.study.model;

import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.flow.PinCurrents;
import orlop.study.linear.Complex;

/** Currents of one condition through what has no impedance, direct and alternating. */
public final class PointCurrents {
    /** Real and imaginary part of one conductor. */
    private static final class Alternating {
        final double[] re;
        final double[] im;

        Alternating(int pins) {
            re = new double[pins];
            im = new double[pins];
        }

        void pass(Complex amps, int a, int b) {
            PointCurrents.pass(re, amps.re(), a, b);
            PointCurrents.pass(im, amps.im(), a, b);
        }
    }

    private final Plan plan;
    private final Operation operation;
    private final AcOperation ac;
    private final Network network;
    private final PinCurrents direct;
    private final PinCurrents[] active;
    private final PinCurrents[] reactive;

    public PointCurrents(Plan plan, Operation operation) {
        this.plan = plan;
        this.operation = operation;
        ac = operation.alternating();
        network = operation.network();
        boolean[] contracted = contracted(true);
        double[] leaving = new double[network.pinCount()];
        int wires = plan.hasUnequalPhases() ? Wires.COUNT : plan.calculatesAnyAc() ? 1 : 0;
        Alternating[] ofWire = new Alternating[wires];
        for (int wire = 0; wire < ofWire.length; wire++) {
            ofWire[wire] = new Alternating(leaving.length);
        }
        for (int e = 0; e < contracted.length; e++) {
            Connection c = network.connections().get(e);
            if (operation.isAc(c.a())) {
                for (int wire = 0; wire < ac.wires(c.a()); wire++) {
                    ofWire[wire].pass(ac.connection(e, wire), c.a(), c.b());
                }
            } else {
                pass(leaving, operation.currentOfConnection(e), c.a(), c.b());
            }
        }
        for (int i = 0; i < network.attachments().size(); i++) {
            attachment(i, leaving, ofWire);
        }
        direct = new PinCurrents(network, leaving, contracted);
        boolean[] alternating = wires == 0 ? contracted : contracted(false);
        active = new PinCurrents[ofWire.length];
        reactive = new PinCurrents[ofWire.length];
        for (int wire = 0; wire < ofWire.length; wire++) {
            active[wire] = new PinCurrents(network, ofWire[wire].re, alternating);
            reactive[wire] = new PinCurrents(network, ofWire[wire].im, alternating);
        }
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

    private void attachment(int i, double[] leaving, Alternating[] ofWire) {
        Attachment t = network.attachments().get(i);
        if (operation.isAc(t.pin())) {
            boolean three = plan.system(network.systemOf(t.pin())).nature().isThreePhase();
            for (int wire = 0; wire < ac.wires(t.pin()); wire++) {
                ofWire[wire].pass(ac.attachment(i, wire), t.pin(), three ? -1 : t.returnPin());
            }
        } else {
            pass(leaving, operation.currentOfAttachment(i), t.pin(), t.returnPin());
        }
        if (t.outputPin() >= 0 && operation.isAc(t.outputPin())) {
            for (int wire = 0; wire < ac.wires(t.outputPin()); wire++) {
                ofWire[wire].pass(ac.output(i, wire), t.outputPin(), -1);
            }
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
    public double of(int connection) {
        int a = network.connections().get(connection).a();
        return operation.isAc(a) ? operation.mostLoaded(a, wire -> through(connection, wire)) : direct.of(connection);
    }

    /** Alternating current from a to b of a conductor of any connection; NaN where it is not determined. */
    public Complex phasor(int connection, int wire) {
        return network.connections().get(connection).contracted()
                ? through(connection, wire)
                : ac.connection(connection, wire);
    }

    private Complex through(int connection, int wire) {
        return new Complex(active[wire].of(connection), reactive[wire].of(connection));
    }
}
