package orlop.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Message;
import orlop.drawing.Protection;
import orlop.drawing.Quantity;
import orlop.drawing.Unit;
import orlop.standards.DeviceLimit;
import orlop.standards.ProtectiveFamilies;
import orlop.standards.RuleLimit;
import orlop.standards.SourceKind;
import orlop.study.CableResult;
import orlop.study.Gap;
import orlop.study.model.DeviceModel;

/** Overcurrent protection that is missing or does not do: one rule for each way in which it fails. */
final class GapRule implements Rule {
    private final String id;
    private final Severity severity;
    private final Set<Gap.Kind> kinds;

    private GapRule(String id, Severity severity, Set<Gap.Kind> kinds) {
        this.id = id;
        this.severity = severity;
        this.kinds = Set.copyOf(kinds);
    }

    static GapRule missingFuse() {
        return new GapRule("missing-fuse", Severity.DANGER, Set.of(Gap.Kind.NO_DEVICE, Gap.Kind.TOO_FAR));
    }

    static GapRule fuseTooLarge() {
        return new GapRule("fuse-too-large", Severity.DANGER, Set.of(Gap.Kind.TOO_LARGE));
    }

    static GapRule cannotBreak() {
        return new GapRule("cannot-break", Severity.DANGER, Set.of(Gap.Kind.CANNOT_BREAK));
    }

    static GapRule doesNotOpen() {
        return new GapRule("does-not-open", Severity.DANGER, Set.of(Gap.Kind.DOES_NOT_OPEN));
    }

