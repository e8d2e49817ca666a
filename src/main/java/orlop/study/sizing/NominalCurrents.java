package orlop.study.sizing;

import java.util.ArrayList;
import java.util.List;
import orlop.network.Attachment;
import orlop.network.Connection;
import orlop.network.Feeding;
import orlop.network.Network;
import orlop.study.model.LoadModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;

/**
 * Currents at nominal voltage along the feeding paths: all there is to go by where thin cables leave an island without
 * an operating point.
 */
final class NominalCurrents {
    /** With less than a quarter of the voltage lost at nominal current, constant-power loads have an operating point. */
    private static final double BEARABLE = 0.2;

    /**
     * A load in an island without operating point.
     *
     * @param cables on its path
     * @param excessV drop at nominal currents above what is bearable
     */
    record Starved(List<Integer> cables, double excessV) {}

    private final double[] amps;

    NominalCurrents(Plan plan, Operation operation) {
        Network network = operation.network();
        Feeding feeding = network.feeding();
        double[] behind = new double[network.pinCount()];
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            LoadModel load = plan.load(t.pin());
            if (load != null && operation.calculates(i)) {
                behind[t.pin()] += load.ratedA()
                        * operation
                                .assembly()
                                .condition()
                                .load(t.component().id())
                                .simultaneity();
            }
        }
        amps = new double[plan.cables().size()];
        int[] order = feeding.order();
        for (int k = order.length - 1; k >= 0; k--) {
            int up = feeding.before(order[k]);
            if (up >= 0) {
                behind[up] += behind[order[k]];
                Connection c = network.connections().get(feeding.via(order[k]));
                if (c.cable() != null) {
                    amps[network.cableOf(feeding.via(order[k]))] = behind[order[k]];
                }
            }
        }
    }

    /** The loads that have no operating point. */
    List<Starved> starved(Plan plan, Operation operation) {
        Network network = operation.network();
        List<Starved> starved = new ArrayList<>();
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            boolean fed = t.role() == Attachment.Role.LOAD && network.feeding().feeds(t.pin());
            if (fed && operation.calculates(i) && Double.isNaN(operation.voltage(t.pin()))) {
                starved.add(starved(plan, operation, t.pin()));
            }
        }
        return starved;
    }

    private Starved starved(Plan plan, Operation operation, int pin) {
        Network network = operation.network();
        List<Integer> cables = new ArrayList<>();
        double drop = 0;
        for (int edge : network.feeding().pathTo(pin)) {
            Connection c = network.connections().get(edge);
            if (c.cable() != null) {
                int cable = network.cableOf(edge);
                cables.add(cable);
                drop += amps[cable] * operation.ohm(cable);
            }
        }
        double nominalV = Plan.phaseV(plan.system(network.systemOf(pin)));
        return new Starved(cables, drop - BEARABLE * nominalV);
    }

    /** Current of a cable with all loads behind it at nominal voltage; 0 where it is on no feeding path. */
    double amps(int cable) {
        return amps[cable];
    }
}
