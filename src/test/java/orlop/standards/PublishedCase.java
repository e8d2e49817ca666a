package orlop.standards;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** A check case from a published standard or book, read from {@code published.json}; its source stands in the file. */
public record PublishedCase(JsonNode inputs, JsonNode expected, JsonNode tolerance) {
    public static PublishedCase of(String id) {
        try (InputStream in =
                Objects.requireNonNull(PublishedCase.class.getResourceAsStream("/orlop/checks/published.json"))) {
            for (JsonNode one : new ObjectMapper().readTree(in)) {
                if (one.get("id").asText().equals(id)) {
                    return new PublishedCase(one.get("inputs"), one.get("expected"), one.get("tolerance"));
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException("published.json cannot be read", e);
        }
        throw new IllegalArgumentException("published.json has no case " + id);
    }

    /** An object's fields as numbers by name. */
    static Map<String, Double> numbers(JsonNode object) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        object.properties().forEach(e -> numbers.put(e.getKey(), e.getValue().asDouble()));
        if (numbers.isEmpty()) {
            throw new IllegalArgumentException("no numbers in " + object);
        }
        return numbers;
    }
}
