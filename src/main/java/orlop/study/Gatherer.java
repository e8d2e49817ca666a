package orlop.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Group;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.TerminalRef;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Feeding;
import orlop.network.NetPoint;
import orlop.network.Network;
import orlop.study.fault.AcFaults;
import orlop.study.fault.Faults;
import orlop.study.linear.Complex;
import orlop.study.model.AcOperation;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.Rating;
import orlop.study.protection.Coverage;
import orlop.study.sizing.LoadDrop;
import orlop.study.sizing.Sizing;

/** Turns what was worked out for one condition into result records. */
final class Gatherer {
    /** Above this many pins only loads carry their feeding path, which would else grow with the square of the size. */
    private static final int ALL_PATHS_UP_TO = 4_000;

    private final Plan plan;
    private final Operation operation;
    private final Network network;
    private final Faults faults;
    private final AcFaults acFaults;
    private final Sizing sizing;
    private final Coverage coverage;
    private final List<String> conditionIds;
    private final PointCurrents pinCurrents;
    private final PhaseResults phases;
    private final Map<String, LoadDrop> drops = new HashMap<>();
    private final Map<String, List<Integer>> connectionsOf = new HashMap<>();
    private final Map<String, Integer> attachmentOf = new HashMap<>();

    Gatherer(
            Plan plan,
            Operation operation,
            Faults faults,
            AcFaults acFaults,
            Sizing sizing,
            Coverage coverage,
            List<LoadDrop> loadDrops,
            List<String> conditionIds) {
        this.plan = plan;
        this.operation = operation;
        this.faults = faults;
        this.acFaults = acFaults;
        this.sizing = sizing;
        this.coverage = coverage;
        this.conditionIds = conditionIds;
        network = operation.network();
        pinCurrents = new PointCurrents(plan, operation);
        phases = new PhaseResults(operation, pinCurrents);
        for (LoadDrop d : loadDrops) {
            drops.put(network.attachments().get(d.attachment()).component().id(), d);
        }
        for (int i = 0; i < network.attachments().size(); i++) {
            attachmentOf.put(network.attachments().get(i).component().id(), i);
        }
        for (int e = 0; e < network.connections().size(); e++) {
            Component c = network.connections().get(e).device();
            if (c != null) {
                connectionsOf.computeIfAbsent(c.id(), k -> new ArrayList<>(2)).add(e);
            }
        }
    }

    private static @Nullable Double known(double value) {
        return Double.isFinite(value) ? value : null;
    }

    /** Voltage of a pin that a source feeds or that is a drawn return; null where it is dead. */
    private @Nullable Double voltage(int pin) {
        boolean calculated = plan.calculates(plan.system(network.systemOf(pin)));
        boolean alive = network.feeding().feeds(pin) || network.isReturn(network.pointOf(pin));
        return calculated && alive ? known(operation.voltage(pin)) : null;
    }

    private @Nullable Double angleDeg(int pin) {
        return operation.isAc(pin) && voltage(pin) != null
                ? known(operation.phasor(pin).angleDeg())
                : null;
    }

    // ---- points ----------------------------------------------------------------------------------------------

    Map<String, PointResult> points() {
        List<NetPoint> all = network.points();
        double[] length = new double[all.size()];
        int[] onePin = new int[all.size()];
        java.util.Arrays.fill(length, Double.NaN);
        java.util.Arrays.fill(onePin, -1);
        for (int pin = 0; pin < network.pinCount(); pin++) {
            int point = network.pointOf(pin);
            if (point >= 0) {
                double here = network.feeding().lengthM(pin);
                length[point] = Double.isNaN(length[point]) || here < length[point] ? here : length[point];
                onePin[point] = onePin[point] < 0 || network.feeding().feeds(pin) ? pin : onePin[point];
            }
        }
        Map<String, PointResult> results = new LinkedHashMap<>();
        for (int i = 0; i < all.size(); i++) {
            NetPoint p = all.get(i);
            Double volts = voltage(onePin[i]);
            FaultRange fault = network.feeding().feeds(onePin[i]) ? fault(onePin[i]) : FaultRange.NONE;
            results.put(
                    p.id(),
                    new PointResult(
                            p.id(),
                            p.system(),
                            p.terminals(),
                            volts,
                            angleDeg(onePin[i]),
                            fault,
                            volts == null ? null : known(length[i]),
                            volts == null ? Map.of() : phases.at(onePin[i]),
                            network.feeding().feeds(onePin[i]) ? faults(onePin[i], fault) : Map.of()));
        }
        return results;
    }

