package orlop.study.fault;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Nature;
import orlop.network.Network;
import orlop.study.FaultKind;
import orlop.study.FaultResult;
import orlop.study.linear.Complex;
import orlop.study.model.AcSourceModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.Wires;

/**
 * Prospective fault currents of alternating-current networks, r.m.s., by kind (IEC 60909-0, initial symmetrical current;
 * c as in {@link AcSourceModel}). U₀ is line to neutral:
 *
 * <ul>
 *   <li>three-phase {@code U₀ / Z}, Z of one line;
 *   <li>two-phase {@code √3 U₀ / 2 Z};
 *   <li>line to neutral and line to earth {@code U₀ / Z}, Z of the loop of line and neutral or protective conductor,
 *       which with Z0 = Z + 3 Z of the return is the standard's {@code √3 c U / |Z1 + Z2 + Z0|}.
 * </ul>
 *
 * Highest with conductors at 20 °C, lowest at their insulation's rating; with {@code PLAIN} a stated conductor
 * temperature holds. Loads are left out. The neutral is taken to meet the protective conductor at each source, except in
 * systems said to be insulated.
 *
 * <p>An inverter gives no more than its limit. Alone it gives that, or less where the cables hold it back further; beside
 * other sources it adds its whole limit to the highest current and nothing to the lowest.
 */
public final class AcFaults {
    private static final double SQRT3 = Math.sqrt(3);

    private final Plan plan;
    private final Operation operation;
    private final Network network;
    private final double faultOhm;
    private final Map<AcLoop.Way, AcLoop> cold = new EnumMap<>(AcLoop.Way.class);
    private final Map<AcLoop.Way, AcLoop> hot = new EnumMap<>(AcLoop.Way.class);
    private final DrawnReturns returns;
    private final Sustained sustained;
    private final ThroughCurrents through;
    private final int[] pinOf; // by point

    /**
     * @param areaMm2 by cable
     * @param faultOhm resistance of the fault itself, 0 or more
     */
    public AcFaults(Plan plan, Operation operation, double[] areaMm2, double faultOhm, BooleanSupplier stale) {
        this.plan = plan;
        this.operation = operation;
        this.faultOhm = faultOhm;
        network = operation.network();
        boolean three =
                plan.drawing().systems().stream().anyMatch(s -> s.nature().isThreePhase());
        for (AcLoop.Way way : AcLoop.Way.values()) {
            if (plan.calculatesAnyAc() && (three || way != AcLoop.Way.LINES)) {
                if (stale.getAsBoolean()) {
                    throw new CancellationException("superseded");
                }
                cold.put(way, new AcLoop(plan, operation, way, true, areaMm2, cold));
                hot.put(way, new AcLoop(plan, operation, way, false, areaMm2, hot));
            }
        }
        returns = new DrawnReturns(network, plan.calculatesAnyAc());
        sustained = new Sustained(plan, operation);
        through = new ThroughCurrents(operation, cold);
        pinOf = new int[network.points().size()];
        for (int pin = network.pinCount() - 1; pin >= 0; pin--) {
            if (network.pointOf(pin) >= 0) {
                pinOf[network.pointOf(pin)] = pin;
            }
        }
    }

    /** What one kind of fault gives at a node; nothing for a kind that cannot be there, or where nothing feeds it. */
    public @Nullable FaultResult of(FaultKind kind, int node) {
        double most = node < 0 || !applies(kind, node) ? Double.NaN : amps(kind, node, true);
        if (Double.isNaN(most)) {
            return null;
        }
        double least = amps(kind, node, false);
        return new FaultResult(known(most), known(least), known(peakA(kind, node)), known(heldA(kind, node, least)));
    }

    private static @Nullable Double known(double value) {
        return Double.isFinite(value) ? value : null;
    }

    private boolean applies(FaultKind kind, int node) {
        ElectricalSystem s = plan.system(network.points().get(node).system());
        boolean byPhase = plan.hasUnequalPhases(s);
        int mask = byPhase ? plan.wiresAt(pinOf[node]) : 0;
        boolean three = s.nature().isThreePhase();
        return switch (kind) {
            case DC -> false;
            case THREE_PHASE -> three && (!byPhase || Wires.lines(mask) == 3);
            case TWO_PHASE -> three && (!byPhase || Wires.lines(mask) > 1);
            case LINE_NEUTRAL -> !s.nature().isDc() && s.nature() != Nature.AC3;
            case LINE_EARTH -> s.nature() == Nature.AC1 || s.nature() == Nature.AC3N;
        };
    }

