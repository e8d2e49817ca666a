package orlop.standards;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A family of protective devices as a standard defines it.
 *
 * @param id our own plain word, e.g. {@code iso8820-f}, {@code gg}, {@code mcb-c}
 * @param kind fuse, breaker or residual-current device
 * @param standard the standard and type
 * @param overloadProtection whether it protects a conductor against overload at all
 * @param ratings the standard rated currents, ascending, A
 * @param limits voltages, breaking capacities and loading; an absent one is not for that kind of current, or is declared
 *     by the device
 * @param points the time-current points
 * @param provenance of what the family is
 * @param source of what the family is
 */
public record ProtectiveFamily(
        String id,
        Kind kind,
        String standard,
        boolean overloadProtection,
        List<Sourced> ratings,
        Map<Limit, Sourced> limits,
        Characteristics points,
        Provenance provenance,
        String source) {
    /** What sort of device it is. */
    public enum Kind {
        FUSE,
        BREAKER,
        RESIDUAL_CURRENT;

        static Kind parse(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
        }
    }

    /** A limit of the family; {@code MARKED}: the most that single devices declare, which counts only if marked so. */
    public enum Limit {
        DC_VOLTAGE_V,
        DC_VOLTAGE_MARKED_V,
        DC_BREAKING_A,
        DC_BREAKING_MARKED_A,
        AC_VOLTAGE_V,
        AC_VOLTAGE_MARKED_V,
        AC_BREAKING_A,
        AC_BREAKING_MARKED_A,
        CONTINUOUS_LOAD_FRACTION;

        static Limit parse(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
        }
    }

    /** Keeps copies; refuses a family without ratings. */
    public ProtectiveFamily {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(provenance, "provenance");
        ratings = List.copyOf(ratings);
        limits = Map.copyOf(limits);
        if (ratings.isEmpty()) {
            throw new IllegalArgumentException("family " + id + " has no ratings");
        }
    }

    /** Greatest voltage of any device of the family, V; none if it is not for that current, or only if marked. */
    public Optional<Sourced> maxVoltageV(boolean dc) {
        return limit(dc ? Limit.DC_VOLTAGE_V : Limit.AC_VOLTAGE_V);
    }

    /** Greatest voltage that a device of the family can be marked with, V. */
    public Optional<Sourced> markableVoltageV(boolean dc) {
        return limit(dc ? Limit.DC_VOLTAGE_MARKED_V : Limit.AC_VOLTAGE_MARKED_V);
    }

    /** Breaking capacity of any device of the family, A; none if it is declared by the device. */
    public Optional<Sourced> breakingA(boolean dc) {
        return limit(dc ? Limit.DC_BREAKING_A : Limit.AC_BREAKING_A);
    }

    /** Greatest breaking capacity that a device of the family can be marked with, A. */
    public Optional<Sourced> markableBreakingA(boolean dc) {
        return limit(dc ? Limit.DC_BREAKING_MARKED_A : Limit.AC_BREAKING_MARKED_A);
    }

    /** Advised continuous load as a fraction of the rated current; none where no advice is known. */
    public Optional<Sourced> continuousLoadFraction() {
        return limit(Limit.CONTINUOUS_LOAD_FRACTION);
    }

    private Optional<Sourced> limit(Limit limit) {
        return Optional.ofNullable(limits.get(limit));
    }

    /** The standard rated currents, ascending, A. */
    public List<Double> ratingsA() {
        return ratings.stream().map(Sourced::value).toList();
    }

    /** The least standard rating not below a current, A. */
    public Optional<Sourced> leastRatingA(double atLeastA) {
        for (Sourced r : ratings) {
            if (r.value() >= atLeastA) {
                return Optional.of(r);
            }
        }
        return Optional.empty();
    }

    /** The conventional current that operates it, I2, as a multiple of its rated current; none where not known. */
    public Optional<Sourced> i2OverIn(double inA) {
        for (Characteristic p : points.of(Characteristic.Kind.OPERATE)) {
            if (p.holdsFor(inA)) {
                return Optional.of(new Sourced(p.multiple().orElseThrow(), p.provenance(), p.source()));
            }
        }
        return Optional.empty();
    }
}