    private Map<FaultKind, FaultResult> faults(int pin, FaultRange range) {
        Map<FaultKind, FaultResult> byKind = new LinkedHashMap<>();
        for (FaultKind kind : FaultKind.values()) {
            FaultResult here = operation.isAc(pin)
                    ? acFaults.of(kind, operation.assembly().node(pin))
                    : kind == FaultKind.DC && range.maxA() != null
                            ? new FaultResult(range.maxA(), range.minA(), null, null)
                            : null;
            if (here != null) {
                byKind.put(kind, here);
            }
        }
        return byKind;
    }

    private FaultRange fault(int pin) {
        int node = operation.assembly().node(pin);
        boolean ac = operation.isAc(pin);
        Double most = known(ac ? acFaults.maxA(node) : faults.maxA(node));
        Double least = known(ac ? acFaults.minA(node) : faults.minA(node));
        return most == null && least == null ? FaultRange.NONE : new FaultRange(most, least);
    }

    // ---- cables ----------------------------------------------------------------------------------------------

    Map<String, CableResult> cables() {
        Map<String, CableResult> results = new LinkedHashMap<>();
        for (int i = 0; i < plan.cables().size(); i++) {
            CableModel w = plan.cables().get(i);
            results.put(w.cable().id(), cable(i, w));
        }
        return results;
    }

    private CableResult cable(int i, CableModel w) {
        int edge = operation.connectionOfCable(i);
        Cable cable = w.cable();
        int a = network.pin(cable.from());
        int b = network.pin(cable.to());
        Double va = edge < 0 ? null : voltage(a);
        Double vb = edge < 0 ? null : voltage(b);
        boolean fed =
                edge >= 0 && network.feeding().feeds(a) && network.feeding().feeds(b);
        boolean live = va != null && vb != null;
        double amps = current(i, edge);
        boolean contracted = edge >= 0 && network.connections().get(edge).contracted();
        double ohm = contracted ? 0 : operation.ohm(i);
        Double dropV = !live ? null : known(operation.isAc(a) ? operation.dropV(i) : amps * ohm);
        if (live && (contracted || (ohm == 0 && !operation.isAc(a)))) {
            dropV = 0.0;
        }
        int far = live ? farPin(edge, a, b) : -1;
        double least = sizing.leastAreaMm2(i);
        int governing = sizing.governingCondition(i);
        Rating rating = sizing.rating(i);
        double nominalV = operation.nominalV(i);
        boolean calculated = plan.calculates(w.system());
        boolean areaOpen = cable.auto() && (!calculated || sizing.nothingFits(i));
        return new CableResult(
                cable.id(),
                cable.from(),
                cable.to(),
                w.system().id(),
                fed || live,
                w.lengthM(),
                areaOpen ? null : (Double) sizing.areaMm2(i),
                cable.auto(),
                w.conductors(),
                cable.parallel(),
                calculated ? known(least) : null,
                calculated ? sizing.governedBy(i) : null,
                !calculated || governing < 0 || conditionIds.size() < 2 ? null : conditionIds.get(governing),
                live ? known(amps) : null,
                calculated ? (Double) sizing.designA(i) : null,
                rating == null || areaOpen ? null : (Double) rating.amps(),
                rating != null && !areaOpen && rating.fromMemory(),
                live ? (Double) operation.conductorC(i) : null,
                dropV,
                dropV == null || !(nominalV > 0) ? null : (Double) (100 * dropV / nominalV),
                far < 0 ? null : percentFromSource(far, nominalV),
                far < 0 ? null : known(network.feeding().lengthM(far)),
                live ? known(ohm == 0 ? 0 : operation.isAc(a) ? operation.heatW(i) : amps * amps * ohm) : null,
                fed ? fault(a) : FaultRange.NONE,
                fed ? fault(b) : FaultRange.NONE,
                coverage.protectedBy(i),
                live ? phases.along(edge) : Map.of());
    }

