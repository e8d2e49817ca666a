package orlop.study.sizing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.ElectricalSystem;
import orlop.network.Attachment;
import orlop.network.Network;
import orlop.network.ReadLater;
import orlop.study.model.Delivery;
import orlop.study.model.LoadModel;
import orlop.study.model.Operation;
import orlop.study.model.Plan;

/**
 * The drop from the source to a load in one condition, from the one of the sources that deliver to it from which it is
 * greatest (see {@link Delivery}), the load at its full running current on its own circuit.
 *
 * @param attachment number of the load in the network
 * @param dropV from the source's terminal to the load; from the fork where a bank's charging current leaves the way
 * @param limitV what is permitted; null where there is no limit
 * @param limitPercent of the nominal voltage; null where there is no limit
 * @param nominalV of the load's system; line to neutral if it has three phases, unless the load lies between two of them
 * @param cables numbers of the cables over which that drop falls, the source first
 * @param currentAtLimit what its current would be at the permitted drop, as a multiple of what it is now
 * @param missingA what its own circuit carries in this reckoning above what flows, because it runs only now and then
 */
public record LoadDrop(
        int attachment,
        double dropV,
        @Nullable Double limitV,
        @Nullable Double limitPercent,
        double nominalV,
        List<Integer> cables,
        double currentAtLimit,
        double missingA) {
    public LoadDrop {
        cables = ReadLater.keep(cables);
    }

    /** How far it lies over its limit, in volts; 0 or less if it is within. */
    public double excessV() {
        return limitV == null ? Double.NEGATIVE_INFINITY : dropV - limitV;
    }

    /** The most that the drop may be so that it lies at its limit once the load's current has followed the voltage. */
    double budgetV() {
        return limitV == null ? Double.POSITIVE_INFINITY : limitV / currentAtLimit;
    }

    public double percent() {
        return nominalV > 0 ? 100 * dropV / nominalV : 0;
    }

    /** The drops to all loads that run and are fed. */
    public static List<LoadDrop> all(Plan plan, Operation operation, Behind behind) {
        Network network = operation.network();
        List<LoadDrop> drops = new ArrayList<>();
        for (int i = 0; i < network.attachments().size(); i++) {
            Attachment t = network.attachments().get(i);
            LoadModel load = plan.load(t.pin());
            if (t.role() == Attachment.Role.LOAD
                    && load != null
                    && operation.calculates(i)
                    && network.feeding().feeds(t.pin())) {
                LoadDrop drop = of(plan, operation, behind, i, load);
                if (drop != null) {
                    drops.add(drop);
                }
            }
        }
        return drops;
    }

    private static @Nullable LoadDrop of(Plan plan, Operation operation, Behind behind, int i, LoadModel load) {
        Network network = operation.network();
        Attachment t = network.attachments().get(i);
        Delivery delivery = operation.delivery();
        double sourceV = startV(operation, delivery, t.pin());
        double drop = notBelowZero(sourceV - operation.across(i));
        if (Double.isNaN(drop)) {
            return null;
        }
        List<Integer> cables = new ReadLater<>(() -> cables(network, delivery.fallTo(t.pin())));
        double share = operation.assembly().condition().load(t.component().id()).simultaneity();
        double flowing = operation.currentOfAttachment(i);
        double missing = share > 0 ? flowing * (1 / share - 1) : load.ratedA();
        if (missing != 0) {
            for (int cable : cables) {
                drop += behind.soleA(cable) > 0 ? missing * operation.ohm(cable) : 0;
            }
        }
        ElectricalSystem system = plan.system(t.pin());
        Double limit = plan.dropLimitPercent(system, load.vital());
        double nominalV = plan.nominalV(t.component());
        Double limitV = limit == null ? null : (Double) (limit / 100 * nominalV);
        double scale = limitV == null ? 1 : currentAtLimit(load, sourceV - drop, sourceV - limitV);
        return new LoadDrop(i, drop, limitV, limit, nominalV, cables, scale, missing);
    }

    private static List<Integer> cables(Network network, List<Integer> path) {
        List<Integer> cables = new ArrayList<>();
        for (int edge : path) {
            if (network.cableOf(edge) >= 0) {
                cables.add(network.cableOf(edge));
            }
        }
        return cables;
    }

    /** A constant-power load takes less current at more voltage, a resistance more. */
    private static double currentAtLimit(LoadModel load, double nowV, double limitV) {
        if (!(nowV > 0) || !(limitV > 0)) {
            return 1;
        }
        return switch (load.part()) {
            case LOAD_POWER -> nowV / limitV;
            case LOAD_CONDUCTANCE -> limitV / nowV;
            default -> 1;
        };
    }

    /** Between the terminals of the source, at the output of a converter, or where the way to the load begins to fall. */
    private static double startV(Operation operation, Delivery delivery, int loadPin) {
        Attachment t = operation.network().attachments().get(delivery.source(loadPin));
        int pin = delivery.topPin(loadPin);
        return operation.alternating().byPhase(loadPin)
                ? operation.forLoad(pin, operation.network().componentOf(loadPin))
                : operation.across(pin, t.returnPin());
    }

    /** A voltage cannot rise along a current but by rounding; in alternating current a capacitive load can raise it. */
    public static double notBelowZero(double dropV) {
        return dropV < 0 ? 0 : dropV;
    }
}
