package orlop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Group;
import orlop.network.Feeding;
import orlop.network.NetPoint;
import orlop.network.Network;
import orlop.network.Numbering;
import orlop.study.fault.AcFaults;
import orlop.study.fault.Faults;
import orlop.study.model.CableModel;
import orlop.study.model.Notes;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.PointCurrents;
import orlop.study.model.Rating;
import orlop.study.protection.Coverage;
import orlop.study.sizing.LoadDrop;

/** Turns what was worked out for one condition into result records. */
final class Gatherer {
    private final Plan plan;
    private final Operation operation;
    private final Network network;
    private final Faults faults;
    private final AcFaults acFaults;
    private final List<SizedCable> sized;
    private final Coverage coverage;
    private final List<String> conditionIds;
    private final PointCurrents pinCurrents;
    private final TerminalFigures figures;
    private final PhaseResults phases;
    private final Ids ids;
    private final Numbering numbering;
    private final @Nullable LoadDrop[] drops; // by component
    private final @Nullable FaultRange[] faultAt; // by point

    Gatherer(
            Plan plan,
            Operation operation,
            Faults faults,
            AcFaults acFaults,
            List<SizedCable> sized,
            Coverage coverage,
            List<LoadDrop> loadDrops,
            List<String> conditionIds,
            Ids ids) {
        this.plan = plan;
        this.operation = operation;
        this.faults = faults;
        this.acFaults = acFaults;
        this.sized = sized;
        this.coverage = coverage;
        this.conditionIds = conditionIds;
        network = operation.network();
        pinCurrents = new PointCurrents(plan, operation);
        phases = new PhaseResults(operation, pinCurrents);
        figures = new TerminalFigures(plan, operation, pinCurrents, phases);
        this.ids = ids;
        numbering = network.numbering();
        drops = new LoadDrop[numbering.componentCount()];
        faultAt = new FaultRange[network.points().size()];
        for (LoadDrop d : loadDrops) {
            drops[figures.number(network.attachments().get(d.attachment()).pin())] = d;
        }
    }

    private @Nullable Double angleDeg(int pin) {
        return operation.isAc(pin) && figures.voltage(pin) != null
                ? TerminalFigures.known(operation.phasor(pin).angleDeg())
                : null;
    }

    // ---- points ----------------------------------------------------------------------------------------------

    Map<String, PointResult> points() {
        List<NetPoint> all = network.listedPoints();
        double[] length = new double[all.size()];
        int[] onePin = new int[all.size()];
        java.util.Arrays.fill(length, Double.NaN);
        java.util.Arrays.fill(onePin, -1);
        for (int pin = 0; pin < network.pinCount(); pin++) {
            int point = network.listedPointOf(pin);
            if (point >= 0) {
                double here = network.feeding().lengthM(pin);
                length[point] = Double.isNaN(length[point]) || here < length[point] ? here : length[point];
                onePin[point] = onePin[point] < 0 || network.feeding().feeds(pin) ? pin : onePin[point];
            }
        }
        return Rows.of(ids.points(all), i -> point(all.get(i), onePin[i], length[i]));
    }

    private PointResult point(NetPoint p, int pin, double lengthM) {
        Double volts = figures.voltage(pin);
        FaultRange fault = network.feeding().feeds(pin) ? fault(pin) : FaultRange.NONE;
        Double length = volts == null || operation.delivery().isDoubtful(pin) ? null : TerminalFigures.known(lengthM);
        return new PointResult(
                p.id(),
                p.system(),
                p.terminals(),
                volts,
                angleDeg(pin),
                fault,
                length,
                volts == null ? Map.of() : phases.at(pin),
                network.feeding().feeds(pin) ? faults(pin, fault) : Map.of());
    }

    private Map<FaultKind, FaultResult> faults(int pin, FaultRange range) {
        if (!operation.isAc(pin)) {
            return range.maxA() == null
                    ? Map.of()
                    : Map.of(FaultKind.DC, new FaultResult(range.maxA(), range.minA(), null, null));
        }
        Map<FaultKind, FaultResult> byKind = new LinkedHashMap<>();
        for (FaultKind kind : FaultKind.values()) {
            FaultResult here = acFaults.of(kind, operation.assembly().node(pin));
            if (here != null) {
                byKind.put(kind, here);
            }
        }
        return byKind;
    }

