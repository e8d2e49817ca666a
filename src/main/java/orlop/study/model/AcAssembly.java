package orlop.study.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.OperatingCondition;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.network.Resistances;
import orlop.study.flow.Part;
import orlop.study.flow.PhasorCircuit;
import orlop.study.linear.Complex;

/**
 * The alternating-current circuit of a network: points are its nodes. Three-phase systems are calculated as one phase
 * against neutral.
 */
final class AcAssembly {
    /**
     * A converter with one side in direct and one in alternating current.
     *
     * @param acPart a load where it takes from the AC side, a source where it feeds it
     * @param dcPart the output or input at the other side
     * @param inverts whether it feeds the AC side
     */
    record Coupling(int acPart, int dcPart, boolean inverts, int phases, double efficiency, double idleW) {}

    private final Plan plan;
    private final Network network;
    private final OperatingCondition condition;
    private final Assembly direct;
    private final PhasorCircuit circuit;
    private final int[] partOfConnection;
    private final int[] partOfAttachment;
    private final int[] outputOfAttachment;
    private final List<Coupling> couplings = new ArrayList<>();

    AcAssembly(Plan plan, Network network, OperatingCondition condition, Assembly direct) {
        this.plan = plan;
        this.network = network;
        this.condition = condition;
        this.direct = direct;
        circuit = new PhasorCircuit(network.points().size());
        partOfConnection = new int[network.connections().size()];
        partOfAttachment = new int[network.attachments().size()];
        outputOfAttachment = new int[network.attachments().size()];
        Arrays.fill(partOfConnection, -1);
        Arrays.fill(partOfAttachment, -1);
        Arrays.fill(outputOfAttachment, -1);
        for (int i = 0; i < partOfConnection.length; i++) {
            connection(i);
        }
        for (int i = 0; i < partOfAttachment.length; i++) {
            if (network.attachments().get(i).on()) {
                attachment(i);
            }
        }
    }

    boolean isAc(int pin) {
        return pin >= 0 && plan.isAc(pin);
    }

    private ElectricalSystem system(int pin) {
        return plan.system(pin);
    }

    private void connection(int i) {
        Connection c = network.connections().get(i);
        int a = direct.node(c.a());
        int b = direct.node(c.b());
        if (c.contracted() || !c.closed() || a == b || !isAc(c.a()) || c.kind() == Connection.Kind.DIODE) {
            return;
        }
        if (c.cable() != null) {
            partOfConnection[i] = circuit.impedance(a, b, new Complex(1, 0)); // set before it is solved
        } else {
            Complex z = new Complex(c.resistanceOhm(), Resistances.reactanceOf(plan.drawing(), c.theDevice()));
            partOfConnection[i] = z.magnitude() > 0 ? circuit.impedance(a, b, z) : -1;
        }
    }

    private void attachment(int i) {
        Attachment t = network.attachments().get(i);
        if (t.role() == Attachment.Role.CONVERTER) {
            converter(i, t);
            return;
        }
        if (!isAc(t.pin())) {
            return;
        }
        boolean drawn = t.returnPin() >= 0 && !system(t.pin()).nature().isThreePhase();
        int a = direct.node(t.pin());
        int b = drawn ? direct.node(t.returnPin()) : -1; // balanced phases leave nothing for the neutral
        LoadModel load = plan.load(t.pin());
        AcSourceModel source = plan.acSource(t.component());
        if (a == b) {
            return;
        }
        if (load != null) {
            double share = condition.load(t.component().id()).simultaneity();
            Complex value = new Complex(load.value(), load.reactive()).times(share);
            partOfAttachment[i] = circuit.load(load.part(), a, b, value);
        } else if (source != null) {
            partOfAttachment[i] = circuit.source(
                    a, b, source.service().emf(), source.service().z());
        }
    }

    private void converter(int i, Attachment t) {
        if (!network.feeding().feeds(t.pin())) {
            return;
        }
        double efficiency = Converters.efficiency(t.component());
        double idleW = Converters.idleW(t.component());
        int in = direct.node(t.pin());
        int out = direct.node(t.outputPin());
        if (isAc(t.pin()) && in >= 0 && direct.outputOfAttachment(i) >= 0) {
            int phases = Plan.phases(system(t.pin()));
            partOfAttachment[i] = circuit.load(Part.LOAD_POWER, in, -1, new Complex(idleW / phases, 0));
            couplings.add(
                    new Coupling(partOfAttachment[i], direct.outputOfAttachment(i), false, phases, efficiency, idleW));
        } else if (isAc(t.outputPin()) && out >= 0 && direct.partOfAttachment(i) >= 0) {
            ElectricalSystem system = system(t.outputPin());
            Complex emf = new Complex(Plan.phaseV(system), 0);
            outputOfAttachment[i] = circuit.source(out, -1, emf, Complex.ZERO);
            couplings.add(new Coupling(
                    outputOfAttachment[i], direct.partOfAttachment(i), true, Plan.phases(system), efficiency, idleW));
        }
    }

    PhasorCircuit circuit() {
        return circuit;
    }

    List<Coupling> couplings() {
        return couplings;
    }

    int partOfConnection(int connection) {
        return partOfConnection[connection];
    }

    int partOfAttachment(int attachment) {
        return partOfAttachment[attachment];
    }

    int outputOfAttachment(int attachment) {
        return outputOfAttachment[attachment];
    }
}
