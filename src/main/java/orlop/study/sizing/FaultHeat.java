package orlop.study.sizing;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Protection;
import orlop.standards.Adiabatic;
import orlop.standards.AdiabaticFactor;
import orlop.standards.FaultEnergy;
import orlop.standards.ProtectiveFamily;
import orlop.standards.Sourced;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Plan;
import orlop.study.model.Rating;

/**
 * What the heat of a fault asks of cables: k²S² ≥ I²t of the device that clears it (IEC 60364-4-43 434.5.2), for faults
 * from the highest at the cable's near end to the lowest at its far end. All of the current is taken to flow in one run.
 */
public final class FaultHeat {
    private final Plan plan;
    private final Runs runs;
    private final IntToDoubleFunction maxA;
    private final IntToDoubleFunction minA;
    private final Map<Type, FaultEnergy> energies = new HashMap<>();

    /** What devices of a kind have in common; a published family is one object. */
    private record Type(ProtectiveFamily family, double inA) {
        @Override
        @SuppressWarnings("ReferenceEquality")
        public boolean equals(@Nullable Object o) {
            return o instanceof Type t && t.family == family && t.inA == inA;
        }

        @Override
        public int hashCode() {
            return 31 * family.id().hashCode() + Double.hashCode(inA);
        }
    }

    /**
     * @param maxA by pin, highest fault current of all conditions; NaN where not known
     * @param minA by pin, lowest fault current of all conditions; NaN where not known
     */
    public FaultHeat(Plan plan, Runs runs, IntToDoubleFunction maxA, IntToDoubleFunction minA) {
        this.plan = plan;
        this.runs = runs;
        this.maxA = maxA;
        this.minA = minA;
    }

    /**
     * Least standard area that bears it until a device opens; 0 where that is not known or nothing heats it.
     *
     * @param rating what the cable may carry; the device counts only if it guards that; null where not known
     */
    double leastAreaMm2(int cable, @Nullable Rating rating) {
        DeviceModel device = runs.clears(cable);
        Double ratingA = device == null ? null : device.ratingA();
        if (device == null
                || ratingA == null
                || !(ratingA > 0)
                || device.family().isEmpty()) {
            return 0; // a missing device, rating or type is said elsewhere
        }
        if (rating == null || !device.guards(plan.rules(), rating.amps())) {
            return 0; // another device is missing, and that is said elsewhere
        }
        double most = maxA.applyAsDouble(runs.nearPin(cable));
        if (!(most > 0) || Double.isInfinite(most)) {
            return 0;
        }
        double least = minA.applyAsDouble(runs.farPin(cable));
        CableModel w = plan.cables().get(cable);
        boolean dc = w.system().nature().isDc();
        double breakingA = device.breakingA() == null ? 0 : device.breakingA();
        Optional<Sourced> energy = energies.computeIfAbsent(
                        new Type(device.family().get(), ratingA), t -> FaultEnergy.of(t.family, t.inA))
                .greatestA2s(least >= 0 && least < most ? least : most, most, dc, breakingA);
        String id = device.component().id();
        Double stated = stated(device, most, breakingA);
        if (stated != null && (energy.isEmpty() || energy.get().value() > 0)) {
            return bearing(w, stated, id);
        }
        if (energy.isEmpty()) {
            plan.notes().assumed(id, "study.assumed.fault-heat-time", id);
            return 0;
        }
        return bearing(w, energy.get().value(), id);
    }

    /** What a breaker's maker states, which counts up to its breaking capacity; null where nothing is stated. */
    private static @Nullable Double stated(DeviceModel device, double mostA, double breakingA) {
        boolean breaks = mostA <= breakingA;
        return breaks && device.component().particulars() instanceof Protection.CircuitBreaker b
                ? b.letThroughA2s()
                : null;
    }

    private double bearing(CableModel w, double energyA2s, String device) {
        double insulationC = w.cable().construction().insulationC();
        for (double area : Series.areasMm2()) {
            Optional<AdiabaticFactor> k = Adiabatic.published().assumedForRating(insulationC, area);
            if (k.isEmpty()) {
                plan.notes()
                        .assumed(
                                w.cable().id(),
                                "study.assumed.fault-heat-insulation",
                                w.cable().id());
                return 0;
            }
            double factor = k.get().k().value();
            if (factor * factor * area * area >= energyA2s) {
                return energyA2s > 0 ? area : 0;
            }
        }
        String id = w.cable().id();
        plan.notes().assumed(id, "study.assumed.fault-heat-none", id, device);
        return 0;
    }
}
