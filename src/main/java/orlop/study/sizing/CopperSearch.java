package orlop.study.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.study.Copper;
import orlop.study.model.Operation;

/**
 * Chooses anew what was thickened for drop, so that it takes least copper, and takes the choice if it holds in full.
 *
 * <p>The exact choice holds currents still; loads of constant power draw a little more where their cables get thinner.
 * So the choice is made again with the greatest currents that it has led to, a few times, until it holds. Where several
 * conditions ask for thicker cables, their limits are kept together ({@link JointChoice}); where the ways differ from
 * condition to condition, each takes up what the one before has asked for: that is good but not proven least. The work is bounded: a network that would take too long gets a choice near the least, which is not proven
 * either, or keeps what step by step growth found.
 */
final class CopperSearch {
    private static final int TRIES = 6;
    private static final long WORK = 8_000_000;
    private static final int POINTS = 150;

    private final Sizing sizing;
    private double stepwiseKg;
    private boolean proven;
    private final boolean[] decided;

    CopperSearch(Sizing sizing) {
        this.sizing = sizing;
        decided = new boolean[sizing.areas().length];
    }

    void search() {
        stepwiseKg = kg(sizing.areas());
        Arrays.fill(decided, false);
        proven = sizing.operations().stream().allMatch(o -> o.troubles().isEmpty() && o.settled());
        if (!proven || !anyIsOurs()) {
            return;
        }
        double[] before = sizing.areas().clone();
        Set<Integer> over = over();
        double[][] seenA = new double[sizing.operations().size()][before.length];
        for (double[] seen : seenA) {
            Arrays.fill(seen, Double.NaN);
        }
        for (int n = 0; n < TRIES; n++) {
            double[] chosen = choose(seenA);
            if (chosen == null) {
                break;
            }
            boolean lighter = kg(chosen) < stepwiseKg * (1 - 1e-12);
            if (!lighter && n > 0) {
                break; // its currents ask for as much as there was
            }
            if (!lighter || holds(chosen, over)) {
                return;
            }
        }
        proven = false;
        apply(before);
        sizing.solveAll();
    }

    private boolean anyIsOurs() {
        for (int i = 0; i < decided.length; i++) {
            if (sizing.isAuto(i)) {
                return true;
            }
        }
        return false;
    }

    private boolean holds(double[] chosen, Set<Integer> over) {
        apply(chosen);
        sizing.solveAll();
        boolean fine = over.containsAll(over())
                && sizing.operations().stream().allMatch(o -> o.troubles().isEmpty() && o.settled());
        for (int i = 0; i < chosen.length && fine; i++) {
            fine = !sizing.isAuto(i) || sizing.unfit(i) || sizing.needs().all(i) <= chosen[i] * (1 + 1e-9);
        }
        return fine;
    }

    private void apply(double[] areas) {
        for (int i = 0; i < areas.length; i++) {
            if (areas[i] != sizing.areaMm2(i)) {
                sizing.setArea(i, areas[i]);
            }
        }
    }

    /** Loads over their limit, by condition and attachment. */
    private Set<Integer> over() {
        Set<Integer> over = new HashSet<>();
        for (int c = 0; c < sizing.operations().size(); c++) {
            for (LoadDrop d : sizing.drops(c)) {
                if (d.excessV() > 1e-9) {
                    over.add(d.attachment() * sizing.operations().size() + c);
                }
            }
        }
        return over;
    }

    private double @Nullable [] choose(double[][] seenA) {
        double[] least = sizing.areas().clone();
        for (int i = 0; i < least.length; i++) {
            if (sizing.isAuto(i) && !sizing.unfit(i)) {
                least[i] = sizing.needs().all(i);
            }
        }
        boolean[] mine = new boolean[least.length];
        Arrays.fill(mine, true);
        double[] now = sizing.areas();
        List<Operation> operations = sizing.operations();
        for (int c = 0; c < operations.size(); c++) {
            Operation o = operations.get(c);
            CopperChoice all = new CopperChoice(sizing, c, least, seenA[c]);
            for (int i = 0; i < mine.length; i++) {
                mine[i] &= all.decides(i) || o.connectionOfCable(i) < 0;
            }
        }
        for (int i = 0; i < least.length; i++) { // what is not decided on stays
            least[i] = mine[i] || !sizing.isAuto(i) ? least[i] : now[i];
            decided[i] = mine[i];
        }
        double[] together = together(least, seenA);
        if (together != null) {
            proven = true;
            return together;
        }
        return oneByOne(least, seenA);
    }

    /**
     * The least choice for the conditions that ask for thicker cables: first for one of them, then with those that the
     * choice leaves over their limits, until none is. What is least for some of the limits and keeps all is least.
     */
    private double @Nullable [] together(double[] least, double[][] seenA) {
        List<Integer> asking = new ArrayList<>();
        double[] found = least;
        while (true) {
            int next = -1;
            for (int c = 0; c < seenA.length && next < 0; c++) {
                boolean asks = !asking.contains(c) && new CopperChoice(sizing, c, found, seenA[c]).asksForMore();
                next = asks ? c : -1;
            }
            if (next < 0) {
                return found;
            }
            asking.add(next);
            List<CopperChoice> choices = new ArrayList<>();
            asking.forEach(c -> choices.add(new CopperChoice(sizing, c, least, seenA[c])));
            CopperChoice first = choices.get(0);
            found = choices.size() > 1 ? new JointChoice(sizing, choices, least).find(WORK) : first.find(WORK, POINTS);
            if (found == null || (choices.size() == 1 && !first.exact())) {
                return null;
            }
        }
    }

    /** Each condition takes up what the one before has asked for: good, but not proven least. */
    private double @Nullable [] oneByOne(double[] least, double[][] seenA) {
        proven = false;
        double[] chosen = least;
        for (int c = 0; c < seenA.length; c++) {
            CopperChoice choice = new CopperChoice(sizing, c, chosen, seenA[c]);
            if (choice.asksForMore()) {
                double[] found = choice.find(WORK, POINTS);
                if (found == null) {
                    return null;
                }
                chosen = found;
            }
        }
        return chosen;
    }

    private double kg(double[] areas) {
        double sum = 0;
        for (int i = 0; i < areas.length; i++) {
            sum += sizing.isAuto(i) && !sizing.unfit(i)
                    ? sizing.plan().cables().get(i).copperKg(areas[i])
                    : 0;
        }
        return sum;
    }

    /** The area in the choice that takes least copper; null where it is not known to be least. */
    @Nullable
    Double leastMm2(int cable) {
        return proven && decided[cable] && !sizing.unfit(cable) ? (Double) sizing.areaMm2(cable) : null;
    }

    Copper result() {
        double now = kg(sizing.areas());
        return new Copper(now, stepwiseKg, proven ? (Double) now : null);
    }
}
