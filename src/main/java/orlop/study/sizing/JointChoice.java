package orlop.study.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.study.model.CableModel;

/**
 * The areas that take least copper while the limits of several conditions are kept at once. Each condition brings its own
 * currents and its own limits; the way from the sources to a cable is asked to be the same in all in which the cable
 * carries current: otherwise there is no one tree and no answer.
 */
final class JointChoice {
    private static final int DEAD = -2;
    private static final int PARTED = -3;

    private final Sizing sizing;
    private final List<CopperChoice> choices;
    private final double[] leastMm2;
    private final int[] parent; // of a cable the chosen one before it, −1 none
    private final int[] branch;
    private final List<double[]> options = new ArrayList<>();
    private final List<Integer> cableOf = new ArrayList<>();

    /**
     * @param choices one for each condition, of the same cables
     * @param leastMm2 by cable, what all but the drop asks
     */
    JointChoice(Sizing sizing, List<CopperChoice> choices, double[] leastMm2) {
        this.sizing = sizing;
        this.choices = choices;
        this.leastMm2 = leastMm2;
        parent = new int[leastMm2.length];
        branch = new int[leastMm2.length];
        Arrays.fill(parent, DEAD);
        Arrays.fill(branch, -1);
        for (CopperChoice c : choices) {
            int[] own = c.parents();
            for (int i = 0; i < own.length; i++) {
                if (own[i] != DEAD && c.mayChoose(i)) {
                    parent[i] = parent[i] == DEAD || parent[i] == own[i] ? own[i] : PARTED;
                }
            }
        }
    }

    /** Areas by cable; null if no choice keeps all limits, if the ways differ, or if the work is too much. */
    double @Nullable [] find(long work) {
        for (int up : parent) {
            if (up == PARTED) {
                return null;
            }
        }
        JointCopper tree = new JointCopper(choices.size());
        for (int i = 0; i < parent.length; i++) {
            if (parent[i] != DEAD) {
                add(tree, i);
            }
        }
        for (int c = 0; c < choices.size(); c++) {
            int condition = c;
            choices.get(c).limits((cable, budgetV) -> tree.limit(branch[cable], condition, budgetV));
        }
        int[] option = tree.find(work);
        if (option == null) {
            return null;
        }
        double[] found = leastMm2.clone();
        for (int k = 0; k < option.length; k++) {
            found[cableOf.get(k)] = options.get(k)[option[k]];
        }
        return found;
    }

    /** A cable after those before it. */
    private void add(JointCopper tree, int cable) {
        List<Integer> missing = new ArrayList<>();
        for (int at = cable; at >= 0 && branch[at] < 0; at = parent[at]) {
            missing.add(at);
        }
        for (int k = missing.size() - 1; k >= 0; k--) {
            int i = missing.get(k);
            CableModel w = sizing.plan().cables().get(i);
            double[] areas = Series.from(leastMm2[i]);
            double[][] drops = new double[areas.length][choices.size()];
            double[] kg = new double[areas.length];
            for (int o = 0; o < areas.length; o++) {
                kg[o] = w.copperKg(areas[o]);
                for (int c = 0; c < choices.size(); c++) {
                    drops[o][c] = choices.get(c).mayChoose(i) ? choices.get(c).dropV(i, areas[o]) : 0;
                }
            }
            branch[i] = tree.branch(parent[i] < 0 ? -1 : branch[parent[i]], drops, kg);
            options.add(areas);
            cableOf.add(i);
        }
    }
}
