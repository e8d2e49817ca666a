package orlop.store;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Checks;
import orlop.drawing.Extras;

/** How a record is put together from the leaves of one object: some components are leaves, some are records again. */
record Plan(Constructor<?> constructor, List<Part> parts) {
    /** One component of the record. */
    sealed interface Part {
        Method accessor();
    }

    /** A component with a key of its own. */
    record AtKey(Leaf leaf) implements Part {
        @Override
        public Method accessor() {
            return leaf.accessor();
        }
    }

    /** A component that is a record whose keys stand flat in the same object. */
    record Flat(Method accessor, Plan plan) implements Part {}

    /** What keeps the unknown keys. */
    record Keep(Method accessor) implements Part {}

    /**
     * The record of these values; what is not among them comes from the template.
     *
     * @param values value by leaf, null for "not known"
     * @throws Checks.OutOfRange if the record refuses a value
     */
    Object build(IdentityHashMap<Leaf, @Nullable Object> values, Object template, Extras extras) {
        @Nullable Object[] arguments = new @Nullable Object[parts.size()];
        for (int i = 0; i < arguments.length; i++) {
            Part part = parts.get(i);
            if (part instanceof AtKey k) {
                arguments[i] = values.containsKey(k.leaf()) ? values.get(k.leaf()) : get(k.accessor(), template);
            } else if (part instanceof Flat f) {
                Object inner = get(f.accessor(), template);
                if (inner == null) {
                    throw new AssertionError("a template has every inner record: " + f.accessor());
                }
                arguments[i] = f.plan().given(values) ? f.plan().build(values, inner, extras) : inner;
            } else {
                arguments[i] = extras;
            }
        }
        return create(arguments);
    }

    /** Whether any leaf is among the values; if none is, the template's record serves as it is. */
    private boolean given(IdentityHashMap<Leaf, @Nullable Object> values) {
        for (Part part : parts) {
            boolean here = part instanceof AtKey k && values.containsKey(k.leaf());
            boolean inside = part instanceof Flat f && f.plan().given(values);
            if (here || inside) {
                return true;
            }
        }
        return false;
    }

    private Object create(@Nullable Object[] arguments) {
        try {
            return constructor.newInstance(arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof Checks.OutOfRange r) {
                throw r;
            }
            throw new LinkageError("a record refuses without a reason: " + constructor, e);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("a record has a public canonical constructor: " + constructor, e);
        }
    }

    /** Every leaf with its value in the record and in the template, in the order of the file. */
    void visit(Object record, Object template, Visitor visitor) {
        for (Part part : parts) {
            if (part instanceof AtKey k) {
                visitor.leaf(k.leaf(), get(k.accessor(), record), get(k.accessor(), template));
            } else if (part instanceof Flat f) {
                Object inner = get(f.accessor(), record);
                Object innerTemplate = get(f.accessor(), template);
                if (inner != null && innerTemplate != null) {
                    f.plan().visit(inner, innerTemplate, visitor);
                }
            }
        }
    }

    /** Receives leaves. */
    interface Visitor {
        void leaf(Leaf leaf, @Nullable Object value, @Nullable Object defaultValue);
    }

    /** Every leaf, those of flat records in their place. */
    List<Leaf> leaves() {
        List<Leaf> leaves = new ArrayList<>();
        collect(leaves::add);
        return leaves;
    }

    private void collect(Consumer<Leaf> to) {
        for (Part part : parts) {
            if (part instanceof AtKey k) {
                to.accept(k.leaf());
            } else if (part instanceof Flat f) {
                f.plan().collect(to);
            }
        }
    }

    static @Nullable Object get(Method accessor, Object record) {
        try {
            return accessor.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError("an accessor of a record is public and throws nothing: " + accessor, e);
        }
    }
}
