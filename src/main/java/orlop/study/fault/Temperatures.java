package orlop.study.fault;

import orlop.study.model.CableModel;
import orlop.study.model.Plan;

/** Conductor temperatures at which faults are calculated. */
final class Temperatures {
    private Temperatures() {}

    static double of(Plan plan, int cable, boolean plain, boolean highest) {
        return highest ? coldC(plan, cable, plain) : hotC(plan, cable, plain);
    }

    /** For the highest current: 20 °C, with the plain method a stated one. */
    static double coldC(Plan plan, int cable, boolean plain) {
        Double stated = plan.cables().get(cable).cable().conductorC();
        return plain && stated != null ? stated : 20;
    }

    /** For the lowest current: the insulation's rating, with the plain method a stated one. */
    static double hotC(Plan plan, int cable, boolean plain) {
        CableModel w = plan.cables().get(cable);
        Double stated = w.cable().conductorC();
        double rated = w.cable().construction().insulationC();
        return stated == null ? rated : plain ? stated : Math.max(rated, stated);
    }
}
