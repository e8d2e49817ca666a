package orlop.study;

import org.jspecify.annotations.Nullable;

/**
 * What holds for one conductor, L1 to L3 or N, of a three-phase system whose phases differ. What does not apply is null.
 *
 * @param voltageV of a line against the neutral at the same place, where no neutral is against the middle of the three
 *     lines; of the neutral against the star point of the source
 * @param angleDeg of that voltage
 * @param currentA with the sign of the active power where there is a voltage
 * @param dropV along a cable: difference of the voltages' magnitudes at its ends
 */
public record PhaseResult(
        @Nullable Double voltageV,
        @Nullable Double angleDeg,
        @Nullable Double currentA,
        @Nullable Double dropV) {}
