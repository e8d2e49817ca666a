package orlop.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Group;
import orlop.drawing.OperatingCondition;
import orlop.drawing.SwitchPositions;
import orlop.drawing.Switching;

/** What a person can set beyond the conditions that have names: every source on, every two-way switch closed. */
final class AllClosed {
    private AllClosed() {}

    /** Null where one of the conditions stands so already. Changeovers and interlocked contactors stay as in the first. */
    static @Nullable OperatingCondition after(Drawing drawing, List<OperatingCondition> conditions) {
        OperatingCondition closed = conditions.get(0);
        boolean[] there = new boolean[conditions.size()];
        java.util.Arrays.fill(there, true);
        for (Component c : drawing.components().values()) {
            boolean free = SwitchPositions.of(c.particulars()).contains("closed") && !isInterlocked(c);
            boolean source = c.kind().group() == Group.SOURCES || c.kind().group() == Group.CONVERSION;
            for (int i = 0; i < there.length; i++) {
                OperatingCondition o = conditions.get(i);
                there[i] &= !free || SwitchPositions.in(o, c).equals("closed");
                there[i] &= !source || o.sourceOn(c.id());
            }
            closed = free && !SwitchPositions.in(closed, c).equals("closed")
                    ? closed.withSwitch(c.id(), "closed")
                    : closed;
            closed = source && !closed.sourceOn(c.id()) ? closed.withSource(c.id(), true) : closed;
        }
        for (boolean already : there) {
            if (already) {
                return null;
            }
        }
        return closed;
    }

    private static boolean isInterlocked(Component c) {
        return c.particulars() instanceof Switching.Contactor k
                && !k.interlock().isEmpty();
    }
}
