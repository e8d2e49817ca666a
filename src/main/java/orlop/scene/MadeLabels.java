package orlop.scene;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
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

    /** What a label speaks of. */
    enum Kind {
        COMPONENT("c:"),
        CABLE("w:"),
        PROPOSAL("p:"),
        MARKER("f:");

        private final String prefix;

        Kind(String prefix) {
            this.prefix = prefix;
        }
    }

    private record Entry(From from, Made made) {}

    private final Map<Kind, Map<String, Entry>> before;
    private final Map<Kind, Map<String, Entry>> now = new EnumMap<>(Kind.class);

    private MadeLabels(Map<Kind, Map<String, Entry>> before) {
        this.before = before;
        for (Kind kind : Kind.values()) {
            now.put(kind, new HashMap<>(2 * entries(before, kind).size()));
        }
    }

    private static Map<String, Entry> entries(Map<Kind, Map<String, Entry>> of, Kind kind) {
        return of.getOrDefault(kind, Map.of());
    }

    /** @param last those of the sheet when it was made last; null if it was not */
    static MadeLabels after(@Nullable MadeLabels last) {
        return new MadeLabels(last == null ? Map.of() : last.now);
    }

    /**
     * @param subject what it speaks of, among those of its kind
     * @param from all that it is made from, comparable
     * @param maker makes it for an id
     */
    Made of(Kind kind, String subject, From from, Function<String, Made> maker) {
        Entry old = entries(before, kind).get(subject);
        Entry entry = old != null && old.from.equals(from) ? old : new Entry(from, maker.apply(kind.prefix + subject));
        entries(now, kind).put(subject, entry);
        return entry.made;
    }

    /** The label of this kind that speaks of something; null if there is none. */
    @Nullable
    Made find(Kind kind, String subject) {
        Entry e = entries(now, kind).get(subject);
        return e == null ? null : e.made;
    }
}
