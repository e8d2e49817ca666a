package orlop.study.model;

import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.FaultMethod;
import orlop.drawing.Quantity;
import orlop.drawing.Source;
import orlop.drawing.Unit;
import orlop.study.linear.Complex;

/**
 * Turns sources of alternating current into models.
 *
 * <p>With the method {@code IEC} the electromotive force of a fault is c times the nominal voltage, c being 1.10 and
 * 0.90 (IEC 60909-0:2016, table 1, supplies of ±10 %; from memory), 1.05 and 0.95 where the system's highest voltage is
 * within 6 % of the nominal one; with {@code PLAIN} it is as in service.
 */
final class AcSources {
    private static final double C_MAX = 1.10;
    private static final double C_MIN = 0.90;
    private static final double NARROW_MAX = 1.05;
    private static final double NARROW_MIN = 0.95;

    /** X″d and X′d of small generators, percent; engineering estimates within the usual 8 to 15 and 12 to 25. */
    private static final double SUBTRANSIENT_PERCENT = 10;

    private static final double TRANSIENT_PERCENT = 20;

    /** With Z0 half of X″d, the lower end of what is usual: (2 + 0.5) / 3; engineering estimate. */
    private static final double ONE_LINE = 2.5 / 3;

    /** What supported excitation holds, times the rated current; common practice, no source. */
    private static final double HELD = 3;

    /** Prospective current of a pontoon's socket, single- and three-phase; engineering estimates. */
    private static final double[] SHORE_MAX_A = {3_000, 6_000};

    private static final double[] SHORE_MIN_A = {500, 1_000};

    private final boolean plain;
    private final Notes notes;
    private double most = 1; // factors of the system at work
    private double least = 1;

    AcSources(FaultMethod method, Notes notes) {
        plain = method == FaultMethod.PLAIN;
        this.notes = notes;
    }

    /**
     * Null for a kind that has no model.
     */
    @Nullable
    AcSourceModel of(Component c, ElectricalSystem system) {
        double phaseV = Plan.phaseV(system);
        int phases = Plan.phases(system);
        most = plain ? 1 : mostFactor(system);
        least = plain ? 1 : isNarrow(system) ? NARROW_MIN : C_MIN;
        if (c.particulars() instanceof Source.Supply s) {
            if (s.emfV() == null) {
                notes.assumed(c.id(), "study.assumed.supply-nominal", c.id(), new Quantity(phaseV, Unit.VOLT));
            }
            double emf = s.emfV() != null ? s.emfV() : phaseV;
            Complex z = new Complex(s.resistanceOhm(), s.reactanceOhm());
            double high = plain ? emf : Math.max(emf, most * phaseV);
            double low = plain ? emf : Math.min(emf, least * phaseV);
            return AcSourceModel.network(
                    at(emf, s.angleDeg(), z), at(high, s.angleDeg(), z), at(low, s.angleDeg(), z), false);
        }
        if (c.particulars() instanceof Source.Generator g) {
            return generator(c, g, phaseV, phases);
        }
        if (c.particulars() instanceof Source.ShorePedestal p) {
            return shore(c, p.faultMaxA(), p.faultMinA(), phaseV, phases);
        }
        return c.particulars() instanceof Source.ShoreInlet i
                ? shore(c, i.faultMaxA(), i.faultMinA(), phaseV, phases)
                : null;
    }

    /** Whether the system's highest voltage is within 6 % of the nominal one. */
    private static boolean isNarrow(ElectricalSystem s) {
        return s.highestV() > 0 && s.highestV() <= 1.06 * s.nominalV() * (1 + 1e-9);
    }

    /** c for the highest current. */
    static double mostFactor(ElectricalSystem s) {
        return isNarrow(s) ? NARROW_MAX : C_MAX;
    }

    private static AcSourceModel.Thevenin at(double emf, double angleDeg, Complex z) {
        return new AcSourceModel.Thevenin(Complex.polar(emf, angleDeg), z);
    }

    private double highV(double phaseV) {
        return most * phaseV;
    }

    private double lowV(double phaseV) {
        return least * phaseV;
    }

    /** Its regulator holds the terminal voltage in service; a fault meets X″d, later X′d. */
    private AcSourceModel generator(Component c, Source.Generator g, double phaseV, int phases) {
        AcSourceModel.Thevenin held = at(phaseV, 0, Complex.ZERO);
        notes.assumed(c.id(), "study.assumed.generator-held", c.id());
        if (g.ratedKva() == null) {
            notes.notCalculated(c.id(), "study.not-calculated.fault-unlimited", c.id());
            return new AcSourceModel(held, held, held, false, 1, holding(g), Double.NaN);
        }
        double rated = phases * phaseV * phaseV / (g.ratedKva() * 1_000);
        Double early = g.subtransientPercent();
        Double late = g.transientPercent();
        if (early == null || late == null) {
            notes.assumed(c.id(), "study.assumed.generator-reactance", c.id());
        }
        double first = early != null ? early : SUBTRANSIENT_PERCENT;
        double second = late != null ? late : Math.max(TRANSIENT_PERCENT, first);
        return new AcSourceModel(
                held,
                at(highV(phaseV), 0, new Complex(0, first / 100 * rated)),
                at(lowV(phaseV), 0, new Complex(0, second / 100 * rated)),
                false,
                plain || phases < 3 ? 1 : ONE_LINE,
                holding(g),
                HELD * g.ratedKva() * 1_000 / (phases * phaseV));
    }

    private static AcSourceModel.Holding holding(Source.Generator g) {
        return switch (g.excitation()) {
            case SUPPORTED -> AcSourceModel.Holding.HELD;
            case SELF, CAPACITOR -> AcSourceModel.Holding.COLLAPSES;
            case UNKNOWN -> AcSourceModel.Holding.UNKNOWN;
        };
    }

    /**
     * Its impedance is c·U₀ over the prospective current. How much of it is reactance nobody knows: all of it for the
     * highest fault, none for the lowest and in service, which errs to the safe side with cables that are resistances.
     */
    private AcSourceModel shore(Component c, @Nullable Double maxA, @Nullable Double minA, double phaseV, int phases) {
        int row = phases == 3 ? 1 : 0;
        double strong = maxA != null ? maxA : minA != null ? Math.max(minA, SHORE_MAX_A[row]) : SHORE_MAX_A[row];
        double weakA = minA != null ? minA : maxA != null ? maxA : SHORE_MIN_A[row];
        if (maxA == null) {
            notes.assumed(
                    c.id(),
                    "study.assumed.shore",
                    c.id(),
                    new Quantity(strong, Unit.AMPERE),
                    new Quantity(weakA, Unit.AMPERE));
        }
        double high = highV(phaseV);
        double low = lowV(phaseV);
        Complex weak = new Complex(low / weakA, 0);
        return AcSourceModel.network(
                at(phaseV, 0, weak), at(high, 0, new Complex(0, high / strong)), at(low, 0, weak), true);
    }
}