    private FaultRange fault(int pin) {
        int point = network.pointOf(pin);
        FaultRange known = point < 0 ? null : faultAt[point];
        if (known == null) {
            known = range(pin);
            if (point >= 0) {
                faultAt[point] = known;
            }
        }
        return known;
    }

    private FaultRange range(int pin) {
        int node = operation.assembly().node(pin);
        boolean ac = operation.isAc(pin);
        double highest = ac ? acFaults.maxA(node) : faults.maxA(node);
        Double most = TerminalFigures.known(highest);
        Double least = TerminalFigures.known(ac ? acFaults.minA(node) : faults.minA(node));
        boolean unlimited = Double.isInfinite(highest);
        return most == null && least == null && !unlimited ? FaultRange.NONE : new FaultRange(most, least, unlimited);
    }

    // ---- cables ----------------------------------------------------------------------------------------------

    Map<String, CableResult> cables() {
        return Rows.of(ids.cables(), i -> cable(i, plan.cables().get(i)));
    }

    private CableResult cable(int i, CableModel w) {
        int edge = operation.connectionOfCable(i);
        Cable cable = w.cable();
        int a = numbering.fromPin(i);
        int b = numbering.toPin(i);
        Double va = edge < 0 ? null : figures.voltage(a);
        Double vb = edge < 0 ? null : figures.voltage(b);
        boolean fed =
                edge >= 0 && network.feeding().feeds(a) && network.feeding().feeds(b);
        boolean live = va != null && vb != null;
        double amps = current(i, edge);
        boolean contracted = edge >= 0 && network.connections().get(edge).contracted();
        double ohm = contracted ? 0 : operation.ohm(i);
        Double dropV = !live ? null : TerminalFigures.known(operation.isAc(a) ? operation.dropV(i) : amps * ohm);
        if (live && (contracted || (ohm == 0 && !operation.isAc(a)))) {
            dropV = 0.0;
        }
        boolean unknown = edge >= 0 && numbering.isOfUnknownLength(edge);
        dropV = unknown ? null : dropV;
        int far = live ? farPin(edge, a, b) : -1;
        SizedCable s = sized.get(i);
        int governing = s.governingCondition();
        Rating rating = s.rating();
        double nominalV = operation.nominalV(i);
        boolean calculated = plan.calculates(w.system());
        boolean areaOpen = cable.auto() && (!calculated || s.nothingFits());
        return new CableResult(
                cable.id(),
                cable.from(),
                cable.to(),
                w.system().id(),
                fed || live,
                w.lengthM(),
                areaOpen ? null : (Double) s.areaMm2(),
                cable.auto(),
                w.conductors(),
                cable.parallel(),
                calculated ? TerminalFigures.known(s.leastMm2()) : null,
                calculated ? s.governedBy() : null,
                !calculated || governing < 0 || conditionIds.size() < 2 ? null : conditionIds.get(governing),
                live ? TerminalFigures.known(amps) : null,
                calculated ? (Double) s.designA() : null,
                rating == null || areaOpen ? null : (Double) rating.amps(),
                rating != null && !areaOpen && rating.fromMemory(),
                live
                        ? (Double)
                                (contracted && !Double.isNaN(amps)
                                        ? w.conductorC(rating, amps)
                                        : operation.conductorC(i))
                        : null,
                dropV,
                dropV == null || !(nominalV > 0) ? null : (Double) (100 * dropV / nominalV),
                far < 0 ? null : percentFromSource(far, nominalV),
                far < 0 || operation.delivery().isDoubtful(far)
                        ? null
                        : TerminalFigures.known(operation.delivery().lengthM(far)),
                live && !unknown
                        ? TerminalFigures.known(
                                ohm == 0 ? 0 : operation.isAc(a) ? operation.heatW(i) : amps * amps * ohm)
                        : null,
                fed ? fault(a) : FaultRange.NONE,
                fed ? fault(b) : FaultRange.NONE,
                coverage.protectedBy(i),
                s.sizing(),
                live ? phases.along(edge) : Map.of());
    }

