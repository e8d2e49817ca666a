package orlop.study.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Conductors;
import orlop.drawing.Earthing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.FaultMethod;
import orlop.drawing.Nature;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.network.Resistances;
import orlop.study.flow.PhasorCircuit;
import orlop.study.flow.PhasorEquations;
import orlop.study.flow.Potentials;
import orlop.study.linear.Complex;
import orlop.study.model.AcSourceModel;
import orlop.study.model.CableModel;
import orlop.study.model.Converters;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.TransformerModel;
import orlop.study.model.Wires;

/**
 * The alternating-current network as one loop: what a current meets that goes by one line and returns by one way. Loads
 * are left out.
 */
final class AcLoop {
    /** By which way a fault current returns. */
    enum Way {
        /** By the other lines: the impedance of one line alone. */
        LINES,
        NEUTRAL,
        PROTECTIVE
    }

    private final Plan plan;
    private final Operation operation;
    private final Network network;
    private final Way way;
    private final boolean highest;
    private final double[] areaMm2;
    private final boolean plain;
    private final PhasorCircuit circuit;
    private final Potentials joined; // used as a plain union-find
    private final int[] partOfConnection;
    private final int[] partOfAttachment;
    final boolean[] strong; // by root: whether a source with an impedance feeds it
    private final double[] angleDeg; // by root: of the sources' voltage
    final double[] limitA; // by root: what inverters give at most
    private final Complex @Nullable [] open;
    private final PhasorEquations.@Nullable Impedances impedances;

    /** @param before the ways that were looked at before, of the same temperature: what lies before transformers */
    AcLoop(Plan plan, Operation operation, Way way, boolean highest, double[] areaMm2, Map<Way, AcLoop> before) {
        this.plan = plan;
        this.operation = operation;
        this.way = way;
        this.highest = highest;
        this.areaMm2 = areaMm2;
        network = operation.network();
        plain = plan.drawing().vessel().faultMethod() == FaultMethod.PLAIN;
        int nodes = network.points().size();
        circuit = new PhasorCircuit(nodes, plan.patterns());
        joined = new Potentials(nodes + 1);
        partOfConnection = new int[network.connections().size()];
        partOfAttachment = new int[network.attachments().size()];
        Arrays.fill(partOfConnection, -1);
        Arrays.fill(partOfAttachment, -1);
        strong = new boolean[nodes + 1];
        limitA = new double[nodes + 1];
        angleDeg = new double[nodes + 1];
        for (int e = 0; e < partOfConnection.length; e++) {
            connection(e);
        }
        for (int i = 0; i < partOfAttachment.length; i++) {
            count(i);
        }
        for (int i = 0; i < partOfAttachment.length; i++) {
            behindTransformer(i, before);
        }
        for (int i = 0; i < partOfAttachment.length; i++) {
            source(i);
            motor(i);
        }
        PhasorEquations equations = new PhasorEquations(circuit);
        boolean regular = equations.prepare();
        Complex[] none = new Complex[circuit.partCount()];
        Arrays.fill(none, Complex.ZERO);
        open = regular ? equations.solve(none) : null;
        impedances = regular ? equations.impedances() : null;
    }

    private int node(int pin) {
        return operation.assembly().node(pin);
    }

    private void connection(int e) {
        Connection c = network.connections().get(e);
        int a = node(c.a());
        int b = node(c.b());
        boolean counts = !c.contracted() && c.closed() && a != b && operation.isAc(c.a());
        if (!counts || c.kind() == Connection.Kind.DIODE || !serves(system(c.a()))) {
            return;
        }
        Complex z = c.cable() == null ? device(c) : cable(network.cableOf(e));
        if (z.magnitude() > 0) {
            partOfConnection[e] = circuit.impedance(a, b, z);
            if (a >= 0 && b >= 0) {
                joined.tie(a, b, 0);
            }
        }
    }

    private ElectricalSystem system(int pin) {
        return plan.system(network.systemOf(pin));
    }

    /** Whether a system has this way: one without a neutral is insulated. */
    private boolean serves(ElectricalSystem s) {
        return switch (way) {
            case LINES -> s.nature().isThreePhase();
            case NEUTRAL -> s.nature() != Nature.AC3;
            case PROTECTIVE -> s.nature() != Nature.AC3 && s.earthing() != Earthing.INSULATED;
        };
    }

    private Complex device(Connection c) {
        boolean one = way != Way.NEUTRAL && Resistances.isPair(c.theDevice());
        double x = Resistances.reactanceOf(plan.drawing(), c.theDevice());
        return new Complex(one ? c.resistanceOhm() / 2 : c.resistanceOhm(), x);
    }

