package orlop.study.working;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Unit;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Network;
import orlop.study.FaultKind;
import orlop.study.fault.AcFaultSum;
import orlop.study.fault.AcFaults;
import orlop.study.fault.DcFaultSum;
import orlop.study.fault.Faults;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;
import orlop.study.model.SourceModel;

/** Prospective fault currents at a pin in one condition. */
final class FaultWorkings {
    private static final double SAME = 1e-9;

    private final Solved solved;
    private final int condition;
    private final Operation operation;
    private final Network network;

    FaultWorkings(Solved solved, int condition) {
        this.solved = solved;
        this.condition = condition;
        operation = solved.operations().get(condition);
        network = operation.network();
    }

    /**
     * How the highest or the lowest fault current there came about; null where there is none.
     *
     * @param place what the pin is called
     */
    @Nullable
    Working at(int pin, boolean highest, String place) {
        Working found = at(pin, highest);
        String word = highest ? "fault-highest" : "fault-lowest";
        return found == null ? null : found.as(Say.what(word, place), found.symbol());
    }

    private @Nullable Working at(int pin, boolean highest) {
        int node = operation.assembly().node(pin);
        boolean ac = operation.isAc(pin);
        double amps = ac ? alternatingA(node, highest) : directA(node, highest);
        if (!network.feeding().feeds(pin) || !Double.isFinite(amps)) {
            return null;
        }
        return ac ? alternating(node, amps, highest) : direct(pin, node, amps, highest);
    }

    private double directA(int node, boolean highest) {
        Faults f = solved.faults().get(condition);
        return highest ? f.maxA(node) : f.minA(node);
    }

    private double alternatingA(int node, boolean highest) {
        AcFaults f = solved.acFaults().get(condition);
        return highest ? f.maxA(node) : f.minA(node);
    }

    private static Working fault(double amps, boolean highest, String formula, List<Working> inputs) {
        return Working.found(
                Say.what(highest ? "fault-highest" : "fault-lowest"),
                highest ? "Ik max" : "Ik min",
                formula,
                amps,
                Unit.AMPERE,
                inputs);
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
    }

    private void addFaultOhm(List<Working> inputs) {
        if (solved.faultOhm() > 0) {
            inputs.add(Working.given(Say.what("fault-ohm"), "Rf", solved.faultOhm(), Unit.OHM, Say.from("asked")));
        }
    }

    // ---- direct current --------------------------------------------------------------------------------------

    private Working direct(int pin, int node, double amps, boolean highest) {
        DcFaultSum sum = DcFaultSum.at(solved.plan(), operation, solved.areasMm2(), solved.faultOhm(), node, highest);
        double driving = sum.openV();
        List<Working> raises = new ArrayList<>();
        for (DcFaultSum.Raise r : sum.raises()) {
            driving += r.amps() * r.ohm();
            raises.add(raise(r, raises.size() + 1));
        }
        if (!sum.complete() || !same(amps, driving / (sum.ohm() + solved.faultOhm()))) {
            return fault(amps, highest, "", List.of()).because(Say.from("limited-sources"));
        }
        Working radial = sum.sources() == 1 ? radial(pin, amps, sum, raises, highest) : null;
        if (radial != null) {
            return radial;
        }
        List<Working> inputs = new ArrayList<>();
        inputs.add(Working.given(
                Say.what("open-volts"), "U0", sum.openV(), Unit.VOLT, Say.from("sources", sum.sources())));
        inputs.addAll(raises);
        inputs.add(Working.given(Say.what("thevenin-ohm"), "Rth", sum.ohm(), Unit.OHM, Say.from("network")));
        addFaultOhm(inputs);
        String below = solved.faultOhm() > 0 ? "(Rth + Rf)" : "Rth";
        return fault(amps, highest, driving("U0", raises) + " / " + below, inputs);
    }

    /** {@code U0}, or {@code (U0 + Δ1 + Δ2)}. */
    private static String driving(String first, List<Working> raises) {
        StringBuilder s = new StringBuilder(first);
        raises.forEach(r -> s.append(" + ").append(r.symbol()));
        return raises.isEmpty() ? first : "(" + s + ")";
    }

    private static Working raise(DcFaultSum.Raise r, int number) {
        List<Working> inputs = List.of(
                Working.given(Say.what("raise-amps"), "I", r.amps(), Unit.AMPERE, Say.from("limit")),
                Working.given(Say.what("raise-ohm"), "R", r.ohm(), Unit.OHM, Say.from("network")));
        String items = String.join(", ", r.items());
        return Working.found(Say.what("raise", items), "Δ" + number, "I · R", r.amps() * r.ohm(), Unit.VOLT, inputs);
    }

