package orlop.study.model;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.Conversion;
import orlop.drawing.Drawing;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Link;
import orlop.drawing.Phase;
import orlop.drawing.Quantity;
import orlop.drawing.RefitStatus;
import orlop.drawing.Source;
import orlop.drawing.TerminalRef;
import orlop.drawing.Unit;

/** The alternating-current share of a {@link Plan}: which systems are calculated, their loads and sources. */
final class AcPlan {
    /** Fault current of an inverter over its rated current where it is not stated: engineering estimate. */
    private static final double INVERTER_FAULT = 2;

    private final Plan plan;
    private final Notes notes;
    private final AcLoads makingLoads;
    private final AcSources makingSources;
    private final Transformers makingTransformers;
    private final Set<String> unequal = new HashSet<>();
    private final @Nullable PhasePlan phases;
    private final Map<String, LoadModel> loads = new HashMap<>();
    private final Map<String, TransformerModel> transformers = new HashMap<>();
    private final Map<String, AcSourceModel> sources = new HashMap<>();
    private final Map<String, Double> inverterFaultA = new HashMap<>();

    AcPlan(Plan plan, Notes notes) {
        this.plan = plan;
        this.notes = notes;
        Drawing drawing = plan.drawing();
        makingLoads = new AcLoads(notes);
        makingTransformers = new Transformers(drawing.vessel().faultMethod(), notes);
        makingSources = new AcSources(drawing.vessel().faultMethod(), notes);
        boolean more = hasThreePhases(drawing);
        if (more) {
            findUnequal(drawing);
        }
        while (more) {
            more = false;
            for (Component c : drawing.components().values()) {
                more |= spread(c);
            }
        }
        phases = unequal.isEmpty() ? null : new PhasePlan(plan, unequal, notes);
    }

    private boolean hasThreePhases(Drawing drawing) {
        for (ElectricalSystem s : drawing.systems().values()) {
            if (s.nature().isThreePhase() && calculates(s)) {
                return true;
            }
        }
        return false;
    }

    /** Systems with a load or a cable on single phases. */
    private void findUnequal(Drawing drawing) {
        for (Component c : drawing.components().values()) {
            boolean single = c.particulars() instanceof Consumer k && k.phase() != Phase.ALL;
            if (single && c.refit() != RefitStatus.TO_BE_REMOVED) {
                unequal(plan.system(c.systems().get(0)));
            }
            boolean named = c.particulars() instanceof Conversion k && k.phase() != Phase.ALL;
            if (named && c.refit() != RefitStatus.TO_BE_REMOVED) {
                boolean transfer = c.kind() == Kind.INVERTER_CHARGER;
                unequal(plan.system(c.systemOf(transfer ? "3" : "1")));
            }
        }
        for (Cable w : drawing.cables().values()) {
            if (w.conductors() == null || !Wires.isPair(w.conductors()) || w.refit() == RefitStatus.TO_BE_REMOVED) {
                continue;
            }
            Component from = drawing.components().get(w.from().component());
            if (from != null) {
                unequal(plan.system(from.systemOf(w.from().terminal())));
            }
        }
    }

    /** A single-phase transformer on a three-phase system makes its phases unequal; one of three phases passes it on. */
    private boolean spread(Component c) {
        if (!(c.particulars() instanceof Conversion.Transformer) || c.systems().size() < 2) {
            return false;
        }
        ElectricalSystem first = plan.system(c.systems().get(0));
        ElectricalSystem second = plan.system(c.systems().get(1));
        int before = unequal.size();
        if (first.nature().isThreePhase()
                && !second.nature().isThreePhase()
                && !second.nature().isDc()) {
            unequal(first);
        } else if (unequal.contains(first.id()) || unequal.contains(second.id())) {
            unequal(first);
            unequal(second);
        }
        return unequal.size() > before;
    }

    private void unequal(ElectricalSystem system) {
        if (system.nature().isThreePhase() && calculates(system)) {
            unequal.add(system.id());
        }
    }

    boolean calculates(ElectricalSystem system) {
        return !system.nature().isDc() && system.nominalV() > 0;
    }

    boolean hasUnequalPhases(ElectricalSystem system) {
        return unequal.contains(system.id());
    }

    boolean hasUnequalPhases() {
        return phases != null;
    }

    /** What reaches a pin of a system with unequal phases. */
    int wiresAt(int pin) {
        return phases == null ? 0 : phases.at(pin);
    }

    int wires(Cable w) {
        return phases == null ? 0 : phases.cable(w.id());
    }

    int wires(Component c) {
        return phases == null ? 0 : phases.component(c.id());
    }

