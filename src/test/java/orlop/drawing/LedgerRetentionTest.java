package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * What an edit keeps in memory besides the drawing before it: the objects that are reached from the new drawing and not
 * from the old one. Sizes are those of a HotSpot JVM with a heap below 32 GB: 12 bytes a header, 4 bytes a reference, objects
 * a multiple of 8 bytes; strings are counted as if they were not Latin.
 */
class LedgerRetentionTest {
    private static final int COMPONENTS = 10_000;
    private static final Drawing LARGE = large();
    private static final Set<Object> OLD = reached(LARGE, Set.of());

    private static Drawing large() {
        Drawing d = Drawing.empty("large")
                .with(ElectricalSystem.of("24", Nature.DC, 24))
                .with(Sheet.of("1", ""));
        for (int i = 0; i < COMPONENTS; i++) {
            d = d.with(Component.of("E" + i, Kind.LOAD, Place.at("1", i % 100, i / 100.0), List.of("24")));
        }
        for (int i = 1; i < COMPONENTS; i++) {
            d = d.with(Cable.of("W" + i, new TerminalRef("E" + (i - 1), "1"), new TerminalRef("E" + i, "1")));
        }
        return d;
    }

    private static Set<Object> reached(Object root, Set<Object> known) {
        Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Object> open = new ArrayDeque<>();
        open.push(root);
        while (!open.isEmpty()) {
            Object o = open.pop();
            if (!known.contains(o) && seen.add(o)) {
                inside(o, open);
            }
        }
        return seen;
    }

    private static void inside(Object o, Deque<Object> open) {
        if (o instanceof Map<?, ?> m) {
            m.forEach((k, v) -> add(k, v, open));
        } else if (o instanceof List<?> l) {
            l.forEach(v -> add(v, null, open));
        } else if (o instanceof Map.Entry<?, ?> e) {
            add(e.getKey(), e.getValue(), open);
        } else if (o.getClass().getName().startsWith("orlop.") && !(o instanceof Enum<?>)) {
            for (Field f : o.getClass().getDeclaredFields()) {
                if (!Modifier.isStatic(f.getModifiers()) && !f.getType().isPrimitive()) {
                    add(value(f, o), null, open);
                }
            }
        }
    }

    private static @Nullable Object value(Field f, Object o) {
        try {
            f.setAccessible(true);
            return f.get(o);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(f.toString(), e);
        }
    }

    private static void add(@Nullable Object a, @Nullable Object b, Deque<Object> open) {
        if (a != null) {
            open.push(a);
        }
        if (b != null) {
            open.push(b);
        }
    }

    private static long size(Object o) {
        if (o instanceof String s) {
            return 24 + aligned(16 + 2L * s.length());
        }
        if (o instanceof List<?> l) {
            return 24 + aligned(16 + 4L * l.size());
        }
        if (o instanceof Map<?, ?> m) {
            return 80 + 56L * m.size();
        }
        if (o instanceof Map.Entry) {
            return 24;
        }
        long bytes = 12;
        for (Field f : o.getClass().getDeclaredFields()) {
            bytes += Modifier.isStatic(f.getModifiers()) ? 0 : width(f.getType());
        }
        return o.getClass().isEnum() ? 0 : aligned(bytes);
    }

    private static int width(Class<?> type) {
        if (type == double.class || type == long.class) {
            return 8;
        }
        return type == byte.class || type == boolean.class ? 1 : 4;
    }

    private static long aligned(long bytes) {
        return (bytes + 7) / 8 * 8;
    }

    private static long retained(Edit edit) {
        Drawing after = edit.applyTo(LARGE);
        assertThat(after).isNotSameAs(LARGE);
        assertThat(OLD).hasSizeGreaterThan(10 * COMPONENTS);
        Set<Object> kept = reached(after, OLD);
        assertThat(kept).contains(after).hasSizeGreaterThan(10);
        return kept.stream().mapToLong(LedgerRetentionTest::size).sum() + label(edit);
    }

    private static long label(Edit edit) {
        return reached(edit.label(), Set.of()).stream()
                .mapToLong(LedgerRetentionTest::size)
                .sum();
    }

    @Test
    void an_edit_of_one_component_among_ten_thousand_retains_at_most_2_kb() {
        Drawing d = LARGE;
        for (int i : new int[] {0, 1, 4_999, 7_777, COMPONENTS - 1}) {
            Component c = d.components().require("E" + i);
            assertThat(retained(Edits.move(Set.of("E" + i), 5, 5, "k")))
                    .as("move E%d", i)
                    .isBetween(300L, 2_048L);
            assertThat(retained(Edits.change(c.withName("bilge pump"))))
                    .as("name E%d", i)
                    .isBetween(300L, 2_048L);
            assertThat(retained(Edits.change(c.withParticulars(new Consumer.PlainLoad(
                            LoadBehaviour.POWER, 60.0, null, null, null, null, null, Phase.ALL, true)))))
                    .as("particulars E%d", i)
                    .isBetween(300L, 2_048L);
        }
        Cable w = d.cables().require("W5000");
        assertThat(retained(Edits.change(w.withAreaMm2(70.0)))).as("area").isBetween(300L, 2_048L);
    }

    @Test
    void even_a_new_component_retains_at_most_2_kb() {
        Component c = Component.of("E99999", Kind.LOAD, Place.at("1", 1, 1), List.of("24"));
        assertThat(retained(Edits.place(c))).isBetween(300L, 2_048L);
    }

    @Test
    void a_whole_new_ledger_would_be_seen() {
        Edit copies = Edit.of(Message.of("drawing.edit.vessel"), before -> {
            Ledger<Component> copy = Ledger.empty();
            for (Component c : before.components().values()) {
                copy = copy.with(c.id(), c);
            }
            return before.withComponents(copy);
        });
        assertThat(retained(copies)).isGreaterThan(1_000_000);
    }
}
