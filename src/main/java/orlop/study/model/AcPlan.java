package orlop.study.model;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Conductors;
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
    private final Set<String> unbalanced = new HashSet<>();
    private final Map<String, LoadModel> loads = new HashMap<>();
    private final Map<String, AcSourceModel> sources = new HashMap<>();
    private final Map<String, Double> inverterFaultA = new HashMap<>();

    AcPlan(Plan plan, Notes notes) {
        this.plan = plan;
        this.notes = notes;
        Drawing drawing = plan.drawing();
        makingLoads = new AcLoads(notes);
        makingSources = new AcSources(drawing.vessel().faultMethod(), notes);
        for (Component c : drawing.components().values()) {
            boolean single = c.particulars() instanceof Consumer k && k.phase() != Phase.ALL;
            if (single && c.refit() != RefitStatus.TO_BE_REMOVED) {
                unbalanced(c.id(), plan.system(c.systems().get(0)));
            }
        }
        for (Cable w : drawing.cables().values()) {
            Component from = drawing.components().get(w.from().component());
            if (from != null && w.refit() != RefitStatus.TO_BE_REMOVED && isOfOnePhase(w)) {
                unbalanced(w.id(), plan.system(from.systemOf(w.from().terminal())));
            }
        }
    }

    private static boolean isOfOnePhase(Cable w) {
        return w.conductors() == Conductors.L_N
                || w.conductors() == Conductors.L_N_PE
                || w.conductors() == Conductors.TWO_WIRE;
    }

    private void unbalanced(String item, ElectricalSystem system) {
        if (system.nature().isThreePhase() && unbalanced.add(system.id())) {
            notes.notCalculated(item, "study.not-calculated.unbalanced", system.id(), item);
        }
    }

    boolean calculates(ElectricalSystem system) {
        return !system.nature().isDc() && system.nominalV() > 0 && !unbalanced.contains(system.id());
    }

    void component(Component c, ElectricalSystem system) {
        double phaseV = Plan.phaseV(system);
        if (c.particulars() instanceof Consumer load) {
            loads.put(c.id(), makingLoads.of(c, load, phaseV, Plan.phases(system)));
        } else if (c.particulars() instanceof Source && !passesTheShoreOn(c)) {
            AcSourceModel m = makingSources.of(c, phaseV, Plan.phases(system));
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

    /** Transformers and frequency converters join two alternating-current systems, which is not calculated yet. */
    private void noteConversion(Component c) {
        boolean both = c.particulars() instanceof Conversion
                && c.systems().size() > 1
                && c.systems().stream().noneMatch(s -> plan.system(s).nature().isDc());
        if (both) {
            notes.notCalculated(
                    c.id(),
                    "study.not-calculated.ac-converter",
                    c.id(),
                    c.kind().term());
        }
    }

    /** What an inverter gives into a fault: as stated, else twice its rating; NaN where neither is known. */
    void inverter(Component c, ElectricalSystem out) {
        Double stated = c.particulars() instanceof Conversion.Inverter k
                ? k.faultA()
                : c.particulars() instanceof Conversion.InverterCharger k ? k.faultA() : null;
        Double rated = c.particulars() instanceof Conversion.Inverter k
                ? k.ratedVa()
                : c.particulars() instanceof Conversion.InverterCharger k ? k.ratedVa() : null;
        double amps = stated != null ? stated : Double.NaN;
        if (stated == null && rated != null) {
            amps = INVERTER_FAULT * rated / (Plan.phaseV(out) * Plan.phases(out));
            notes.assumed(c.id(), "study.assumed.inverter-fault", c.id(), new Quantity(amps, Unit.AMPERE));
        } else if (stated == null) {
            notes.notCalculated(c.id(), "study.not-calculated.inverter-fault", c.id());
        }
        inverterFaultA.put(c.id(), amps);
        if (c.particulars() instanceof Conversion.InverterCharger) {
            notes.assumed(c.id(), "study.assumed.charger-factor", c.id());
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