    void component(Component c, ElectricalSystem system) {
        double phaseV = Plan.phaseV(system);
        if (c.particulars() instanceof Consumer load) {
            int mask = wires(c);
            boolean one = hasUnequalPhases(system) && Wires.lines(mask) < 3;
            double volts = one ? Wires.nominalV(system, mask) : phaseV;
            loads.put(c.id(), makingLoads.of(c, load, volts, one ? 1 : Plan.phases(system)));
        } else if (c.particulars() instanceof Source && !passesTheShoreOn(c)) {
            AcSourceModel m = makingSources.of(c, system);
            if (m == null) {
                notes.notCalculated(
                        c.id(),
                        "study.not-calculated.ac-source",
                        c.id(),
                        c.kind().term());
            } else {
                sources.put(c.id(), m);
                noteUnlimited(c, m);
            }
        } else if (c.particulars() instanceof Conversion.Charger) {
            notes.assumed(c.id(), "study.assumed.charger-factor", c.id());
        }
        noteConversion(c);
    }

    /** Whether something is drawn at an inlet's terminal 2: then that is the shore, and its data count. */
    private boolean passesTheShoreOn(Component c) {
        if (c.kind() != Kind.SHORE_INLET) {
            return false;
        }
        TerminalRef ashore = new TerminalRef(c.id(), "2");
        for (Cable w : plan.drawing().cables().values()) {
            if (w.from().equals(ashore) || w.to().equals(ashore)) {
                return true;
            }
        }
        for (Link l : plan.drawing().links().values()) {
            if (l.from().equals(ashore) || l.to().equals(ashore)) {
                return true;
            }
        }
        return false;
    }

    private void noteUnlimited(Component c, AcSourceModel m) {
        boolean supply = c.particulars() instanceof Source.Supply;
        if (supply && m.strongest().z().magnitude() == 0) {
            notes.notCalculated(c.id(), "study.not-calculated.fault-unlimited", c.id());
        }
    }

    /** What joins two alternating-current systems. */
    private void noteConversion(Component c) {
        boolean both = c.particulars() instanceof Conversion
                && c.systems().size() > 1
                && c.systems().stream().noneMatch(s -> plan.system(s).nature().isDc());
        if (!both) {
            return;
        }
        ElectricalSystem second = plan.system(c.systems().get(1));
        if (c.particulars() instanceof Conversion.Transformer t) {
            TransformerModel m =
                    makingTransformers.of(c, t, plan.system(c.systems().get(0)), second);
            if (m != null) {
                transformers.put(c.id(), m);
            }
        } else if (convertsAlternating(c) && second.nominalV() > 0) {
            inverter(c, second);
            notes.assumed(c.id(), "study.assumed.charger-factor", c.id());
        } else {
            notes.notCalculated(
                    c.id(),
                    "study.not-calculated.ac-converter",
                    c.id(),
                    c.kind().term());
        }
    }

    /** Whether it makes one alternating current of another by way of a held voltage. */
    static boolean convertsAlternating(Component c) {
        return c.particulars() instanceof Conversion.FrequencyConverter
                || c.particulars() instanceof Conversion.PlainConverter;
    }

    @Nullable
    TransformerModel transformer(Component c) {
        return transformers.get(c.id());
    }

    /** What an inverter gives into a fault: as stated, else twice its rating; NaN where neither is known. */
    void inverter(Component c, ElectricalSystem out) {
        if (c.particulars() instanceof Conversion.PlainConverter p) {
            plain(c, p, out);
            return;
        }
        Double stated = c.particulars() instanceof Conversion.Inverter k
                ? k.faultA()
                : c.particulars() instanceof Conversion.InverterCharger k ? k.faultA() : null;
        Double rated = c.particulars() instanceof Conversion.Inverter k
                ? k.ratedVa()
                : c.particulars() instanceof Conversion.InverterCharger k
                        ? k.ratedVa()
                        : c.particulars() instanceof Conversion.FrequencyConverter k ? k.ratedVa() : null;
        double amps = stated != null ? stated : Double.NaN;
        if (stated == null && rated != null) {
            amps = INVERTER_FAULT * rated / (Plan.phaseV(out) * Plan.phases(out));
            boolean drive = c.particulars() instanceof Conversion.FrequencyConverter; // nobody can enter its figure
            String key = drive ? "study.assumed.drive-fault" : "study.assumed.inverter-fault";
            notes.assumed(c.id(), key, c.id(), new Quantity(amps, Unit.AMPERE));
        } else if (stated == null) {
            notes.notCalculated(c.id(), "study.not-calculated.inverter-fault", c.id());
        }
        inverterFaultA.put(c.id(), amps);
        if (c.particulars() instanceof Conversion.InverterCharger) {
            notes.assumed(c.id(), "study.assumed.charger-factor", c.id());
        }
    }

    /** One for what no trade kind fits is a voltage behind a resistance to a fault too. */
    private void plain(Component c, Conversion.PlainConverter p, ElectricalSystem out) {
        double volts = Converters.alternatingOutput(c, out).emf().magnitude();
        inverterFaultA.put(c.id(), volts / p.outputResistanceOhm());
        if (p.outputResistanceOhm() == 0) {
            notes.notCalculated(c.id(), "study.not-calculated.fault-unlimited", c.id());
        }
    }

    double inverterFaultA(Component c) {
        return inverterFaultA.getOrDefault(c.id(), Double.NaN);
    }

    @Nullable
    LoadModel load(Component c) {
        return loads.get(c.id());
    }

    @Nullable
    AcSourceModel source(Component c) {
        return sources.get(c.id());
    }
}
