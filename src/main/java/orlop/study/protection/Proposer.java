package orlop.study.protection;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.drawing.Source;
import orlop.standards.Proposal;
import orlop.standards.Proposals;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.Sourced;
import orlop.study.Gap;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Plan;
import orlop.study.model.Rating;

/** Chooses the device that would do at a place: the least standard rating that carries the design current. */
final class Proposer {
    private static final ProtectiveFamilies FAMILIES = ProtectiveFamilies.published();

    /** Share of its rating that a fuse carries without end: common practice, no source. */
    private static final double CONTINUOUS_SHARE = 0.8;

    /** Least share of a lead's ampacity to which its device is rated: common practice, no source. */
    private static final double SHARE_OF_LEAD = 0.75;

    /** A family further down the list is taken only if its rating follows the current this much more closely. */
    private static final double CLEARLY_LESS = 2;

    /** A design current below this is none, in A: nothing is known to draw on the cable. */
    private static final double NOTHING_DRAWS_A = 0.05;

    private final Plan plan;
    private final Surroundings around;
    private final IdentityHashMap<ElectricalSystem, Map<Double, Map<Integer, Optional<Proposal>>>> answers =
            new IdentityHashMap<>();
    private final GuardLevels levels;

    Proposer(Plan plan, Surroundings around) {
        this.plan = plan;
        this.around = around;
        levels = new GuardLevels(plan.rules());
    }

    /**
     * A device at a source itself. What its lead carries just now says little (a battery may be charged while another
     * one gives), so its rating follows the conductor.
     */
    Gap.@Nullable Proposal forLead(int cable, int pin, @Nullable Rating rating) {
        if (rating != null) {
            double fault = around.faultMaxA(pin);
            double duty = Math.max(around.designA(cable), SHARE_OF_LEAD * rating.amps());
            Gap.Proposal lead = least(plan.cables().get(cable).system(), duty, rating.amps(), orNone(fault));
            if (lead != null) {
                return lead;
            }
        }
        return forCable(cable, pin, rating);
    }

    /** A device at the end of a cable, where it lies at {@code pin}; null if none would do. */
    Gap.@Nullable Proposal forCable(int cable, int pin, @Nullable Rating rating) {
        CableModel w = plan.cables().get(cable);
        double design = around.designA(cable);
        double most = rating != null ? rating.amps() : 2 * Math.max(1, design);
        double fault = around.faultMaxA(pin);
        return among(w.system(), design, most, orNone(fault));
    }

    /**
     * A device in the place of another that has the right rating: the same rating, else the next lower one that carries
     * the design current, never a higher one.
     *
     * @param designA 0 where it is not known
     * @param ampacityA of the cable that it guards; infinite where it is not known
     */
    Gap.@Nullable Proposal replacement(
            ElectricalSystem system, double ratedA, double designA, double ampacityA, double faultA) {
        double limit = limitA(system, ratedA);
        double guarded = Math.min(ampacityA, 64 * ratedA);
        Gap.Proposal best = least(system, limit, guarded, faultA, limit);
        List<Double> lower = FAMILIES.all().stream()
                .flatMap(f -> f.ratingsA().stream())
                .filter(a -> a < limit && a >= Math.max(designA, limit / 2))
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
        for (int i = 0; i < lower.size() && best == null; i++) {
            best = least(system, lower.get(i), guarded, faultA, limit);
        }
        return best;
    }

    /** The greatest series fuse that the modules of a PV system stand is never passed. */
    private double limitA(ElectricalSystem system, double wantedA) {
        if (system.nature() != Nature.PV) {
            return wantedA;
        }
        double limit = wantedA;
        for (Component c : plan.drawing().components().values()) {
            if (c.particulars() instanceof Source.PvArray p
                    && p.seriesFuseA() != null
                    && c.systems().contains(system.id())) {
                limit = Math.min(limit, p.seriesFuseA());
            }
        }
        return limit;
    }

    /**
     * A device between what a cable carries and what it may carry. Where no load is known (a spare way, a load of no
     * stated power, a network without operating point) the least rating would be a wild guess: it follows the conductor.
     */
    Gap.@Nullable Proposal among(ElectricalSystem system, double designA, double ampacityA, double faultA) {
        if (designA < NOTHING_DRAWS_A) {
            for (double share = SHARE_OF_LEAD; share > 0.1; share -= 0.25) {
                Gap.Proposal follows = least(system, share * ampacityA, ampacityA, faultA);
                if (follows != null) {
                    return follows;
                }
            }
        }
        Gap.Proposal roomy = least(system, designA / CONTINUOUS_SHARE, ampacityA, faultA);
        return roomy != null ? roomy : least(system, designA, ampacityA, faultA);
    }

