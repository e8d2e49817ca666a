package orlop.study.model;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import orlop.drawing.Component;
import orlop.drawing.ElectricalSystem;
import orlop.drawing.FaultMethod;
import orlop.drawing.Group;
import orlop.drawing.Switching;
import orlop.network.Numbering;
import orlop.network.Resistances;

/** Assumptions that are made for many components alike: said once for all of them, not for each. */
final class NotedOnce {
    private NotedOnce() {}

    static void into(Notes notes, Plan plan) {
        devices(notes, plan);
        if (plan.calculatesAnyAc() && plan.drawing().vessel().faultMethod() == FaultMethod.IEC) {
            motors(notes, plan);
        }
    }

    private static Stream<Component> components(Plan plan) {
        Numbering numbering = plan.numbering();
        return IntStream.range(0, numbering.componentCount()).mapToObj(numbering::component);
    }

    /** Fuses, breakers and switches whose resistance nobody has stated. */
    private static void devices(Notes notes, Plan plan) {
        long unknown = components(plan)
                .filter(c -> c.kind().group() == Group.PROTECTION || c.kind().group() == Group.SWITCHING)
                .filter(c -> c.particulars().terminals().size() == 2
                        && !(c.particulars() instanceof Switching.Diode)
                        && Resistances.ofDevice(c) == null)
                .count();
        if (unknown > 0) {
            notes.assumed("", "study.assumed.device-ohm", (int) unknown);
        }
    }

    /** Motors that are taken to drive the usual current into a fault. */
    private static void motors(Notes notes, Plan plan) {
        long assumed = components(plan)
                .filter(c -> {
                    ElectricalSystem s = plan.system(c.systems().get(0));
                    return plan.calculatesAc(s) && Motors.isAssumed(c, s);
                })
                .count();
        if (assumed > 0) {
            notes.assumed("", "study.assumed.motor-fault", (int) assumed);
        }
    }
}