    /** 0 where the cable has not what this way needs. */
    private Complex cable(int i) {
        CableModel w = plan.cables().get(i);
        double hotC = highest ? Temperatures.coldC(plan, i, plain) : Temperatures.hotC(plan, i, plain);
        boolean three = w.system().nature().isThreePhase();
        boolean byPhase = plan.hasUnequalPhases(w.system());
        int mask = byPhase ? plan.wires(w.cable()) : three ? 0b111 : 0;
        Complex none = Complex.ZERO;
        return switch (way) {
            case LINES -> Wires.lines(mask) > 1 && w.conductors() != Conductors.PE ? w.line(areaMm2[i], hotC) : none;
            case NEUTRAL -> {
                boolean neutral = byPhase ? Wires.has(mask, Wires.N) && Wires.lines(mask) > 0 : w.hasNeutral();
                Complex loop = new Complex(w.loopOhm(areaMm2[i], hotC), w.reactanceOhm());
                yield three
                        ? neutral ? w.line(areaMm2[i], hotC).plus(w.back(areaMm2[i], hotC)) : none
                        : loop; // where the neutral is drawn by itself it is added at the place of the fault
            }
            case PROTECTIVE ->
                w.conductors().hasPe() && w.conductors() != Conductors.PE
                        ? w.line(areaMm2[i], hotC).plus(w.protective(areaMm2[i], hotC))
                        : none;
        };
    }

    /** Notes which islands have a source with an impedance, and what inverters give at most. */
    private void count(int i) {
        Attachment t = network.attachments().get(i);
        if (transformer(i) == null && operation.alternating().feeds(i)) {
            limitA[joined.root(node(t.outputPin()))] += plan.inverterFaultA(t.component());
            return;
        }
        AcSourceModel m = model(i);
        if (m != null) {
            strong[joined.root(node(t.pin()))] = true;
            angleDeg[joined.root(node(t.pin()))] = m.strongest().emf().angleDeg();
        }
    }

    private @Nullable TransformerModel transformer(int i) {
        Attachment t = network.attachments().get(i);
        return t.outputPin() >= 0 && operation.alternating().feeds(i) ? plan.transformer(t.component()) : null;
    }

    /**
     * A transformer stands in the lines with its impedance. Where the current returns by the neutral or the protective
     * conductor of its second side, which is in star, the first side sees two lines of three: 2/3 of what lies before
     * it counts; all of it for the lowest current, and with one phase.
     */
    private void behindTransformer(int i, Map<Way, AcLoop> before) {
        TransformerModel m = transformer(i);
        Attachment t = network.attachments().get(i);
        if (m == null || !serves(system(t.outputPin()))) {
            return;
        }
        int in = node(t.pin());
        int out = node(t.outputPin());
        boolean threeIn = system(t.pin()).nature().isThreePhase();
        boolean threeOut = system(t.outputPin()).nature().isThreePhase();
        Complex own = m.z().times(m.faultFactor());
        if (way == Way.LINES || (way == Way.NEUTRAL && !threeIn)) {
            pass(this, in, out, m.ratio());
            circuit.windings(new PhasorCircuit.Windings(in, -1, out, -1, m.ratio(), own));
            return;
        }
        boolean neutral = threeIn && Wires.has(plan.wiresAt(t.pin()), Wires.N);
        AcLoop first = before.get(threeIn && (threeOut || !neutral) ? Way.LINES : Way.NEUTRAL);
        if (first == null || first.volts(in).isNaN()) {
            return;
        }
        pass(first, in, out, m.ratio());
        double ratio = system(t.outputPin()).nominalV() / across(t, threeOut, neutral);
        double share = !threeIn || (neutral && !threeOut) ? 1 : threeOut ? highest ? 2 / 3.0 : 1 : 2;
        Complex ahead = first.ohm(in).times(share * ratio * ratio);
        double volts =
                Plan.phaseV(system(t.outputPin())) * (first.volts(in).magnitude() / Plan.phaseV(system(t.pin())));
        partOfAttachment[i] = circuit.source(out, -1, new Complex(volts, 0), ahead.plus(own));
    }

    private double across(Attachment t, boolean threeOut, boolean neutral) {
        return neutral && !threeOut
                ? Plan.phaseV(system(t.pin()))
                : system(t.pin()).nominalV();
    }

    private void pass(AcLoop from, int in, int out, double ratio) {
        strong[joined.root(out)] |= from.strong[from.root(in)];
        if (!from.strong[from.root(in)]) {
            limitA[joined.root(out)] += from.limitA[from.root(in)] / ratio;
        }
    }

    private @Nullable AcSourceModel model(int i) {
        Attachment t = network.attachments().get(i);
        boolean works = t.isSource() && t.on() && operation.isAc(t.pin()) && node(t.pin()) >= 0;
        return works ? plan.acSource(t.component()) : null;
    }

