package orlop.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Changes to a drawing file that leave the vessel as it is. Each works on a copy. */
final class FileChanges {
    private static final Set<String> FREE_TEXT = Set.of("name", "title", "text", "reason", "by");

    private FileChanges() {}

    static ObjectNode copy(JsonNode file) {
        return file.deepCopy();
    }

    static ArrayNode list(JsonNode file, String field) {
        JsonNode list = file.get(field);
        return list == null ? new ObjectMapper().createArrayNode() : (ArrayNode) list;
    }

    /** New tags for all components and cables, in an order of their own. */
    static Map<String, String> newTags(JsonNode file) {
        Map<String, String> tags = new LinkedHashMap<>();
        int n = 900;
        for (String field : new String[] {"components", "cables"}) {
            for (JsonNode c : list(file, field)) {
                tags.put(c.get("id").asText(), "ZQ" + n--);
            }
        }
        return tags;
    }

    /** Puts the new tags for the old wherever they stand as words. */
    static UnaryOperator<String> renaming(Map<String, String> tags) {
        java.util.regex.Pattern word = java.util.regex.Pattern.compile("[\\p{L}\\p{N}_-]+");
        return text -> word.matcher(text).replaceAll(m -> tags.getOrDefault(m.group(), m.group()));
    }

    static ObjectNode renamed(JsonNode file, Map<String, String> tags) {
        return (ObjectNode) renamed(file, "", renaming(tags));
    }

    private static JsonNode renamed(JsonNode n, String field, UnaryOperator<String> rename) {
        ObjectMapper json = new ObjectMapper();
        if (n.isObject()) {
            ObjectNode changed = json.createObjectNode();
            n.properties()
                    .forEach(f -> changed.set(rename.apply(f.getKey()), renamed(f.getValue(), f.getKey(), rename)));
            return changed;
        }
        if (n.isArray()) {
            ArrayNode changed = json.createArrayNode();
            n.forEach(e -> changed.add(renamed(e, field, rename)));
            return changed;
        }
        return n.isTextual() && !FREE_TEXT.contains(field)
                ? json.getNodeFactory().textNode(rename.apply(n.asText()))
                : n;
    }

    static ObjectNode shuffled(JsonNode file, int seed, boolean conditions) {
        ObjectNode changed = copy(file);
        Random random = new Random(seed);
        for (String field : new String[] {"components", "cables", "links", "conditions"}) {
            if (changed.has(field) && (conditions || !field.equals("conditions"))) {
                List<JsonNode> all = new ArrayList<>();
                changed.get(field).forEach(all::add);
                Collections.shuffle(all, random);
                changed.putArray(field).addAll(all);
            }
        }
        return changed;
    }

    /** Every cable drawn from its other end. */
    static ObjectNode turned(JsonNode file) {
        ObjectNode changed = copy(file);
        for (JsonNode w : list(changed, "cables")) {
            ObjectNode cable = (ObjectNode) w;
            JsonNode from = cable.get("from");
            cable.set("from", cable.get("to"));
            cable.set("to", from);
            cable.remove("bends");
        }
        return changed;
    }

    /** Every cable in two halves that meet in a junction; {@code areas} by tag, for what was left to Orlop. */
    static ObjectNode halved(JsonNode file, Map<String, Double> areas) {
        ObjectNode changed = copy(file);
        ArrayNode halves = new ObjectMapper().createArrayNode();
        for (JsonNode w : list(changed, "cables")) {
            ObjectNode first = w.deepCopy();
            String id = w.get("id").asText();
            first.remove(List.of("bends", "labelAt"));
            Double area = areas.get(id);
            if (area != null) {
                first.put("areaMm2", area);
            }
            if (!first.has("lengthM") || area == null) {
                halves.add(first);
                continue;
            }
            for (String field : List.of(
                    "lengthM",
                    "returnLengthM",
                    "loopResistanceOhm",
                    "loopReactanceOhm",
                    "conductorResistanceOhm",
                    "conductorReactanceOhm",
                    "returnResistanceOhm",
                    "returnReactanceOhm",
                    "peResistanceOhm")) {
                if (first.has(field)) {
                    first.put(field, first.get(field).asDouble() / 2);
                }
            }
            ObjectNode second = first.deepCopy();
            first.put("id", id + "-1").put("to", "J-" + id + ".a");
            second.put("id", id + "-2").put("from", "J-" + id + ".b");
            halves.add(first).add(second);
            junction(changed, "J-" + id, w.get("from").asText());
        }
        changed.set("cables", halves);
        return changed;
    }

    private static void junction(ObjectNode file, String id, String terminal) {
        add(file, id, "junction", terminal);
    }

    private static void add(ObjectNode file, String id, String kind, String terminal) {
        int dot = terminal.lastIndexOf('.');
        for (JsonNode c : list(file, "components")) {
            if (c.get("id").asText().equals(terminal.substring(0, dot))) {
                boolean second = c.has("systems") && terminal.endsWith(".2");
                JsonNode system = c.has("systems") ? c.get("systems").get(second ? 1 : 0) : c.get("system");
                if (c.has("systems") && c.get("kind").asText().equals("inverter-charger")) {
                    system = c.get("systems").get(terminal.endsWith(".1") ? 0 : 1);
                }
                ObjectNode added = new ObjectMapper().createObjectNode();
                added.put("id", id).put("kind", kind).set("sheet", c.get("sheet"));
                added.set("at", c.get("at"));
                added.set("system", system);
                list(file, "components").add(added);
                return;
            }
        }
        throw new IllegalArgumentException("nothing at " + terminal);
    }

    /** Every link in two over a terminal: a chain that contracts to the same point. */
    static ObjectNode chained(JsonNode file) {
        ObjectNode changed = copy(file);
        ArrayNode chains = new ObjectMapper().createArrayNode();
        int n = 0;
        for (JsonNode l : list(changed, "links")) {
            ObjectNode first = l.deepCopy();
            first.remove("id");
            if (first.has("lengthM")) {
                first.put("lengthM", first.get("lengthM").asDouble() / 2);
            }
            ObjectNode second = first.deepCopy();
            n++;
            first.put("to", "XT-" + n + ".1");
            second.put("from", "XT-" + n + ".2");
            chains.add(first).add(second);
            add(changed, "XT-" + n, "terminal", l.get("from").asText());
        }
        changed.set("links", chains);
        return changed;
    }

    /** All voltages and currents times a factor, all powers times its square, resistances as they are. */
    static ObjectNode scaled(JsonNode file, double factor) {
        Map<String, Double> by = Map.of(
                "nominalV",
                factor,
                "emfV",
                factor,
                "setV",
                factor,
                "dropV",
                factor,
                "currentA",
                factor,
                "limitA",
                factor,
                "powerW",
                factor * factor,
                "idleW",
                factor * factor);
        ObjectNode changed = copy(file);
        for (String field : new String[] {"systems", "components"}) {
            for (JsonNode c : list(changed, field)) {
                by.forEach((key, times) -> {
                    if (c.has(key)) {
                        ((ObjectNode) c).put(key, c.get(key).asDouble() * times);
                    }
                });
            }
        }
        return changed;
    }
}
