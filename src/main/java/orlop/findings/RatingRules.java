package orlop.findings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.Link;
import orlop.drawing.Message;
import orlop.drawing.Protection;
import orlop.drawing.Quantity;
import orlop.drawing.RefitStatus;
import orlop.drawing.Switching;
import orlop.drawing.Unit;
import orlop.standards.ProtectiveFamily;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.Results;
import orlop.study.TerminalResult;
import orlop.study.model.DeviceModel;

/** Rules on what devices and supplies carry against what they are rated for. */
final class RatingRules {
    /** A rating counts as passed from this share of it on: what a solution's rounding leaves. */
    private static final double TOLERANCE = 1e-6;

    private RatingRules() {}

    /**
     * A fuse, breaker or switch that has to carry more than its rating: Ib ≤ In. What it carries is the greatest current
     * of all conditions, and at least the rated current of the only load behind the cable next to it.
     */
    static final class DeviceBelowLoad implements Rule {
        @Override
        public String id() {
            return "load-above-device";
        }

        @Override
        public List<Finding> check(Case c) {
            Lines lines = new Lines(c);
            ShortRuns machines = new ShortRuns(c);
            List<Finding> found = new ArrayList<>();
            for (Component k : c.drawing().components().values()) {
                Double rated = ratingA(k);
                if (rated != null && k.refit() != RefitStatus.TO_BE_REMOVED) {
                    look(c, k, rated, lines, machines, found);
                }
            }
            return found;
        }

        private void look(Case c, Component k, double ratedA, Lines lines, ShortRuns machines, List<Finding> found) {
            ElectricalSystem s = c.system(k.systems().get(0));
            DeviceModel device = s == null ? null : DeviceModel.of(k, s.nature().isDc());
            double most = 0;
            List<String> conditions = new ArrayList<>();
            for (Results r : c.study().byCondition().values()) {
                double amps = greatestA(r, k.id());
                if (exceeds(amps, ratedA) && (device == null || !machines.carries(device, r, amps))) {
                    conditions.add(r.condition());
                    most = Math.max(most, amps);
                }
            }
            double design = lines.designA(k);
            if (exceeds(design, Math.max(ratedA, most)) && (device == null || !machines.only(device, design))) {
                most = design;
            }
            if (most > 0) {
                found.add(finding(c, k, ratedA, most, conditions, lines));
            }
        }

        private Finding finding(
                Case c, Component k, double ratedA, double askedA, List<String> conditions, Lines lines) {
            boolean protects = k.particulars() instanceof Protection;
            Quantity rating = new Quantity(ratedA, Unit.AMPERE);
            return c.draft(id(), Severity.DEFECT, Finding.Place.component(k.id()))
                    .says(
                            conditions.isEmpty()
                                    ? "findings.load-above-device.alone"
                                    : protects
                                            ? "findings.load-above-device.opens"
                                            : "findings.load-above-device.heats",
                            c.named(k.id()),
                            rating,
                            Case.amps(askedA),
                            c.when(conditions))
                    .by(protects ? "IEC 60364-4-43 433.1" : "", protects ? "memory" : "common practice")
                    .in(conditions.isEmpty() ? c.conditions() : conditions)
                    .cure(cure(c, k, askedA, lines))
                    .done();
        }

        /** The next rating of its family that carries the load, if the cables that it guards stand it. */
        private static @Nullable Cure cure(Case c, Component k, double askedA, Lines lines) {
            ElectricalSystem s = c.system(k.systems().get(0));
            DeviceModel d = s == null ? null : DeviceModel.of(k, s.nature().isDc());
            Optional<ProtectiveFamily> family = d == null ? Optional.empty() : d.family();
            Double next = family.flatMap(f -> f.leastRatingA(askedA))
                    .map(r -> r.value())
                    .orElse(null);
            if (d == null || family.isEmpty() || next == null) {
                return null;
            }
            for (CableResult w : c.governing().cables().values()) {
                Double ampacity = w.ampacityA();
                if (ampacity != null && (w.protectedBy().contains(k.id()) || lines.nextTo(k, w.id()))) {
                    Double most = DeviceModel.greatestA(c.rules(), ampacity, family);
                    if (most == null || next > most * (1 + TOLERANCE)) {
                        return null;
                    }
                }
            }
            Double breaking = d.breakingA();
            Message label = Message.of(
                    "findings.cure.replace",
                    Case.amps(next),
                    Case.family(family.get().id()));
            return new Cure.ReplaceDevice(
                    label, k.id(), family.get().id(), next, breaking == null ? 0 : breaking / 1_000);
        }
    }

