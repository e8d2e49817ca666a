package orlop.symbols;

import java.util.Map;
import java.util.regex.Pattern;

/** Reads the numbers of an SVG file: plain decimals, finite, of a sensible size. No units but the root's own mm. */
final class Numbers {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?");
    private static final Pattern GAP = Pattern.compile("\\s*,\\s*|\\s+");

    private Numbers() {}

    static double number(String text, Place place) throws SymbolRefusedException {
        String trimmed = text.strip();
        if (!NUMBER.matcher(trimmed).matches()) {
            throw place.refuse(Refusal.NUMBER, text);
        }
        return checked(Double.parseDouble(trimmed), text, place);
    }

    /** The value itself, refused when no coordinate could be that great. */
    static double checked(double value, String text, Place place) throws SymbolRefusedException {
        if (!Double.isFinite(value) || Math.abs(value) > Limits.COORDINATE_MM) {
            throw place.refuse(Refusal.NUMBER, text);
        }
        return value;
    }

    /** The attribute's number; SVG's default 0 where it is missing. */
    static double attribute(Map<String, String> attributes, String name, Place place) throws SymbolRefusedException {
        String text = attributes.get(name);
        return text == null ? 0 : number(text, place);
    }

    /** As {@link #attribute}, refused when negative: a radius, a width. */
    static double size(Map<String, String> attributes, String name, Place place) throws SymbolRefusedException {
        double value = attribute(attributes, name, place);
        if (value < 0) {
            throw place.refuse(Refusal.NUMBER, name + "=" + value);
        }
        return value;
    }

    static double[] list(String text, Place place) throws SymbolRefusedException {
        String trimmed = text.strip();
        if (trimmed.isEmpty()) {
            return new double[0];
        }
        String[] parts = GAP.split(trimmed, -1);
        double[] values = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            values[i] = number(parts[i], place);
        }
        return values;
    }
}
