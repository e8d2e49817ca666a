package orlop.standards;

import java.util.Optional;

/**
 * What a rule set says of the device in front of a conductor.
 *
 * @param maxDeviceA the greatest rated current (or setting), A; none if the family doesn't protect the conductor against
 *     overload, or if the rule needs a conventional current that isn't known
 * @param rule the rule applied
 * @param clause standard and clause of the rule
 * @param provenance the weaker of the rule's and of the family's figures that were used (rating, conventional current)
 * @param source of the rule, and of those figures
 */
public record DeviceLimit(
        Optional<Double> maxDeviceA, DeviceRule rule, String clause, Provenance provenance, String source) {}