    private @Nullable AcLoop loop(FaultKind kind, boolean highest) {
        AcLoop.Way way = switch (kind) {
            case LINE_NEUTRAL -> AcLoop.Way.NEUTRAL;
            case LINE_EARTH -> AcLoop.Way.PROTECTIVE;
            default -> AcLoop.Way.LINES;
        };
        return (highest ? cold : hot).get(way);
    }

    /** Impedance that the fault meets, without its own; of two lines, half of it. */
    private Complex ohm(AcLoop loop, FaultKind kind, int node) {
        int back = kind == FaultKind.LINE_NEUTRAL ? returns.of(node) : -1;
        Complex own = loop.ohm(node);
        int backNode = back < 0 ? -1 : operation.assembly().node(back);
        Complex drawn = backNode < 0 ? Complex.ZERO : loop.ohm(backNode);
        return drawn.isNaN() ? own : own.plus(drawn);
    }

    /** What the current of one kind of fault at a node comes of; null where there is none. */
    public @Nullable AcFaultSum sum(FaultKind kind, int node, boolean highest) {
        AcLoop loop = loop(kind, highest);
        if (node < 0 || loop == null || !applies(kind, node) || loop.volts(node).isNaN()) {
            return null;
        }
        Complex z = ohm(loop, kind, node);
        int root = loop.root(node);
        return new AcFaultSum(
                loop.volts(node).magnitude(),
                z.re(),
                z.im(),
                faultOhm,
                loop.limitA[root],
                !loop.strong[root],
                loop.way(pinOf[node], z));
    }

    private double amps(FaultKind kind, int node, boolean highest) {
        AcLoop loop = loop(kind, highest);
        if (loop == null || loop.volts(node).isNaN()) {
            return Double.NaN;
        }
        double volts = loop.volts(node).magnitude();
        boolean two = kind == FaultKind.TWO_PHASE;
        Complex z = ohm(loop, kind, node).plus(new Complex(two ? faultOhm / 2 : faultOhm, 0));
        double most = (two ? SQRT3 / 2 : 1) * volts / z.magnitude();
        double limit = loop.limitA[loop.root(node)];
        boolean alone = !loop.strong[loop.root(node)];
        return alone ? Math.min(limit, most) : highest ? most + limit : most;
    }

    /** κ √2 I with κ = 1.02 + 0.98 e^(−3 R/X) (IEC 60909-0); what inverters give has no such peak. */
    private double peakA(FaultKind kind, int node) {
        AcLoop loop = loop(kind, true);
        double amps = amps(kind, node, true);
        if (loop == null) {
            return Double.NaN;
        }
        Complex z = ohm(loop, kind, node).plus(new Complex(faultOhm, 0));
        double kappa = kappa(z.re(), z.im());
        double limit = loop.limitA[loop.root(node)];
        boolean alone = !loop.strong[loop.root(node)];
        return alone ? Math.sqrt(2) * amps : Math.sqrt(2) * (kappa * (amps - limit) + limit);
    }

    static double kappa(double ohm, double reactanceOhm) {
        return reactanceOhm == 0 ? 1.02 : 1.02 + 0.98 * Math.exp(-3 * ohm / Math.abs(reactanceOhm));
    }

    private double heldA(FaultKind kind, int node, double leastA) {
        AcLoop loop = loop(kind, false);
        return loop == null ? Double.NaN : Math.min(leastA, sustained.most(pinOf[node]));
    }

    /** Highest fault current of any kind at a node; NaN where nothing feeds it, infinite where nothing limits it. */
    public double maxA(int node) {
        return extreme(node, true);
    }

    /** Lowest fault current of any kind at a node; NaN where nothing feeds it, infinite where nothing limits it. */
    public double minA(int node) {
        return extreme(node, false);
    }

    /** Current of one kind of fault at a node; NaN where there is none. */
    public double ofKindA(FaultKind kind, int node, boolean highest) {
        return node < 0 || !applies(kind, node) ? Double.NaN : amps(kind, node, highest);
    }

    private double extreme(int node, boolean highest) {
        double found = Double.NaN;
        for (FaultKind kind : FaultKind.values()) {
            double here = ofKindA(kind, node, highest);
            boolean further = highest ? here > found : here < found;
            found = Double.isNaN(found) || further ? here : found;
        }
        return found;
    }

    /** Greatest current that passes a connection when a fault lies at one of its ends; NaN where not determined. */
    public double throughA(int connection) {
        return through.of(connection, this);
    }
}