    private Gap.@Nullable Proposal least(ElectricalSystem system, double wantedA, double ampacityA, double faultA) {
        return least(system, wantedA, ampacityA, faultA, Double.MAX_VALUE);
    }

    private Gap.@Nullable Proposal least(
            ElectricalSystem system, double wantedA, double ampacityA, double faultA, double mostA) {
        if (Double.isInfinite(faultA)) {
            return null; // nothing can be shown to break it
        }
        double highestV = system.deviceVoltageV();
        if (!(highestV > 0) || !(ampacityA > 0)) {
            return null;
        }
        double least = Math.min(Double.MAX_VALUE, Math.max(0.1, wantedA)); // a share of an absurd current may overflow
        // no rule set permits more; each family is held to its own limit below
        double permitted = Math.min(Double.MAX_VALUE, 1.5 * ampacityA);
        double most = limitA(system, Math.min(permitted, mostA));
        if (least > most) {
            return null;
        }
        Optional<Proposal> best = answers(system, ampacityA)
                .computeIfAbsent(
                        question(least, most, faultA), k -> best(system, highestV, least, most, ampacityA, faultA));
        return best.isEmpty()
                ? null
                : new Gap.Proposal(
                        best.get().family().id(), best.get().ratingA(), breakingKa(best.get(), system, faultA));
    }

    /** What was proposed before for an ampacity in a system. */
    private Map<Integer, Optional<Proposal>> answers(ElectricalSystem system, double ampacityA) {
        return answers.computeIfAbsent(system, s -> new HashMap<>()).computeIfAbsent(ampacityA, a -> new HashMap<>());
    }

    /** The answer only depends on between which figures of the tables each number lies. */
    private static int question(double leastA, double mostA, double faultA) {
        int least = Tables.place(Tables.RATINGS_A, leastA);
        int most = Tables.place(Tables.RATINGS_A, Math.nextUp(mostA));
        return (least * 1_024 + most) * 1_024 + Tables.place(Tables.BREAKING_A, faultA);
    }

    private Optional<Proposal> best(
            ElectricalSystem system, double highestV, double least, double most, double ampacityA, double faultA) {
        Proposals all = system.nature() == Nature.PV
                ? FAMILIES.pvProposals(highestV, least, most, faultA)
                : FAMILIES.proposals(highestV, system.nature().isDc(), least, most, faultA);
        Proposal best = null;
        for (Proposal p : all.inOrder()) {
            Double limit = DeviceModel.greatestA(plan.rules(), ampacityA, Optional.of(p.family()));
            boolean guards = limit != null && p.ratingA() <= limit * (1 + 1e-9);
            if (guards && (best == null || p.ratingA() * CLEARLY_LESS < best.ratingA())) {
                best = p;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Every figure of the families' tables, ascending. */
    private static final class Tables {
        static final double[] RATINGS_A = FAMILIES.all().stream()
                .flatMap(f -> f.ratingsA().stream())
                .mapToDouble(Double::doubleValue)
                .sorted()
                .distinct()
                .toArray();
        static final double[] BREAKING_A = FAMILIES.all().stream()
                .flatMap(f -> Stream.of(
                        f.breakingA(true), f.breakingA(false), f.markableBreakingA(true), f.markableBreakingA(false)))
                .flatMap(Optional::stream)
                .mapToDouble(Sourced::value)
                .sorted()
                .distinct()
                .toArray();

        /** How many figures lie below a number. */
        static int place(double[] figures, double number) {
            int found = Arrays.binarySearch(figures, number);
            return found < 0 ? -found - 1 : found;
        }
    }

    private static double orNone(double faultA) {
        return Double.isNaN(faultA) ? 0 : faultA;
    }

    private static double breakingKa(Proposal p, ElectricalSystem system, double faultA) {
        double own = p.family()
                .breakingA(system.nature().isDc())
                .map(s -> s.value() / 1_000)
                .orElse(0.0);
        return Math.max(own, Math.ceil(faultA / 1_000));
    }

    /** Least ampacity that the proposed device would guard; without one, that of one rated as the cable is used. */
    double guardsFromA(Gap.@Nullable Proposal p, int cable, @Nullable Rating weakest) {
        double most = weakest == null ? Double.MAX_VALUE : weakest.amps();
        if (p == null) {
            return Math.min(most, Math.max(around.designA(cable), 0.1));
        }
        return Math.min(most, levels.leastAmpacityA(FAMILIES.find(p.family()), p.ratingA()));
    }
}
