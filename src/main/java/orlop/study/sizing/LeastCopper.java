package orlop.study.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The choice of areas in a tree that takes least copper, found exactly.
 *
 * <p>The problem: every branch has a few options, each with the drop that it makes at a given current and with its mass
 * of copper; every load has a budget, the most that the drops from the root to it may add up to. Wanted is one option a
 * branch, so that every budget is kept and the mass is least.
 *
 * <p>The way: dynamic programming from the loads to the root. Of what lies behind a place only the front counts: the
 * choices of which none both bears more drop before the place and weighs less. Where branches meet, a front bears what
 * its weakest part bears and weighs what all weigh together; along a branch every point goes on with every option. A
 * point that bears less than the thickest options before the place would leave, or more than the thinnest could ask for,
 * is cut. Nothing else is cut, so the choice is exact. Fronts may grow, so the work is bounded; beyond it there is only
 * the near choice: fronts are thinned to a number of points, so that it keeps all budgets but may not be least.
 */
final class LeastCopper {
    /** Budgets are kept to this many volts. */
    static final double TOLERANCE_V = 1e-9;

    private final List<Branch> branches = new ArrayList<>();

    /** The way from one place to the next; parent is the branch before it, −1 at the root, less than its own number. */
    private static final class Branch {
        private final int parent;
        private final double[] dropV; // of each option
        private final double[] kg;

        Branch(int parent, double[] dropV, double[] kg) {
            this.parent = parent;
            this.dropV = dropV.clone();
            this.kg = kg.clone();
        }
    }

    private final List<Double> budgetV = new ArrayList<>();

    /**
     * Adds a branch; returns its number.
     *
     * @param parent number of the branch before it, −1 at the root
     * @param dropV of each option, finite, at least 0
     * @param kg of each option, finite, at least 0
     * @param budget most drop from the root to its end; infinite if nothing there asks for one
     */
    int branch(int parent, double[] dropV, double[] kg, double budget) {
        branches.add(new Branch(parent, dropV, kg));
        budgetV.add(budget);
        return branches.size() - 1;
    }

    /** Asks for a budget at a branch's end; the least that is asked for counts. */
    void limit(int branch, double budget) {
        budgetV.set(branch, Math.min(budgetV.get(branch), budget));
    }

    /** What was found. */
    static final class Choice {
        private final int[] option;
        private final double kg;
        private final boolean exact;

        private Choice(int[] option, double kg, boolean exact) {
            this.option = option;
            this.kg = kg;
            this.exact = exact;
        }

        /** Number of the option to take of a branch. */
        int option(int branch) {
            return option[branch];
        }

        double kg() {
            return kg;
        }

        /** Whether there is none lighter. */
        boolean exact() {
            return exact;
        }
    }

