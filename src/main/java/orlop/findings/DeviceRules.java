package orlop.findings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Message;
import orlop.drawing.Poles;
import orlop.drawing.Protection;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.ProtectiveFamily;

/** Rules on single devices. */
final class DeviceRules {
    private DeviceRules() {}

    /** A device of which the family, the rating, the breaking capacity or the voltage is not known. */
    static final class NoRating implements Rule {
        @Override
        public String id() {
            return "no-rating";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (Component k : c.drawing().components().values()) {
                String field = missing(c, k);
                if (field != null) {
                    found.add(c.draft(id(), Severity.ADVICE, Finding.Place.component(k.id()))
                            .says("findings.no-rating." + field, c.named(k.id()))
                            .cure(new Cure.EnterValue(
                                    Message.of("findings.cure.enter." + field, k.id()), k.id(), field))
                            .done());
                }
            }
            return found;
        }

        private static @Nullable String missing(Case c, Component k) {
            ElectricalSystem s = c.system(k.systems().get(0));
            boolean dc = s == null || s.nature().isDc();
            if (k.particulars() instanceof Protection.Fuse f) {
                return missing(f.family(), f.ratingA(), f.breakingKa(), f.maxV(), dc);
            }
            if (k.particulars() instanceof Protection.CircuitBreaker b) {
                return missing(b.family(), b.ratingA(), b.breakingKa(), b.maxV(), dc);
            }
            return null;
        }

        private static @Nullable String missing(
                String family,
                @Nullable Double ratingA,
                @Nullable Double breakingKa,
                @Nullable Double maxV,
                boolean dc) {
            if (ratingA == null) {
                return "ratingA";
            }
            ProtectiveFamily known = ProtectiveFamilies.published().find(family).orElse(null);
            if (known == null) {
                return "family";
            }
            if (breakingKa == null && known.breakingA(dc).isEmpty()) {
                return "breakingKa";
            }
            return maxV == null && known.maxVoltageV(dc).isEmpty() ? "maxV" : null;
        }
    }

    /** A device that stands in the negative alone: a fault to the hull leaves the rest live. */
    static final class NegativeOnly implements Rule {
        @Override
        public String id() {
            return "negative-only";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (Component k : c.drawing().components().values()) {
                boolean fuse = k.particulars() instanceof Protection.Fuse f && f.poles() == Poles.NEGATIVE;
                boolean breaker = k.particulars() instanceof Protection.CircuitBreaker b && b.poles() == Poles.NEGATIVE;
                if (fuse || breaker) {
                    found.add(c.draft(id(), Severity.DANGER, Finding.Place.component(k.id()))
                            .says("findings.negative-only.why", c.named(k.id()))
                            .by("", "common practice")
                            .cure(new Cure.EnterValue(Message.of("findings.cure.enter.poles", k.id()), k.id(), "poles"))
                            .done());
                }
            }
            return found;
        }
    }
}
