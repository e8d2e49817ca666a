package orlop.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import orlop.drawing.Group;
import orlop.drawing.Kind;

/**
 * Makes the schema of the file format from the shapes, and so from the records of the drawing.
 *
 * <p>It says structure, types, words and which kind has which keys. Ranges stand in the records alone. Unknown keys are
 * allowed: they are kept.
 */
final class SchemaGenerator {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    /** The keys that every component has, in the order of the file. */
    private static final Set<String> COMMON = common();

    private final ObjectNode defs = NODES.objectNode();

    private SchemaGenerator() {}

    /** The schema as it is shipped. */
    static String text() {
        DefaultIndenter two = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(two);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(new SchemaGenerator().schema()) + "\n";
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private ObjectNode schema() {
        ObjectNode schema = NODES.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:orlop:schema:1");
        schema.put("title", "Orlop drawing, format 1");
        schema.put("type", "object");
        schema.putArray("required").add(Section.VERSION);
        ObjectNode properties = schema.putObject("properties");
        properties.putObject(Section.VERSION).put("const", FormatVersion.CURRENT);
        properties.set(Section.VESSEL, object(Shapes.VESSEL));
        list(properties, Section.SYSTEMS, object(Shapes.SYSTEM));
        list(properties, Section.CONDITIONS, object(Shapes.CONDITION));
        list(properties, Section.LOCATIONS, object(Shapes.LOCATION));
        list(properties, Section.SHEETS, object(Shapes.SHEET));
        list(properties, Section.COMPONENTS, component());
        list(properties, Section.CABLES, object(Shapes.CABLE));
        list(properties, Section.LINKS, object(Shapes.LINK));
        list(properties, Section.CABLEWAYS, object(Shapes.CABLEWAY));
        list(properties, Section.NOTES, object(Shapes.NOTE));
        list(properties, Section.MEASUREMENTS, object(Shapes.MEASUREMENT));
        list(properties, Section.ACCEPTED, object(Shapes.ACCEPTANCE));
        list(properties, Section.DAY_PLANS, object(Shapes.DAY_PLAN));
        schema.set("$defs", defs);
        return schema;
    }

    private static void list(ObjectNode properties, Section<?> section, ObjectNode item) {
        properties.putObject(section.key()).put("type", "array").set("items", item);
    }

    /** A component: the common keys, then by its group, then by its kind: a long row of ifs would be slow. */
    private ObjectNode component() {
        Shape any = Shapes.component(Kind.JUNCTION);
        ObjectNode schema = object(any);
        ((ArrayNode) schema.get("required")).add(Shapes.KIND);
        ObjectNode properties = (ObjectNode) schema.get("properties");
        properties.set(
                Shapes.KIND,
                words(List.of(Kind.values()).stream().map(Kind::word).toList()));
        ArrayNode oneSystem = schema.putArray("oneOf");
        oneSystem.addObject().putArray("required").add(Leaf.Systems.ONE);
        oneSystem.addObject().putArray("required").add(Leaf.Systems.SEVERAL);
        ArrayNode groups = schema.putArray("allOf");
        for (Group group : Group.values()) {
            List<Kind> kinds = List.of(Kind.values()).stream()
                    .filter(k -> k.group() == group)
                    .toList();
            ObjectNode when = groups.addObject();
            kindIs(when, words(kinds.stream().map(Kind::word).toList()));
            when.putObject("then").put("$ref", "#/$defs/group-" + group.word());
            group(group, kinds);
        }
        return schema;
    }

    private void group(Group group, List<Kind> kinds) {
        ArrayNode branches = defs.putObject("group-" + group.word()).putArray("allOf");
        for (Kind kind : kinds) {
            ObjectNode properties = particulars(kind);
            if (!properties.isEmpty()) {
                ObjectNode when = branches.addObject();
                kindIs(when, NODES.objectNode().put("const", kind.word()));
                when.putObject("then").put("$ref", "#/$defs/" + kind.word());
                defs.putObject(kind.word()).set("properties", properties);
            }
        }
    }

    private static void kindIs(ObjectNode when, ObjectNode rule) {
        when.putObject("if").putObject("properties").set(Shapes.KIND, rule);
    }

    private static ObjectNode particulars(Kind kind) {
        ObjectNode properties = NODES.objectNode();
        for (Leaf leaf : Shapes.component(kind).leaves()) {
            if (leaf instanceof Leaf.Single s && !COMMON.contains(s.name())) {
                properties.set(s.name(), value(s.codec(), s.nullable()));
            }
        }
        return properties;
    }

    private static ObjectNode object(Shape shape) {
        ObjectNode schema = NODES.objectNode();
        schema.put("type", "object");
        ArrayNode required = NODES.arrayNode();
        ObjectNode properties = NODES.objectNode();
        for (Leaf leaf : shape.leaves()) {
            if (leaf instanceof Leaf.Single s) {
                properties.set(s.name(), value(s.codec(), s.nullable()));
                if (s.required()) {
                    required.add(s.name());
                }
            } else {
                properties.set(Leaf.Systems.ONE, value(new Codec.Text(), false));
                ObjectNode several = value(Leaf.Systems.LIST, false);
                properties.set(Leaf.Systems.SEVERAL, several.put("minItems", 1).put("maxItems", 6));
            }
        }
        if (!required.isEmpty()) {
            schema.set("required", required);
        }
        schema.set("properties", properties);
        return schema;
    }

    private static ObjectNode value(Codec codec, boolean nullable) {
        if (codec instanceof Codec.Word w) {
            ObjectNode words = words(w.constants().keySet());
            if (nullable) {
                ((ArrayNode) words.get("enum")).addNull();
            }
            return words;
        }
        if (codec instanceof Codec.Part p) {
            return object(p.shape());
        }
        ObjectNode schema = NODES.objectNode();
        List<String> types = new ArrayList<>(types(codec));
        if (nullable) {
            types.add("null");
        }
        if (types.size() == 1) {
            schema.put("type", types.get(0));
        } else {
            types.forEach(schema.putArray("type")::add);
        }
        return refined(schema, codec);
    }

    private static ObjectNode refined(ObjectNode schema, Codec codec) {
        if (codec instanceof Codec.Area) {
            schema.put("pattern", "^" + Codec.Area.AUTO + "$");
        } else if (codec instanceof Codec.End) {
            schema.put("pattern", "^.+\\.[^.]+$");
        } else if (codec instanceof Codec.Spot) {
            schema.putObject("items").put("type", "number");
            schema.put("minItems", 2).put("maxItems", 2);
        } else if (codec instanceof Codec.Steps) {
            ObjectNode pair = schema.putObject("items").put("type", "array");
            pair.putObject("items").put("type", "number");
            pair.put("minItems", 2).put("maxItems", 2);
            schema.put("minItems", 1).put("maxItems", 100);
        } else if (codec instanceof Codec.Items i) {
            schema.set("items", value(i.item(), false));
        } else if (codec instanceof Codec.Table t) {
            schema.set("additionalProperties", value(t.value(), false));
        }
        return schema;
    }

    private static List<String> types(Codec codec) {
        if (codec instanceof Codec.Area) {
            return List.of("number", "string");
        }
        if (codec instanceof Codec.Items || codec instanceof Codec.Spot || codec instanceof Codec.Steps) {
            return List.of("array");
        }
        return List.of(new TreeMap<>(java.util.Map.of(
                        Codec.Text.class.getName(), "string",
                        Codec.End.class.getName(), "string",
                        Codec.Decimal.class.getName(), "number",
                        Codec.Whole.class.getName(), "integer",
                        Codec.Flag.class.getName(), "boolean",
                        Codec.Table.class.getName(), "object"))
                .get(codec.getClass().getName()));
    }

    private static ObjectNode words(Collection<String> words) {
        ObjectNode schema = NODES.objectNode();
        words.forEach(schema.putArray("enum")::add);
        return schema;
    }

    private static Set<String> common() {
        Set<String> common = new java.util.LinkedHashSet<>();
        Shapes.component(Kind.JUNCTION).leaves().forEach(l -> common.addAll(l.keys()));
        return common;
    }
}
