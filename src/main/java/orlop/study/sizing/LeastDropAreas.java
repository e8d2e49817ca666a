package orlop.study.sizing;

import java.util.Arrays;
import java.util.List;
import orlop.network.Network;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;

/**
 * The least area that voltage drop asks of each cable, all others as they are: it may use up what is left to the limit
 * of the loads behind it, or has to bring what is missing. Where no area of it alone brings that, its need is infinite,
 * and what it would get if the whole path grew where copper saves most is noted beside.
 */
final class LeastDropAreas {
    private final Sizing sizing;
    private final Least least;

    LeastDropAreas(Sizing sizing, Least least) {
        this.sizing = sizing;
        this.least = least;
    }

    void find() {
        for (int c = 0; c < sizing.operations().size(); c++) {
            Operation operation = sizing.operations().get(c);
            List<LoadDrop> drops = sizing.drops(c);
            alone(c, operation, drops);
            DropGrowth growth = new DropGrowth(
                    sizing.plan(), operation, sizing.areas(), operation::activeCurrentOfCable, i -> true);
            for (LoadDrop d : drops) {
                if (d.excessV() > 1e-9) {
                    for (int cable : growth.cure(d.cables(), d.dropV() - d.budgetV(), Integer.MAX_VALUE)) {
                        least.wouldGetTogether(cable, growth.area(cable));
                    }
                }
            }
        }
    }

    private void alone(int condition, Operation operation, List<LoadDrop> drops) {
        double[] slack = new double[sizing.areas().length];
        double[] missing = new double[slack.length];
        Arrays.fill(slack, Double.POSITIVE_INFINITY);
        Network network = operation.network();
        for (LoadDrop d : drops) {
            double left = slackV(d);
            int pin = network.attachments().get(d.attachment()).pin();
            operation
                    .delivery()
                    .fallTo(
                            pin,
                            via -> { // the cables of the drop, without a list of them
                                int cable = network.cableOf(via);
                                if (cable >= 0) {
                                    slack[cable] = Math.min(slack[cable], left);
                                    missing[cable] = sizing.behind().soleA(cable) > 0 ? d.missingA() : 0;
                                }
                            });
        }
        for (int i = 0; i < slack.length; i++) {
            if (slack[i] < Double.POSITIVE_INFINITY) {
                double amps = Math.abs(operation.activeCurrentOfCable(i)) + missing[i];
                least(condition, operation, i, amps, slack[i]);
            }
        }
    }

    /** What is left to the limit; within it, never less than nothing. */
    private static double slackV(LoadDrop d) {
        double slack = d.budgetV() - d.dropV();
        return d.excessV() > 1e-9 ? slack : Math.max(0, slack);
    }

    private void least(int condition, Operation operation, int cable, double amps, double slackV) {
        CableModel w = sizing.plan().cables().get(cable);
        if (!(amps > 1e-9) || w.lengthM() == 0) {
            return;
        }
        if (w.stated()) {
            least.needsUnknownForDrop(cable);
            return;
        }
        double most = operation.ohm(cable) + slackV / amps;
        double conductorC = operation.conductorC(cable);
        double a = Series.leastMm2(area -> w.loopOhm(area, conductorC) <= most * (1 + 1e-12));
        least.needsForDrop(cable, a, condition);
    }
}
