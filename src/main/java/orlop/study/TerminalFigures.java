package orlop.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Group;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.network.Numbering;
import orlop.study.linear.Complex;
import orlop.study.model.AcOperation;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.PointCurrents;

/** Voltages, currents and powers at the terminals of components in one condition, with the signs of the results. */
final class TerminalFigures {
    private final Plan plan;
    private final Operation operation;
    private final Network network;
    private final Numbering numbering;
    private final PointCurrents pinCurrents;
    private final PhaseResults phases;
    private final List<List<Integer>> connectionsOf; // by component
    private final int[] attachmentOf; // by component, −1 where it has none
    private final @Nullable Double[] voltageAt; // by node of direct current, once asked

    TerminalFigures(Plan plan, Operation operation, PointCurrents pinCurrents, PhaseResults phases) {
        this.plan = plan;
        this.operation = operation;
        this.pinCurrents = pinCurrents;
        this.phases = phases;
        network = operation.network();
        numbering = network.numbering();
        voltageAt = new Double[network.points().size()];
        attachmentOf = new int[numbering.componentCount()];
        Arrays.fill(attachmentOf, -1);
        for (int i = 0; i < network.attachments().size(); i++) {
            attachmentOf[number(network.attachments().get(i).pin())] = i;
        }
        connectionsOf = new ArrayList<>(Collections.nCopies(attachmentOf.length, List.of()));
        for (int e = 0; e < network.connections().size(); e++) {
            Connection c = network.connections().get(e);
            if (c.device() != null) {
                add(e, number(c.a()));
            }
            if (c.kind() == Connection.Kind.SHEET) { // one component at each end
                add(e, number(c.b()));
            }
        }
    }

    private void add(int connection, int component) {
        if (connectionsOf.get(component).isEmpty()) {
            connectionsOf.set(component, new ArrayList<>(1));
        }
        connectionsOf.get(component).add(connection);
    }

    int number(int pin) {
        return numbering.componentOf(pin);
    }

    static @Nullable Double known(double value) {
        return Double.isFinite(value) ? value : null;
    }

    /** Voltage of a pin that a source feeds or that is a drawn return; null where it is dead. */
    @Nullable
    Double voltage(int pin) {
        boolean calculated = (plan.isDc(pin) || plan.isAc(pin));
        boolean alive = network.feeding().feeds(pin) || network.isReturn(network.pointOf(pin));
        if (!calculated || !alive) {
            return null;
        }
        int node = operation.isAc(pin) ? -1 : operation.assembly().node(pin);
        if (node < 0) {
            return known(operation.voltage(pin));
        }
        Double volts = voltageAt[node];
        if (volts == null) {
            volts = known(operation.voltage(pin));
            voltageAt[node] = volts;
        }
        return volts;
    }

    @Nullable
    Double power(int pin, double volts, double amps) {
        int i = attachmentOf[number(pin)];
        if (operation.isAc(pin)) {
            return known(acPower(i, pin));
        }
        int back = i < 0 ? -1 : network.attachments().get(i).returnPin();
        Double low = back < 0 ? null : voltage(back);
        return (volts - (low == null ? 0 : low)) * amps;
    }

    /** What a load between two phases has across it differs from what stands at its pin. */
    @Nullable
    Double across(Component c, int pin, double volts) {
        boolean load = operation.alternating().byPhase(pin) && c.kind().group() == Group.LOADS;
        return load && attachmentOf[number(pin)] >= 0 ? known(operation.forLoad(pin, c)) : (Double) volts;
    }

    Map<String, PhaseResult> phasesOf(boolean bar, int pin) {
        int i = attachmentOf[number(pin)];
        if (bar || !operation.alternating().byPhase(pin)) {
            return phases.at(pin);
        }
        if (i < 0) {
            return phases.at(pin, wire -> through(pin, wire));
        }
        Attachment t = network.attachments().get(i);
        AcOperation ac = operation.alternating();
        boolean gives = t.isSource() && pin == t.pin();
        return phases.at(
                pin,
                wire -> pin == t.outputPin()
                        ? ac.output(i, wire).times(-1)
                        : pin == t.pin() ? ac.attachment(i, wire).times(gives ? -1 : 1) : PhaseResults.NONE);
    }

    /** Active power of all phases, with the sign of the current. */
    private double acPower(int i, int pin) {
        AcOperation ac = operation.alternating();
        if (i < 0) {
            double sum = 0;
            for (int wire = 0; wire < ac.wires(pin); wire++) { // the neutral carries what its displacement makes
                Complex watts = ac.voltage(pin, wire).times(through(pin, wire).conjugate());
                sum += watts.isNaN() ? 0 : watts.re();
            }
            return ac.byPhase(pin) ? sum : sum * Plan.phases(plan.system(pin));
        }
        Attachment t = network.attachments().get(i);
        if (pin == t.outputPin()) {
            return -ac.powerOfOutput(i);
        }
        double watts = ac.powerOfAttachment(i);
        return Double.isNaN(watts) && !t.on() ? 0 : t.isSource() ? 0 - watts : watts;
    }

    /** Current through a device of an alternating-current system. */
    private Complex through(int pin, int wire) {
        Complex sum = Complex.ZERO;
        for (int e : connectionsOf.get(number(pin))) {
            Connection k = network.connections().get(e);
            boolean here = k.kind() == Connection.Kind.DEVICE || k.a() == pin || k.b() == pin;
            if (here && k.closed()) {
                sum = sum.plus(pinCurrents.phasor(e, wire));
            }
        }
        return sum;
    }

    @Nullable
    Double terminalCurrent(int pin) {
        int i = attachmentOf[number(pin)];
        if (i >= 0) {
            return attachmentCurrent(i, pin);
        }
        if (operation.isAc(pin) && !connectionsOf.get(number(pin)).isEmpty()) {
            return known(operation.mostLoaded(pin, wire -> through(pin, wire)));
        }
        double sum = 0;
        boolean any = false;
        for (int e : connectionsOf.get(number(pin))) {
            Connection k = network.connections().get(e);
            boolean here = k.kind() == Connection.Kind.DEVICE || k.a() == pin || k.b() == pin;
            if (here && k.closed()) {
                int part = operation.assembly().partOfConnection(e);
                sum += part >= 0 ? operation.flow().current(part) : pinCurrents.of(e);
                any = true;
            }
        }
        return any ? known(sum) : !connectionsOf.get(number(pin)).isEmpty() ? (Double) 0.0 : null;
    }

    private @Nullable Double attachmentCurrent(int i, int pin) {
        Attachment t = network.attachments().get(i);
        if (pin == t.outputPin()) {
            return known(-operation.currentOfOutput(i));
        }
        if (pin != t.pin()) {
            return null;
        }
        if (!operation.calculates(i)) {
            return t.on() ? null : (Double) 0.0;
        }
        double amps = operation.currentOfAttachment(i);
        return known(t.isSource() ? 0 - amps : amps);
    }
}
