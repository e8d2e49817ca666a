package orlop.study.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.Quantity;
import orlop.drawing.Switching;
import orlop.drawing.Unit;
import orlop.network.Numbering;
import orlop.network.Resistances;
import orlop.standards.RuleSet;
import orlop.standards.RuleSets;
import orlop.study.linear.Complex;
import orlop.study.linear.Patterns;

/** All that holds of a drawing in every condition. Built once a study; not safe for several threads. */
public final class Plan {
    private static final String DEFAULT_RULES = "iec60364";

    private final Drawing drawing;
    private final RuleSet rules;
    private final Notes notes = new Notes();
    private final List<CableModel> cables;
    private final AmpacityTable ampacities;
    private final Map<String, ElectricalSystem> systems = new HashMap<>();
    private final Patterns patterns = new Patterns();
    private final IdentityHashMap<ElectricalSystem, Double> vitalDropPercent = new IdentityHashMap<>();
    private final IdentityHashMap<ElectricalSystem, Double> otherDropPercent = new IdentityHashMap<>();
    private final AcPlan alternating;
    private final Numbering numbering;
    private final @Nullable LoadModel[] loadOf; // this and what follows by component
    private final @Nullable SourceModel[] sourceOf;
    private final @Nullable SourceModel[] outputOf;
    private final ElectricalSystem[] systemOfPin;
    private final boolean[] dc; // by pin
    private final boolean[] ac;

    public Plan(Drawing drawing) {
        this.drawing = drawing;
        Optional<RuleSet> chosen = RuleSets.published().find(drawing.vessel().ruleSet());
        rules = chosen.orElseGet(() -> RuleSets.published().get(DEFAULT_RULES));
        if (chosen.isEmpty()) {
            notes.assumed("", "study.assumed.rule-set", rules.title());
        }
        numbering = new Numbering(drawing);
        alternating = new AcPlan(this, notes);
        ampacities = new AmpacityTable(rules);
        cables = new ArrayList<>(numbering.cableCount());
        for (int i = 0; i < numbering.cableCount(); i++) {
            Cable w = numbering.cable(i);
            noteLength(w);
            cables.add(cable(w, systemOf(w, numbering.fromPin(i))));
        }
        Sources making = new Sources(drawing.vessel().faultMethod(), notes);
        Chains chains = new Chains(numbering, drawing);
        loadOf = new LoadModel[numbering.componentCount()];
        sourceOf = new SourceModel[loadOf.length];
        outputOf = new SourceModel[loadOf.length];
        for (int i = 0; i < loadOf.length; i++) {
            component(i, numbering.component(i), making, chains);
        }
        NotedOnce.into(notes, this);
        systemOfPin = new ElectricalSystem[numbering.pinCount()];
        dc = new boolean[systemOfPin.length];
        ac = new boolean[systemOfPin.length];
        for (int pin = 0; pin < dc.length; pin++) {
            systemOfPin[pin] = system(numbering.systemOf(pin));
            dc[pin] = systemOfPin[pin].nature().isDc();
            ac[pin] = !dc[pin] && calculatesAc(systemOfPin[pin]);
        }
    }

    private void noteLength(Cable w) {
        boolean stated =
                w.measured().loopResistanceOhm() != null || w.measured().conductorResistanceOhm() != null;
        if (!stated && Resistances.lengthM(drawing, w) == null) {
            notes.assumed(w.id(), "study.assumed.no-length", w.id());
        }
    }

    private CableModel cable(Cable w, ElectricalSystem system) {
        Double length = Resistances.lengthM(drawing, w);
        Double own = w.construction().ambientC();
        double general = w.construction().engineSpace()
                ? drawing.vessel().engineSpaceC()
                : drawing.vessel().ambientC();
        return new CableModel(w, system, length == null ? 0 : length, own == null ? general : own, ampacities);
    }

    private ElectricalSystem systemOf(Cable w, int pin) {
        Component c = pin < 0
                ? drawing.components().get(w.from().component())
                : numbering.component(numbering.componentOf(pin));
        return c == null ? system("") : system(c.systemOf(w.from().terminal()));
    }

    /** The system of this id; one of no voltage if the drawing has none. */
    public ElectricalSystem system(String id) {
        ElectricalSystem known = systems.get(id);
        return known != null ? known : systems.computeIfAbsent(id, this::find);
    }

