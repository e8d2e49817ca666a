package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import orlop.drawing.Drawing;
import orlop.drawing.Kind;

class SchemaTest {
    /** {@code -Dorlop.schema.rewrite=true} writes the shipped schema anew. */
    private static final boolean REWRITE = Boolean.getBoolean("orlop.schema.rewrite");

    @Test
    void the_shipped_schema_is_the_generated_one() throws IOException {
        if (REWRITE) {
            Files.writeString(Path.of("src/main/resources" + SchemaGate.RESOURCE), SchemaGenerator.text());
        }
        try (InputStream in = SchemaGate.class.getResourceAsStream(SchemaGate.RESOURCE)) {
            assertThat(in).as("shipped schema").isNotNull();
            String shipped = REWRITE
                    ? Files.readString(Path.of("src/main/resources" + SchemaGate.RESOURCE))
                    : new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(shipped).isEqualTo(SchemaGenerator.text());
        }
    }

    @Test
    void the_schema_is_a_schema_by_the_rules_of_its_draft() throws IOException {
        Schema rules = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertThat(rules.validate(SchemaGenerator.text(), InputFormat.JSON)).isEmpty();
        assertThat(rules.validate("{\"type\": \"nothing\"}", InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void what_is_written_passes_the_schema() throws Trouble {
        SchemaGate.check(tree(Specimens.everything()));
        SchemaGate.check(tree(RealisticDrawing.make()));
        SchemaGate.check(tree(Drawing.empty("")));
    }

    @Test
    void each_kind_has_its_own_keys_in_the_schema() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(SchemaGenerator.text());
        for (Kind kind : Kind.values()) {
            Set<String> keys = new TreeSet<>();
            schema.at("/$defs/" + kind.word() + "/properties").fieldNames().forEachRemaining(keys::add);
            Set<String> expected = new TreeSet<>();
            for (var c : kind.defaults().getClass().getRecordComponents()) {
                expected.add(c.getName());
            }
            assertThat(keys).as(kind.word()).isEqualTo(expected);
        }
    }

    private static JsonNode tree(Drawing drawing) throws Trouble {
        return JsonTree.read(new String(DrawingFile.write(drawing), StandardCharsets.UTF_8).toCharArray());
    }
}
