package orlop.standards;

import java.util.Optional;

/** How a device's rated current is held against the ampacity of the conductor behind it. */
public enum DeviceRule {
    /** In ≤ Iz. */
    WITHIN_AMPACITY("within ampacity"),
    /** In ≤ Iz, or the next standard rating above it, if that is no more than 1.5 Iz. */
    NEXT_SIZE_WITHIN_150("next size within 150 %"),
    /** In ≤ Iz, and the current that surely operates it (I2) ≤ 1.45 Iz. */
    WITHIN_AMPACITY_AND_145("1.45 rule");

    private static final double NEXT_SIZE_LIMIT = 1.5;
    private static final double OVERLOAD_LIMIT = 1.45;

    private final String word;

    DeviceRule(String word) {
        this.word = word;
    }

    static DeviceRule parse(String word) {
        for (DeviceRule rule : values()) {
            if (rule.word.equals(word)) {
                return rule;
            }
        }
        throw new IllegalArgumentException("device rule \"" + word + "\" is unknown");
    }

    /**
     * The conditions of IEC 60364-4-43 clause 433.1: Ib ≤ In ≤ Iz and I2 ≤ 1.45 Iz.
     *
     * @param i2OverIn the current that operates the device within its conventional time, as a multiple of In
     */
    public static boolean overloadProtected(double ibA, double inA, double izA, double i2OverIn) {
        Checks.notNegative(ibA, "ibA");
        Checks.positive(inA, "inA");
        Checks.positive(izA, "izA");
        Checks.positive(i2OverIn, "i2OverIn");
        return ibA <= inA && inA <= izA && i2OverIn * inA <= OVERLOAD_LIMIT * izA;
    }

    /**
     * The greatest rated current (or setting) of a family, A, in front of a conductor, with the weakest source among the
     * family's figures that it rests on.
     *
     * @return none if the family doesn't protect against overload, or if the rule needs its I2 and none is known
     */
    Optional<Sourced> maxDeviceA(double ampacityA, ProtectiveFamily family) {
        Checks.positive(ampacityA, "ampacityA");
        if (!family.overloadProtection()) {
            return Optional.empty();
        }
        Sourced itself = new Sourced(ampacityA, Provenance.SEEN, "the ampacity itself");
        return switch (this) {
            case WITHIN_AMPACITY -> Optional.of(itself);
            case NEXT_SIZE_WITHIN_150 ->
                Optional.of(family.leastRatingA(ampacityA)
                        .filter(next -> next.value() <= NEXT_SIZE_LIMIT * ampacityA)
                        .orElse(itself));
            case WITHIN_AMPACITY_AND_145 -> within145(ampacityA, family);
        };
    }

    /** I2 as a multiple of In changes with In (gG below 16 A): the best of the ranges counts. */
    private static Optional<Sourced> within145(double ampacityA, ProtectiveFamily family) {
        Characteristic best = null;
        double most = 0;
        for (Characteristic p : family.points().of(Characteristic.Kind.OPERATE)) {
            double limit = Math.min(
                    ampacityA, OVERLOAD_LIMIT * ampacityA / p.multiple().orElseThrow());
            double inRange = limit < p.inMinA() ? 0 : Math.min(limit, p.inMaxA());
            if (best == null || inRange > most) {
                best = p;
                most = inRange;
            }
        }
        return best == null ? Optional.empty() : Optional.of(new Sourced(most, best.provenance(), best.source()));
    }
}
