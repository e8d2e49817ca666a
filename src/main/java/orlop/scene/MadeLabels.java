package orlop.scene;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import orlop.layout.Label;

/** The labels of a sheet, each with what it was made from: from the same, the very same label is taken again. */
final class MadeLabels {
    /** @param blocks the same words set in ever shorter lines */
    record Made(Label label, List<TextBlock> blocks) {}

    private record Entry(From from, Made made) {}

    private final Map<String, Entry> before;
    private final Map<String, Entry> now = new HashMap<>();

    private MadeLabels(Map<String, Entry> before) {
        this.before = before;
    }

    /** @param last those of the sheet when it was made last; null if it was not */
    static MadeLabels after(@Nullable MadeLabels last) {
        return new MadeLabels(last == null ? Map.of() : last.now);
    }

    /** @param from all that it is made from, comparable */
    Made of(String id, From from, Supplier<Made> maker) {
        Entry old = before.get(id);
        Entry entry = old != null && old.from.equals(from) ? old : new Entry(from, maker.get());
        now.put(id, entry);
        return entry.made;
    }

    /** Of this label; none if there is no such label. */
    List<TextBlock> blocks(String id) {
        Entry e = now.get(id);
        return e == null ? List.of() : e.made.blocks;
    }
}