    private ElectricalSystem find(String id) {
        ElectricalSystem s = id.isEmpty() ? null : drawing.systems().get(id);
        return s == null ? ElectricalSystem.of(id.isEmpty() ? "?" : id, Nature.DC, 0) : s;
    }

    private void component(int number, Component c, Sources making, Chains chains) {
        ElectricalSystem first = system(c.systems().get(0));
        if (calculatesAc(first)) {
            alternating.component(c, first);
            loadOf[number] = alternating.load(c);
        } else if (c.particulars() instanceof Consumer load && first.nature().isDc()) {
            loadOf[number] = LoadModel.of(c, load, first, notes);
        } else if (c.particulars() instanceof orlop.drawing.Source
                && first.nature().isDc()) {
            SourceModel m = making.of(c, first, chains.lengthAt(c));
            if (m == null) {
                notes.notCalculated(
                        c.id(), "study.not-calculated.source", c.id(), c.kind().term());
            } else {
                sourceOf[number] = m;
                noteUnlimited(c, m);
            }
        }
        noteDiode(c);
        if (c.particulars() instanceof orlop.drawing.Conversion) {
            output(number, c, making);
            Converters.note(c, this);
        }
    }

    private void noteDiode(Component c) {
        Double dropV = null;
        if (c.particulars() instanceof Switching.DiodeIsolator d) {
            dropV = d.dropV();
        } else if (c.particulars() instanceof Switching.Diode d && d.resistanceOhm() == 0) {
            dropV = d.dropV();
        }
        if (dropV != null) {
            notes.assumed(c.id(), "study.assumed.diode", c.id(), new Quantity(dropV, Unit.VOLT));
        }
    }

    private void noteUnlimited(Component c, SourceModel m) {
        SourceModel.Thevenin t = m.strongest();
        if (t.emfV() > 0 && t.ohm() == 0 && !t.isLimited()) {
            notes.notCalculated(c.id(), "study.not-calculated.fault-unlimited", c.id());
        }
    }

    private void output(int number, Component c, Sources making) {
        boolean charger = c.kind() == orlop.drawing.Kind.INVERTER_CHARGER;
        ElectricalSystem out = system(c.systemOf(charger ? "1" : "2"));
        ElectricalSystem second = system(c.systemOf("2"));
        if (calculatesAc(second) && system(c.systemOf("1")).nature().isDc()) {
            alternating.inverter(c, second);
        }
        if (out.nature().isDc()) {
            SourceModel m = making.output(c, out);
            if (m != null) {
                outputOf[number] = m;
            } else {
                notes.notCalculated(
                        c.id(),
                        "study.not-calculated.converter",
                        c.id(),
                        c.kind().term());
            }
        }
    }

    /** The numbers that the networks of all conditions share. */
    public Numbering numbering() {
        return numbering;
    }

    /** The system of a pin. */
    public ElectricalSystem system(int pin) {
        return systemOfPin[pin];
    }

    /** Whether a pin lies in a direct-current system. */
    public boolean isDc(int pin) {
        return dc[pin];
    }

    /** Whether a pin lies in an alternating-current system that is calculated. */
    public boolean isAc(int pin) {
        return ac[pin];
    }

    /** The load that a pin belongs to; null where that is none that is calculated. */
    public @Nullable LoadModel load(int pin) {
        return loadOf[numbering.componentOf(pin)];
    }

    /** The direct-current source that a pin belongs to; null where that is none that is calculated. */
    public @Nullable SourceModel source(int pin) {
        return sourceOf[numbering.componentOf(pin)];
    }

    /** The direct-current output of the converter that a pin belongs to; null where it has none. */
    public @Nullable SourceModel output(int pin) {
        return outputOf[numbering.componentOf(pin)];
    }

    public Drawing drawing() {
        return drawing;
    }

    /** The vessel's rule set; IEC 60364, with a remark, while none is chosen. */
    public RuleSet rules() {
        return rules;
    }

    /** The structures of all equations solved for this drawing. */
    public Patterns patterns() {
        return patterns;
    }

    public Notes notes() {
        return notes;
    }

    /** All cables in the order of the drawing. */
    public List<CableModel> cables() {
        return cables;
    }

    /** The same cable with so many runs side by side, 1 to 20. */
    public CableModel withRuns(int cable, int runs) {
        return cable(
                cables.get(cable).cable().withParallel(runs), cables.get(cable).system());
    }