    /** What a device or switch is rated for; null for all else, and where it is not known. */
    private static @Nullable Double ratingA(Component k) {
        if (k.particulars() instanceof Protection.Fuse f) {
            return f.ratingA();
        }
        if (k.particulars() instanceof Protection.CircuitBreaker b) {
            return b.settingA() != null ? b.settingA() : b.ratingA();
        }
        if (k.particulars() instanceof Protection.ResidualCurrentDevice r) {
            return r.ratingA();
        }
        if (k.particulars() instanceof Switching.Isolator s) {
            return s.ratingA();
        }
        if (k.particulars() instanceof Switching.Changeover s) {
            return s.ratingA();
        }
        if (k.particulars() instanceof Switching.Contactor s) {
            return s.ratingA();
        }
        if (k.particulars() instanceof Switching.DiodeIsolator s) {
            return s.ratingA();
        }
        return k.particulars() instanceof Switching.CombiningRelay s ? s.ratingA() : null;
    }

    /** The greatest current at any terminal; 0 where none is known. */
    static double greatestA(Results r, String component) {
        ComponentResult k = r.components().get(component);
        double most = 0;
        for (TerminalResult t : k == null ? List.<TerminalResult>of() : k.terminals()) {
            Double amps = t.currentA();
            most = amps == null ? most : Math.max(most, Math.abs(amps));
        }
        return most;
    }

    /** The cables that carry the very current of a device: no branch lies between. */
    private static final class Lines {
        private final Case c;
        private final Map<String, List<String>> cablesAt = new HashMap<>();
        private final Map<String, List<String>> linksTo = new HashMap<>();

        Lines(Case c) {
            this.c = c;
            for (Cable w : c.drawing().cables().values()) {
                if (w.refit() != RefitStatus.TO_BE_REMOVED) {
                    add(cablesAt, w.from().toString(), w.id());
                    add(cablesAt, w.to().toString(), w.id());
                }
            }
            for (Link l : c.drawing().links().values()) {
                add(linksTo, l.from().toString(), l.to().toString());
                add(linksTo, l.to().toString(), l.from().toString());
            }
        }

        private static void add(Map<String, List<String>> map, String key, String value) {
            map.computeIfAbsent(key, k -> new ArrayList<>(1)).add(value);
        }

        /** What the cables next to a device are sized for; 0 where there is none. */
        double designA(Component k) {
            double most = 0;
            for (String tag : next(k)) {
                CableResult w = c.governing().cables().get(tag);
                Double design = w == null ? null : w.designCurrentA();
                most = design == null ? most : Math.max(most, design);
            }
            return most;
        }

        boolean nextTo(Component k, String cable) {
            return next(k).contains(cable);
        }

        /** Only of what has two terminals: a changeover's ways differ. */
        private List<String> next(Component k) {
            List<String> found = new ArrayList<>();
            if (k.particulars().terminals().size() == 2) {
                for (String terminal : k.particulars().terminals()) {
                    String at = k.id() + "." + terminal;
                    List<String> cables = cablesAt.getOrDefault(at, List.of());
                    if (cables.size() == 1 && !linksTo.containsKey(at)) {
                        found.addAll(cables);
                    }
                }
            }
            return found;
        }
    }

    static boolean exceeds(double value, double rated) {
        return value > rated * (1 + TOLERANCE);
    }
}
