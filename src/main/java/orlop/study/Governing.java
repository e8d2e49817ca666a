package orlop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Words;

/** Gathers each figure's worst over all conditions: greatest current and drop, lowest voltage, widest fault range. */
final class Governing {
    private final List<Results> all;

    private Governing(List<Results> all) {
        this.all = all;
    }

    static Results of(List<Results> all) {
        Governing g = new Governing(all);
        Set<Remark> remarks = new LinkedHashSet<>();
        boolean converged = true;
        double residual = 0;
        for (Results r : all) {
            remarks.addAll(r.remarks());
            converged &= r.converged();
            residual = Math.max(residual, r.residualA());
        }
        return new Results(
                Results.GOVERNING,
                Words.english().text("study.condition.governing"),
                converged,
                residual,
                g.merge(Results::points, Governing::point),
                g.merge(Results::cables, Governing::cable),
                g.merge(Results::components, Governing::component),
                new ArrayList<>(remarks));
    }

    private <T> Map<String, T> merge(Function<Results, Map<String, T>> part, BinaryOperator<T> worst) {
        if (all.size() == 1) {
            return part.apply(all.get(0));
        }
        Map<String, T> rows = mergedRows(part, worst);
        if (rows != null) {
            return rows;
        }
        Map<String, T> merged = new LinkedHashMap<>();
        for (Results r : all) {
            part.apply(r).forEach((id, value) -> merged.merge(id, value, worst));
        }
        return merged;
    }

    private <T> @Nullable Map<String, T> mergedRows(Function<Results, Map<String, T>> part, BinaryOperator<T> worst) {
        Rows<T> merged = null;
        for (Results r : all) {
            if (!(part.apply(r) instanceof Rows<T> rows)) {
                return null;
            }
            merged = merged == null ? rows : merged.merged(rows, worst);
            if (merged == null) {
                return null; // other switches, other points
            }
        }
        return merged;
    }

    /** The very one that is less: no new number is made. */
    private static @Nullable Double least(@Nullable Double a, @Nullable Double b) {
        return a == null ? b : b == null || Double.compare(a, b) <= 0 ? a : b;
    }

    /** The very one that is more. */
    private static @Nullable Double most(@Nullable Double a, @Nullable Double b) {
        return a == null ? b : b == null || Double.compare(a, b) >= 0 ? a : b;
    }

    /** The angle that belongs to the lower of two voltages, of equal ones the smaller angle. */
    private static @Nullable Double angle(
            @Nullable Double voltsA, @Nullable Double a, @Nullable Double voltsB, @Nullable Double b) {
        if (a == null || b == null || voltsA == null || voltsB == null) {
            return a == null ? b : a;
        }
        return voltsA < voltsB ? a : voltsB < voltsA ? b : (Double) Math.min(a, b);
    }

    private static @Nullable Double greatest(@Nullable Double a, @Nullable Double b) {
        return a == null ? b : b == null || Math.abs(a) >= Math.abs(b) ? a : b;
    }

    private static FaultRange fault(FaultRange a, FaultRange b) {
        if (a.equals(b)) {
            return a;
        }
        return new FaultRange(most(a.maxA(), b.maxA()), least(a.minA(), b.minA()), a.unlimited() || b.unlimited());
    }

    private static PointResult point(PointResult a, PointResult b) {
        return new PointResult(
                a.id(),
                a.system(),
                a.terminals().size() >= b.terminals().size() ? a.terminals() : b.terminals(),
                least(a.voltageV(), b.voltageV()),
                angle(a.voltageV(), a.angleDeg(), b.voltageV(), b.angleDeg()),
                fault(a.fault(), b.fault()),
                most(a.lengthFromSourceM(), b.lengthFromSourceM()),
                phases(a.phases(), b.phases()),
                faults(a.faults(), b.faults()));
    }

    private static Map<FaultKind, FaultResult> faults(Map<FaultKind, FaultResult> a, Map<FaultKind, FaultResult> b) {
        if (a.equals(b)) {
            return a;
        }
        Map<FaultKind, FaultResult> merged = new TreeMap<>(a);
        b.forEach((kind, q) -> merged.merge(
                kind,
                q,
                (x, y) -> new FaultResult(
                        most(x.maxA(), y.maxA()),
                        least(x.minA(), y.minA()),
                        most(x.peakA(), y.peakA()),
                        x.sustainedA() == null || y.sustainedA() == null
                                ? null
                                : least(x.sustainedA(), y.sustainedA()))));
        return merged;
    }

