package orlop.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The spots of a label that is being placed, worked out part by part when they are wanted: most labels find a place among
 * the first. With them, what each costs for the things that don't move.
 */
final class Candidates {
    private final List<Spots.Part> parts;
    private final @Nullable List<Spot>[] made;
    private final double[][] costs;

    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of lists
    Candidates(Spots spots) {
        parts = spots.parts();
        made = new List[parts.size()];
        costs = new double[parts.size()][];
    }

    private List<Spot> part(int n) {
        List<Spot> spots = made[n];
        if (spots == null) {
            spots = parts.get(n).all();
            made[n] = spots;
        }
        return spots;
    }

    private double[] costs(int n) {
        double[] c = costs[n];
        if (c == null) {
            c = new double[part(n).size()];
            Arrays.fill(c, Double.NaN);
            costs[n] = c;
        }
        return c;
    }

    /** The first spot of all. */
    Spot first() {
        int n = 0;
        while (part(n).isEmpty()) {
            n++;
        }
        return part(n).get(0);
    }

    /** All of them. */
    List<Spot> all() {
        List<Spot> all = new ArrayList<>();
        for (int n = 0; n < parts.size(); n++) {
            all.addAll(part(n));
        }
        return all;
    }

    /** Whether one is of this kind; those after the first such are not asked. */
    boolean any(Predicate<Spot> kind) {
        for (int n = 0; n < parts.size(); n++) {
            for (Spot s : part(n)) {
                if (kind.test(s)) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * The cheapest; of equal ones the first. What cannot be cheaper than the best so far is not looked at.
     *
     * @param look is told each that is looked at
     * @param fixed what a spot costs for all that doesn't move, asked once
     * @param moving what it costs for the rest
     */
    Spot best(Consumer<Spot> look, ToDoubleFunction<Spot> fixed, ToDoubleFunction<Spot> moving) {
        Spot best = first();
        double least = Double.POSITIVE_INFINITY;
        for (int n = 0; n < parts.size(); n++) {
            if (parts.get(n).least() >= least) {
                continue;
            }
            List<Spot> spots = part(n);
            double[] known = costs(n);
            for (int i = 0; i < known.length; i++) {
                Spot s = spots.get(i);
                if (s.cost() >= least) {
                    continue;
                }
                look.accept(s);
                if (Double.isNaN(known[i])) {
                    known[i] = fixed.applyAsDouble(s);
                }
                double cost = known[i] < least ? known[i] + moving.applyAsDouble(s) : least;
                if (cost < least) {
                    best = s;
                    least = cost;
                }
            }
        }
        return best;
    }
}
