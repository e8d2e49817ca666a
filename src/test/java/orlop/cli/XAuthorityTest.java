package orlop.cli;

import static java.nio.file.StandardOpenOption.APPEND;
import static java.nio.file.StandardOpenOption.CREATE;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class XAuthorityTest {
    private static final byte[] FIRST = {1, 1};
    private static final byte[] SECOND = {2, 2};
    private static final byte[] ANY = {3, 3};

    @TempDir
    private Path folder;

    /** Adds an entry of family 65535, "any host", as in Xau(3). */
    static void add(Path file, String number, byte[] cookie) throws IOException {
        try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(file, CREATE, APPEND))) {
            out.writeShort(65535);
            writeCounted(out, new byte[0]);
            writeCounted(out, number.getBytes(StandardCharsets.US_ASCII));
            writeCounted(out, "MIT-MAGIC-COOKIE-1".getBytes(StandardCharsets.US_ASCII));
            writeCounted(out, cookie);
        }
    }

    private static void writeCounted(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeShort(bytes.length);
        out.write(bytes);
    }

    @Test
    void gives_the_keys_of_the_display_and_those_for_any() throws IOException {
        Path file = folder.resolve("keys");
        add(file, "0", FIRST);
        add(file, "1", SECOND);
        add(file, "", ANY);

        assertThat(XAuthority.cookies(file, 1)).containsExactly(SECOND, ANY);
    }

    @Test
    void a_damaged_file_gives_what_could_be_read() throws IOException {
        Path file = folder.resolve("keys");
        add(file, "0", FIRST);
        add(file, "0", SECOND);
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length - 1));

        assertThat(XAuthority.cookies(file, 0)).containsExactly(FIRST);
    }

    @Test
    void a_missing_file_gives_none() {
        assertThat(XAuthority.cookies(folder.resolve("nowhere"), 0)).isEmpty();
    }

    @Test
    void the_file_is_named_by_the_environment_or_lies_at_home() {
        assertThat(XAuthority.file(Map.of("XAUTHORITY", "/run/keys", "HOME", "/home/anna")))
                .isEqualTo(Path.of("/run/keys"));
        assertThat(XAuthority.file(Map.of("HOME", "/home/anna"))).isEqualTo(Path.of("/home/anna/.Xauthority"));
    }
}