    /** Per conductor: lowest voltage of a line, greatest of the neutral, greatest current and drop. */
    private static Map<String, PhaseResult> phases(Map<String, PhaseResult> a, Map<String, PhaseResult> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.isEmpty() ? b : a;
        }
        Map<String, PhaseResult> merged = new LinkedHashMap<>(a);
        b.forEach((name, q) -> merged.merge(
                name,
                q,
                (x, y) -> new PhaseResult(
                        name.equals("N") ? most(x.voltageV(), y.voltageV()) : least(x.voltageV(), y.voltageV()),
                        name.equals("N")
                                ? angle(y.voltageV(), x.angleDeg(), x.voltageV(), y.angleDeg())
                                : angle(x.voltageV(), x.angleDeg(), y.voltageV(), y.angleDeg()),
                        greatest(x.currentA(), y.currentA()),
                        greatest(x.dropV(), y.dropV()))));
        return merged;
    }

    /** Current, temperature and what follows from them come from the condition with the greatest current. */
    private static CableResult cable(CableResult a, CableResult b) {
        CableResult busy = abs(a.currentA()) >= abs(b.currentA()) ? a : b;
        return new CableResult(
                a.id(),
                a.from(),
                a.to(),
                a.system(),
                a.live() || b.live(),
                a.lengthM(),
                a.areaMm2(),
                a.auto(),
                a.conductors(),
                a.parallel(),
                a.leastAreaMm2(),
                a.governedBy(),
                a.governingCondition(),
                busy.currentA(),
                most(a.designCurrentA(), b.designCurrentA()),
                a.ampacityA(),
                a.ampacityFromMemory(),
                most(a.conductorC(), b.conductorC()),
                greatest(a.dropV(), b.dropV()),
                greatest(a.dropPercent(), b.dropPercent()),
                most(a.dropFromSourcePercent(), b.dropFromSourcePercent()),
                most(a.lengthFromSourceM(), b.lengthFromSourceM()),
                most(a.lossW(), b.lossW()),
                fault(a.faultFrom(), b.faultFrom()),
                fault(a.faultTo(), b.faultTo()),
                a.protectedBy(),
                a.sizing(),
                phases(a.phases(), b.phases()));
    }

    private static double abs(@Nullable Double value) {
        return value == null ? -1 : Math.abs(value);
    }

    private static ComponentResult component(ComponentResult a, ComponentResult b) {
        double da = orLeast(a.dropFromSourcePercent());
        double db = orLeast(b.dropFromSourcePercent());
        boolean first = da > db || (da == db && a.live());
        return new ComponentResult(
                a.id(),
                a.kind(),
                a.live() || b.live(),
                terminals(a.terminals(), b.terminals()),
                most(a.dropFromSourcePercent(), b.dropFromSourcePercent()),
                a.dropLimitPercent(),
                first ? a.feedingPath() : b.feedingPath());
    }

    private static double orLeast(@Nullable Double value) {
        return value == null ? Double.NEGATIVE_INFINITY : value;
    }

    private static List<TerminalResult> terminals(List<TerminalResult> a, List<TerminalResult> b) {
        if (a.size() != b.size()) {
            return a.size() > b.size() ? a : b;
        }
        List<TerminalResult> merged = new ArrayList<>(a.size());
        ToDoubleFunction<TerminalResult> load = t -> abs(t.currentA());
        for (int i = 0; i < a.size(); i++) {
            TerminalResult p = a.get(i);
            TerminalResult q = b.get(i);
            TerminalResult busy = load.applyAsDouble(p) >= load.applyAsDouble(q) ? p : q;
            merged.add(new TerminalResult(
                    p.id(),
                    p.system(),
                    least(p.voltageV(), q.voltageV()),
                    angle(p.voltageV(), p.angleDeg(), q.voltageV(), q.angleDeg()),
                    busy.currentA(),
                    greatest(p.powerW(), q.powerW()),
                    phases(p.phases(), q.phases())));
        }
        return merged;
    }
}
