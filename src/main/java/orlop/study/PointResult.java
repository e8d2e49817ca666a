package orlop.study;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.network.ReadLater;

/**
 * What holds at a point of the network: one or more terminals joined without impedance.
 *
 * @param id the component that names the point: a bar before a junction before anything else
 * @param system id of its system
 * @param terminals all terminals of the point, {@code COMPONENT.n}, in the order of the drawing
 * @param voltageV in alternating current the r.m.s. value between line and neutral, of three-phase systems too; null where
 *     the point is dead
 * @param angleDeg phase angle; null for DC and where the point is dead
 * @param fault greatest and least prospective fault current of any kind
 * @param lengthFromSourceM length of the shortest path from a source; null where none feeds it
 * @param phases by name, L1 to N, where the phases of a three-phase system differ; else empty. The plain figures are
 *     then those of the worst phase
 * @param faults by kind, those that can be there; empty where nothing feeds the point
 */
public record PointResult(
        String id,
        String system,
        List<String> terminals,
        @Nullable Double voltageV,
        @Nullable Double angleDeg,
        FaultRange fault,
        @Nullable Double lengthFromSourceM,
        Map<String, PhaseResult> phases,
        Map<FaultKind, FaultResult> faults) {
    public PointResult {
        terminals = ReadLater.keep(terminals);
        phases = Kept.copy(phases);
        faults = Kept.copy(faults);
    }

    /** One whose phases do not differ. */
    public PointResult(
            String id,
            String system,
            List<String> terminals,
            @Nullable Double voltageV,
            @Nullable Double angleDeg,
            FaultRange fault,
            @Nullable Double lengthFromSourceM) {
        this(id, system, terminals, voltageV, angleDeg, fault, lengthFromSourceM, Map.of(), Map.of());
    }

    /** Whether a source feeds the point in this condition. */
    public boolean live() {
        return voltageV != null;
    }
}
