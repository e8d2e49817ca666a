package orlop.study;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Conductors;
import orlop.drawing.TerminalRef;

/**
 * What holds for a cable.
 *
 * @param id its tag
 * @param from terminal at which it starts
 * @param to terminal at which it ends
 * @param system id of its system
 * @param live whether a source feeds it in this condition
 * @param lengthM one-way length used; 0 with a remark where none is known
 * @param areaMm2 area calculated with: the installed one, or the least one where it is {@code auto}; null if none fits
 * @param auto whether Orlop chose the area
 * @param conductors the conductors, typed or by the system's nature
 * @param parallel runs side by side
 * @param leastAreaMm2 least standard area with which it would do in every condition, all other cables as they are: for
 *     its current, its device, strength, the heat of a fault and the drop to every load behind it; where Orlop chose the
 *     area, that area. Null if none would: {@code governedBy} is {@code NOTHING_FITS} where none carries the current or
 *     is guarded by the device, {@code DROP} where no area of this cable alone brings a load behind it within its limit
 * @param governedBy what asks for that area
 * @param governingCondition id of the condition that asks for it; null if there is only one or if it is the same in all
 * @param currentA positive from {@code from} to {@code to}; null where it is dead
 * @param designCurrentA current that it is sized for, never below the rated current of a single load behind it
 * @param ampacityA what it may carry with all factors, all runs; null if the tables have no value
 * @param ampacityFromMemory whether that figure rests on a value from memory
 * @param conductorC conductor temperature calculated with; null where it is dead
 * @param dropV along the cable, the return included; in alternating current the difference of the voltages' magnitudes,
 *     line to neutral; null where it is dead or its length is not known
 * @param dropPercent of the system's nominal voltage, line to neutral in three-phase systems
 * @param dropFromSourcePercent to its far end, the one that its current flows to, of the system's nominal voltage: the
 *     greatest over the sources that deliver current to it, so from the one with the highest voltage; never negative;
 *     null where it is dead or a cable of unknown length lies on the way
 * @param lengthFromSourceM to that end, from that source, on the shortest way along which current flows; null as above
 * @param lossW heat in all its conductors
 * @param faultFrom prospective fault currents at {@code from}
 * @param faultTo prospective fault currents at {@code to}
 * @param protectedBy tags of the devices that guard it, nearest first
 * @param sizing what the search for areas says besides
 * @param phases by name, L1 to N, where the phases of a three-phase system differ; else empty. The plain figures are
 *     then those of the worst phase
 */
public record CableResult(
        String id,
        TerminalRef from,
        TerminalRef to,
        String system,
        boolean live,
        double lengthM,
        @Nullable Double areaMm2,
        boolean auto,
        Conductors conductors,
        int parallel,
        @Nullable Double leastAreaMm2,
        @Nullable GovernedBy governedBy,
        @Nullable String governingCondition,
        @Nullable Double currentA,
        @Nullable Double designCurrentA,
        @Nullable Double ampacityA,
        boolean ampacityFromMemory,
        @Nullable Double conductorC,
        @Nullable Double dropV,
        @Nullable Double dropPercent,
        @Nullable Double dropFromSourcePercent,
        @Nullable Double lengthFromSourceM,
        @Nullable Double lossW,
        FaultRange faultFrom,
        FaultRange faultTo,
        List<String> protectedBy,
        CableSizing sizing,
        Map<String, PhaseResult> phases) {
    public CableResult {
        protectedBy = List.copyOf(protectedBy);
        phases = Kept.copy(phases);
    }

    /** One whose phases do not differ. */
    public CableResult(
            String id,
            TerminalRef from,
            TerminalRef to,
            String system,
            boolean live,
            double lengthM,
            @Nullable Double areaMm2,
            boolean auto,
            Conductors conductors,
            int parallel,
            @Nullable Double leastAreaMm2,
            @Nullable GovernedBy governedBy,
            @Nullable String governingCondition,
            @Nullable Double currentA,
            @Nullable Double designCurrentA,
            @Nullable Double ampacityA,
            boolean ampacityFromMemory,
            @Nullable Double conductorC,
            @Nullable Double dropV,
            @Nullable Double dropPercent,
            @Nullable Double dropFromSourcePercent,
            @Nullable Double lengthFromSourceM,
            @Nullable Double lossW,
            FaultRange faultFrom,
            FaultRange faultTo,
            List<String> protectedBy,
            CableSizing sizing) {
        this(
                id,
                from,
                to,
                system,
                live,
                lengthM,
                areaMm2,
                auto,
                conductors,
                parallel,
                leastAreaMm2,
                governedBy,
                governingCondition,
                currentA,
                designCurrentA,
                ampacityA,
                ampacityFromMemory,
                conductorC,
                dropV,
                dropPercent,
                dropFromSourcePercent,
                lengthFromSourceM,
                lossW,
                faultFrom,
                faultTo,
                protectedBy,
                sizing,
                Map.of());
    }
}
