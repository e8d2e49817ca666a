package orlop.study.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Source;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.flow.Circuit;
import orlop.study.flow.Efficiency;
import orlop.study.flow.Flow;
import orlop.study.flow.Part;

/** The direct-current circuit of a network: points are its nodes, a drawn negative is its reference. */
public final class Assembly {
    private final Plan plan;
    private final Network network;
    private final OperatingCondition condition;
    private final Circuit circuit;
    private final int[] partOfConnection;
    private final int[] partOfAttachment;
    private final int[] outputOfAttachment;
    private final List<Flow.Converter> converters = new ArrayList<>();
    private final List<Flow.Tracker> trackers = new ArrayList<>();

    public Assembly(Plan plan, Network network, OperatingCondition condition) {
        this.plan = plan;
        this.network = network;
        this.condition = condition;
        circuit = new Circuit(network.points().size(), plan.patterns());
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

    /** The node of a pin; −1 for the reference. */
    public int node(int pin) {
        int point = network.pointOf(pin);
        return network.isCommonNegative(point) ? -1 : point;
    }

    private boolean isDc(int pin) {
        return plan.isDc(pin);
    }

    private void connection(int i) {
        Connection c = network.connections().get(i);
        int a = node(c.a());
        int b = node(c.b());
        if (c.contracted() || !c.closed() || a == b || !isDc(c.a())) {
            return;
        }
        if (c.kind() == Connection.Kind.DIODE) {
            partOfConnection[i] = circuit.add(Part.DIODE, a, b, dropV(c.theDevice()), ohm(c.resistanceOhm(), c.a()), 0);
        } else if (c.kind() == Connection.Kind.CABLE) {
            partOfConnection[i] = circuit.add(Part.RESISTOR, a, b, 1, 0, 0);
        } else if (c.resistanceOhm() > 0) {
            partOfConnection[i] = circuit.add(Part.RESISTOR, a, b, 1 / ohm(c.resistanceOhm(), c.a()), 0, 0);
        }
    }

    private double ohm(double ohm, int pin) {
        return Resolvable.ohm(ohm, plan.system(pin).nominalV());
    }

    private static double dropV(Component c) {
        if (c.particulars() instanceof orlop.drawing.Switching.DiodeIsolator d) {
            return d.dropV();
        }
        return c.particulars() instanceof orlop.drawing.Switching.Diode d ? d.dropV() : 0;
    }

    private void attachment(int i) {
        Attachment t = network.attachments().get(i);
        if (t.role() == Attachment.Role.CONVERTER) {
            if (network.feeding().feeds(t.pin())) {
                converter(i, t);
            }
            return;
        }
        int a = node(t.pin());
        int b = t.returnPin() < 0 ? -1 : node(t.returnPin());
        if (!isDc(t.pin()) || a == b) {
            return;
        }
        LoadModel load = plan.load(t.pin());
        SourceModel source = plan.source(t.pin());
        if (load != null) {
            double share = condition.load(t.component().id()).simultaneity();
            partOfAttachment[i] = circuit.add(load.part(), a, b, load.value() * share, 0, 0);
        } else if (source != null) {
            double inner = ohm(source.second(), t.pin());
            partOfAttachment[i] = circuit.add(source.part(), a, b, source.first(), inner, source.third());
        }
    }

    private void converter(int i, Attachment t) {
        Component c = t.component();
        Efficiency efficiency = Converters.efficiency(c, plan.system(t.outputPin()));
        SourceModel out = isDc(t.outputPin()) ? plan.output(c) : null;
        boolean dcInput = isDc(t.pin()) && node(t.pin()) >= 0;
        if (out != null && node(t.outputPin()) >= 0) {
            double inner = ohm(out.second(), t.outputPin());
            outputOfAttachment[i] = circuit.add(out.part(), node(t.outputPin()), -1, out.first(), inner, out.third());
        }
        Double trackedV = c.particulars() instanceof Conversion.ChargeController ? trackedV(t) : null;
        if (trackedV != null && out != null && dcInput) {
            partOfAttachment[i] = circuit.add(Part.EMF, node(t.pin()), -1, trackedV, 0, 0);
            trackers.add(new Flow.Tracker(partOfAttachment[i], outputOfAttachment[i], efficiency, out.third()));
        } else if (dcInput) {
            double watts = efficiency.inputW(isDc(t.outputPin()) ? 0 : alternatingW(i));
            partOfAttachment[i] = circuit.add(Part.LOAD_POWER, node(t.pin()), -1, watts, 0, 0);
            if (outputOfAttachment[i] >= 0) {
                converters.add(new Flow.Converter(partOfAttachment[i], outputOfAttachment[i], efficiency));
            }
        }
    }

    /** Power of the alternating-current loads that an inverter feeds, at their nominal voltage. */
    private double alternatingW(int inverter) {
        double watts = 0;
        for (Attachment t : network.attachments()) {
            boolean fed = t.on()
                    && t.role() == Attachment.Role.LOAD
                    && network.feeding().root(t.pin()) == inverter;
            if (fed && t.component().particulars() instanceof orlop.drawing.Consumer load) {
                double share = condition.load(t.component().id()).simultaneity();
                watts += share * LoadModel.alternatingW(load, systemOf(t.pin()).nominalV());
            }
        }
        return watts;
    }

    /**
     * Voltage at which a controller holds its array: the power point of the nearest array that feeds it; where nothing is
     * known of that, the nominal voltage of its system. Null where no array feeds it.
     */
    private @Nullable Double trackedV(Attachment t) {
        int root = network.feeding().root(t.pin());
        if (root < 0 || !(network.attachments().get(root).component().particulars() instanceof Source.PvArray p)) {
            return null;
        }
        Double each = p.powerPointV() != null
                ? p.powerPointV()
                : p.openCircuitV() == null ? null : (Double) (0.82 * p.openCircuitV());
        return each == null ? systemOf(t.pin()).nominalV() : (Double) (each * p.inSeries());
    }

    public Circuit circuit() {
        return circuit;
    }

    public Network network() {
        return network;
    }

    public OperatingCondition condition() {
        return condition;
    }

    public List<Flow.Converter> converters() {
        return converters;
    }

    public List<Flow.Tracker> trackers() {
        return trackers;
    }

    /** The part of a connection; −1 where it has none: contracted, open, not direct current. */
    public int partOfConnection(int connection) {
        return partOfConnection[connection];
    }

    /** The part of a source or load, a converter's input; −1 where it has none. */
    public int partOfAttachment(int attachment) {
        return partOfAttachment[attachment];
    }

    /** The part of a converter's output; −1 where it has none. */
    public int outputOfAttachment(int attachment) {
        return outputOfAttachment[attachment];
    }

    /** Which nodes a source feeds. */
    public boolean[] live() {
        boolean[] live = new boolean[circuit.nodeCount()];
        for (int pin = 0; pin < network.pinCount(); pin++) {
            int node = node(pin);
            if (node >= 0 && network.feeding().feeds(pin) && isDc(pin)) {
                live[node] = true;
            }
        }
        return live;
    }

    /** The system of a pin. */
    public ElectricalSystem systemOf(int pin) {
        return plan.system(pin);
    }
}
