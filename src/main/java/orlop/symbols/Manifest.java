package orlop.symbols;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code manifest.json}: {@code { "symbols": [ … ] }}. */
final class Manifest {
    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(10)
                    .maxStringLength(1_000)
                    .maxNameLength(100)
                    .maxNumberLength(30)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Manifest() {}

    static List<ManifestEntry> read(byte[] bytes) throws SymbolRefusedException {
        JsonNode root = parse(bytes);
        JsonNode symbols = root.path("symbols");
        if (!symbols.isArray()) {
            throw new Place(SymbolFolder.MANIFEST, 0).refuse(Refusal.MANIFEST_FIELD, "symbols");
        }
        if (symbols.size() > Limits.FILES) {
            throw new Place(SymbolFolder.MANIFEST, 0).refuse(Refusal.TOO_MANY_FILES, Integer.toString(Limits.FILES));
        }
        List<ManifestEntry> entries = new ArrayList<>();
        for (JsonNode symbol : symbols) {
            entries.add(new ManifestFields(symbol).entry());
        }
        return entries;
    }

    private static JsonNode parse(byte[] bytes) throws SymbolRefusedException {
        try (JsonParser json = JSON.createParser(bytes)) {
            JsonToken first = json.nextToken();
            JsonNode root = first == null ? MissingNode.getInstance() : value(json, first);
            if (json.nextToken() != null) {
                int line = json.currentTokenLocation().getLineNr();
                throw new Place(SymbolFolder.MANIFEST, line).refuse(Refusal.MANIFEST_NOT_JSON, "");
            }
            return root;
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            throw new Place(SymbolFolder.MANIFEST, line).refuse(Refusal.MANIFEST_NOT_JSON, "");
        } catch (IOException e) {
            throw new Place(SymbolFolder.MANIFEST, 0).refuse(Refusal.MANIFEST_NOT_JSON, "");
        }
    }

    /** The library's own reader of trees would load three hundred classes at every start. Its depth is bounded. */
    private static JsonNode value(JsonParser json, JsonToken token) throws IOException {
        return switch (token) {
            case START_OBJECT -> {
                ObjectNode node = NODES.objectNode();
                while (json.nextToken() != JsonToken.END_OBJECT) {
                    String key = json.currentName();
                    node.set(key, value(json, json.nextToken()));
                }
                yield node;
            }
            case START_ARRAY -> {
                ArrayNode node = NODES.arrayNode();
                for (JsonToken t = json.nextToken(); t != JsonToken.END_ARRAY; t = json.nextToken()) {
                    node.add(value(json, t));
                }
                yield node;
            }
            case VALUE_STRING -> NODES.textNode(json.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> NODES.numberNode(json.getDoubleValue());
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(token == JsonToken.VALUE_TRUE);
            default -> NODES.nullNode();
        };
    }
}
