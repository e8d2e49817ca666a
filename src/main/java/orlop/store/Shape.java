package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Checks;
import orlop.drawing.Extras;
import orlop.drawing.Kind;
import orlop.drawing.Message;

/** One kind of object in the file: its keys, the record behind them, and where defaults come from. */
final class Shape {
    /** Makes the record that gives every default from the values that a file must give. */
    interface Template {
        /** @throws Checks.OutOfRange if one of the values is refused */
        Object of(Given given);
    }

    /** The values of the required leaves, by name. */
    interface Given {
        Object get(String name);

        default String text(String name) {
            return (String) get(name);
        }
    }

    /** More unknown keys in one object are no later version of the format but no drawing. */
    static final int MAX_UNKNOWN = 1_000;

    private final Plan plan;
    private final List<Leaf> leaves;
    private final Set<String> keys = new LinkedHashSet<>();
    private final Template template;
    private final @Nullable Kind kind;

    /** @param kind the kind whose word stands behind the id, or null for what is no component */
    Shape(Plan plan, Template template, @Nullable Kind kind) {
        this.plan = plan;
        this.leaves = plan.leaves();
        this.template = template;
        this.kind = kind;
        for (Leaf leaf : leaves) {
            keys.addAll(leaf.keys());
        }
        if (kind != null) {
            keys.add(Shapes.KIND);
        }
    }

    /** The leaves in the order of the file. */
    List<Leaf> leaves() {
        return leaves;
    }

    /** The record of an object, with the defaults of the shape's own template. */
    Object read(JsonNode node) throws Trouble {
        return read(node, template);
    }

    /** The record of an object. */
    Object read(JsonNode node, Template defaults) throws Trouble {
        ObjectNode object = object(node);
        Extras extras = extras(object, keys);
        IdentityHashMap<Leaf, @Nullable Object> values = new IdentityHashMap<>();
        for (Leaf leaf : leaves) {
            if (leaf.standsIn(object)) {
                values.put(leaf, leaf.read(object));
            } else if (leaf.required()) {
                throw Trouble.of(
                        "store.missing", leaf.name().equals(Leaf.Systems.SEVERAL) ? Leaf.Systems.ONE : leaf.name());
            }
        }
        try {
            return plan.build(values, defaults.of(name -> given(values, name)), extras);
        } catch (Checks.OutOfRange e) {
            Trouble t = Trouble.range(e, e.field());
            throw object.has(e.field()) ? t.within(e.field()) : t;
        }
    }

    private Object given(IdentityHashMap<Leaf, @Nullable Object> values, String name) {
        Object value = values.get(leaf(name));
        if (value == null) {
            throw new AssertionError("a template asks for what is not required: " + name);
        }
        return value;
    }

    private Leaf leaf(String name) {
        for (Leaf leaf : leaves) {
            if (leaf.name().equals(name)) {
                return leaf;
            }
        }
        throw new AssertionError("a template asks for what is not there: " + name);
    }

    /** Writes the record on one line. */
    void write(JsonOut out, Object record) {
        Object defaults = template.of(name -> given(record, name));
        out.open();
        plan.visit(record, defaults, (leaf, value, defaultValue) -> {
            leaf.write(out, value, defaultValue);
            if (kind != null && leaf.name().equals("id")) {
                out.key(Shapes.KIND).text(kind.word());
            }
        });
        extras(out, record);
        out.close();
    }

    /** Required leaves stand in the record itself, not in a record inside it. */
    private Object given(Object record, String name) {
        Object value = Plan.get(leaf(name).accessor(), record);
        if (value == null) {
            throw new AssertionError("a required value is never null: " + name);
        }
        return value;
    }

    private void extras(JsonOut out, Object record) {
        for (Plan.Part part : plan.parts()) {
            if (part instanceof Plan.Keep k && Plan.get(k.accessor(), record) instanceof Extras extras) {
                write(out, extras);
            }
        }
    }

    /** Writes unknown keys as they were. */
    static void write(JsonOut out, Extras extras) {
        extras.json().forEach((key, json) -> out.key(key).raw(json));
    }

    /** The keys of an object that are not known. One that looks like a misspelt known key is trouble. */
    static Extras extras(ObjectNode object, Set<String> known) throws Trouble {
        Map<String, String> unknown = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> e : object.properties()) {
            String key = e.getKey();
            if (!known.contains(key)) {
                String meant = Spelling.meant(key, known).orElse(null);
                if (meant != null) {
                    throw Trouble.of("store.misspelt", Message.quote(key), meant)
                            .withKey(key);
                }
                unknown.put(key, new JsonOut().tree(e.getValue()).toString());
                if (unknown.size() > MAX_UNKNOWN) {
                    throw Trouble.of("store.too-many-unknown", MAX_UNKNOWN).withKey(key);
                }
            }
        }
        return unknown.isEmpty() ? Extras.NONE : new Extras(unknown);
    }

    /** The node as an object. */
    static ObjectNode object(JsonNode node) throws Trouble {
        if (node instanceof ObjectNode object) {
            return object;
        }
        throw Codec.wrong("object", node);
    }
}
