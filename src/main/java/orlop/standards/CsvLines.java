package orlop.standards;

import java.util.ArrayList;
import java.util.List;

/** Splits one line of CSV into its fields: commas between, quotes around a field with commas, quotes doubled inside. */
final class CsvLines {
    private CsvLines() {}

    /**
     * The fields of a line; a quoted field may not run over its end.
     *
     * @throws IllegalArgumentException saying what is wrong with the quotes
     */
    static List<String> split(String line) {
        List<String> fields = new ArrayList<>();
        int at = 0;
        do {
            StringBuilder field = new StringBuilder();
            at = isQuote(line, at) ? quoted(line, at, field) : plain(line, at, field);
            fields.add(field.toString());
            at++; // over the comma, or past the end
        } while (at <= line.length());
        return fields;
    }

    private static boolean isQuote(String line, int at) {
        return at < line.length() && line.charAt(at) == '"';
    }

    /** Reads up to the next comma; returns its place, or the length. */
    private static int plain(String line, int start, StringBuilder field) {
        int comma = line.indexOf(',', start);
        int end = comma < 0 ? line.length() : comma;
        String text = line.substring(start, end);
        if (text.indexOf('"') >= 0) {
            throw new IllegalArgumentException("a quote inside a field that does not begin with one: " + text);
        }
        field.append(text.strip());
        return end;
    }

    /** Reads a quoted field; returns the place of the comma behind it, or the length. */
    private static int quoted(String line, int start, StringBuilder field) {
        int at = start + 1;
        while (true) {
            int quote = line.indexOf('"', at);
            if (quote < 0) {
                throw new IllegalArgumentException("a quote is not closed: " + line.substring(start));
            }
            field.append(line, at, quote);
            if (!isQuote(line, quote + 1)) {
                return afterQuote(line, quote + 1);
            }
            field.append('"');
            at = quote + 2;
        }
    }

    private static int afterQuote(String line, int at) {
        if (at < line.length() && line.charAt(at) != ',') {
            throw new IllegalArgumentException("text behind a closing quote: " + line.substring(at));
        }
        return at;
    }
}
