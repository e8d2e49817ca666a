package orlop.standards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The greatest I²t that a device lets through until it has cleared a fault within 5 s, the time for which conductors
 * are reckoned to heat without losing any (IEC 60364-4-43 434.5.2). What takes longer is overload, not heat of a fault.
 *
 * <ul>
 *   <li>Fuses: along their slowest gates, times between two of them interpolated on logarithmic scales; beyond the last
 *       gate I²t stays what it is there. Families of which only the I²t of the case is printed: that.
 *   <li>Breakers: from the current at which they surely open at once. In alternating current the let-through of
 *       energy-limiting class 3 for the breaking capacity (EN 60898-1), the greatest where that is not known, or I² times
 *       the usual opening time, whichever is less. In direct current nothing is known below 0.1 s: no figure.
 * </ul>
 */
public final class FaultEnergy {
    private static final double LONGEST_S = 5;

    private final ProtectiveFamily family;
    private final double inA;
    private final List<Gate> gates;
    private final Optional<Characteristic> printed;

    private FaultEnergy(ProtectiveFamily family, double inA) {
        this.family = family;
        this.inA = inA;
        this.gates = gates(family, inA);
        this.printed = family.points().of(Characteristic.Kind.I2T_OPERATING_MAX, inA).stream()
                .max(Comparator.comparingDouble(p -> p.i2tA2s().orElse(0)));
    }

    /**
     * Of devices of one family and rating.
     *
     * @param inA rated current or setting, above 0
     */
    public static FaultEnergy of(ProtectiveFamily family, double inA) {
        Checks.positive(inA, "inA");
        return new FaultEnergy(family, inA);
    }

    /** A gate: at this current it has operated by this time. */
    private record Gate(double amps, double seconds, Characteristic point) {
        double energyA2s() {
            return amps * amps * seconds;
        }
    }

    /**
     * @param minA lowest fault current, at least 0
     * @param maxA highest fault current, finite, at least {@code minA}
     * @param dc direct current
     * @param breakingA the device's breaking capacity; 0 if it is not known
     * @return A²s, 0 if no fault is cleared within 5 s by what is known; none if nothing is known of such currents
     */
    public Optional<Sourced> greatestA2s(double minA, double maxA, boolean dc, double breakingA) {
        Checks.notNegative(maxA, "maxA");
        return switch (family.kind()) {
            case FUSE -> fuse(minA, maxA);
            case BREAKER, RESIDUAL_CURRENT -> breaker(maxA, dc, breakingA);
        };
    }

    private static List<Gate> gates(ProtectiveFamily family, double inA) {
        List<Gate> gates = new ArrayList<>();
        for (Characteristic p : family.points().of(Characteristic.Kind.GATE, inA)) {
            if (p.tMaxS().isPresent()
                    && (p.multiple().isPresent() || p.currentA().isPresent())) {
                double amps = p.multiple().isPresent()
                        ? inA * p.multiple().getAsDouble()
                        : p.currentA().getAsDouble();
                gates.add(new Gate(amps, p.tMaxS().getAsDouble(), p));
            }
        }
        gates.sort(Comparator.comparingDouble(Gate::amps));
        return gates;
    }

    // ---- fuses -----------------------------------------------------------------------------------------------

    private Optional<Sourced> fuse(double minA, double maxA) {
        boolean quick = !gates.isEmpty() && gates.get(gates.size() - 1).seconds() <= LONGEST_S;
        if (!quick) {
            return printed.map(p -> new Sourced(p.i2tA2s().orElseThrow(), p.provenance(), p.source()));
        }
        double most = Math.max(at(maxA), at(Math.min(minA, maxA)));
        for (Gate g : gates) {
            if (g.seconds() <= LONGEST_S && g.amps() >= minA && g.amps() <= maxA) {
                most = Math.max(most, g.energyA2s());
            }
        }
        Characteristic p = gates.get(gates.size() - 1).point();
        return Optional.of(new Sourced(most, p.provenance().weaker(Provenance.MEMORY), p.source()));
    }

    /** I²t of one current; 0 where it takes longer than 5 s or is slower than any gate. */
    private double at(double amps) {
        for (int k = 0; k + 1 < gates.size(); k++) {
            Gate a = gates.get(k);
            Gate b = gates.get(k + 1);
            if (amps >= a.amps() && amps < b.amps()) {
                double share = Math.log(amps / a.amps()) / Math.log(b.amps() / a.amps());
                double seconds = a.seconds() * Math.pow(b.seconds() / a.seconds(), share);
                return seconds <= LONGEST_S ? amps * amps * seconds : 0;
            }
        }
        Gate last = gates.get(gates.size() - 1);
        return amps >= last.amps() ? last.energyA2s() : 0;
    }

    // ---- breakers --------------------------------------------------------------------------------------------

    private Optional<Sourced> breaker(double maxA, boolean dc, double breakingA) {
        Optional<Gate> atOnce =
                gates.stream().filter(g -> g.seconds() <= 0.1).min(Comparator.comparingDouble(Gate::amps));
        if (atOnce.isPresent() && maxA < atOnce.get().amps()) {
            Characteristic p = atOnce.get().point();
            return Optional.of(new Sourced(0, p.provenance(), p.source()));
        }
        Optional<Characteristic> usual = family.points().of(Characteristic.Kind.TYPICAL_CLEARING, inA).stream()
                .filter(p -> p.tMaxS().isPresent())
                .findFirst();
        if (dc || usual.isEmpty()) {
            return Optional.empty();
        }
        double byTime = maxA * maxA * usual.get().tMaxS().orElseThrow();
        Comparator<Characteristic> byEnergy =
                Comparator.comparingDouble(p -> p.i2tA2s().orElseThrow());
        Optional<Characteristic> let = family.points().of(Characteristic.Kind.I2T_LET_THROUGH, inA).stream()
                .filter(p -> p.currentA().orElse(0) >= Math.max(maxA, breakingA))
                .min(breakingA > 0 ? byEnergy : byEnergy.reversed());
        Characteristic p = let.filter(l -> l.i2tA2s().orElseThrow() < byTime).orElse(usual.get());
        double least = let.map(l -> Math.min(byTime, l.i2tA2s().orElseThrow())).orElse(byTime);
        return Optional.of(new Sourced(least, p.provenance().weaker(Provenance.MEMORY), p.source()));
    }
}
