package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A study's JSON as paths and values: {@code cables/W1/currentA}. Lists of things go by their id, lists of words are
 * sorted, so that the order of the file leaves no trace.
 */
@SuppressWarnings("NullAway") // a null fails the test
final class FlatStudy {
    final Map<String, Object> values = new TreeMap<>();

    static FlatStudy of(JsonNode study) {
        FlatStudy flat = new FlatStudy();
        flat.put("", study);
        flat.values.remove("/residualA");
        return flat;
    }

    private void put(String path, JsonNode n) {
        if (n.isObject()) {
            n.properties().forEach(f -> {
                if (!f.getKey().equals("loops")) { // which spanning tree is a matter of order
                    put(path + "/" + f.getKey(), f.getValue());
                }
            });
        } else if (n.isArray()) {
            list(path, n);
        } else if (n.isNumber()) {
            values.put(path, n.asDouble());
        } else {
            values.put(path, n.asText());
        }
    }

    private void list(String path, JsonNode list) {
        List<String> words = new ArrayList<>();
        for (JsonNode n : list) {
            if (n.isObject()) {
                put(free(path + "/" + key(path, n)), n);
            } else {
                words.add(n.asText());
            }
        }
        words.sort(null);
        values.put(path, list.size() + (words.isEmpty() ? "" : " " + words));
    }

    private String free(String path) {
        String free = path;
        for (int n = 2; values.containsKey(free + "#"); n++) {
            free = path + "#" + n;
        }
        values.put(free + "#", "");
        return free;
    }

    private static String key(String path, JsonNode n) {
        if (path.endsWith("/findings")) {
            return n.get("rule").asText() + " " + n.get("place");
        }
        if (path.endsWith("/islands")) {
            List<String> sources = new ArrayList<>();
            n.get("sources").forEach(s -> sources.add(s.asText()));
            sources.sort(null);
            return sources.toString();
        }
        return n.has("source") ? n.get("source").asText() : n.get("id").asText();
    }

    /** Without the paths that match. */
    FlatStudy without(String pattern) {
        values.keySet().removeIf(k -> k.matches(pattern));
        return this;
    }

    /** With every path and every text changed in the same way. */
    FlatStudy renamed(UnaryOperator<String> rename) {
        FlatStudy other = new FlatStudy();
        values.forEach((k, v) -> other.values.put(rename.apply(k), v instanceof String s ? rename.apply(s) : v));
        return other;
    }

    /** The number at a path. */
    double number(String path) {
        if (values.get(path) instanceof Double d) {
            return d;
        }
        throw new AssertionError("no number at " + path);
    }

    void turn(String path) {
        values.computeIfPresent(path, (k, v) -> v instanceof Double d ? (Object) (0 - d) : v);
    }

    void exchange(String one, String two) {
        Map<String, Object> moved = new TreeMap<>();
        values.forEach((k, v) -> {
            if (k.startsWith(one) || k.startsWith(two)) {
                boolean first = k.startsWith(one);
                moved.put((first ? two : one) + k.substring((first ? one : two).length()), v);
            }
        });
        values.putAll(moved);
    }

    /** Every value is there in both, numbers equal to 1e-6 of themselves or 1e-7. */
    void isSameAs(FlatStudy expected, String what) {
        List<String> differences = new ArrayList<>();
        expected.values.forEach((k, v) -> {
            if (!same(v, values.get(k))) {
                differences.add(k + ": " + v + " became " + values.get(k));
            }
        });
        for (String k : values.keySet()) {
            if (!expected.values.containsKey(k)) {
                differences.add(k + ": new, " + values.get(k));
            }
        }
        assertThat(differences).as(what).isEmpty();
    }

    private static boolean same(Object a, @Nullable Object b) {
        if (a instanceof Double x && b instanceof Double y) {
            return Math.abs(x - y) <= Math.max(1e-7, 1e-6 * Math.abs(x));
        }
        return a.equals(b);
    }
}
