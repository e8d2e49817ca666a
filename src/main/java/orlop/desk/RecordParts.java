package orlop.desk;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import orlop.drawing.EfficiencyByLoad;

/**
 * Reads and replaces the parts of a record by name, so that a card can be made from any kind's record: a new particular
 * needs no new card.
 */
public final class RecordParts {
    private RecordParts() {}

    /** The parts of a type and how they are read, looked up once: cards of a thousand items ask for them again and again. */
    private static final ClassValue<Known> KNOWN = new ClassValue<>() {
        @Override
        protected Known computeValue(Class<?> type) {
            RecordComponent[] all = type.getRecordComponents();
            Map<String, Method> readers = new HashMap<>();
            for (RecordComponent c : all) {
                c.getAccessor().setAccessible(true); // a public record within a package-private one
                readers.put(c.getName(), c.getAccessor());
            }
            List<Part> parts = Arrays.stream(all)
                    .map(c -> new Part(c.getName(), c.getType(), optional(c)))
                    .toList();
            return new Known(parts, Map.copyOf(readers));
        }
    };

    private record Known(List<Part> parts, Map<String, Method> readers) {}

    /**
     * One part of a record type.
     *
     * @param name as in the record and in the file
     * @param type its declared type, boxed or not
     * @param optional whether it may be null: not known
     */
    public record Part(String name, Class<?> type, boolean optional) {}

    /** The parts of a record in the order of its header. */
    public static List<Part> of(Class<? extends Record> type) {
        return KNOWN.get(type).parts();
    }

    private static boolean optional(RecordComponent c) {
        return c.getAnnotatedType().isAnnotationPresent(Nullable.class);
    }

    /** The value of a part, null for not known. */
    public static @Nullable Object get(Record record, String part) {
        Method reader = KNOWN.get(record.getClass()).readers().get(part);
        if (reader == null) {
            throw new IllegalArgumentException(record.getClass() + " has no part " + part);
        }
        try {
            return reader.invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + reader, e);
        }
    }

    /**
     * The record with one part replaced.
     *
     * @throws orlop.drawing.Checks.OutOfRange if the record refuses the value
     */
    @SuppressWarnings("unchecked") // a record's constructor makes that record
    public static <R extends Record> R with(R record, String part, @Nullable Object value) {
        List<Part> parts = of(record.getClass());
        @Nullable Object[] values = new @Nullable Object[parts.size()];
        boolean found = false;
        for (int i = 0; i < values.length; i++) {
            Part p = parts.get(i);
            boolean it = p.name().equals(part);
            found |= it;
            values[i] = it ? taken(p.type(), value) : get(record, p.name());
        }
        if (!found) {
            throw new IllegalArgumentException(record.getClass() + " has no part " + part);
        }
        Class<?>[] types = parts.stream().map(Part::type).toArray(Class<?>[]::new);
        return (R) made(record.getClass(), types, values);
    }

    /** Steps are typed as text; no text is no steps. */
    private static @Nullable Object taken(Class<?> type, @Nullable Object value) {
        if (type != EfficiencyByLoad.class || !(value instanceof String typed)) {
            return value;
        }
        return typed.isBlank() ? null : EfficiencyByLoad.read(typed);
    }

    private static Object made(Class<?> type, Class<?>[] types, @Nullable Object[] values) {
        try {
            Constructor<?> c = type.getDeclaredConstructor(types);
            c.setAccessible(true);
            return c.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException refusal) {
                throw refusal; // what the record itself has to say
            }
            throw new IllegalStateException("cannot make " + type, e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + type, e);
        }
    }
}
