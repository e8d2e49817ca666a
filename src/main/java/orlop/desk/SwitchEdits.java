package orlop.desk;

import java.util.List;
import java.util.Optional;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Edits;
import orlop.drawing.OperatingCondition;
import orlop.drawing.Particulars;
import orlop.drawing.Position;
import orlop.drawing.SwitchPositions;

/** Positions of switches: in an operating condition, or as drawn where the governing one is shown. */
public final class SwitchEdits {
    private SwitchEdits() {}

    /** Where a component stands: in the condition, or as drawn if {@code condition} is none of the drawing's. */
    public static String position(Drawing d, Component c, String condition) {
        OperatingCondition oc = d.conditions().get(condition);
        return oc == null ? SwitchPositions.drawn(c.particulars()) : SwitchPositions.in(oc, c);
    }

    /** Moves a switch on to its next position; empty for what doesn't switch. */
    public static Optional<Edit> next(Drawing d, Component c, String condition) {
        List<String> positions = SwitchPositions.of(c.particulars());
        if (positions.isEmpty()) {
            return Optional.empty();
        }
        int now = positions.indexOf(position(d, c, condition));
        return Optional.of(set(d, c, condition, positions.get((now + 1) % positions.size())));
    }

    /** Puts a switch into this position. */
    public static Edit set(Drawing d, Component c, String condition, String position) {
        OperatingCondition oc = d.conditions().get(condition);
        if (oc != null) {
            return Edits.change(oc.withSwitch(c.id(), position));
        }
        Record p = (Record) c.particulars();
        Object value = RecordParts.get(p, "position") instanceof Integer
                ? (Object) Integer.valueOf(position)
                : position.equals("open") ? Position.OPEN : Position.CLOSED;
        return Edits.change(c.withParticulars((Particulars) RecordParts.with(p, "position", value)));
    }
}
