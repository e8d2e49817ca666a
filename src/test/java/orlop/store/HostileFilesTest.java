package orlop.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import orlop.drawing.Drawing;
import orlop.drawing.Soundness;

/** Whatever the bytes are: a sound drawing or one clear line, in bounded time. */
class HostileFilesTest {
    private static final Duration GENEROUS = Duration.ofMinutes(2);

    /** Reads the bytes; true if they are a sound drawing that can be written and read again. */
    private static boolean survives(byte[] bytes) {
        try {
            Drawing d = DrawingFile.load(bytes, "a.orlop");
            assertThat(Soundness.flaws(d)).isEmpty();
            assertThat(DrawingFile.load(DrawingFile.write(d), "a.orlop")).isEqualTo(d);
            return true;
        } catch (FileProblem p) {
            oneLine(p);
            return false;
        }
    }

    private static void oneLine(FileProblem p) {
        String line = p.getMessage();
        assertThat(line).matches("a\\.orlop:(\\d+:\\d+: )? ?[^\\n\\r]*: [^\\n\\r]+");
        assertThat(line).doesNotContain("store.", "drawing.", "Exception", "{0}", "{1}");
        assertThat(line.length()).isLessThan(1_000);
        if (p.line() > 0) {
            assertThat(p.column()).isPositive();
        }
    }