    /** One source without a limit and one way: every resistance on it by itself. Null where the way is not all. */
    private @Nullable Working radial(int pin, double amps, DcFaultSum sum, List<Working> raises, boolean highest) {
        Attachment source = network.attachments().get(network.feeding().root(pin));
        SourceModel model = source.role() == Attachment.Role.CONVERTER
                ? solved.plan().output(source.pin())
                : solved.plan().source(source.pin());
        if (model == null) {
            return null;
        }
        SourceModel.Thevenin t = highest ? model.strongest() : model.weakest();
        List<Working> inputs = new ArrayList<>();
        String tag = source.component().id();
        inputs.add(Working.given(Say.what("emf", tag), "E", t.emfV(), Unit.VOLT, Say.from(sourceRule(model, highest))));
        inputs.addAll(raises);
        inputs.add(Working.given(
                Say.what("source-ohm", tag), "Rs", t.ohm(), Unit.OHM, Say.from(sourceRule(model, highest))));
        StringBuilder formula = new StringBuilder(driving("E", raises)).append(" / (Rs");
        double total = t.ohm();
        int k = 0;
        for (int edge : network.feeding().pathTo(pin)) {
            Connection c = network.connections().get(edge);
            if (!c.contracted()) {
                k++;
                Working r = resistance(c, edge, "R" + k, highest);
                total += r.value().value();
                inputs.add(r);
                formula.append(" + R").append(k);
            }
        }
        if (!same(total, sum.ohm()) || !same(t.emfV(), sum.openV())) {
            return null;
        }
        addFaultOhm(inputs);
        return fault(
                amps,
                highest,
                formula.append(solved.faultOhm() > 0 ? " + Rf)" : ")").toString(),
                inputs);
    }

    private String sourceRule(SourceModel model, boolean highest) {
        boolean plain = solved.plan().drawing().vessel().faultMethod() == orlop.drawing.FaultMethod.PLAIN;
        return plain || !model.battery() ? "source" : highest ? "battery-strongest" : "battery-weakest";
    }

    private Working resistance(Connection c, int edge, String symbol, boolean highest) {
        int cable = network.cableOf(edge);
        if (cable < 0) {
            return Working.given(
                    Say.what("device-ohm", c.item()), symbol, c.resistanceOhm(), Unit.OHM, Say.from("drawn"));
        }
        CableModel w = solved.plan().cables().get(cable);
        double area = solved.sizing().areaMm2(cable);
        double conductorC = Faults.conductorC(solved.plan(), cable, highest);
        return new ConductorWorkings(w)
                .resistance(area, w.loopOhm(area, conductorC), ConductorWorkings.faultTemperature(conductorC, highest))
                .as(Say.what("cable-ohm", c.item()), symbol);
    }

    // ---- alternating current ---------------------------------------------------------------------------------

    private @Nullable Working alternating(int node, double amps, boolean highest) {
        AcFaults faults = solved.acFaults().get(condition);
        for (FaultKind kind : FaultKind.values()) {
            AcFaultSum sum = faults.ofKindA(kind, node, highest) == amps ? faults.sum(kind, node, highest) : null;
            if (sum != null) {
                return alternating(kind, sum, amps, highest);
            }
        }
        return null;
    }

    private Working alternating(FaultKind kind, AcFaultSum s, double amps, boolean highest) {
        boolean two = kind == FaultKind.TWO_PHASE;
        List<Working> inputs = new ArrayList<>();
        String formula = two ? "√(3) / 2 · U0 / Z" : "U0 / Z";
        inputs.add(Working.given(Say.what("ac-volts"), "U0", s.volts(), Unit.VOLT, Say.from("voltage-factor")));
        inputs.add(impedance(kind, s, highest));
        if (s.alone()) {
            formula = "min(Ig; " + formula + ")";
        } else if (highest && s.limitA() > 0) {
            formula = formula + " + Ig";
        }
        if (s.alone() || (highest && s.limitA() > 0)) {
            inputs.add(Working.given(Say.what("inverter-fault"), "Ig", s.limitA(), Unit.AMPERE, Say.from("inverters")));
        }
        return fault(amps, highest, formula, inputs).because(Say.from("kind." + kind.word()));
    }

    private static Working impedance(FaultKind kind, AcFaultSum s, boolean highest) {
        boolean two = kind == FaultKind.TWO_PHASE;
        String how = kind == FaultKind.LINE_NEUTRAL || kind == FaultKind.LINE_EARTH ? "loop" : "line";
        List<Working> inputs = new ArrayList<>();
        Working ohm = along(s, "ac-ohm." + how, "R", s.ohm(), AcFaultSum.Piece::ohm);
        inputs.add(ohm.because(Say.from(highest ? "cold-way" : "hot-way")));
        inputs.add(along(s, "ac-reactance." + how, "X", s.reactanceOhm(), AcFaultSum.Piece::reactanceOhm));
        double own = two ? s.faultOhm() / 2 : s.faultOhm();
        if (s.faultOhm() > 0) {
            inputs.add(Working.given(Say.what("fault-ohm"), "Rf", s.faultOhm(), Unit.OHM, Say.from("asked")));
        }
        String r = s.faultOhm() > 0 ? two ? "(R + Rf / 2)" : "(R + Rf)" : "R";
        return Working.found(
                Say.what("impedance"),
                "Z",
                "√(" + r + "² + X²)",
                Math.hypot(s.ohm() + own, s.reactanceOhm()),
                Unit.OHM,
                inputs);
    }

    /** A resistance or reactance, piece by piece from the source where these are all. */
    private static Working along(
            AcFaultSum s, String word, String symbol, double ohm, ToDoubleFunction<AcFaultSum.Piece> of) {
        List<Working> pieces = new ArrayList<>();
        List<String> terms = new ArrayList<>();
        for (AcFaultSum.Piece p : s.way()) {
            double piece = of.applyAsDouble(p);
            if (piece != 0) {
                String name = symbol + (terms.size() + 1);
                terms.add(name);
                pieces.add(Working.given(Say.what("piece", p.item()), name, piece, Unit.OHM, null));
            }
        }
        return Working.found(Say.what(word), symbol, String.join(" + ", terms), ohm, Unit.OHM, pieces);
    }
}
