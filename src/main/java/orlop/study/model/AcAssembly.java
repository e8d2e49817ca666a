package orlop.study.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.OperatingCondition;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.network.Resistances;
import orlop.study.flow.Efficiency;
import orlop.study.flow.Part;
import orlop.study.flow.PhasorCircuit;
import orlop.study.linear.Complex;

/**
 * The alternating-current circuit of a network. Single-phase systems and three-phase systems with equal phases are
 * calculated as one phase against neutral, the others phase by phase: loads on all phases as a delta, sources as a star
 * on their own neutral, which is the reference where there is none.
 */
final class AcAssembly {
    /**
     * A converter with one side in direct and one in alternating current.
     *
     * @param acParts loads where it takes from the AC side, sources where it feeds it
     * @param dcPart the output or input at the other side
     * @param inverts whether it feeds the AC side
     * @param phases how many phases each part stands for
     */
    record Coupling(List<Integer> acParts, int dcPart, boolean inverts, int phases, Efficiency efficiency) {}

    /**
     * A converter between two alternating-current systems that does not let their voltages meet.
     *
     * @param in loads, each for as many phases
     * @param out sources, each for as many phases
     */
    record Passing(List<Integer> in, List<Integer> out, int inPhases, int outPhases, Efficiency efficiency) {}

    private static final int[] NONE = {};

    private final Plan plan;
    private final Network network;
    private final OperatingCondition condition;
    private final Assembly direct;
    private final AcNodes nodes;
    private final PhasorCircuit circuit;
    private final boolean any; // whether anything is calculated here
    private final int[] partOfConnection; // by connection and conductor
    private final int[][] ofAttachment;
    private final int[][] ofOutput;
    private final int[][] windings;
    private final List<Coupling> couplings = new ArrayList<>();
    private final List<Passing> passings = new ArrayList<>();

