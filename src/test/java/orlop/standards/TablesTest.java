package orlop.standards;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every shipped table, row by row. */
class TablesTest {
    static Stream<String> tables() throws IOException, URISyntaxException {
        Path folder = Path.of(Objects.requireNonNull(CsvTable.class.getResource("conductors.csv"))
                        .toURI())
                .resolveSibling("");
        try (Stream<Path> files = Files.list(folder)) {
            return files
                    .map(f -> f.getFileName().toString())
                    .filter(n -> n.endsWith(".csv"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @Test
    void all_tables_are_found() throws IOException, URISyntaxException {
        assertThat(tables()).hasSize(21);
    }

    @ParameterizedTest
    @MethodSource("tables")
    void no_row_is_without_provenance_and_source(String name) {
        for (CsvRow row : CsvTable.load(name).rows()) {
            assertThat(row.provenance()).isNotNull();
            assertThat(row.source()).isNotBlank();
        }
    }
}
