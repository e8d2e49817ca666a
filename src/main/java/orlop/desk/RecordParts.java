package orlop.desk;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.EfficiencyByLoad;

/**
 * Reads and replaces the parts of a record by name, so that a card can be made from any kind's record: a new particular
 * needs no new card.
 */
public final class RecordParts {
    private RecordParts() {}

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
        return Arrays.stream(type.getRecordComponents())
                .map(c -> new Part(c.getName(), c.getType(), optional(c)))
                .toList();
    }

    private static boolean optional(RecordComponent c) {
        return c.getAnnotatedType().isAnnotationPresent(Nullable.class);
    }

    /** The value of a part, null for not known. */
    public static @Nullable Object get(Record record, String part) {
        for (RecordComponent c : record.getClass().getRecordComponents()) {
            if (c.getName().equals(part)) {
                return get(record, c);
            }
        }
        throw new IllegalArgumentException(record.getClass() + " has no part " + part);
    }

    private static @Nullable Object get(Record record, RecordComponent c) {
        try {
            c.getAccessor().setAccessible(true); // a public record within a package-private one
            return c.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + c, e);
        }
    }

    /**
     * The record with one part replaced.
     *
     * @throws orlop.drawing.Checks.OutOfRange if the record refuses the value
     */
    @SuppressWarnings("unchecked") // a record's constructor makes that record
    public static <R extends Record> R with(R record, String part, @Nullable Object value) {
        RecordComponent[] parts = record.getClass().getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[parts.length];
        boolean found = false;
        for (int i = 0; i < parts.length; i++) {
            boolean it = parts[i].getName().equals(part);
            found |= it;
            values[i] = it ? taken(parts[i].getType(), value) : get(record, parts[i]);
        }
        if (!found) {
            throw new IllegalArgumentException(record.getClass() + " has no part " + part);
        }
        Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
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
