package orlop.study.sizing;

import java.util.Arrays;
import java.util.List;
import orlop.network.Feeding;
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
            List<LoadDrop> drops = LoadDrop.all(sizing.plan(), operation, sizing.behind());
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
        Network network = operation.network();
        Feeding feeding = network.feeding();
        double[] slack = new double[network.pinCount()];
        double[] missing = new double[network.pinCount()];
        Arrays.fill(slack, Double.POSITIVE_INFINITY);
        for (LoadDrop d : drops) {
            int pin = network.attachments().get(d.attachment()).pin();
            slack[pin] = Math.min(slack[pin], slackV(d));
            missing[pin] = d.missingA();
        }
        int[] order = feeding.order();
        for (int k = order.length - 1; k >= 0; k--) {
            int pin = order[k];
            int up = feeding.before(pin);
            if (up >= 0) {
                slack[up] = Math.min(slack[up], slack[pin]);
                missing[up] = Math.max(missing[up], missing[pin]); // asked for only where a single load is behind
                var cable = network.connections().get(feeding.via(pin)).cable();
                if (cable != null && slack[pin] < Double.POSITIVE_INFINITY) {
                    int i = sizing.plan().indexOf(cable);
                    double more = sizing.behind().soleA(i) > 0 ? missing[pin] : 0;
                    least(condition, operation, i, Math.abs(operation.activeCurrentOfCable(i)) + more, slack[pin]);
                }
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
        double a = Series.ceilingMm2(0);
        while (a < Double.POSITIVE_INFINITY && w.loopOhm(a, operation.conductorC(cable)) > most * (1 + 1e-12)) {
            a = Series.nextMm2(a);
        }
        least.needsForDrop(cable, a, condition);
    }
}
