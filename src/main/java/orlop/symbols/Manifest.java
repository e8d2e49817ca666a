package orlop.symbols;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code manifest.json}: {@code { "symbols": [ … ] }}. */
final class Manifest {
    private static final JsonMapper MAPPER = mapper();

    private Manifest() {}

    private static JsonMapper mapper() {
        StreamReadConstraints constraints = StreamReadConstraints.builder()
                .maxNestingDepth(10)
                .maxStringLength(1_000)
                .maxNameLength(100)
                .maxNumberLength(30)
                .build();
        return JsonMapper.builder(
                        JsonFactory.builder().streamReadConstraints(constraints).build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .build();
    }

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
        try {
            return MAPPER.readTree(bytes);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            throw new Place(SymbolFolder.MANIFEST, line).refuse(Refusal.MANIFEST_NOT_JSON, "");
        } catch (IOException e) {
            throw new Place(SymbolFolder.MANIFEST, 0).refuse(Refusal.MANIFEST_NOT_JSON, "");
        }
    }
}
