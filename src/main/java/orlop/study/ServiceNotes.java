package orlop.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Conversion;
import orlop.drawing.Quantity;
import orlop.drawing.Source;
import orlop.drawing.Unit;
import orlop.network.Attachment;
import orlop.study.model.Notes;
import orlop.study.model.Operation;
import orlop.study.model.Plan;
import orlop.study.model.SourceModel;

/** Looks over one solved condition for what works beyond its limits, and for what the solution had to assume. */
final class ServiceNotes {
    /** A limit counts as passed, or as reached, to within this share of it. */
    private static final double TOLERANCE = 1e-6;

    /** Less than this flows back by the rounding of a solution. */
    private static final double LEAST_W = 0.01;

    private final Plan plan;
    private final Operation operation;
    private final String condition;
    private final Notes notes;

    private ServiceNotes(Plan plan, Operation operation, String condition, Notes notes) {
        this.plan = plan;
        this.operation = operation;
        this.condition = condition;
        this.notes = notes;
    }

    static void into(Notes notes, Plan plan, Operation operation, String condition) {
        ServiceNotes s = new ServiceNotes(plan, operation, condition, notes);
        List<Attachment> all = operation.network().attachments();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).on()) {
                s.attachment(i, all.get(i));
            }
        }
    }

    private void attachment(int i, Attachment t) {
        if (t.component().particulars() instanceof Source.Battery b) {
            double given = -operation.currentOfAttachment(i);
            beyond(t.component(), "study.beyond.charge", -given, b.chargeLimitA());
            beyond(t.component(), "study.beyond.discharge", given, b.dischargeLimitA());
        } else if (t.component().particulars() instanceof Conversion.DcDcConverter d && d.ratedW() != null) {
            converter(i, t, new Quantity(d.ratedW(), Unit.WATT));
        } else if (t.component().particulars() instanceof Conversion.Charger c && c.ratedA() != null) {
            converter(i, t, new Quantity(c.ratedA(), Unit.AMPERE));
        } else if (t.component().particulars() instanceof Conversion.PlainConverter) {
            fedBack(i, t);
        } else if (t.component().particulars() instanceof Source.LimitedSupply l && l.limitA() != null) {
            limited(t, -operation.currentOfAttachment(i), new Quantity(l.limitA(), Unit.AMPERE));
        } else if (t.component().particulars() instanceof Source.Supply s && s.oneWay() && operation.isAc(t.pin())) {
            oneWay(t.component(), operation.alternating().powerOfAttachment(i));
        }
    }

    /** It holds its output as a voltage behind a resistance; what flows into it there comes out nowhere. */
    private void fedBack(int i, Attachment t) {
        double takenW = operation.isAc(t.outputPin())
                ? operation.alternating().powerOfOutput(i)
                : operation.currentOfOutput(i) * operation.voltage(t.outputPin());
        if (takenW > LEAST_W) {
            String id = t.component().id();
            Quantity taken = new Quantity(takenW, Unit.WATT);
            notes.add(Remark.Kind.NOT_CALCULATED, id, condition, "study.not-calculated.fed-back", id, taken);
        }
    }

    /** In alternating current power is free to flow either way; where it flows back, that is said and nothing hidden. */
    private void oneWay(Component c, double takenW) {
        if (takenW > LEAST_W) {
            Quantity taken = new Quantity(takenW, Unit.WATT);
            notes.add(Remark.Kind.CONTRADICTION, c.id(), condition, "study.one-way", c.id(), taken);
        }
    }

    private void beyond(Component c, String key, double amps, @Nullable Double limitA) {
        if (limitA != null && amps > limitA * (1 + TOLERANCE)) {
            Quantity limit = new Quantity(limitA, Unit.AMPERE);
            notes.add(
                    Remark.Kind.BEYOND_RATING, c.id(), condition, key, c.id(), new Quantity(amps, Unit.AMPERE), limit);
        }
    }

    private void converter(int i, Attachment t, Quantity rated) {
        limited(t, -operation.currentOfOutput(i), rated);
    }

    /** What limits itself is at fault at its limit only where no bank holds the voltage: else it charges, as it ought to. */
    private void limited(Attachment t, double given, Quantity rated) {
        SourceModel out = model(t);
        double volts = operation.voltage(pin(t));
        boolean full = out != null && given >= out.third() * (1 - TOLERANCE);
        if (out != null && full && volts < out.first() * (1 - TOLERANCE) && !bankBeside(t)) {
            notes.add(
                    Remark.Kind.BEYOND_RATING,
                    t.component().id(),
                    condition,
                    "study.beyond.converter",
                    t.component().id(),
                    rated,
                    new Quantity(volts, Unit.VOLT),
                    new Quantity(out.first(), Unit.VOLT));
        }
    }

    private boolean bankBeside(Attachment converter) {
        int island = islandOf(pin(converter));
        return operation.network().attachments().stream()
                .anyMatch(t -> t.on()
                        && t.role() == Attachment.Role.VOLTAGE_SOURCE
                        && island >= 0
                        && islandOf(t.pin()) == island);
    }

    private int islandOf(int pin) {
        int node = operation.assembly().node(pin);
        return node < 0 || operation.isAc(pin) ? -1 : operation.flow().islandOf(node);
    }

    private static int pin(Attachment t) {
        return t.role() == Attachment.Role.CONVERTER ? t.outputPin() : t.pin();
    }

    private @Nullable SourceModel model(Attachment t) {
        return t.role() == Attachment.Role.CONVERTER ? plan.output(t.component()) : plan.source(t.component());
    }
}