    private double current(int i, int edge) {
        double amps = operation.currentOfCable(i);
        return Double.isNaN(amps) && edge >= 0 ? pinCurrents.of(edge) : amps;
    }

    /** Says of cables without any resistance that lie in a ring of such that nothing decides how the current divides. */
    void noteUndivided(Notes notes, String condition) {
        for (int i = 0; i < plan.cables().size(); i++) {
            int edge = operation.connectionOfCable(i);
            boolean joins = edge >= 0
                    && network.connections().get(edge).contracted()
                    && !numbering.isOfUnknownLength(edge)
                    && figures.voltage(numbering.fromPin(i)) != null;
            if (joins && Double.isNaN(pinCurrents.of(edge))) {
                String id = plan.cables().get(i).cable().id();
                notes.add(Remark.Kind.NOT_CALCULATED, id, condition, "study.not-calculated.undivided", id);
            }
        }
    }

    private int farPin(int edge, int a, int b) {
        Feeding f = network.feeding();
        if (!f.feeds(a) || !f.feeds(b)) {
            return -1; // a drawn return
        }
        return operation.farPin(edge);
    }

    private @Nullable Double percentFromSource(int pin, double nominalV) {
        int source = operation.delivery().topPin(pin);
        boolean known = figures.voltage(pin) != null && source >= 0 && figures.voltage(source) != null && nominalV > 0;
        known &= !operation.delivery().isDoubtful(pin);
        return known
                ? TerminalFigures.known(100 * LoadDrop.notBelowZero(operation.lostV(source, pin)) / nominalV)
                : null;
    }

    // ---- components ------------------------------------------------------------------------------------------

    Map<String, ComponentResult> components() {
        return Rows.of(ids.components(), i -> component(i, numbering.component(i)));
    }

    private ComponentResult component(int number, Component c) {
        boolean bar = c.kind().isOnePiece();
        List<String> names =
                bar ? numbering.taps(numbering.pin(number, 1)) : c.particulars().terminals();
        List<TerminalResult> terminals = new ArrayList<>(names.size());
        boolean live = false;
        for (int n = 1; n <= names.size(); n++) {
            String name = names.get(n - 1);
            int pin = numbering.pin(number, bar ? 1 : n);
            boolean shown = bar || network.pointOf(pin) >= 0;
            if (shown) {
                Double volts = network.pointOf(pin) < 0 ? null : figures.voltage(pin);
                volts = volts == null ? null : figures.across(c, pin, volts);
                live |= network.feeding().feeds(pin);
                Double amps = volts == null || bar ? null : figures.terminalCurrent(pin);
                Double watts = volts == null || amps == null ? null : figures.power(pin, volts, amps);
                Map<String, PhaseResult> each = volts == null ? Map.of() : figures.phasesOf(bar, pin);
                terminals.add(new TerminalResult(name, network.systemOf(pin), volts, angleDeg(pin), amps, watts, each));
            }
        }
        LoadDrop drop = drops[number];
        boolean load = c.kind().group() == Group.LOADS;
        return new ComponentResult(
                c.id(),
                c.kind(),
                live,
                terminals,
                load && drop != null && !isDoubtful(drop) ? TerminalFigures.known(drop.percent()) : null,
                load ? limit(c) : null,
                live ? operation.delivery().tagsTo(feedingPin(number, c)) : List.of());
    }

    private boolean isDoubtful(LoadDrop drop) {
        return operation
                .delivery()
                .isDoubtful(network.attachments().get(drop.attachment()).pin());
    }

    private int feedingPin(int number, Component c) {
        int pins = c.kind().isOnePiece() ? 1 : c.particulars().terminals().size();
        for (int n = 1; n <= pins; n++) {
            if (network.feeding().feeds(numbering.pin(number, n))) {
                return numbering.pin(number, n);
            }
        }
        return -1;
    }

    private @Nullable Double limit(Component c) {
        ElectricalSystem s = plan.system(c.systems().get(0));
        boolean vital = c.particulars() instanceof orlop.drawing.Consumer k && k.vital();
        return plan.dropLimitPercent(s, vital);
    }
}
