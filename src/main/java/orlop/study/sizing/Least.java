package orlop.study.sizing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import orlop.drawing.ElectricalSystem;
import orlop.standards.Provenance;
import orlop.study.GovernedBy;
import orlop.study.model.CableModel;
import orlop.study.model.Plan;
import orlop.study.model.Rating;

/** The least area of every cable and what asks for it, once all areas are settled. */
final class Least {
    private final Sizing sizing;
    private final double[] ampacity;
    private final double[] device;
    private final double[] drop;
    private final int[] dropCondition;
    private final double[] together;

    Least(Sizing sizing) {
        this.sizing = sizing;
        int count = sizing.areas().length;
        ampacity = new double[count];
        device = new double[count];
        drop = new double[count];
        dropCondition = new int[count];
        together = new double[count];
    }

    void find() {
        Arrays.fill(drop, 0);
        Arrays.fill(dropCondition, -1);
        Arrays.fill(together, 0);
        new LeastDropAreas(sizing, this).find();
        for (int i = 0; i < ampacity.length; i++) {
            ampacity[i] = sizing.needs().ampacity(i);
            device[i] = sizing.needs().device(i);
        }
    }

    /** The area that the drop asks for in a condition; infinite if none of this cable alone would do. */
    void needsForDrop(int cable, double areaMm2, int condition) {
        if (areaMm2 > drop[cable]) {
            drop[cable] = areaMm2;
            dropCondition[cable] = condition;
        }
    }

    /** Its resistance is stated: nobody knows how it would change with the area. */
    void needsUnknownForDrop(int cable) {
        String id = sizing.plan().cables().get(cable).cable().id();
        sizing.plan().notes().assumed(id, "study.assumed.stated-resistance", id);
    }

    void wouldGetTogether(int cable, double areaMm2) {
        together[cable] = Math.max(together[cable], areaMm2);
    }

    @Nullable
    Double togetherMm2(int cable) {
        boolean alone = drop[cable] < Double.POSITIVE_INFINITY;
        double area = alone ? together[cable] : Math.max(together[cable], butDrop(cable));
        return area > 0 && area < Double.POSITIVE_INFINITY ? (Double) area : null;
    }

    /** What all but the drop asks for; infinite if no standard area would do. */
    double butDrop(int cable) {
        Needs needs = sizing.needs();
        return Math.max(
                Math.max(ampacity[cable], device[cable]), Math.max(needs.mechanical(cable), needs.fault(cable)));
    }

    double areaMm2(int cable) {
        double asked = Math.max(butDrop(cable), drop[cable]);
        boolean chosen = sizing.isAuto(cable) && !sizing.unfit(cable) && asked < Double.POSITIVE_INFINITY;
        return chosen ? sizing.areaMm2(cable) : asked;
    }

    GovernedBy governedBy(int cable) {
        double most = butDrop(cable);
        if (most == Double.POSITIVE_INFINITY) {
            return GovernedBy.NOTHING_FITS;
        }
        double mechanical = sizing.needs().mechanical(cable);
        double area = areaMm2(cable);
        if (area <= mechanical) {
            return GovernedBy.MECHANICAL;
        }
        if (ampacity[cable] >= area) {
            return GovernedBy.AMPACITY;
        }
        if (device[cable] >= area) {
            return GovernedBy.DEVICE;
        }
        return sizing.needs().fault(cable) >= area ? GovernedBy.ADIABATIC : GovernedBy.DROP;
    }

    double neededMm2(int cable, GovernedBy by) {
        return switch (by) {
            case AMPACITY -> ampacity[cable];
            case DEVICE -> device[cable];
            case DROP -> drop[cable];
            case MECHANICAL -> sizing.needs().mechanical(cable);
            case ADIABATIC -> sizing.needs().fault(cable);
            case NOTHING_FITS -> 0;
        };
    }

    int dropCondition(int cable) {
        return dropCondition[cable];
    }

    int governingCondition(int cable) {
        return switch (governedBy(cable)) {
            case AMPACITY -> sizing.designCondition(cable);
            case DROP -> dropCondition[cable];
            default -> -1;
        };
    }

    boolean fromMemory(int cable) {
        CableModel w = sizing.plan().cables().get(cable);
        double area = areaMm2(cable);
        boolean rated = area > 0
                && area < Double.POSITIVE_INFINITY
                && w.rating(area).map(Rating::fromMemory).orElse(false);
        return switch (governedBy(cable)) {
            case AMPACITY -> rated;
            case DEVICE -> rated || sizing.needs().deviceFromMemory(cable);
            case DROP -> dropFromMemory(w.system());
            case MECHANICAL -> sizing.needs().strengthFromMemory(cable);
            case ADIABATIC -> true; // k of an insulation that only the rating is known of, times from memory
            case NOTHING_FITS -> false;
        };
    }

    private boolean dropFromMemory(ElectricalSystem s) {
        boolean stated = s.vitalDropPercent() != null && s.otherDropPercent() != null;
        Plan plan = sizing.plan();
        return !stated
                && s.nominalV() > 0
                && plan.rules()
                                .dropPercent(s.nature().isDc(), s.nominalV(), false)
                                .provenance()
                                .compareTo(Provenance.MEMORY)
                        >= 0;
    }
}
