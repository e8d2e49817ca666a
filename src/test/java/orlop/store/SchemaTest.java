package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

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
}
