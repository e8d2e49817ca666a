package orlop.findings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Consumer;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.standards.Conductors;
import orlop.standards.RuleLimit;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.GovernedBy;
import orlop.study.Results;

/** A load that gets too little voltage because the way to it is too thin or too long. */
final class DropRule implements Rule {
    private static final double COPPER_KG = 8.96e-3; // per metre and mm²

    @Override
    public String id() {
        return "drop-too-high";
    }

    @Override
    public List<Finding> check(Case c) {
        List<Finding> found = new ArrayList<>();
        for (ComponentResult worst : c.governing().components().values()) {
            Double drop = worst.dropFromSourcePercent();
            Double limit = worst.dropLimitPercent();
            if (drop != null && limit != null && drop > limit * (1 + 1e-9)) {
                found.add(finding(c, worst.id(), drop, limit));
            }
        }
        return found;
    }

    private Finding finding(Case c, String load, double drop, double limit) {
        List<String> conditions = new ArrayList<>();
        Results worst = c.governing();
        double most = Double.NEGATIVE_INFINITY;
        for (Results r : c.study().byCondition().values()) {
            ComponentResult k = r.components().get(load);
            Double here = k == null ? null : k.dropFromSourcePercent();
            if (here != null && here > limit) {
                conditions.add(r.condition());
                worst = here > most ? r : worst;
                most = Math.max(most, here);
            }
        }
        List<String> path = path(worst, load);
        String source = path.isEmpty() ? "" : path.get(0);
        Case.Draft d = c.draft(id(), Severity.DEFECT, Finding.Place.component(load))
                .says(
                        "findings.drop-too-high.why",
                        Case.percent(drop),
                        Case.percent(limit),
                        source,
                        c.named(load),
                        c.when(conditions))
                .in(conditions)
                .cure(cure(c, worst, path, load, drop - limit));
        clause(c, load, d);
        return d.done();
    }

    private static List<String> path(Results r, String load) {
        ComponentResult k = r.components().get(load);
        return k == null ? List.of() : k.feedingPath();
    }

    private static void clause(Case c, String load, Case.Draft d) {
        Component k = c.drawing().components().require(load);
        ElectricalSystem s = c.system(k.systems().get(0));
        boolean vital = k.particulars() instanceof Consumer l && l.vital();
        if (s == null || (vital ? s.vitalDropPercent() : s.otherDropPercent()) != null) {
            d.by("", "stated");
            return;
        }
        RuleLimit limit = c.rules().dropPercent(s.nature().isDc(), s.nominalV(), vital);
        d.by(limit);
    }

    /** The one cable of the path that cures it with least copper; where none does alone, what the sizing asks for. */
    private static @Nullable Cure cure(Case c, Results r, List<String> path, String load, double excessPercent) {
        Component k = c.drawing().components().require(load);
        ElectricalSystem s = c.system(k.systems().get(0));
        if (s == null || !s.nature().isDc()) {
            return together(r, path); // a reactance does not shrink with the area
        }
        double excessV = excessPercent / 100 * s.nominalV();
        String best = null;
        double bestArea = 0;
        double bestKg = Double.POSITIVE_INFINITY;
        for (String tag : path) {
            CableResult w = r.cables().get(tag);
            Double area = w == null ? null : alone(c, w, excessV);
            if (w != null && area != null && w.areaMm2() != null) {
                double kg = copperKg(w, area - w.areaMm2());
                if (kg < bestKg) {
                    best = tag;
                    bestArea = area;
                    bestKg = kg;
                }
            }
        }
        return best == null ? together(r, path) : setArea(best, bestArea, bestKg);
    }

    private static @Nullable Cure together(Results r, List<String> path) {
        String best = null;
        double bestArea = 0;
        double bestKg = 0;
        for (String tag : path) {
            CableResult w = r.cables().get(tag);
            Double area = w == null ? null : w.sizing().togetherAreaMm2();
            if (w != null && area != null && w.areaMm2() != null && area > w.areaMm2()) {
                double kg = copperKg(w, area - w.areaMm2());
                if (kg > bestKg) {
                    best = tag;
                    bestArea = area;
                    bestKg = kg;
                }
            }
        }
        return best == null ? null : setArea(best, bestArea, bestKg);
    }

    private static Cure setArea(String cable, double areaMm2, double kg) {
        Quantity copper = new Quantity(kg, Unit.KILOGRAM);
        return new Cure.SetArea(Message.of("findings.cure.area", cable, Case.area(areaMm2), copper), cable, areaMm2);
    }

    private static double copperKg(CableResult w, double extraMm2) {
        return extraMm2 * w.lengthM() * w.conductors().count() * w.parallel() * COPPER_KG;
    }

    /** The least standard area with which this cable alone would save that much; null if none would. */
    private static @Nullable Double alone(Case c, CableResult w, double excessV) {
        Double drop = w.dropV();
        Double area = w.areaMm2();
        var cable = c.drawing().cables().get(w.id());
        boolean stated = cable != null
                && (cable.measured().loopResistanceOhm() != null
                        || cable.measured().conductorResistanceOhm() != null);
        if (drop == null || area == null || stated || Math.abs(drop) <= excessV) {
            return null;
        }
        Double least = w.leastAreaMm2(); // found by solving anew, for a load may take more at more voltage
        if (w.governedBy() == GovernedBy.DROP && least != null && least > area) {
            return least;
        }
        double wanted = area * Math.abs(drop) / (Math.abs(drop) - excessV);
        for (double a : Conductors.published().standardAreasMm2()) {
            if (a >= wanted) {
                return a;
            }
        }
        return null;
    }
}
