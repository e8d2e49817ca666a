package orlop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.testing.Outcome;

/** The same drawing gives the same file in two Javas that differ in language, time zone and character set. */
class SameBytesTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"svg", "pdf"})
    @Timeout(180)
    void two_javas_of_different_language_zone_and_charset_write_the_same_bytes(String ending) throws Exception {
        byte[] first = export("one." + ending, "en", "US", "UTC", "UTF-8");
        byte[] second = export("two." + ending, "tr", "TR", "Pacific/Chatham", "ISO-8859-1");

        assertThat(first.length).isGreaterThan(10_000);
        assertThat(second).isEqualTo(first);
    }

    private byte[] export(String name, String language, String country, String zone, String charset) throws Exception {
        Path out = folder.resolve(name);
        List<String> command = new ArrayList<>(List.of(
                Outcome.java(),
                "-Duser.language=" + language,
                "-Duser.country=" + country,
                "-Duser.timezone=" + zone,
                "-Dfile.encoding=" + charset,
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "export",
                Path.of("sample-drawings", "pilot-cutter.orlop")
                        .toAbsolutePath()
                        .toString(),
                "-o",
                out.toString()));
        Outcome outcome = Outcome.of(command, Path.of("").toAbsolutePath(), Map.of());
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.exitCode()).isZero();
        return Files.readAllBytes(out);
    }
}