    static GapRule deviceVoltage() {
        return new GapRule("device-voltage", Severity.DEFECT, Set.of(Gap.Kind.VOLTAGE));
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public List<Finding> check(Case c) {
        List<Finding> found = new ArrayList<>();
        for (Gap g : c.study().gaps()) {
            if (kinds.contains(g.kind())) {
                found.add(finding(c, g));
            }
        }
        return found;
    }

    private Finding finding(Case c, Gap g) {
        boolean onCable = g.kind() == Gap.Kind.NO_DEVICE || g.kind() == Gap.Kind.TOO_FAR;
        Finding.Place place = onCable || g.device() == null
                ? Finding.Place.on(g.cable(), g.atFrom(), g.distanceM())
                : Finding.Place.component(g.device());
        Case.Draft d =
                c.draft(id, isCarried(c, g) ? Severity.DEFECT : severity, place).says(withAlso(c, g));
        d.in(g.conditions());
        clause(c, g, d);
        Gap.Proposal p = g.proposed();
        if (p != null && onCable) {
            d.proposes(p.family(), p.ratingA(), p.breakingKa());
            d.cure(new Cure.InsertDevice(
                    Message.of("findings.cure.insert", Case.amps(p.ratingA()), Case.family(p.family())),
                    g.cable(),
                    g.atFrom(),
                    g.distanceM(),
                    p.family(),
                    p.ratingA(),
                    p.breakingKa()));
        } else if (p != null && g.device() != null) {
            d.cure(new Cure.ReplaceDevice(
                    Message.of("findings.cure.replace", Case.amps(p.ratingA()), Case.family(p.family())),
                    g.device(),
                    p.family(),
                    p.ratingA(),
                    p.breakingKa()));
        }
        return d.done();
    }

    /** Whether the cable carries for ever what does not open its device. */
    private static boolean isCarried(Case c, Gap g) {
        CableResult w = c.governing().cables().get(g.cable());
        return g.kind() == Gap.Kind.DOES_NOT_OPEN
                && w != null
                && w.ampacityA() != null
                && g.faultA() != null
                && g.faultA() <= w.ampacityA();
    }

    private Message withAlso(Case c, Gap g) {
        Message m = message(c, g);
        if (g.also().isEmpty()) {
            return m;
        }
        List<Object> named = g.also().stream().map(w -> (Object) c.named(w)).toList();
        return Message.of(Finding.TOGETHER, m, Message.of("findings.missing-fuse.also", named));
    }

    private Message message(Case c, Gap g) {
        CableResult w = c.governing().cables().get(g.cable());
        Object fault = g.unlimited()
                ? Message.of("findings.fault-unlimited")
                : new Quantity(orNaN(g.faultA()) / 1_000, Unit.KILOAMPERE);
        Quantity ampacity = new Quantity(orNaN(w == null ? null : w.ampacityA()), Unit.AMPERE);
        Quantity area = new Quantity(orNaN(w == null ? null : w.areaMm2()), Unit.SQUARE_MILLIMETRE);
        Object device = g.device() == null ? "" : c.named(g.device());
        return switch (g.kind()) {
            case NO_DEVICE ->
                Message.of(
                        g.faultA() == null && !g.unlimited()
                                ? "findings.missing-fuse.none-dead"
                                : "findings.missing-fuse.none",
                        c.named(g.cable()),
                        area,
                        ampacity,
                        g.source(),
                        fault,
                        end(c, g));
            case TOO_FAR ->
                Message.of(
                        "findings.missing-fuse.too-far",
                        c.named(g.cable()),
                        device,
                        new Quantity(g.reachedM(), Unit.METRE),
                        new Quantity(g.permittedM(), Unit.METRE),
                        g.source(),
                        fault);
            case TOO_LARGE ->
                Message.of("findings.fuse-too-large.why", device, rating(c, g), c.named(g.cable()), area, ampacity);
            case DOES_NOT_OPEN ->
                Message.of(
                        isCarried(c, g) ? "findings.does-not-open.carried" : "findings.does-not-open.why",
                        device,
                        rating(c, g),
                        new Quantity(orNaN(operatesAtA(c, g)), Unit.AMPERE),
                        c.named(g.cable()),
                        new Quantity(orNaN(g.faultA()), Unit.AMPERE),
                        ampacity);
            case CANNOT_BREAK -> Message.of("findings.cannot-break.why", device, breaking(c, g), fault);
            case VOLTAGE -> Message.of("findings.device-voltage.why", device, voltage(c, g), highest(c, g));
        };
    }

    private static double orNaN(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }

    private static String end(Case c, Gap g) {
        Cable w = c.cable(g.cable());
        return w == null ? "" : (g.atFrom() ? w.from() : w.to()).toString();
    }

    private static @Nullable Component device(Case c, Gap g) {
        return g.device() == null ? null : c.component(g.device());
    }

    private static @Nullable Double operatesAtA(Case c, Gap g) {
        Component d = device(c, g);
        DeviceModel m = d == null ? null : DeviceModel.of(d, true);
        return m == null ? null : m.operatesAtA();
    }

    private static Quantity rating(Case c, Gap g) {
        Component d = device(c, g);
        Double amps = null;
        if (d != null && d.particulars() instanceof Protection.Fuse f) {
            amps = f.ratingA();
        } else if (d != null && d.particulars() instanceof Protection.CircuitBreaker b) {
            amps = b.settingA() != null ? b.settingA() : b.ratingA();
        } else if (d != null && d.particulars() instanceof Protection.ResidualCurrentDevice r) {
            amps = r.ratingA();
        }
        return new Quantity(orNaN(amps), Unit.AMPERE);
    }

    private static String familyOf(@Nullable Component d) {
        if (d != null && d.particulars() instanceof Protection.Fuse f) {
            return f.family();
        }
        if (d != null && d.particulars() instanceof Protection.CircuitBreaker b) {
            return b.family();
        }
        return d != null && d.particulars() instanceof Protection.ResidualCurrentDevice r ? r.family() : "";
    }

    private static Quantity breaking(Case c, Gap g) {
        Component d = device(c, g);
        Double own = null;
        if (d != null && d.particulars() instanceof Protection.Fuse f) {
            own = f.breakingKa();
        } else if (d != null && d.particulars() instanceof Protection.CircuitBreaker b) {
            own = b.breakingKa();
        } else if (d != null && d.particulars() instanceof Protection.ResidualCurrentDevice r) {
            own = r.breakingKa();
        }
        double ka = own != null
                ? own
                : ProtectiveFamilies.published()
                        .find(familyOf(d))
                        .flatMap(f -> f.breakingA(isDc(c, d)))
                        .map(s -> s.value() / 1_000)
                        .orElse(Double.NaN);
        return new Quantity(ka, Unit.KILOAMPERE);
    }

    private static Quantity voltage(Case c, Gap g) {
        Component d = device(c, g);
        Double own = null;
        if (d != null && d.particulars() instanceof Protection.Fuse f) {
            own = f.maxV();
        } else if (d != null && d.particulars() instanceof Protection.CircuitBreaker b) {
            own = b.maxV();
        }
        double volts = own != null
                ? own
                : ProtectiveFamilies.published()
                        .find(familyOf(d))
                        .flatMap(f -> f.maxVoltageV(isDc(c, d)))
                        .map(s -> s.value())
                        .orElse(Double.NaN);
        return new Quantity(volts, Unit.VOLT);
    }

    private static Quantity highest(Case c, Gap g) {
        Component d = device(c, g);
        var s = d == null ? null : c.system(d.systems().get(0));
        return new Quantity(s == null ? Double.NaN : s.deviceVoltageV(), Unit.VOLT);
    }

    private static boolean isDc(Case c, @Nullable Component d) {
        var s = d == null ? null : c.system(d.systems().get(0));
        return s == null || s.nature().isDc();
    }

    private static RuleLimit distance(Case c, Gap g) {
        Component source = c.component(g.source());
        boolean battery = source != null
                && switch (source.kind()) {
                    case BATTERY, SUPPLY -> true;
                    default -> false;
                };
        return c.rules().firstDeviceWithinM(battery ? SourceKind.BATTERY : SourceKind.CHARGING_SOURCE, false);
    }

    private static void clause(Case c, Gap g, Case.Draft d) {
        switch (g.kind()) {
            case NO_DEVICE, TOO_FAR -> d.by(distance(c, g));
            case TOO_LARGE -> {
                DeviceLimit limit = c.rules()
                        .maxDeviceA(
                                1,
                                ProtectiveFamilies.published().all().iterator().next());
                d.by(limit.clause(), Case.word(limit.provenance()));
            }
            case DOES_NOT_OPEN -> {
                Component k = device(c, g);
                DeviceModel m = k == null ? null : DeviceModel.of(k, true);
                d.by("IEC 60364-4-43 434.5.2", m != null && m.operatingKnown() ? "memory" : "common practice");
            }
            case CANNOT_BREAK -> d.by("IEC 60364-4-43 434.5.1", "memory");
            case VOLTAGE -> d.by("IEC 60364-5-53 531", "memory");
        }
    }
}