    private void source(int i) {
        Attachment t = network.attachments().get(i);
        AcSourceModel m = model(i);
        if (m != null && serves(system(t.pin()))) {
            boolean three = system(t.pin()).nature().isThreePhase();
            int back = t.returnPin() < 0 || three || way == Way.PROTECTIVE ? -1 : node(t.returnPin());
            AcSourceModel.Thevenin s = highest ? m.strongest() : m.weakest();
            double share = highest && way != Way.LINES ? m.oneLineShare() : 1;
            partOfAttachment[i] = circuit.source(node(t.pin()), back, s.emf(), s.z().times(share));
        } else if (m == null
                && transformer(i) == null
                && operation.alternating().feeds(i)
                && serves(system(t.outputPin()))
                && !strong[joined.root(node(t.outputPin()))]) {
            AcSourceModel.Thevenin s = Converters.alternatingOutput(t.component(), system(t.outputPin()));
            partOfAttachment[i] = circuit.source(node(t.outputPin()), -1, s.emf(), s.z());
        }
    }

    /**
     * A three-phase motor in a fault that a source feeds: it drives its own current into the highest one for a few
     * periods, whether it runs in this condition or not. Where one line alone is faulted its whole share is taken,
     * which errs to the safe side.
     */
    private void motor(int i) {
        Attachment t = network.attachments().get(i);
        boolean counts = highest && !plain && t.role() == Attachment.Role.LOAD && operation.isAc(t.pin());
        Complex z = counts && node(t.pin()) >= 0 ? plan.motorOhm(t.component()) : null;
        if (z != null && serves(system(t.pin())) && strong[joined.root(node(t.pin()))]) {
            double volts = plan.faultFactor(system(t.pin())) * Plan.phaseV(system(t.pin()));
            Complex emf = Complex.polar(volts, angleDeg[joined.root(node(t.pin()))]);
            partOfAttachment[i] = circuit.source(node(t.pin()), -1, emf, z);
        }
    }

    /** The node that stands for a node's island. */
    int root(int node) {
        return joined.root(node);
    }

    /** Voltage at a node without a fault; NaN where this way does not reach it. */
    Complex volts(int node) {
        Complex dead = new Complex(Double.NaN, Double.NaN);
        return open == null || !(open[node].magnitude() > 0) ? dead : open[node];
    }

    /** Impedance of the loop from a node; NaN where this way does not reach it. */
    Complex ohm(int node) {
        return impedances == null ? new Complex(Double.NaN, Double.NaN) : impedances.at(node);
    }

    /** The source of a pin and what lies between; nothing where that is not the whole impedance that a fault meets. */
    List<AcFaultSum.Piece> way(int pin, Complex whole) {
        List<AcFaultSum.Piece> way = new ArrayList<>();
        if (!network.feeding().feeds(pin)) {
            return way;
        }
        int source = network.feeding().root(pin);
        Complex sum = add(way, network.attachments().get(source).component().id(), partOfAttachment[source]);
        for (int e : network.feeding().pathTo(pin)) {
            sum = sum.plus(add(way, network.connections().get(e).item(), partOfConnection[e]));
        }
        return sum.minus(whole).magnitude() <= 1e-9 * whole.magnitude() ? way : List.of();
    }

    private Complex add(List<AcFaultSum.Piece> way, String item, int part) {
        Complex z = part < 0 ? Complex.ZERO : circuit.piece(part).z();
        if (z.magnitude() > 0) {
            way.add(new AcFaultSum.Piece(item, z.re(), z.im()));
        }
        return z;
    }

    /** What a connection's own end brings into a fault there without resistance: at its a or its b; 0 where nothing. */
    Complex brought(int connection, boolean toA) {
        int part = partOfConnection[connection];
        return part < 0 ? Complex.ZERO : brought(part, toA, circuit.piece(part));
    }

    /** What a source brings into a fault at its own pin; 0 where it has no impedance or is none. */
    Complex brought(int attachment) {
        int part = partOfAttachment[attachment];
        if (part < 0 || circuit.piece(part).z().magnitude() == 0) {
            return Complex.ZERO;
        }
        PhasorCircuit.Piece p = circuit.piece(part);
        return p.value().times(p.z().inverse());
    }

    private Complex brought(int part, boolean toA, PhasorCircuit.Piece p) {
        int here = toA ? p.a() : p.b();
        int there = toA ? p.b() : p.a();
        if (impedances == null
                || here < 0
                || there < 0
                || volts(here).isNaN()
                || volts(there).isNaN()) {
            return Complex.ZERO;
        }
        Complex own = ohm(here);
        if (own.magnitude() == 0) {
            return volts(there).minus(volts(here)).times(p.z().inverse());
        }
        Complex fault = volts(here).times(own.inverse());
        Complex left = volts(there).minus(impedances.across(part).times(fault));
        return left.times(p.z().inverse());
    }
}
