package orlop.store;

import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Iterator;
import java.util.Map;

/** Writes JSON: numbers as short as they can be, one space after colon and comma, strings that survive any encoding. */
final class JsonOut {
    private final StringBuilder out = new StringBuilder();
    private boolean first = true;

    /** Starts an object on the present line. */
    JsonOut open() {
        out.append("{ ");
        first = true;
        return this;
    }

    /** Ends an object. */
    JsonOut close() {
        out.append(first ? "}" : " }");
        first = false;
        return this;
    }

    /** A key; a comma stands before it unless it is the first. */
    JsonOut key(String key) {
        if (!first) {
            out.append(", ");
        }
        first = false;
        text(key);
        out.append(": ");
        return this;
    }

    /** Text that is JSON already, or space around it. */
    JsonOut raw(String json) {
        out.append(json);
        return this;
    }

    JsonOut text(String s) {
        out.append('"');
        for (int i = 0; i < s.length(); i++) {
            character(s, i);
        }
        out.append('"');
        return this;
    }

    private void character(String s, int i) {
        char c = s.charAt(i);
        switch (c) {
            case '"', '\\' -> out.append('\\').append(c);
            case '\n' -> out.append("\\n");
            case '\t' -> out.append("\\t");
            default -> {
                if (Character.isISOControl(c) || c == '\uFEFF' || lone(s, i)) {
                    out.append("\\u").append(Integer.toHexString(0x10000 | c).substring(1));
                } else {
                    out.append(c);
                }
            }
        }
    }

    private static boolean lone(String s, int i) {
        char c = s.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == s.length() || !Character.isLowSurrogate(s.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(s.charAt(i - 1)));
    }

    /** @param v finite */
    JsonOut number(double v) {
        out.append(shortest(v));
        return this;
    }

    /** The shortest text that reads back as this very number: {@code 70}, {@code 2.5}, {@code 1e300}. */
    static String shortest(double v) {
        if (v == Math.rint(v) && Math.abs(v) < 1e15) {
            return Long.toString((long) v);
        }
        BigDecimal d = new BigDecimal(NumberOutput.toString(v, true)).stripTrailingZeros();
        boolean plain = d.scale() <= 20 && d.precision() - d.scale() <= 21;
        return plain ? d.toPlainString() : d.unscaledValue() + "e" + -d.scale();
    }

    /** Any tree on one line. */
    JsonOut tree(JsonNode node) {
        if (node.isObject()) {
            object(node);
        } else if (node.isArray()) {
            out.append('[');
            for (int i = 0; i < node.size(); i++) {
                out.append(i == 0 ? "" : ", ");
                tree(node.get(i));
            }
            out.append(']');
        } else if (node.isTextual()) {
            text(node.textValue());
        } else {
            out.append(node.isNumber() ? node.decimalValue().toString() : node.asText());
        }
        return this;
    }

    private void object(JsonNode node) {
        open();
        Iterator<Map.Entry<String, JsonNode>> fields = node.properties().iterator();
        while (fields.hasNext()) {
            Map.Entry<String, JsonNode> e = fields.next();
            key(e.getKey());
            tree(e.getValue());
        }
        close();
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
