package orlop.scene;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import orlop.layout.Label;

/** The labels of a sheet, each with what it was made from: from the same, the very same label is taken again. */
final class MadeLabels {
    /** A label, and what is set in its place. */
    static final class Made {
        private final Label label;
        private final List<TextBlock> blocks;
        private final double[] heights;

        /** @param blocks the same words set in ever shorter lines */
        Made(Label label, List<TextBlock> blocks) {
            this.label = label;
            this.blocks = blocks;
            this.heights = blocks.stream().mapToDouble(TextBlock::height).toArray();
        }

        Label label() {
            return label;
        }

        /** The block of this height; the first if none has it; null without blocks. */
        @Nullable
        TextBlock block(double height) {
            for (int i = 0; i < heights.length; i++) {
                if (Math.abs(heights[i] - height) < 1e-6) {
                    return blocks.get(i);
                }
            }
            return blocks.isEmpty() ? null : blocks.get(0);
        }
    }

    private record Entry(From from, Made made) {}

    private final Map<String, Entry> before;
    private final Map<String, Entry> now;

    private MadeLabels(Map<String, Entry> before) {
        this.before = before;
        this.now = new HashMap<>(2 * before.size());
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

    /** The block of this label that has this height, or else its first; null if there is no such label or it has none. */
    @Nullable
    TextBlock block(String id, double height) {
        Entry e = now.get(id);
        return e == null ? null : e.made.block(height);
    }
}
