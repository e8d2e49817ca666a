package orlop.desk;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Cable;
import orlop.drawing.Component;
import orlop.drawing.Drawing;
import orlop.drawing.Link;
import orlop.drawing.Note;

/** What of a drawing is new or other than in another one. */
public final class Changes {
    private Changes() {}

    /** The ids of the components, cables, links and notes of {@code after} that {@code before} has not, or has otherwise. */
    public static Set<String> of(Drawing before, Drawing after) {
        Set<String> ids = new LinkedHashSet<>();
        add(ids, after.components().values(), Component::id, before.components()::get);
        add(ids, after.cables().values(), Cable::id, before.cables()::get);
        add(ids, after.links().values(), Link::id, before.links()::get);
        add(ids, after.notes().values(), Note::id, before.notes()::get);
        return ids;
    }

    private static <T> void add(
            Set<String> ids, Iterable<T> all, Function<T, String> id, Function<String, @Nullable T> was) {
        for (T t : all) {
            T old = was.apply(id.apply(t));
            if (old == null || !Same.object(old, t)) {
                ids.add(id.apply(t));
            }
        }
    }
}
