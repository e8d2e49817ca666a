package orlop.study.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Unit;
import orlop.standards.DeviceLimit;
import orlop.standards.RuleLimit;
import orlop.study.GovernedBy;
import orlop.study.model.CableModel;
import orlop.study.model.DeviceModel;
import orlop.study.model.Plan;
import orlop.study.sizing.Sizing;

/** The least area of a cable, and the devices that guard it. */
final class AreaWorkings {
    private final Plan plan;
    private final Sizing sizing;
    private final List<OperatingCondition> conditions;
    private final int cable;
    private final CableModel w;

    AreaWorkings(Solved solved, int cable) {
        plan = solved.plan();
        sizing = solved.sizing();
        conditions = solved.conditions();
        this.cable = cable;
        w = plan.cables().get(cable);
    }

    /** Null where no standard area would do. */
    @Nullable
    Working least() {
        double least = sizing.leastAreaMm2(cable);
        if (!Double.isFinite(least)) {
            return null;
        }
        List<Working> inputs = new ArrayList<>();
        add(inputs, GovernedBy.AMPACITY, "Si", this::forCurrent);
        add(inputs, GovernedBy.DEVICE, "Sn", this::forDevice);
        add(inputs, GovernedBy.DROP, "Su", this::forDrop);
        add(inputs, GovernedBy.ADIABATIC, "Sk", x -> x.because(Say.from("fault-heat")));
        add(inputs, GovernedBy.MECHANICAL, "Sm", this::forStrength);
        double most = inputs.stream().mapToDouble(x -> x.value().value()).max().orElse(0);
        List<String> symbols = inputs.stream().map(Working::symbol).toList();
        String formula = most == least ? "max(" + String.join("; ", symbols) + ")" : "";
        Working found = Working.found(Say.what("least-area"), "S", formula, least, Unit.SQUARE_MILLIMETRE, inputs);
        return formula.isEmpty() ? found.because(Say.from("chosen")) : found;
    }

    private void add(
            List<Working> inputs, GovernedBy by, String symbol, java.util.function.UnaryOperator<Working> explain) {
        double area = sizing.neededMm2(cable, by);
        if (area > 0 && Double.isFinite(area)) {
            String word = by.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
            inputs.add(explain.apply(
                    Working.given(Say.what("least-area." + word), symbol, area, Unit.SQUARE_MILLIMETRE, null)));
        }
    }

    private static Working with(Working of, List<Working> inputs) {
        return new Working(of.what(), of.symbol(), "", of.value(), of.because(), of.provenance(), inputs);
    }

    private Working forCurrent(Working area) {
        List<Working> inputs = new ArrayList<>();
        inputs.add(designCurrent());
        ampacities(inputs, area.value().value());
        return with(area.because(Say.from("carries")), inputs);
    }

    private Working designCurrent() {
        int c = sizing.designCondition(cable);
        return ConductorWorkings.designCurrent(
                sizing.designA(cable), c < 0 ? null : conditions.get(c).title());
    }

    /** Of this area, and of the next thinner one, which is not enough. */
    private void ampacities(List<Working> inputs, double areaMm2) {
        ConductorWorkings conductor = new ConductorWorkings(w);
        conductor.ampacity(areaMm2).ifPresent(iz -> inputs.add(iz.as(Say.what("ampacity-of", area(areaMm2)), "Iz")));
        double thinner = Sizing.thinnerMm2(areaMm2);
        if (thinner > 0) {
            conductor
                    .ampacity(thinner)
                    .ifPresent(iz -> inputs.add(iz.as(Say.what("ampacity-of-thinner", area(thinner)), "I'z")));
        }
    }

    private static orlop.drawing.Quantity area(double areaMm2) {
        return new orlop.drawing.Quantity(areaMm2, Unit.SQUARE_MILLIMETRE);
    }

    private Working forDevice(Working area) {
        List<Working> inputs = new ArrayList<>();
        DeviceModel head = sizing.headDevice(cable);
        if (head != null && head.ratingA() != null) {
            inputs.add(rating(head));
            ampacities(inputs, area.value().value());
            w.rating(area.value().value()).ifPresent(r -> limit(head, r.amps()).ifPresent(inputs::add));
        }
        return with(area.because(Say.from("guarded")), inputs);
    }

    private Working forDrop(Working area) {
        int c = sizing.dropCondition(cable);
        return area.because(
                c < 0 || conditions.size() < 2
                        ? Say.from("drop-limit")
                        : Say.from("drop-limit-in", conditions.get(c).title()));
    }

    private Working forStrength(Working area) {
        RuleLimit limit = plan.rules().leastAreaMm2(w.strength());
        return area.because(Say.from(limit)).firm(limit.provenance());
    }

    private static Working rating(DeviceModel device) {
        double amps = device.ratingA() == null ? 0 : device.ratingA();
        return Working.given(
                Say.what("device-rating", device.component().id()), "In", amps, Unit.AMPERE, Say.from("drawn"));
    }

    private Optional<Working> limit(DeviceModel device, double ampacityA) {
        Double most = DeviceModel.greatestA(plan.rules(), ampacityA, device.family());
        if (most == null) {
            return Optional.empty();
        }
        Working greatest = Working.given(Say.what("device-limit"), "In max", most, Unit.AMPERE, null);
        if (device.family().isEmpty()) {
            return Optional.of(greatest.because(Say.from("ampacity-itself")));
        }
        DeviceLimit rule = plan.rules().maxDeviceA(ampacityA, device.family().get());
        String word = "device-rule."
                + rule.rule().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        return Optional.of(
                greatest.because(Say.from(word, rule.clause(), rule.source())).firm(rule.provenance()));
    }

    /** One for each device that guards it. */
    List<Working> guards(List<String> devices) {
        List<Working> all = new ArrayList<>();
        for (String tag : devices) {
            DeviceModel device = plan.drawing()
                    .components()
                    .find(tag)
                    .map(c -> DeviceModel.of(c, w.system().nature().isDc()))
                    .orElse(null);
            if (device == null || device.ratingA() == null) {
                continue;
            }
            List<Working> inputs = new ArrayList<>();
            inputs.add(designCurrent());
            double area = sizing.areaMm2(cable);
            new ConductorWorkings(w).ampacity(area).ifPresent(inputs::add);
            w.rating(area).ifPresent(r -> limit(device, r.amps()).ifPresent(inputs::add));
            all.add(with(rating(device).because(Say.from("guards")), inputs));
        }
        return all;
    }
}
