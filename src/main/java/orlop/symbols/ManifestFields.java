package orlop.symbols;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads the fields of one entry. A wrong one is refused as {@code NAME.FIELD}, or {@code ?.name} without a name. */
final class ManifestFields {
    private static final Set<String> KNOWN = Set.of(
            "name", "file", "kind", "variants", "state", "terminals", "texts", "standard", "provenance", "words");
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,79}");
    private static final int MOST = 100;
    /** Text of a symbol without words of its own: its name. */
    private static final String OWN_TITLE = "symbols.title.own";

    private final JsonNode entry;
    private final String name;

    ManifestFields(JsonNode entry) {
        this.entry = entry;
        this.name = entry.path("name").asText("");
    }

    ManifestEntry entry() throws SymbolRefusedException {
        for (var field : entry.properties()) {
            if (!KNOWN.contains(field.getKey())) {
                throw wrong(field.getKey());
            }
        }
        return new ManifestEntry(
                plain("name"),
                plain("file"),
                plain("kind"),
                variants(),
                entry.has("state") ? plain("state") : "",
                terminals(),
                textPlaces(),
                text("standard", ""),
                text("provenance", "own"),
                text("words", OWN_TITLE));
    }

    /** A word that can stand in a file name: no path, no blank. */
    private String plain(String field) throws SymbolRefusedException {
        return plain(entry.path(field), field);
    }

    private String plain(JsonNode node, String field) throws SymbolRefusedException {
        if (!node.isTextual() || !PLAIN.matcher(node.textValue()).matches()) {
            throw wrong(field);
        }
        return node.textValue();
    }

    private String text(String field, String ifMissing) throws SymbolRefusedException {
        JsonNode node = entry.path(field);
        if (node.isMissingNode()) {
            return ifMissing;
        }
        if (!node.isTextual()) {
            throw wrong(field);
        }
        return node.textValue();
    }

    private List<String> variants() throws SymbolRefusedException {
        List<String> variants = new ArrayList<>();
        for (JsonNode node : list("variants")) {
            variants.add(plain(node, "variants"));
        }
        return variants;
    }

    private Map<String, Terminal> terminals() throws SymbolRefusedException {
        JsonNode node = entry.path("terminals");
        if (!node.isObject() || node.size() > MOST) {
            throw wrong("terminals");
        }
        Map<String, Terminal> terminals = new LinkedHashMap<>();
        for (var field : node.properties()) {
            terminals.put(field.getKey(), terminal(field.getKey(), field.getValue()));
        }
        return terminals;
    }

    private Terminal terminal(String id, JsonNode node) throws SymbolRefusedException {
        String field = "terminals." + id;
        if (!PLAIN.matcher(id).matches() || !node.isArray() || node.size() != 3) {
            throw wrong(field);
        }
        return new Terminal(
                id, mm(node.get(0), field), mm(node.get(1), field), word(Direction.class, node.get(2), field));
    }

    private List<TextPlace> textPlaces() throws SymbolRefusedException {
        List<TextPlace> places = new ArrayList<>();
        for (JsonNode node : list("texts")) {
            JsonNode at = node.path("at");
            if (!at.isArray() || at.size() != 2 || node.size() != 2) {
                throw wrong("texts");
            }
            places.add(new TextPlace(
                    word(TextPlace.Side.class, node.path("side"), "texts"),
                    mm(at.get(0), "texts"),
                    mm(at.get(1), "texts")));
        }
        if (places.isEmpty()) {
            throw wrong("texts");
        }
        return places;
    }

    private JsonNode list(String field) throws SymbolRefusedException {
        JsonNode node = entry.path(field);
        if (!node.isMissingNode() && (!node.isArray() || node.size() > MOST)) {
            throw wrong(field);
        }
        return node;
    }

    private double mm(JsonNode node, String field) throws SymbolRefusedException {
        double value = node.isNumber() ? node.doubleValue() : Double.NaN;
        if (!Double.isFinite(value) || Math.abs(value) > Limits.COORDINATE_MM) {
            throw wrong(field);
        }
        return value;
    }

    private <E extends Enum<E>> E word(Class<E> type, JsonNode node, String field) throws SymbolRefusedException {
        for (E constant : type.getEnumConstants()) {
            if (constant.name().toLowerCase(Locale.ROOT).equals(node.textValue())) {
                return constant;
            }
        }
        throw wrong(field);
    }

    private SymbolRefusedException wrong(String field) {
        return new Place(SymbolFolder.MANIFEST, 0)
                .refuse(Refusal.MANIFEST_FIELD, (name.isEmpty() ? "?" : name) + "." + field);
    }
}
