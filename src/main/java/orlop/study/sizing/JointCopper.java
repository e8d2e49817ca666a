package orlop.study.sizing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The choice of areas in a tree that takes least copper while every load keeps its budget in each of several conditions,
 * found exactly.
 *
 * <p>As {@link LeastCopper}, by dynamic programming from the loads to the root, with a drop and a budget in each
 * condition: of what lies behind a place only those choices count of which no other bears as much before the place in
 * every condition and weighs no more. The fronts may grow, so the work is bounded.
 */
final class JointCopper {
    private final int conditions;
    private final List<Branch> branches = new ArrayList<>();

    /** A piece of the way; its options by number, of each the drop by condition. */
    private static final class Branch {
        private final int parent;
        private final double[][] dropV;
        private final double[] kg;
        private final double[] budgetV;

        Branch(int parent, double[][] dropV, double[] kg, int conditions) {
            this.parent = parent;
            this.dropV = dropV;
            this.kg = kg;
            budgetV = new double[conditions];
            Arrays.fill(budgetV, Double.POSITIVE_INFINITY);
        }
    }

    /** What may be dropped before a place, by condition, and what is chosen behind it. */
    private static final class Choice {
        private final double[] bearsV;
        private final double kg;
        private int branch = -1;
        private int option;
        private final @Nullable Choice first;
        private final @Nullable Choice second;

        Choice(double[] bearsV, double kg, @Nullable Choice first, @Nullable Choice second) {
            this.bearsV = bearsV;
            this.kg = kg;
            this.first = first;
            this.second = second;
        }

        double kg() {
            return kg;
        }

        Choice of(int number, int taken) {
            branch = number;
            option = taken;
            return this;
        }
    }

    JointCopper(int conditions) {
        this.conditions = conditions;
    }

    /**
     * Adds a branch; returns its number.
     *
     * @param parent number of the branch before it, −1 at the root
     * @param dropV of each option in each condition, finite, at least 0
     * @param kg of each option
     */
    int branch(int parent, double[][] dropV, double[] kg) {
        branches.add(new Branch(parent, dropV, kg, conditions));
        return branches.size() - 1;
    }

    /** Asks for a budget at a branch's end in a condition; the least that is asked for counts. */
    void limit(int branch, int condition, double budgetV) {
        double[] all = branches.get(branch).budgetV;
        all[condition] = Math.min(all[condition], budgetV);
    }

    /**
     * The options of all branches; null if no choice keeps all budgets, or if the work is too much.
     *
     * @param work most pairs of choices to look at
     */
    int @Nullable [] find(long work) {
        int count = branches.size();
        double[][] leastV = ways(false);
        double[][] mostV = ways(true);
        List<@Nullable List<Choice>> behind = new ArrayList<>(java.util.Collections.nCopies(count + 1, null));
        long[] left = {work};
        for (int b = count - 1; b >= 0; b--) {
            Branch branch = branches.get(b);
            List<Choice> end = together(List.of(new Choice(branch.budgetV, 0, null, null)), behind.get(b), left);
            int at = branch.parent < 0 ? count : branch.parent;
            List<Choice> along = new ArrayList<>();
            for (Choice c : end) {
                for (int o = 0; o < branch.kg.length; o++) {
                    Choice before = before(c, b, o, leastV[at], mostV[at]);
                    if (before != null) {
                        along.add(before);
                    }
                }
            }
            List<Choice> front = front(along, left);
            List<Choice> others = behind.get(at);
            behind.set(at, others == null ? front : together(others, front, left));
            if (left[0] < 0 || front.isEmpty()) {
                return null;
            }
        }
        List<Choice> root = behind.get(count);
        return root == null ? new int[0] : options(root.get(0));
    }

    /** By branch, the drop from the root to its end with the options that drop most or least; the last is the root's. */
    private double[][] ways(boolean most) {
        double[][] ways = new double[branches.size() + 1][conditions];
        for (int b = 0; b < branches.size(); b++) {
            Branch branch = branches.get(b);
            for (int c = 0; c < conditions; c++) {
                double own = branch.dropV[0][c];
                for (double[] option : branch.dropV) {
                    own = most ? Math.max(own, option[c]) : Math.min(own, option[c]);
                }
                ways[b][c] = own + (branch.parent < 0 ? 0 : ways[branch.parent][c]);
            }
        }
        return ways;
    }

    /** A choice seen from before a branch; null where even the thickest options on the way there drop too much. */
    private @Nullable Choice before(Choice c, int b, int option, double[] leastV, double[] mostV) {
        double[] bears = new double[conditions];
        for (int k = 0; k < conditions; k++) {
            bears[k] = Math.min(c.bearsV[k] - branches.get(b).dropV[option][k], mostV[k]);
            if (bears[k] < leastV[k] - LeastCopper.TOLERANCE_V) {
                return null;
            }
        }
        return new Choice(bears, c.kg + branches.get(b).kg[option], c, null).of(b, option);
    }

    /** Every choice of one part with every choice of the other. */
    private List<Choice> together(List<Choice> one, @Nullable List<Choice> other, long[] left) {
        if (other == null) {
            return one;
        }
        left[0] -= (long) one.size() * other.size();
        if (left[0] < 0) {
            return List.of();
        }
        List<Choice> all = new ArrayList<>(one.size() * other.size());
        for (Choice p : one) {
            for (Choice q : other) {
                double[] bears = new double[conditions];
                Arrays.setAll(bears, k -> Math.min(p.bearsV[k], q.bearsV[k]));
                all.add(new Choice(bears, p.kg + q.kg, p, q));
            }
        }
        return front(all, left);
    }

    /** Those of which no other bears as much and weighs no more, the lightest first. */
    private static List<Choice> front(List<Choice> all, long[] left) {
        all.sort(Comparator.comparingDouble(Choice::kg)
                .thenComparingDouble(c -> -Arrays.stream(c.bearsV).sum()));
        List<Choice> front = new ArrayList<>();
        for (Choice c : all) {
            left[0] -= front.size();
            if (left[0] < 0) {
                return front;
            }
            if (front.stream().noneMatch(f -> bearsAsMuch(f.bearsV, c.bearsV))) {
                front.add(c);
            }
        }
        return front;
    }

    private static boolean bearsAsMuch(double[] one, double[] other) {
        for (int k = 0; k < one.length; k++) {
            if (one[k] < other[k]) {
                return false;
            }
        }
        return true;
    }

    private int[] options(Choice best) {
        int[] options = new int[branches.size()];
        Deque<Choice> open = new ArrayDeque<>(List.of(best));
        while (!open.isEmpty()) {
            Choice c = open.pop();
            if (c.branch >= 0) {
                options[c.branch] = c.option;
            }
            if (c.first != null) {
                open.push(c.first);
            }
            if (c.second != null) {
                open.push(c.second);
            }
        }
        return options;
    }
}
