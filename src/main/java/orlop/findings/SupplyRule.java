package orlop.findings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Kind;
import orlop.drawing.Nature;
import orlop.drawing.Quantity;
import orlop.drawing.RefitStatus;
import orlop.drawing.Source;
import orlop.drawing.Unit;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.PhaseResult;
import orlop.study.Results;
import orlop.study.TerminalResult;

/**
 * A source or converter of which more is asked than it is rated for: generator, shore, inverter, transformer, frequency
 * converter. Of three phases the most loaded counts: its share is a third of the rated power. What limits itself, a
 * charger for one, is told by the study where it can hold its voltage no more.
 */
final class SupplyRule implements Rule {
    /**
     * @param terminal the one that is looked at
     * @param rating of all phases together where it is a power
     */
    private record Limit(String terminal, double rating, Unit unit) {}

    @Override
    public String id() {
        return "supply-above-rating";
    }

    @Override
    public List<Finding> check(Case c) {
        List<Finding> found = new ArrayList<>();
        for (Component k : c.drawing().components().values()) {
            Limit limit = k.refit() == RefitStatus.TO_BE_REMOVED ? null : limit(k);
            if (limit != null) {
                look(c, k, limit, false, found);
            }
            if (k.particulars() instanceof Conversion.InverterCharger i && i.transferA() != null) {
                look(c, k, new Limit("2", i.transferA(), Unit.AMPERE), true, found);
            }
        }
        return found;
    }

    private static @Nullable Limit limit(Component k) {
        if (k.particulars() instanceof Source.Generator g && g.ratedKva() != null) {
            return new Limit("1", g.ratedKva() * 1_000, Unit.VOLT_AMPERE);
        }
        if (k.particulars() instanceof Source.ShorePedestal p && p.ratingA() != null) {
            return new Limit("1", p.ratingA(), Unit.AMPERE);
        }
        if (k.particulars() instanceof Source.ShoreInlet p && p.ratingA() != null) {
            return new Limit("1", p.ratingA(), Unit.AMPERE);
        }
        if (k.particulars() instanceof Conversion.Inverter i && i.ratedVa() != null) {
            return new Limit("2", i.ratedVa(), Unit.VOLT_AMPERE);
        }
        if (k.particulars() instanceof Conversion.InverterCharger i && i.ratedVa() != null) {
            return new Limit("2", i.ratedVa(), Unit.VOLT_AMPERE);
        }
        if (k.particulars() instanceof Conversion.FrequencyConverter f && f.ratedVa() != null) {
            return new Limit("2", f.ratedVa(), Unit.VOLT_AMPERE);
        }
        return k.particulars() instanceof Conversion.Transformer t && t.ratedKva() != null
                ? new Limit("2", t.ratedKva() * 1_000, Unit.VOLT_AMPERE)
                : null;
    }

    private void look(Case c, Component k, Limit limit, boolean through, List<Finding> found) {
        List<String> conditions = new ArrayList<>();
        double most = 0;
        for (Results r : c.study().byCondition().values()) {
            double asked = through ? passedA(c, r, k) : asked(c, r, k, limit);
            if (RatingRules.exceeds(asked, limit.rating())) {
                conditions.add(r.condition());
                most = Math.max(most, asked);
            }
        }
        if (!conditions.isEmpty()) {
            found.add(c.draft(id(), Severity.DEFECT, Finding.Place.component(k.id()))
                    .says(
                            through ? "findings.supply-above-rating.through" : "findings.supply-above-rating.why",
                            c.named(k.id()),
                            new Quantity(limit.rating(), limit.unit()),
                            new Quantity(most, limit.unit()),
                            c.when(conditions))
                    .by("", "common practice")
                    .in(conditions)
                    .done());
        }
    }

    private static double asked(Case c, Results r, Component k, Limit limit) {
        ComponentResult result = r.components().get(k.id());
        double most = 0;
        for (TerminalResult t : result == null ? List.<TerminalResult>of() : result.terminals()) {
            if (t.id().equals(limit.terminal())) {
                most = limit.unit() == Unit.AMPERE ? amps(t) : voltAmperes(c, k, t);
            }
        }
        return most;
    }

    private static double amps(TerminalResult t) {
        Double amps = t.currentA();
        return amps == null ? 0 : Math.abs(amps);
    }

    /** Apparent power; of three phases three times that of the most loaded one. */
    private static double voltAmperes(Case c, Component k, TerminalResult t) {
        ElectricalSystem s = c.system(t.system());
        boolean three = s != null && s.nature() != Nature.AC1 && !s.nature().isDc() && phasesOf(k, t) > 1;
        Double volts = t.voltageV();
        double most = volts == null ? 0 : volts * amps(t);
        for (var e : t.phases().entrySet()) {
            PhaseResult p = e.getValue();
            if (!e.getKey().equals("N") && p.voltageV() != null && p.currentA() != null) {
                most = Math.max(most, p.voltageV() * Math.abs(p.currentA()));
            }
        }
        return three ? 3 * most : most;
    }

    /** A transformer, or an inverter, on one phase of a three-phase board has its whole rating in that phase. */
    private static int phasesOf(Component k, TerminalResult t) {
        long lines = t.phases().keySet().stream().filter(p -> !p.equals("N")).count();
        return lines == 1 && k.kind() != Kind.GENERATOR ? 1 : 3;
    }

    /** What an inverter passes through: the current of the lines at its output while its input feeds them. */
    private static double passedA(Case c, Results r, Component k) {
        ComponentResult own = r.components().get(k.id());
        boolean inverts =
                own != null && own.terminals().stream().anyMatch(t -> t.id().equals("2") && t.currentA() != null);
        double sum = 0;
        for (Cable w : c.drawing().cables().values()) {
            boolean out = (w.from().component().equals(k.id())
                            && w.from().terminal().equals("2"))
                    || (w.to().component().equals(k.id()) && w.to().terminal().equals("2"));
            CableResult result = out && !inverts ? r.cables().get(w.id()) : null;
            Double amps = result == null ? null : result.currentA();
            sum += amps == null ? 0 : Math.abs(amps);
        }
        return sum;
    }
}