    /** Thrown within when the work is more than was permitted. */
    private static final class TooMuch extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooMuch() {
            super("more work than permitted", null, false, false);
        }
    }

    /**
     * The choice with least copper; null if no choice keeps all budgets or if the work is too much.
     *
     * @param work most points to look at
     */
    @Nullable
    Choice find(long work) {
        try {
            return new Search(work, Integer.MAX_VALUE).find();
        } catch (TooMuch e) {
            return null;
        }
    }

    /**
     * A choice that keeps all budgets, near the one with least copper; null if none does.
     *
     * @param points most that a front may have, at least 2
     */
    @Nullable
    Choice near(int points) {
        return new Search(Long.MAX_VALUE, points).find();
    }

    /** One search; fronts stand in ascending order of what they bear, and so of mass. */
    private final class Search {
        private final int count = branches.size();
        private final double[] leastV = new double[count + 1]; // drop to a branch's end with its thickest options
        private final double[] mostV = new double[count + 1]; // with its thinnest; the last entry is the root
        private final List<List<Front>> behind = new ArrayList<>(); // of branches that start at a branch's end
        private final @Nullable Front[] at = new Front[count]; // at the end of a branch, all behind it together
        private final int points;
        private long work;
        private boolean exact = true;

        Search(long work, int points) {
            this.work = work;
            this.points = points;
            for (int i = 0; i <= count; i++) {
                behind.add(new ArrayList<>(2));
            }
        }

        private int place(int parent) {
            return parent < 0 ? count : parent;
        }

        @Nullable
        Choice find() {
            for (int i = 0; i < count; i++) {
                Branch b = branches.get(i);
                int before = place(b.parent);
                leastV[i] = leastV[before] + Arrays.stream(b.dropV).min().orElse(0);
                mostV[i] = mostV[before] + Arrays.stream(b.dropV).max().orElse(0);
            }
            for (int i = count - 1; i >= 0; i--) {
                Front end = thinned(together(behind.get(i), budgetV.get(i) + TOLERANCE_V, mostV[i]));
                at[i] = end;
                Branch b = branches.get(i);
                Front start = thinned(before(end, b, leastV[place(b.parent)]));
                if (start.size == 0) {
                    return null;
                }
                start.branch = i;
                behind.get(place(b.parent)).add(start);
            }
            return choose();
        }

        /** What all branches bear that start at one place, together with the place's own budget. */
        private Front together(List<Front> parts, double budget, double mostHere) {
            Front own = new Front(1);
            own.add(Math.min(budget, mostHere), 0, 0, 0);
            return parts.isEmpty() ? own : both(own, all(parts, 0, parts.size()));
        }

        private Front all(List<Front> parts, int from, int to) {
            int half = (from + to) / 2;
            return to - from == 1 ? parts.get(from) : both(all(parts, from, half), all(parts, half, to));
        }

        /** Bears what the weaker bears and weighs what both weigh. */
        private Front both(Front f, Front g) {
            spend(f.size + g.size);
            Front sum = new Front(f.size + g.size);
            int i = 0;
            int j = 0;
            while (i < f.size && j < g.size) {
                double bears = Math.min(f.bears[i], g.bears[j]);
                sum.add(bears, f.kg[i] + g.kg[j], 0, 0);
                boolean fIsWeaker = f.bears[i] == bears;
                j += g.bears[j] == bears ? 1 : 0;
                i += fIsWeaker ? 1 : 0;
            }
            return sum;
        }

        /** The front at the start of a branch: every option with every point at its end that is of use. */
        private Front before(Front end, Branch b, double leastBefore) {
            Front all = new Front(0);
            for (int o = 0; o < b.dropV.length; o++) {
                Front one = new Front(end.size);
                for (int p = 0; p < end.size; p++) {
                    double bears = end.bears[p] - b.dropV[o];
                    if (bears >= leastBefore - TOLERANCE_V) {
                        one.add(bears, end.kg[p] + b.kg[o], o, p);
                    }
                }
                spend(end.size + all.size);
                all = all.with(one);
            }
            return all;
        }

        private Front thinned(Front f) {
            if (f.size <= points) {
                return f;
            }
            exact = false;
            return f.thinned(points);
        }

        private void spend(int seen) {
            work -= seen;
            if (work < 0) {
                throw new TooMuch();
            }
        }

        private @Nullable Choice choose() {
            int[] option = new int[count];
            double[] asked = new double[count + 1]; // what has to be borne at the end of a branch
            double kg = 0;
            for (Front f : behind.get(count)) {
                int p = f.firstBearing(0 - TOLERANCE_V);
                if (p < 0) {
                    return null;
                }
                kg += f.kg[p];
                take(f, p, option, asked);
            }
            for (int i = 0; i < count; i++) {
                for (Front f : behind.get(i)) {
                    take(f, f.firstBearing(asked[i]), option, asked);
                }
            }
            return new Choice(option, kg, exact);
        }

        private void take(Front f, int p, int[] option, double[] asked) {
            option[f.branch] = f.option[p];
            Front end = at[f.branch];
            if (end != null) {
                asked[f.branch] = end.bears[f.from[p]];
            }
        }
    }

    /** Points of which none bears more and weighs no more than another. */
    private static final class Front {
        private double[] bears;
        private double[] kg;
        private int[] option;
        private int[] from;
        private int size;
        private int branch;

        Front(int capacity) {
            bears = new double[capacity];
            kg = new double[capacity];
            option = new int[capacity];
            from = new int[capacity];
        }

        void add(double bearsV, double mass, int anOption, int aFrom) {
            if (size > 0 && mass <= kg[size - 1]) { // bears more and weighs no more
                size--;
            }
            bears[size] = bearsV;
            kg[size] = mass;
            option[size] = anOption;
            from[size++] = aFrom;
        }

        /** The first, so the lightest, that bears as much; −1 if none does. */
        int firstBearing(double volts) {
            int at = Arrays.binarySearch(bears, 0, size, volts);
            int first = at >= 0 ? at : -at - 1;
            return first < size ? first : -1;
        }

        /** Some of its points, the first and the last among them. */
        Front thinned(int points) {
            Front few = new Front(points);
            for (int k = 0; k < points; k++) {
                int p = (int) ((long) k * (size - 1) / (points - 1));
                few.add(bears[p], kg[p], option[p], from[p]);
            }
            return few;
        }

        /** What is of use of both: from the one that bears most down, whatever is lighter than all before. */
        Front with(Front other) {
            Front down = new Front(size + other.size);
            int a = size - 1;
            int b = other.size - 1;
            double lightest = Double.POSITIVE_INFINITY;
            while (a >= 0 || b >= 0) {
                boolean mine = b < 0
                        || (a >= 0
                                && (bears[a] > other.bears[b] || (bears[a] == other.bears[b] && kg[a] <= other.kg[b])));
                Front f = mine ? this : other;
                int p = mine ? a-- : b--;
                if (f.kg[p] < lightest) {
                    lightest = f.kg[p];
                    down.bears[down.size] = f.bears[p];
                    down.kg[down.size] = f.kg[p];
                    down.option[down.size] = f.option[p];
                    down.from[down.size++] = f.from[p];
                }
            }
            down.turn();
            return down;
        }

        private void turn() {
            for (int i = 0, j = size - 1; i < j; i++, j--) {
                swap(bears, i, j);
                swap(kg, i, j);
                swap(option, i, j);
                swap(from, i, j);
            }
        }

        private static void swap(double[] x, int i, int j) {
            double t = x[i];
            x[i] = x[j];
            x[j] = t;
        }

        private static void swap(int[] x, int i, int j) {
            int t = x[i];
            x[i] = x[j];
            x[j] = t;
        }
    }
}
