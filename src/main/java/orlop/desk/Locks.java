package orlop.desk;

import java.util.LinkedHashSet;
import java.util.Set;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Message;

/** What is locked can be neither moved nor deleted until it is unlocked. */
public final class Locks {
    private Locks() {}

    /** Locks or unlocks the components among these; others are passed over. */
    public static Edit set(Set<String> ids, boolean locked) {
        Set<String> all = new LinkedHashSet<>(ids);
        return Edit.of(Message.of(locked ? "desk.lock" : "desk.unlock", all.size()), d -> {
            Drawing after = d;
            for (String id : all) {
                Component c = after.components().get(id);
                if (c != null && c.locked() != locked) {
                    after = after.with(c.withLocked(locked));
                }
            }
            return after;
        });
    }

    /** Whether one of these is locked. */
    public static boolean any(Drawing d, Set<String> ids) {
        return has(d, ids, true);
    }

    /** Whether one of these could be locked. */
    public static boolean anyFree(Drawing d, Set<String> ids) {
        return has(d, ids, false);
    }

    private static boolean has(Drawing d, Set<String> ids, boolean locked) {
        return ids.stream().flatMap(id -> d.components().find(id).stream()).anyMatch(c -> c.locked() == locked);
    }
}
