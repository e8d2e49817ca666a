package orlop.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Quantity;
import orlop.drawing.Switching;
import orlop.drawing.Unit;
import orlop.network.Network;
import orlop.study.model.CableModel;
import orlop.study.model.Notes;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.Rating;

/**
 * Where combining relays stand: one whose closing voltage is known, and which the condition doesn't set, is closed while
 * the voltage at one of its sides, seen while it is open, reaches that voltage. Found by closing one after the other;
 * none is opened again, so it ends.
 *
 * <p>Areas that are still open count as {@value #OPEN_AREA_MM2} mm² here: what a relay looks at is the voltage that a
 * charger holds, which hardly depends on them.
 */
final class Relays {
    private static final double OPEN_AREA_MM2 = 16;

    private Relays() {}

    /** The condition with the positions of its relays; the condition itself if it has none that work by themselves. */
    static OperatingCondition settled(Plan plan, OperatingCondition condition, BooleanSupplier stale) {
        List<Component> relays = working(plan.drawing(), condition);
        OperatingCondition held = condition;
        for (Component c : relays) {
            held = with(held, c, "open");
        }
        boolean closed = !relays.isEmpty();
        while (closed) {
            closed = false;
            Operation o = solved(plan, held, stale);
            for (Component c : List.copyOf(relays)) {
                Double closesV = closesV(c);
                if (closesV != null && voltage(o, c) >= closesV) {
                    held = with(held, c, "closed");
                    relays.remove(c);
                    closed = true;
                }
            }
        }
        return held;
    }

    private static List<Component> working(Drawing drawing, OperatingCondition condition) {
        List<Component> found = new ArrayList<>();
        for (Component c : drawing.components().values()) {
            if (closesV(c) != null && condition.switches().get(c.id()) == null) {
                found.add(c);
            }
        }
        return found;
    }

    private static @Nullable Double closesV(Component c) {
        return c.particulars() instanceof Switching.CombiningRelay r ? r.closesV() : null;
    }

    private static OperatingCondition with(OperatingCondition c, Component relay, String position) {
        return new OperatingCondition(
                c.id(), c.name(), c.loads(), c.sources(), c.switches().with(relay.id(), position), c.extras());
    }

    private static Operation solved(Plan plan, OperatingCondition condition, BooleanSupplier stale) {
        Operation o = new Operation(plan, Network.of(plan.drawing(), condition), condition);
        double[] areaMm2 = new double[plan.cables().size()];
        @Nullable Rating[] ratings = new Rating[areaMm2.length];
        Arrays.setAll(areaMm2, i -> area(plan.cables().get(i)));
        o.solve(areaMm2, ratings, stale);
        return o;
    }

    private static double area(CableModel w) {
        Double typed = w.cable().areaMm2();
        return typed == null ? OPEN_AREA_MM2 : typed;
    }

    /** The higher of the voltages at its sides; 0 where both are dead. */
    private static double voltage(Operation o, Component relay) {
        double one = o.voltage(o.network().pin(relay, 1));
        double two = o.voltage(o.network().pin(relay, 2));
        return Math.max(Double.isNaN(one) ? 0 : one, Double.isNaN(two) ? 0 : two);
    }

    /** Says of each relay that worked by itself where it stands, and whether it will stay there. */
    static void note(Notes notes, OperatingCondition drawn, OperatingCondition held, Operation o, Drawing drawing) {
        for (Component c : working(drawing, drawn)) {
            Double closesV = closesV(c);
            if (closesV != null) {
                boolean closed = "closed".equals(held.switches().get(c.id()));
                String key = closed ? "study.assumed.relay-closed" : "study.assumed.relay-open";
                Quantity at = new Quantity(closesV, Unit.VOLT);
                notes.add(Remark.Kind.ASSUMED, c.id(), held.id(), key, c.id(), at);
                Double opensV = ((Switching.CombiningRelay) c.particulars()).opensV();
                double now = voltage(o, c);
                if (closed && opensV != null && now > 0 && now < opensV) {
                    notes.add(
                            Remark.Kind.ASSUMED,
                            c.id(),
                            held.id(),
                            "study.assumed.relay-chatters",
                            c.id(),
                            at,
                            new Quantity(now, Unit.VOLT),
                            new Quantity(opensV, Unit.VOLT));
                }
            }
        }
    }
}