    AcAssembly(Plan plan, Network network, OperatingCondition condition, Assembly direct) {
        this.plan = plan;
        this.network = network;
        this.condition = condition;
        this.direct = direct;
        nodes = new AcNodes(plan, network);
        passNeutrals();
        circuit = new PhasorCircuit(nodes.count(), plan.patterns());
        any = plan.calculatesAnyAc();
        partOfConnection = new int[any ? Wires.COUNT * network.connections().size() : 0];
        ofAttachment = new int[network.attachments().size()][];
        ofOutput = new int[ofAttachment.length][];
        Arrays.fill(partOfConnection, -1);
        Arrays.fill(ofAttachment, NONE);
        Arrays.fill(ofOutput, NONE);
        windings = new int[ofAttachment.length][];
        Arrays.fill(windings, NONE);
        for (int i = 0; i < network.connections().size(); i++) {
            connection(i);
        }
        for (int i = 0; i < ofAttachment.length; i++) {
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

    private boolean counts(Connection c) {
        return !c.contracted() && c.closed() && isAc(c.a()) && c.kind() != Connection.Kind.DIODE;
    }

    /**
     * Devices with an impedance stand in the lines: the neutral passes beside them unless they break it too. The
     * neutral of a transformer of one winding is common to both sides.
     */
    private void passNeutrals() {
        for (Attachment t : network.attachments()) {
            TransformerModel m = t.outputPin() < 0 ? null : plan.transformer(t.component());
            if (m != null && !m.separate() && starOf(t.pin(), nodes) && starOf(t.outputPin(), nodes)) {
                nodes.join(t.pin(), t.outputPin(), Wires.N);
            }
        }
        for (Connection c : network.connections()) {
            if (counts(c) && c.device() != null && nodes.byPhase(c.a()) && !Resistances.inNeutral(c.theDevice())) {
                nodes.join(c.a(), c.b(), Wires.N);
            }
        }
    }

    private void connection(int i) {
        Connection c = network.connections().get(i);
        if (!counts(c)) {
            return;
        }
        boolean byPhase = nodes.byPhase(c.a());
        int mask = !byPhase ? 1 : c.cable() == null ? Wires.ALL : plan.wires(c.theCable());
        Complex z = new Complex(1, 0); // of cables it is set before it is solved
        if (c.cable() == null) {
            boolean both = byPhase && Resistances.isPair(c.theDevice());
            z = new Complex(c.resistanceOhm(), Resistances.reactanceOf(plan.drawing(), c.theDevice()))
                    .times(both ? 0.5 : 1);
            z = Resolvable.ohm(z, system(c.a()).nominalV());
        }
        for (int wire = 0; wire < nodes.wires(c.a()); wire++) {
            int a = nodes.of(c.a(), wire);
            int b = nodes.of(c.b(), wire);
            if (Wires.has(mask, wire) && a != b && z.magnitude() > 0) {
                partOfConnection[Wires.COUNT * i + wire] = circuit.impedance(a, b, z);
            }
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
        LoadModel load = plan.load(t.pin());
        AcSourceModel source = plan.acSource(t.component());
        if (load != null) {
            double share = condition.load(t.component().id()).simultaneity();
            Complex value = new Complex(load.value(), load.reactive()).times(share);
            ofAttachment[i] = load(t, load.part(), value, plan.wires(t.component()));
        } else if (source != null) {
            ofAttachment[i] = source(
                    t.pin(),
                    t.returnPin(),
                    source.service().emf(),
                    source.service().z());
        }
    }

    /** Of a load on three phases, whose values are those of one phase in star, three like ones in delta. */
    private int[] load(Attachment t, Part part, Complex value, int mask) {
        if (!nodes.byPhase(t.pin())) {
            int a = nodes.of(t.pin(), 0);
            int b = ownReturn(t.pin(), t.returnPin());
            return a == b ? NONE : new int[] {circuit.load(part, a, b, value)};
        }
        List<int[]> branches = Wires.branches(mask);
        double delta = branches.size() < 3 || part == Part.LOAD_POWER
                ? 1
                : part == Part.LOAD_CURRENT ? 1 / Math.sqrt(3) : 1 / 3.0;
        int[] parts = new int[branches.size()];
        for (int k = 0; k < parts.length; k++) {
            int[] pair = branches.get(k);
            int back = pair[1] == Wires.N && t.returnPin() >= 0 ? t.returnPin() : t.pin();
            int a = nodes.of(t.pin(), pair[0]);
            parts[k] = circuit.load(part, a, nodes.of(back, pair[1]), value.times(delta));
        }
        return parts;
    }

    /** A return that is drawn, in single-phase systems: equal phases leave nothing for the neutral. */
    private int ownReturn(int pin, int returnPin) {
        boolean drawn = returnPin >= 0 && !system(pin).nature().isThreePhase();
        return drawn ? nodes.of(returnPin, 0) : -1;
    }

    private int[] source(int pin, int returnPin, Complex emf, Complex z) {
        Complex inner = Resolvable.ohm(z, system(pin).nominalV());
        if (!nodes.byPhase(pin)) {
            int a = nodes.of(pin, 0);
            int b = ownReturn(pin, returnPin);
            return a == b ? NONE : new int[] {circuit.source(a, b, emf, inner)};
        }
        boolean neutral = system(pin).nature() == Nature.AC3N;
        int star = neutral ? nodes.of(returnPin >= 0 ? returnPin : pin, Wires.N) : -1;
        int[] parts = new int[3];
        for (int k = 0; k < 3; k++) {
            Complex turned = emf.times(Complex.polar(1, -120 * k));
            parts[k] = circuit.source(nodes.of(pin, k), star, turned, inner);
        }
        return parts;
    }

    private int[] output(Attachment t) {
        AcSourceModel.Thevenin out = Converters.alternatingOutput(t.component(), system(t.outputPin()));
        return source(t.outputPin(), -1, out.emf(), out.z());
    }

    private void converter(int i, Attachment t) {
        if (!network.feeding().feeds(t.pin())) {
            return;
        }
        Efficiency efficiency = Converters.efficiency(t.component(), system(t.outputPin()));
        if (isAc(t.pin()) && isAc(t.outputPin())) {
            alternating(i, t, efficiency);
        } else if (isAc(t.pin()) && nodes.of(t.pin(), 0) >= 0 && direct.outputOfAttachment(i) >= 0) {
            ofAttachment[i] = load(t, Part.LOAD_POWER, Complex.ZERO, plan.wiresAt(t.pin()));
            couplings.add(new Coupling(
                    list(ofAttachment[i]), direct.outputOfAttachment(i), false, phases(t.pin()), efficiency));
        } else if (isAc(t.outputPin()) && nodes.of(t.outputPin(), 0) >= 0 && direct.partOfAttachment(i) >= 0) {
            ofOutput[i] = output(t);
            couplings.add(new Coupling(
                    list(ofOutput[i]), direct.partOfAttachment(i), true, phases(t.outputPin()), efficiency));
        }
    }

    private void alternating(int i, Attachment t, Efficiency efficiency) {
        boolean joined = nodes.of(t.pin(), 0) >= 0 && nodes.of(t.outputPin(), 0) >= 0;
        TransformerModel m = plan.transformer(t.component());
        if (joined && m != null) {
            transformer(i, t, m);
        } else if (joined && AcPlan.convertsAlternating(t.component())) {
            ofAttachment[i] = load(t, Part.LOAD_POWER, Complex.ZERO, plan.wiresAt(t.pin()));
            ofOutput[i] = output(t);
            int in = phases(t.pin());
            passings.add(new Passing(list(ofAttachment[i]), list(ofOutput[i]), in, phases(t.outputPin()), efficiency));
        }
    }

    /**
     * Three phases by three phases: delta to star, of one winding star to star with one neutral. Where phases are equal,
     * one phase against neutral, without the turn of the phase angle.
     */
    private void transformer(int i, Attachment t, TransformerModel m) {
        int in = t.pin();
        int out = t.outputPin();
        int mask = nodes.byPhase(in) ? plan.wiresAt(in) : Wires.LINES;
        if (!nodes.byPhase(in) && !nodes.byPhase(out)) {
            windings[i] = new int[] {wind(nodes.of(in, 0), -1, nodes.of(out, 0), -1, m.ratio(), m.z())};
        } else if (!nodes.byPhase(out)) {
            windings[i] = Wires.branches(mask).stream()
                    .limit(1)
                    .mapToInt(p -> oneCircuit(in, out, p, m))
                    .toArray();
        } else {
            boolean star = !m.separate() && starOf(in) >= 0 && starOf(out) >= 0;
            windings[i] = new int[Wires.lines(mask) == 3 ? 3 : 0];
            for (int k = 0; k < windings[i].length; k++) {
                int back = star ? starOf(in) : nodes.of(in, (k + 1) % 3);
                double ratio = star ? m.ratio() : m.ratio() / Math.sqrt(3);
                windings[i][k] = wind(nodes.of(in, k), back, nodes.of(out, k), starOf(out), ratio, m.z());
            }
        }
        double siemens = m.noLoadW() / square(Plan.phaseV(system(in))) / Plan.phases(system(in));
        int drawn = nodes.byPhase(in) ? mask : 0;
        double share = Wires.lines(drawn) == 2 || Wires.lines(drawn) == 1
                ? m.noLoadW() / square(Wires.nominalV(system(in), drawn))
                : siemens;
        ofAttachment[i] = m.noLoadW() > 0 ? load(t, Part.LOAD_CONDUCTANCE, new Complex(share, 0), drawn) : NONE;
    }

    private boolean starOf(int pin, AcNodes of) {
        return of.byPhase(pin) && system(pin).nature() == Nature.AC3N;
    }

    private static double square(double x) {
        return x * x;
    }

    private int starOf(int pin) {
        return system(pin).nature() == Nature.AC3N ? nodes.of(pin, Wires.N) : -1;
    }

    private int oneCircuit(int in, int out, int[] pair, TransformerModel m) {
        double first = pair[1] == Wires.N ? Plan.phaseV(system(in)) : system(in).nominalV();
        double ratio = system(out).nominalV() / first;
        return wind(nodes.of(in, pair[0]), nodes.of(in, pair[1]), nodes.of(out, 0), -1, ratio, m.z());
    }

    private int wind(int a1, int b1, int a2, int b2, double ratio, Complex z) {
        return circuit.windings(new PhasorCircuit.Windings(a1, b1, a2, b2, ratio, z));
    }

    private static List<Integer> list(int[] parts) {
        return Arrays.stream(parts).boxed().toList();
    }

    /** How many phases one part stands for. */
    int phases(int pin) {
        return nodes.byPhase(pin) ? 1 : Plan.phases(system(pin));
    }

    PhasorCircuit circuit() {
        return circuit;
    }

    AcNodes nodes() {
        return nodes;
    }

    List<Coupling> couplings() {
        return couplings;
    }

    List<Passing> passings() {
        return passings;
    }

    int[] windings(int attachment) {
        return windings[attachment];
    }

    int partOfConnection(int connection, int wire) {
        return any ? partOfConnection[Wires.COUNT * connection + wire] : -1;
    }

    int[] partsOfAttachment(int attachment) {
        return ofAttachment[attachment];
    }

    int[] partsOfOutput(int attachment) {
        return ofOutput[attachment];
    }
}