    /** Null where the component is no alternating-current source that is calculated. */
    public @Nullable AcSourceModel acSource(Component c) {
        return alternating.source(c);
    }

    /** The voltage factor c of the highest fault current in a system of alternating current. */
    public double faultFactor(ElectricalSystem system) {
        return AcSources.mostFactor(system);
    }

    /** What a three-phase motor is to a fault, one phase of it; null for all else. */
    public @Nullable Complex motorOhm(Component c) {
        ElectricalSystem s = system(c.systems().get(0));
        return calculatesAc(s) ? Motors.ohm(c, s) : null;
    }

    /** Null where the component is no transformer that is calculated. */
    public @Nullable TransformerModel transformer(Component c) {
        return alternating.transformer(c);
    }

    /** What an inverter gives into a fault, in amperes of one phase; NaN where it is not known. */
    public double inverterFaultA(Component c) {
        return alternating.inverterFaultA(c);
    }

    /** Whether the system is one of alternating current and calculated. */
    public boolean calculatesAc(ElectricalSystem system) {
        return alternating.calculates(system);
    }

    /** Whether a three-phase system has loads or cables on single phases, so that it is calculated phase by phase. */
    public boolean hasUnequalPhases(ElectricalSystem system) {
        return alternating.hasUnequalPhases(system);
    }

    /** Whether any system is calculated phase by phase. */
    public boolean hasUnequalPhases() {
        return alternating.hasUnequalPhases();
    }

    /** The conductors of a cable in a system with unequal phases, a mask of {@link Wires}. */
    public int wires(Cable w) {
        return alternating.wires(w);
    }

    /** The conductors that a load of a system with unequal phases hangs on, a mask of {@link Wires}. */
    public int wires(Component c) {
        return alternating.wires(c);
    }

    /** The conductors that reach a pin of a system with unequal phases, a mask of {@link Wires}. */
    public int wiresAt(int pin) {
        return alternating.wiresAt(pin);
    }

    /** Nominal voltage across a load: of one between two phases, line to line. */
    public double nominalV(Component c) {
        ElectricalSystem s = system(c.systems().get(0));
        return hasUnequalPhases(s) ? Wires.nominalV(s, wires(c)) : phaseV(s);
    }

    /** Whether any alternating-current system is calculated. */
    public boolean calculatesAnyAc() {
        for (ElectricalSystem s : drawing.systems().values()) {
            if (calculatesAc(s)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the system is calculated at all. */
    public boolean calculates(ElectricalSystem system) {
        return system.nature().isDc() || calculatesAc(system);
    }

    /** Nominal voltage that drops are a share of: line to neutral in three-phase systems. */
    public static double phaseV(ElectricalSystem system) {
        return system.nature().isThreePhase() ? system.nominalV() / Math.sqrt(3) : system.nominalV();
    }

    /** How many equal phases are calculated as one. */
    public static int phases(ElectricalSystem system) {
        return system.nature().isThreePhase() ? 3 : 1;
    }

    /** Null where the component is no direct-current source that is calculated. */
    public @Nullable SourceModel source(Component c) {
        return sourceOf[numbering.numberOf(c)];
    }

    /** The direct-current output of a converter; null where it has none. */
    public @Nullable SourceModel output(Component c) {
        return outputOf[numbering.numberOf(c)];
    }

    /** The greatest drop that a load may have, in percent of the nominal voltage; null in a system of no voltage. */
    public @Nullable Double dropLimitPercent(ElectricalSystem system, boolean vital) {
        Double own = vital ? system.vitalDropPercent() : system.otherDropPercent();
        if (own != null) {
            return own;
        }
        if (!(system.nominalV() > 0)) {
            return null;
        }
        IdentityHashMap<ElectricalSystem, Double> known = vital ? vitalDropPercent : otherDropPercent;
        Double limit = known.get(system);
        if (limit == null) {
            limit = rules.dropPercent(system.nature().isDc(), system.nominalV(), vital)
                    .value();
            known.put(system, limit);
        }
        return limit;
    }

    /** Efficiency at its rated output of a converter into such a system, above 0 to 1. */
    public double efficiency(Component c, ElectricalSystem out) {
        return Converters.efficiency(c, out).full();
    }

    /** A length as a person reads it. */
    public static Quantity metres(double lengthM) {
        return new Quantity(lengthM, Unit.METRE);
    }
}
