package orlop.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How values are written in our JSON: a number that is not known, or not finite, is null. */
final class JsonValues {
    private JsonValues() {}

    /** Something that writes JSON. */
    interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    /** The text that {@code body} writes, indented, lines ended by a line feed on every machine. */
    static String text(Body body) throws IOException {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
            printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
            printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
            json.setPrettyPrinter(printer);
            body.write(json);
        }
        return out + "\n";
    }

    static void number(JsonGenerator json, String field, @Nullable Double value) throws IOException {
        if (value == null || !Double.isFinite(value)) {
            json.writeNullField(field);
        } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            json.writeNumberField(field, value.longValue());
        } else {
            json.writeNumberField(field, value);
        }
    }

    static void text(JsonGenerator json, String field, @Nullable String value) throws IOException {
        if (value == null) {
            json.writeNullField(field);
        } else {
            json.writeStringField(field, value);
        }
    }

    /** A constant as a word: {@code NOTHING_FITS} is {@code nothing-fits}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