    private static FileProblem refused(String text) {
        FileProblem p = assertTimeoutPreemptively(
                GENEROUS,
                () -> catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(text.getBytes(UTF_8), "a.orlop")));
        assertThat(p).as("refused").isNotNull();
        oneLine(p);
        return p;
    }

    @Test
    void a_file_cut_off_at_any_97th_byte() {
        byte[] whole = DrawingFile.write(Specimens.everything());
        assertTimeoutPreemptively(GENEROUS, () -> {
            for (int end = 0; end < whole.length - 2; end += 97) {
                assertThat(survives(Arrays.copyOf(whole, end)))
                        .as("cut at %d", end)
                        .isFalse();
            }
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void five_hundred_mutations_of_a_file(long seed) {
        Random random = new Random(seed);
        List<byte[]> sources =
                List.of(DrawingFile.write(RealisticDrawing.make()), DrawingFile.write(Specimens.everything()));
        int[] survived = new int[1];
        assertTimeoutPreemptively(GENEROUS, () -> {
            for (int i = 0; i < 500; i++) {
                byte[] source = sources.get(i % sources.size());
                byte[] mutant = mutant(source, random);
                survived[0] += survives(mutant) ? 1 : 0;
            }
        });
        assertThat(survived[0]).as("both outcomes are seen").isBetween(5, 495);
    }

    private static byte[] mutant(byte[] source, Random random) {
        byte[] bytes = source.clone();
        int at = random.nextInt(bytes.length);
        int length = 1 + random.nextInt(40);
        return switch (random.nextInt(5)) {
            case 0 -> changed(bytes, at, random.nextInt(256));
            case 1 -> changed(bytes, at, bytes[at] ^ 1 << random.nextInt(8));
            case 2 -> join(bytes, 0, at, Math.min(bytes.length, at + length), bytes.length);
            case 3 -> join(bytes, 0, Math.min(bytes.length, at + length), at, bytes.length);
            default -> tokensSwapped(new String(bytes, UTF_8), random).getBytes(UTF_8);
        };
    }

    private static byte[] changed(byte[] bytes, int at, int value) {
        bytes[at] = (byte) value;
        return bytes;
    }

    private static byte[] join(byte[] bytes, int from, int to, int from2, int to2) {
        byte[] result = Arrays.copyOf(Arrays.copyOfRange(bytes, from, to), to - from + to2 - from2);
        System.arraycopy(bytes, from2, result, to - from, to2 - from2);
        return result;
    }

    private static String tokensSwapped(String text, Random random) {
        String[] tokens = text.split("(?<=[\\[\\]{},:])|(?=[\\[\\]{},:])", -1);
        int a = random.nextInt(tokens.length);
        int b = random.nextInt(tokens.length);
        String kept = tokens[a];
        tokens[a] = tokens[b];
        tokens[b] = kept;
        return String.join("", tokens);
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{\"a\":", "{\"orlop\":1,\"x\":["})
    void nesting_a_hundred_thousand_deep(String open) {
        assertThat(refused("{\"orlop\":1,\"x\":" + open.repeat(100_000))
                        .reason()
                        .key())
                .isEqualTo("store.too-deep");
    }

    @Test
    void a_file_of_a_hundred_megabytes_is_refused_by_its_size(@TempDir Path folder) throws IOException {
        Path big = folder.resolve("big.orlop");
        try (RandomAccessFile f = new RandomAccessFile(big.toFile(), "rw")) {
            f.setLength(100_000_000);
        }

        FileProblem p = assertTimeoutPreemptively(
                Duration.ofSeconds(2), () -> catchThrowableOfType(FileProblem.class, () -> DrawingFile.load(big)));

        assertThat(p.getMessage())
                .isEqualTo(
                        big
                                + ": the file has 96 MB, more than the 32 MB that a drawing can have: check that it is a drawing");
    }

    @Test
    void too_many_bytes_are_refused() {
        assertThat(catchThrowableOfType(
                                FileProblem.class,
                                () -> DrawingFile.load(new byte[DrawingFile.MAX_BYTES + 1], "a.orlop"))
                        .reason()
                        .key())
                .isEqualTo("store.too-big");
    }

    @Test
    void a_text_of_a_million_letters() {
        assertThat(refused("{\"orlop\":1,\"vessel\":{\"name\":\"" + "x".repeat(1_000_000) + "\"}}")
                        .reason()
                        .key())
                .isEqualTo("store.too-long");
        assertThat(refused("{\"orlop\":1,\"vessel\":{\"name\":\"" + "x".repeat(2_001) + "\"}}")
                        .reason()
                        .key())
                .isEqualTo("drawing.range.text");
        assertThat(refused("{\"orlop\":1,\"" + "x".repeat(1_000_000) + "\":1}")
                        .reason()
                        .key())
                .isEqualTo("store.too-long");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1e400",
                "-1e400",
                "1e-400",
                "1e99999999999",
                "-0e99999999999",
                "1e-99999999999",
                "NaN",
                "Infinity",
                "-Infinity",
                "0x10",
                "01",
                "+1",
                ".5",
                "1."
            })
    void numbers_that_are_none(String number) {
        String text = "{\"orlop\":1,\"vessel\":{\"name\":\"x\",\"ambientC\":" + number + ",\"zzz\":" + number + "}}";
        if (number.equals("-0e99999999999")) {
            assertThat(survives(text.getBytes(UTF_8))).as("it is zero").isTrue();
        } else {
            refused(text);
        }
    }

    @Test
    void a_number_of_a_hundred_thousand_digits() {
        String digits = "7".repeat(100_000);
        for (String number : List.of(digits, "0." + digits, "1e" + digits)) {
            assertThat(refused("{\"orlop\":1,\"x\":" + number + "}").reason().key())
                    .isEqualTo("store.too-long");
        }
    }

    @Test
    void more_values_than_a_drawing_can_have() {
        assertThat(refused("{\"orlop\":1,\"x\":[" + "[],".repeat(2_500_000) + "0]}")
                        .reason()
                        .key())
                .isEqualTo("store.too-long");
    }

    @Test
    void many_keys_that_all_hash_alike() {
        String keys = IntStream.range(0, 1 << 14)
                .mapToObj(i -> "\""
                        + IntStream.range(0, 14)
                                .mapToObj(b -> (i >> b & 1) == 0 ? "Aa" : "BB")
                                .collect(Collectors.joining())
                        + "\":0")
                .collect(Collectors.joining(","));
        boolean inside = assertTimeoutPreemptively(
                GENEROUS, () -> survives(("{\"orlop\":1,\"zzz\":{" + keys + "}}").getBytes(UTF_8)));
        assertThat(inside).as("kept with the unknown key that holds them").isTrue();
        assertThat(refused("{\"orlop\":1," + keys + "}").reason().key()).isEqualTo("store.too-many-unknown");
    }

    @Test
    void bytes_by_chance() {
        Random random = new Random(5);
        assertTimeoutPreemptively(GENEROUS, () -> {
            for (int i = 0; i < 500; i++) {
                byte[] bytes = new byte[random.nextInt(200)];
                random.nextBytes(bytes);
                assertThat(survives(bytes)).isFalse();
            }
        });
    }
}
