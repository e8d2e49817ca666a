package orlop.findings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;
import orlop.drawing.Ledger;
import orlop.drawing.Link;
import orlop.drawing.RefitStatus;
import orlop.drawing.TerminalRef;
import orlop.network.Network;
import orlop.study.ComponentResult;

/** Rules on what is drawn but leads nowhere. */
final class StrayRules {
    private StrayRules() {}

    /** What can ever be fed: every switch closed that can be, every source on. */
    static Network reach(Drawing d) {
        return Network.reach(d.withConditions(Ledger.empty())); // a source that is never on is a source
    }

    /** Whether a source may feed any terminal of a component. */
    static boolean fed(Network reach, Component k) {
        int terminals = k.kind().isOnePiece() ? 1 : k.particulars().terminals().size();
        for (int n = 1; n <= terminals; n++) {
            int pin = reach.pin(k, n);
            if (reach.feeding().feeds(pin)) {
                return true;
            }
        }
        return false;
    }

    /** A bar or board that no source feeds, however the switches stand. */
    static final class UnfedBar implements Rule {
        @Override
        public String id() {
            return "bar-without-source";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            Network reach = null;
            for (Component k : c.drawing().components().values()) {
                ComponentResult r = c.governing().components().get(k.id());
                boolean bar = k.kind() == Kind.BUSBAR || k.kind() == Kind.DISTRIBUTION_BOARD;
                if (!bar || r == null || r.live() || k.refit() == RefitStatus.TO_BE_REMOVED) {
                    continue;
                }
                reach = reach == null ? reach(c.drawing()) : reach;
                int pin = reach.pin(k, 1);
                if (!fed(reach, k) && !reach.isReturn(reach.pointOf(pin))) {
                    found.add(c.draft(id(), Severity.DEFECT, Finding.Place.component(k.id()))
                            .says("findings.bar-without-source.why", c.named(k.id()))
                            .by("", "common practice")
                            .done());
                }
            }
            return found;
        }
    }

    /** A cable that starts and ends at the same piece of metal. */
    static final class CableToItself implements Rule {
        @Override
        public String id() {
            return "cable-to-itself";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (Cable w : c.drawing().cables().values()) {
                Component k = c.drawing().components().get(w.from().component());
                boolean same = w.from().component().equals(w.to().component());
                boolean onePiece = k != null && k.kind().isOnePiece();
                if (same && (onePiece || w.from().equals(w.to())) && w.refit() != RefitStatus.TO_BE_REMOVED) {
                    found.add(c.draft(id(), Severity.DEFECT, Finding.Place.cable(w.id()))
                            .says(
                                    "findings.cable-to-itself.why",
                                    c.named(w.id()),
                                    c.named(w.from().component()))
                            .by("", "common practice")
                            .done());
                }
            }
            return found;
        }
    }

    /** A cable that stays, on something that goes. */
    static final class OnRemoved implements Rule {
        @Override
        public String id() {
            return "ends-on-removed";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (Cable w : c.drawing().cables().values()) {
                String gone = w.refit() == RefitStatus.TO_BE_REMOVED ? null : removed(c, w.from(), w.to());
                if (gone != null) {
                    found.add(draft(c, Finding.Place.cable(w.id()), c.named(w.id()), gone));
                }
            }
            for (Link l : c.drawing().links().values()) {
                String gone = removed(c, l.from(), l.to());
                String other = gone != null && gone.equals(l.from().component())
                        ? l.to().component()
                        : l.from().component();
                Component k = c.drawing().components().get(other);
                if (gone != null && k != null && k.refit() != RefitStatus.TO_BE_REMOVED) {
                    found.add(draft(c, Finding.Place.component(other), c.named(other), gone));
                }
            }
            return found;
        }

        private Finding draft(Case c, Finding.Place place, String what, String gone) {
            return c.draft(id(), Severity.ADVICE, place)
                    .says("findings.ends-on-removed.why", what, c.named(gone))
                    .done();
        }

        private static @Nullable String removed(Case c, TerminalRef... ends) {
            for (TerminalRef t : ends) {
                Component k = c.drawing().components().get(t.component());
                if (k != null && k.refit() == RefitStatus.TO_BE_REMOVED) {
                    return k.id();
                }
            }
            return null;
        }
    }
}
