package orlop.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Efficiency of a converter over its load, as data sheets give it: straight between the steps, constant below the first
 * and above the last.
 *
 * @param steps in rising order of load, 1 to 100 of them
 */
public record EfficiencyByLoad(List<Step> steps) {
    private static final String FIELD = "efficiencyByLoad";
    private static final int MOST = 100;

    /**
     * One figure of the data sheet.
     *
     * @param loadPercent output power in percent of the rated one, 0 to 200
     * @param efficiency above 0 to 1
     */
    public record Step(double loadPercent, double efficiency) {
        public Step {
            Checks.between(loadPercent, 0, 200, FIELD);
            Checks.share(efficiency, FIELD);
        }
    }

    public EfficiencyByLoad {
        steps = List.copyOf(steps);
        if (steps.isEmpty() || steps.size() > MOST) {
            throw new Checks.OutOfRange(
                    FIELD,
                    Message.of("drawing.range.steps", FIELD, steps.size()),
                    FIELD + " has " + steps.size() + " steps");
        }
        for (int i = 1; i < steps.size(); i++) {
            if (!(steps.get(i).loadPercent() > steps.get(i - 1).loadPercent())) {
                Quantity before = new Quantity(steps.get(i - 1).loadPercent(), Unit.NONE);
                Quantity here = new Quantity(steps.get(i).loadPercent(), Unit.NONE);
                throw new Checks.OutOfRange(
                        FIELD,
                        Message.of("drawing.range.rising", FIELD, here, before),
                        FIELD + " does not rise at step " + i);
            }
        }
    }

    /**
     * Efficiency at a load.
     *
     * @param loadPercent output power in percent of the rated one
     */
    public double at(double loadPercent) {
        Step before = steps.get(0);
        for (Step s : steps) {
            if (loadPercent <= s.loadPercent()) {
                double span = s.loadPercent() - before.loadPercent();
                double share = span > 0 ? (loadPercent - before.loadPercent()) / span : 1;
                return before.efficiency() + share * (s.efficiency() - before.efficiency());
            }
            before = s;
        }
        return before.efficiency();
    }

    /**
     * Reads steps as a person types them: load and efficiency in percent, {@code 10:80 25:88 50:91}; comma and point are
     * both decimal, a percent sign may stand behind a number.
     *
     * @throws Checks.OutOfRange if it is not understood, or a step is out of range
     */
    public static EfficiencyByLoad read(String typed) {
        List<Step> steps = new ArrayList<>();
        for (String step : typed.strip().split("[\\s;]+", -1)) {
            String[] parts = step.split(":", -1);
            if (parts.length != 2) {
                throw misread(step);
            }
            steps.add(new Step(number(step, parts[0]), number(step, parts[1]) / 100));
        }
        return new EfficiencyByLoad(steps);
    }

    private static double number(String step, String typed) {
        String plain = typed.replace(',', '.').replaceAll("%$", "");
        if (!plain.matches("\\d{1,6}(\\.\\d{1,9})?")) {
            throw misread(step);
        }
        return Double.parseDouble(plain);
    }

    private static Checks.OutOfRange misread(String step) {
        return new Checks.OutOfRange(
                FIELD, Message.of("drawing.range.step", FIELD, Message.quote(step)), "no step: " + step);
    }

    /** As {@link #read(String)} takes it. */
    @Override
    public String toString() {
        return steps.stream()
                .map(s -> plain(s.loadPercent()) + ":" + plain(100 * s.efficiency()))
                .collect(Collectors.joining(" "));
    }

    private static String plain(double value) {
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(10))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Of pairs of load in percent and efficiency as a share. */
    public static EfficiencyByLoad of(double[]... pairs) {
        return new EfficiencyByLoad(
                Arrays.stream(pairs).map(p -> new Step(p[0], p[1])).toList());
    }
}