    private double current(int i, int edge) {
        double amps = operation.currentOfCable(i);
        return Double.isNaN(amps) && edge >= 0 ? pinCurrents.of(edge) : amps;
    }

    private int farPin(int edge, int a, int b) {
        Feeding f = network.feeding();
        if (!f.feeds(a) || !f.feeds(b)) {
            return -1; // a drawn return
        }
        if (f.via(a) == edge) {
            return a;
        }
        return f.via(b) == edge || f.lengthM(b) >= f.lengthM(a) ? b : a;
    }

    private @Nullable Double percentFromSource(int pin, double nominalV) {
        int source = LoadDrop.rootPin(network, pin);
        boolean live = voltage(pin) != null && voltage(source) != null && nominalV > 0;
        return live ? known(100 * operation.lostV(source, pin) / nominalV) : null;
    }

    // ---- components ------------------------------------------------------------------------------------------

    Map<String, ComponentResult> components() {
        Map<String, Set<String>> taps = taps();
        Map<String, ComponentResult> results = new LinkedHashMap<>();
        for (Component c : plan.drawing().components().values()) {
            results.put(c.id(), component(c, taps.getOrDefault(c.id(), Set.of())));
        }
        return results;
    }

    private Map<String, Set<String>> taps() {
        Map<String, Set<String>> taps = new HashMap<>();
        for (Cable w : plan.drawing().cables().values()) {
            tap(taps, w.from());
            tap(taps, w.to());
        }
        for (Link l : plan.drawing().links().values()) {
            tap(taps, l.from());
            tap(taps, l.to());
        }
        return taps;
    }

    private static void tap(Map<String, Set<String>> taps, TerminalRef t) {
        taps.computeIfAbsent(t.component(), k -> new LinkedHashSet<>(4)).add(t.terminal());
    }

    private ComponentResult component(Component c, Set<String> taps) {
        boolean bar = c.kind().terminals() == Kind.Terminals.ANY;
        List<TerminalResult> terminals = new ArrayList<>();
        boolean live = false;
        int n = 0;
        for (String name : bar ? taps : c.particulars().terminals()) {
            n++;
            int pin = network.pin(c, bar ? 1 : n);
            boolean shown = bar || network.pointOf(pin) >= 0;
            if (shown) {
                Double volts = network.pointOf(pin) < 0 ? null : voltage(pin);
                volts = volts == null ? null : across(c, pin, volts);
                live |= network.feeding().feeds(pin);
                Double amps = volts == null || bar ? null : terminalCurrent(c, n);
                Double watts = volts == null || amps == null ? null : power(c, n, volts, amps);
                Map<String, PhaseResult> each = volts == null ? Map.of() : phasesOf(c, bar, pin);
                terminals.add(new TerminalResult(name, network.systemOf(pin), volts, angleDeg(pin), amps, watts, each));
            }
        }
        LoadDrop drop = drops.get(c.id());
        boolean load = c.kind().group() == Group.LOADS;
        boolean path = live && (load || network.pinCount() <= ALL_PATHS_UP_TO);
        return new ComponentResult(
                c.id(),
                c.kind(),
                live,
                terminals,
                load && drop != null ? known(drop.percent()) : null,
                load ? limit(c) : null,
                path ? network.feedingPath(feedingPin(c)) : List.of());
    }

