package orlop.study.sizing;

import java.util.Arrays;
import java.util.List;
import orlop.network.Feeding;
import orlop.network.Network;
import orlop.study.model.CableModel;
import orlop.study.model.Operation;

/**
 * The least area that voltage drop asks of each cable, all others as they are: it may use up what is left to the limit
 * of the loads behind it. Where they are over their limit, the cables grow that save most per kilogram of copper.
 */
final class LeastDropAreas {
    private final Sizing sizing;

    LeastDropAreas(Sizing sizing) {
        this.sizing = sizing;
    }

    void find() {
        for (int c = 0; c < sizing.operations().size(); c++) {
            Operation operation = sizing.operations().get(c);
            List<LoadDrop> drops = LoadDrop.all(sizing.plan(), operation, sizing.behind());
            withinLimits(c, operation, drops);
            DropGrowth growth = new DropGrowth(
                    sizing.plan(), operation, sizing.areas(), operation::activeCurrentOfCable, i -> true);
            for (LoadDrop d : drops) {
                if (d.excessV() > 1e-9) {
                    double scale = d.currentAtLimit();
                    double excess = scale * d.dropV() - (d.dropV() - d.excessV());
                    for (int cable : growth.cure(d.cables(), excess / scale, Integer.MAX_VALUE)) {
                        sizing.needsForDrop(cable, growth.area(cable), c);
                    }
                }
            }
        }
    }

    private void withinLimits(int condition, Operation operation, List<LoadDrop> drops) {
        Network network = operation.network();
        Feeding feeding = network.feeding();
        double[] slack = new double[network.pinCount()];
        Arrays.fill(slack, Double.POSITIVE_INFINITY);
        for (LoadDrop d : drops) {
            int pin = network.attachments().get(d.attachment()).pin();
            slack[pin] = Math.min(slack[pin], -d.excessV());
        }
        int[] order = feeding.order();
        for (int k = order.length - 1; k >= 0; k--) {
            int pin = order[k];
            int up = feeding.before(pin);
            if (up >= 0) {
                slack[up] = Math.min(slack[up], slack[pin]);
                var cable = network.connections().get(feeding.via(pin)).cable();
                if (cable != null && slack[pin] >= 0 && slack[pin] < Double.POSITIVE_INFINITY) {
                    least(condition, operation, network.cableOf(feeding.via(pin)), slack[pin]);
                }
            }
        }
    }

    private void least(int condition, Operation operation, int cable, double slackV) {
        double amps = Math.abs(operation.activeCurrentOfCable(cable));
        CableModel w = sizing.plan().cables().get(cable);
        if (!(amps > 1e-9) || w.stated()) {
            return;
        }
        double most = operation.ohm(cable) + slackV / amps;
        double a = Sizing.ceiling(0);
        while (a < Double.POSITIVE_INFINITY && w.loopOhm(a, operation.conductorC(cable)) > most * (1 + 1e-12)) {
            a = Sizing.next(a);
        }
        if (a < Double.POSITIVE_INFINITY) {
            sizing.needsForDrop(cable, a, condition);
        }
    }
}
