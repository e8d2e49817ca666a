package orlop.study.model;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Poles;
import orlop.drawing.Protection;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.ProtectiveFamily;
import orlop.standards.RuleSet;
import orlop.standards.Sourced;

/**
 * A device against overcurrent.
 *
 * @param component the device
 * @param ratingA rated current or setting; null if not known
 * @param family its family; empty if not known
 * @param breakingA breaking capacity, its own or its family's; null if not known
 * @param maxV greatest voltage, its own or its family's; null if not known
 */
public record DeviceModel(
        Component component,
        @Nullable Double ratingA,
        Optional<ProtectiveFamily> family,
        @Nullable Double breakingA,
        @Nullable Double maxV) {

    /** Null for what is no device against overcurrent, and for a device in the negative alone: it guards nothing. */
    public static @Nullable DeviceModel of(Component c, boolean dc) {
        if (c.particulars() instanceof Protection.Fuse f && f.poles() != Poles.NEGATIVE) {
            return make(c, f.ratingA(), f.family(), f.breakingKa(), f.maxV(), dc);
        }
        if (c.particulars() instanceof Protection.CircuitBreaker b && b.poles() != Poles.NEGATIVE) {
            Double set = b.settingA() != null ? b.settingA() : b.ratingA();
            return make(c, set, b.family(), b.breakingKa(), b.maxV(), dc);
        }
        if (c.particulars() instanceof Protection.ResidualCurrentDevice r && r.overcurrent()) {
            return make(c, r.ratingA(), r.family(), r.breakingKa(), null, dc);
        }
        return null;
    }

    private static DeviceModel make(
            Component c,
            @Nullable Double ratingA,
            String family,
            @Nullable Double breakingKa,
            @Nullable Double maxV,
            boolean dc) {
        Optional<ProtectiveFamily> known = ProtectiveFamilies.published().find(family);
        Double breaks = breakingKa != null
                ? (Double) (breakingKa * 1_000)
                : known.flatMap(f -> f.breakingA(dc)).map(Sourced::value).orElse(null);
        Double volts = maxV != null
                ? maxV
                : known.flatMap(f -> f.maxVoltageV(dc)).map(Sourced::value).orElse(null);
        return new DeviceModel(c, ratingA, known, breaks, volts);
    }

    /** Operating current over rated current where the family's is not known: common practice, no source. */
    private static final double USUAL_OPERATING = 1.6;

    /** Conventional operating current I2, at which it surely opens in its conventional time; null without a rating. */
    public @Nullable Double operatesAtA() {
        return ratingA == null ? null : (Double) (ratingA * operatesOver(ratingA));
    }

    private double operatesOver(double rating) {
        return family.flatMap(f -> f.i2OverIn(rating)).map(Sourced::value).orElse(USUAL_OPERATING);
    }

    /** Whether the family's own figure stands behind {@link #operatesAtA}. */
    public boolean operatingKnown() {
        return ratingA != null && family.flatMap(f -> f.i2OverIn(ratingA)).isPresent();
    }

    /** Whether it may stand in front of a conductor of this ampacity; what is not known passes here. */
    public boolean guards(RuleSet rules, double ampacityA) {
        return ratingA == null || guards(rules, ampacityA, family, ratingA);
    }

    /** As {@link #guards(RuleSet, double)}, for any device of a family and rating. */
    public static boolean guards(RuleSet rules, double ampacityA, Optional<ProtectiveFamily> family, double ratingA) {
        Double most = greatestA(rules, ampacityA, family);
        return most == null || ratingA <= most * (1 + 1e-9);
    }

    /**
     * Greatest rating in front of a conductor; null where the rule set gives no limit for the family.
     *
     * @param ampacityA above 0
     */
    public static @Nullable Double greatestA(RuleSet rules, double ampacityA, Optional<ProtectiveFamily> family) {
        if (family.isEmpty()) {
            return ampacityA;
        }
        return rules.greatestDeviceA(ampacityA, family.get()).orElse(null);
    }
}
