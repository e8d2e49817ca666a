package orlop.findings;

import java.util.ArrayList;
import java.util.List;
import orlop.drawing.Component;
import orlop.drawing.Group;
import orlop.drawing.OperatingCondition;
import orlop.drawing.RefitStatus;
import orlop.network.Network;
import orlop.study.ComponentResult;

/** Rules on single loads. */
final class LoadRules {
    private LoadRules() {}

    private static boolean isLoad(Component k) {
        return k.kind().group() == Group.LOADS && k.refit() != RefitStatus.TO_BE_REMOVED;
    }

    /** A load that no source feeds in any condition. */
    static final class WithoutSource implements Rule {
        @Override
        public String id() {
            return "load-without-source";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            Network reach = null;
            for (Component k : c.drawing().components().values()) {
                ComponentResult r = c.governing().components().get(k.id());
                if (isLoad(k) && r != null && !r.live()) {
                    reach = reach == null ? StrayRules.reach(c.drawing()) : reach;
                    boolean could = StrayRules.fed(reach, k);
                    found.add(c.draft(id(), Severity.DEFECT, Finding.Place.component(k.id()))
                            .says("findings.load-without-source." + (could ? "off" : "why"), c.named(k.id()))
                            .by("", "common practice")
                            .done());
                }
            }
            return found;
        }
    }

    /** A load that runs in no condition. */
    static final class NeverRuns implements Rule {
        @Override
        public String id() {
            return "never-runs";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (Component k : c.drawing().components().values()) {
                if (isLoad(k) && !c.drawing().conditions().isEmpty() && !everRuns(c, k)) {
                    found.add(c.draft(id(), Severity.ADVICE, Finding.Place.component(k.id()))
                            .says("findings.never-runs.why", c.named(k.id()))
                            .done());
                }
            }
            return found;
        }

        private static boolean everRuns(Case c, Component k) {
            for (OperatingCondition o : c.drawing().conditions().values()) {
                if (o.load(k.id()).running()) {
                    return true;
                }
            }
            return false;
        }
    }
}
