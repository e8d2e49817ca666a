package orlop.findings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Message;
import orlop.drawing.Quantity;
import orlop.drawing.RefitStatus;
import orlop.drawing.Unit;
import orlop.network.Resistances;
import orlop.study.CableResult;
import orlop.study.CableSizing;
import orlop.study.GovernedBy;
import orlop.study.Results;

/** Rules on single cables. */
final class CableRules {
    private CableRules() {}

    /** A cable that carries more than it may. */
    static final class TooThin implements Rule {
        @Override
        public String id() {
            return "cable-too-thin";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (CableResult w : c.governing().cables().values()) {
                Double design = w.designCurrentA();
                Double ampacity = w.ampacityA();
                if (design != null && ampacity != null && design > ampacity * (1 + 1e-6)) {
                    found.add(c.draft(id(), Severity.DANGER, Finding.Place.cable(w.id()))
                            .says(
                                    "findings.cable-too-thin.why",
                                    c.named(w.id()),
                                    Case.area(w.areaMm2() == null ? Double.NaN : w.areaMm2()),
                                    Case.amps(design),
                                    Case.amps(ampacity))
                            .by(c.rules().title(), w.ampacityFromMemory() ? "memory" : "seen")
                            .in(conditions(c, w.id(), ampacity))
                            .cure(cure(w))
                            .done());
                }
            }
            return found;
        }

        /** Where it really carries more; all where only the rating of its load asks for more. */
        private static List<String> conditions(Case c, String cable, double ampacityA) {
            List<String> ids = new ArrayList<>();
            for (Results r : c.study().byCondition().values()) {
                CableResult w = r.cables().get(cable);
                Double amps = w == null ? null : w.currentA();
                if (amps != null && Math.abs(amps) > ampacityA) {
                    ids.add(r.condition());
                }
            }
            return ids.isEmpty() ? List.copyOf(c.study().byCondition().keySet()) : ids;
        }

        private static @Nullable Cure cure(CableResult w) {
            CableSizing.ParallelRuns runs = w.sizing().parallel();
            if (runs != null) {
                return setRuns(w, runs);
            }
            Double least =
                    w.leastAreaMm2() != null ? w.leastAreaMm2() : w.sizing().togetherAreaMm2();
            if (least == null || w.areaMm2() == null || least <= w.areaMm2()) {
                return null;
            }
            return new Cure.SetArea(Message.of("findings.cure.area-only", w.id(), Case.area(least)), w.id(), least);
        }
    }

    private static Cure setRuns(CableResult w, CableSizing.ParallelRuns r) {
        Message label = Message.of("findings.cure.runs", w.id(), r.runs(), Case.area(r.areaMm2()));
        return new Cure.SetRuns(label, w.id(), r.runs(), r.areaMm2());
    }

    /** A cable left to Orlop of which no standard area would do. */
    static final class NoneFits implements Rule {
        @Override
        public String id() {
            return "no-area-fits";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (CableResult w : c.governing().cables().values()) {
                Double design = w.designCurrentA();
                if (w.auto() && w.governedBy() == GovernedBy.NOTHING_FITS && design != null) {
                    CableSizing.ParallelRuns runs = w.sizing().parallel();
                    found.add(c.draft(id(), Severity.DEFECT, Finding.Place.cable(w.id()))
                            .says(
                                    runs == null ? "findings.no-area-fits.none" : "findings.no-area-fits.runs",
                                    c.named(w.id()),
                                    Case.amps(design),
                                    runs == null ? 0 : runs.runs(),
                                    Case.area(runs == null ? Double.NaN : runs.areaMm2()))
                            .by(c.rules().title(), "")
                            .cure(runs == null ? null : setRuns(w, runs))
                            .done());
                }
            }
            return found;
        }
    }

    /** An installed cable that a fault would burn before it is cleared. */
    static final class CannotBearFault implements Rule {
        @Override
        public String id() {
            return "cannot-bear-fault";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (CableResult w : c.governing().cables().values()) {
                Double least = w.sizing().faultAreaMm2();
                Double area = w.areaMm2();
                if (least != null && area != null && area < least * (1 - 1e-9)) {
                    Message label = Message.of("findings.cure.area-only", w.id(), Case.area(least));
                    found.add(c.draft(id(), Severity.DANGER, Finding.Place.cable(w.id()))
                            .says("findings.cannot-bear-fault.why", c.named(w.id()), Case.area(area), Case.area(least))
                            .by("IEC 60364-4-43 434.5.2", "memory")
                            .cure(new Cure.SetArea(label, w.id(), least))
                            .done());
                }
            }
            return found;
        }
    }

    /** A cable of unknown length. */
    static final class NoLength implements Rule {
        @Override
        public String id() {
            return "no-length";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Finding> found = new ArrayList<>();
            for (Cable w : c.drawing().cables().values()) {
                boolean stated =
                        w.measured().loopResistanceOhm() != null || w.measured().conductorResistanceOhm() != null;
                if (!stated && Resistances.lengthM(c.drawing(), w) == null) {
                    found.add(c.draft(id(), Severity.ADVICE, Finding.Place.cable(w.id()))
                            .says("findings.no-length.why", c.named(w.id()))
                            .cure(new Cure.EnterValue(
                                    Message.of("findings.cure.enter-length", w.id()), w.id(), "lengthM"))
                            .done());
                }
            }
            return found;
        }
    }

    /** Lengths that nobody has measured, all in one: what hangs on them is as doubtful as they are. */
    static final class EstimatedLengths implements Rule {
        @Override
        public String id() {
            return "length-estimated";
        }

        @Override
        public List<Finding> check(Case c) {
            List<Object> said = new ArrayList<>();
            String first = "";
            for (Cable w : c.drawing().cables().values()) {
                Double length = w.lengthM();
                if (w.lengthEstimated() && length != null && w.refit() != RefitStatus.TO_BE_REMOVED) {
                    first = first.isEmpty() ? w.id() : first;
                    said.add(Message.of("findings.length-of", w.id(), new Quantity(length, Unit.METRE)));
                }
            }
            return said.isEmpty()
                    ? List.of()
                    : List.of(c.draft(id(), Severity.ADVICE, Finding.Place.component(""))
                            .says("findings.length-estimated.why", said)
                            .cure(new Cure.EnterValue(
                                    Message.of("findings.cure.enter-length", first), first, "lengthM"))
                            .done());
        }
    }
}