    private int feedingPin(Component c) {
        int pins = c.kind().terminals() == Kind.Terminals.ANY
                ? 1
                : c.particulars().terminals().size();
        for (int n = 1; n <= pins; n++) {
            if (network.feeding().feeds(network.pin(c, n))) {
                return network.pin(c, n);
            }
        }
        return -1;
    }

    private @Nullable Double limit(Component c) {
        ElectricalSystem s = plan.system(c.systems().get(0));
        boolean vital = c.particulars() instanceof orlop.drawing.Consumer k && k.vital();
        return plan.dropLimitPercent(s, vital);
    }

    private @Nullable Double power(Component c, int terminal, double volts, double amps) {
        Integer i = attachmentOf.get(c.id());
        int pin = network.pin(c, terminal);
        if (operation.isAc(pin)) {
            return known(acPower(c, i, pin));
        }
        int back = i == null ? -1 : network.attachments().get(i).returnPin();
        Double low = back < 0 ? null : voltage(back);
        return (volts - (low == null ? 0 : low)) * amps;
    }

    /** What a load between two phases has across it differs from what stands at its pin. */
    private @Nullable Double across(Component c, int pin, double volts) {
        Integer i = attachmentOf.get(c.id());
        boolean load = operation.alternating().byPhase(pin) && c.kind().group() == Group.LOADS;
        return load && i != null ? known(operation.forLoad(pin, c)) : (Double) volts;
    }

    private Map<String, PhaseResult> phasesOf(Component c, boolean bar, int pin) {
        Integer i = attachmentOf.get(c.id());
        if (bar || !operation.alternating().byPhase(pin)) {
            return phases.at(pin);
        }
        if (i == null) {
            return phases.at(pin, wire -> through(c, pin, wire));
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
    private double acPower(Component c, @Nullable Integer i, int pin) {
        AcOperation ac = operation.alternating();
        if (i == null) {
            double sum = 0;
            for (int wire = 0; wire < ac.wires(pin); wire++) { // the neutral carries what its displacement makes
                Complex watts =
                        ac.voltage(pin, wire).times(through(c, pin, wire).conjugate());
                sum += watts.isNaN() ? 0 : watts.re();
            }
            return ac.byPhase(pin) ? sum : sum * Plan.phases(plan.system(network.systemOf(pin)));
        }
        Attachment t = network.attachments().get(i);
        if (pin == t.outputPin()) {
            return -ac.powerOfOutput(i);
        }
        double watts = ac.powerOfAttachment(i);
        return Double.isNaN(watts) && !t.on() ? 0 : t.isSource() ? 0 - watts : watts;
    }

    /** Current through a device of an alternating-current system. */
    private Complex through(Component c, int pin, int wire) {
        Complex sum = Complex.ZERO;
        for (int e : connectionsOf.getOrDefault(c.id(), List.of())) {
            Connection k = network.connections().get(e);
            boolean here = k.kind() == Connection.Kind.DEVICE || k.a() == pin || k.b() == pin;
            if (here && k.closed()) {
                sum = sum.plus(pinCurrents.phasor(e, wire));
            }
        }
        return sum;
    }

    private @Nullable Double terminalCurrent(Component c, int terminal) {
        Integer i = attachmentOf.get(c.id());
        int pin = network.pin(c, terminal);
        if (i != null) {
            return attachmentCurrent(i, pin);
        }
        if (operation.isAc(pin) && connectionsOf.containsKey(c.id())) {
            return known(operation.mostLoaded(pin, wire -> through(c, pin, wire)));
        }
        double sum = 0;
        boolean any = false;
        for (int e : connectionsOf.getOrDefault(c.id(), List.of())) {
            Connection k = network.connections().get(e);
            boolean here = k.kind() == Connection.Kind.DEVICE || k.a() == pin || k.b() == pin;
            if (here && k.closed()) {
                int part = operation.assembly().partOfConnection(e);
                sum += part >= 0 ? operation.flow().current(part) : pinCurrents.of(e);
                any = true;
            }
        }
        return any ? known(sum) : connectionsOf.containsKey(c.id()) ? (Double) 0.0 : null;
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
