package orlop.store;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Message;

/**
 * Finds the line and column of a path by reading the text once more. That costs only a file with a problem; keeping a
 * place for every value would cost every file.
 */
final class Places {
    private Places() {}

    /** A path in words: {@code components[3] FC2 · ratingA}. */
    static String words(List<Object> path, JsonNode root) {
        StringBuilder s = new StringBuilder();
        JsonNode at = root;
        for (Object step : path) {
            if (step instanceof Integer i) {
                s.append('[').append(i).append(']');
                at = at.path(i);
                JsonNode id = at.path("id");
                if (id.isTextual()) {
                    s.append(' ').append(Message.quote(id.asText()));
                }
            } else {
                s.append(s.length() == 0 ? "" : " · ").append(Message.quote(step.toString()));
                at = at.path(step.toString());
            }
        }
        return s.toString();
    }

    /** Line and column of the value at the end of the path, or of its key; of the last step that is there if not. */
    static int[] find(char[] text, List<Object> path, boolean key) {
        try (JsonParser p = JsonTree.parser(text)) {
            p.nextToken();
            JsonLocation found = p.currentTokenLocation();
            for (int i = 0; i < path.size(); i++) {
                JsonLocation next = step(p, path.get(i), key && i == path.size() - 1);
                if (next == null) {
                    break;
                }
                found = next;
            }
            return new int[] {found.getLineNr(), found.getColumnNr()};
        } catch (IOException e) {
            throw new AssertionError("the text has been read before", e);
        }
    }

    private static @Nullable JsonLocation step(JsonParser p, Object step, boolean key) throws IOException {
        return step instanceof Integer index ? item(p, index) : member(p, step.toString(), key);
    }

    private static @Nullable JsonLocation item(JsonParser p, int index) throws IOException {
        if (p.currentToken() != JsonToken.START_ARRAY) {
            return null;
        }
        int i = 0;
        for (JsonToken t = p.nextToken(); t != JsonToken.END_ARRAY; t = p.nextToken()) {
            if (i++ == index) {
                return p.currentTokenLocation();
            }
            p.skipChildren();
        }
        return null;
    }

    private static @Nullable JsonLocation member(JsonParser p, String name, boolean key) throws IOException {
        if (p.currentToken() != JsonToken.START_OBJECT) {
            return null;
        }
        for (JsonToken t = p.nextToken(); t != JsonToken.END_OBJECT; t = p.nextToken()) {
            JsonLocation atKey = p.currentTokenLocation();
            boolean found = name.equals(p.currentName());
            p.nextToken();
            if (found) {
                return key ? atKey : p.currentTokenLocation();
            }
            p.skipChildren();
        }
        return null;
    }
}
