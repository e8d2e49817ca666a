package orlop.standards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A factor by count, in steps from one count to another; the last step may be open. */
final class FactorSteps {
    private record Step(int from, double upTo, Sourced factor) {}

    private final List<Step> steps = new ArrayList<>();

    /** Adds a row with the columns from_count, to_count (empty: and more) and factor; steps must join. */
    void add(CsvRow row) {
        int from = (int) row.number("from_count");
        double expected = steps.isEmpty() ? 1 : last().upTo() + 1;
        if (from != expected) {
            throw row.wrong("\"from_count\" is " + from + " where the step before it makes it " + expected);
        }
        steps.add(new Step(from, row.numberOr("to_count", Double.POSITIVE_INFINITY), row.sourced("factor")));
    }

    /** The factor for a count of at least 1; none beyond the last step. */
    Optional<Sourced> at(int count) {
        return steps.stream()
                .filter(s -> count >= s.from() && count <= s.upTo())
                .map(Step::factor)
                .findFirst();
    }

    /** The greatest count that has a factor, with the source of the steps. */
    Sourced greatestCount() {
        Step last = last();
        double count = Double.isInfinite(last.upTo()) ? Integer.MAX_VALUE : last.upTo();
        return new Sourced(count, last.factor().provenance(), last.factor().source());
    }

    private Step last() {
        return steps.get(steps.size() - 1);
    }
}
