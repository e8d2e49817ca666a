package orlop.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import orlop.drawing.Message;

/**
 * Holds a tree against the shipped schema. {@link DrawingReader} has looked at the same tree before and explains
 * better; the schema is the promise to other programs, and what it forbids does not come in even if the reader would
 * let it pass.
 */
final class SchemaGate {
    static final String RESOURCE = "/orlop/store/orlop-1.schema.json";

    private SchemaGate() {}

    private static final class Holder {
        private static final Schema SCHEMA = load();
    }

    private static Schema load() {
        try (InputStream in = SchemaGate.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new AssertionError("the schema is not shipped: " + RESOURCE);
            }
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(in, InputFormat.JSON);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + RESOURCE, e);
        }
    }

    /** @throws Trouble for the first thing that the schema forbids */
    static void check(JsonNode root) throws Trouble {
        List<Error> errors = Holder.SCHEMA.validate(root);
        if (!errors.isEmpty()) {
            throw explained(errors.get(0));
        }
    }

    private static Trouble explained(Error e) {
        Trouble t = switch (e.getKeyword()) {
            case "required" -> Trouble.of("store.missing", String.valueOf(e.getProperty()));
            case "type", "enum", "const" -> Trouble.of("store.schema-value", rule(e), Codec.shown(e.getInstanceNode()));
            default -> Trouble.of("store.schema", e.getKeyword());
        };
        NodePath path = e.getInstanceLocation();
        for (int i = path.getNameCount() - 1; i >= 0; i--) {
            t.within(path.getElement(i));
        }
        return t;
    }

    /** What the schema wants in this place, as it stands there. */
    private static String rule(Error e) {
        JsonNode wanted = e.getSchemaNode();
        return wanted == null
                ? e.getKeyword()
                : Message.quote(new JsonOut().tree(wanted).toString());
    }
}
