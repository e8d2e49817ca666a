package orlop.study;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What holds at a terminal of a component.
 *
 * @param id name of the terminal
 * @param system id of its system
 * @param voltageV between line and neutral in alternating current, of a load between two phases line to line; null where
 *     it is dead
 * @param angleDeg null for DC and where it is dead
 * @param currentA of one phase, r.m.s., with the sign of the active power; positive out of a source, into a load; through an in-line device from 1 to 2
 * @param powerW active power of that current, of all phases together, same sign
 * @param phases by name, L1 to N, where the phases of a three-phase system differ; else empty. The plain figures are
 *     then those of the worst phase
 */
public record TerminalResult(
        String id,
        String system,
        @Nullable Double voltageV,
        @Nullable Double angleDeg,
        @Nullable Double currentA,
        @Nullable Double powerW,
        Map<String, PhaseResult> phases) {
    public TerminalResult {
        phases = Kept.copy(phases);
    }

    /** One whose phases do not differ. */
    public TerminalResult(
            String id,
            String system,
            @Nullable Double voltageV,
            @Nullable Double angleDeg,
            @Nullable Double currentA,
            @Nullable Double powerW) {
        this(id, system, voltageV, angleDeg, currentA, powerW, Map.of());
    }
}
