package orlop.desk;

import java.util.LinkedHashSet;
import java.util.Set;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Edit;
import orlop.drawing.Locked;
import orlop.drawing.Message;
import orlop.drawing.Note;

/** What is locked can be neither moved nor deleted until it is unlocked: components, cables and notes. */
public final class Locks {
    private Locks() {}

    /** Locks or unlocks these; ids that are not on the drawing, and links, are passed over. */
    public static Edit set(Set<String> ids, boolean locked) {
        Set<String> all = new LinkedHashSet<>(ids);
        String word = locked ? "desk.lock" : "desk.unlock";
        Message label =
                all.size() == 1 ? Message.of(word + "-one", all.iterator().next()) : Message.of(word, all.size());
        return Edit.of(label, d -> {
            Drawing after = d;
            for (String id : all) {
                if (Locked.is(d, id) != locked) {
                    after = set(after, id, locked);
                }
            }
            return after;
        });
    }

    private static Drawing set(Drawing d, String id, boolean locked) {
        Component c = d.components().get(id);
        Cable w = d.cables().get(id);
        Note n = d.notes().get(id);
        if (c != null) {
            return d.with(c.withLocked(locked));
        }
        if (w != null) {
            return d.with(w.withLocked(locked));
        }
        return n == null ? d : d.withNotes(d.notes().with(id, n.withLocked(locked)));
    }

    /** Whether one of these is locked. */
    public static boolean any(Drawing d, Set<String> ids) {
        return ids.stream().anyMatch(id -> Locked.is(d, id));
    }

    /** Whether one of these could be locked. */
    public static boolean anyFree(Drawing d, Set<String> ids) {
        return ids.stream().anyMatch(id -> lockable(d, id) && !Locked.is(d, id));
    }

    private static boolean lockable(Drawing d, String id) {
        return d.components().contains(id)
                || d.cables().contains(id)
                || d.notes().contains(id);
    }
}
