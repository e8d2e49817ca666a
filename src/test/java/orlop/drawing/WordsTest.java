package orlop.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WordsTest {
    private static final Path WORDS = Path.of("src/main/resources/orlop/words");
    private static final Pattern KEY = Pattern.compile(
            "\"((?:drawing|standards|network|study|findings|symbols|layout|scene|render|store|desk|binder|editor|cli)"
                    + "\\.[a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)*\\.?)\"");

    /** Every text of the source that looks like a key, with the file where it stands. */
    private static Map<String, String> keysInSource() throws IOException {
        Map<String, String> keys = new TreeMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path f : files.filter(p -> p.toString().endsWith(".java")).toList()) {
                Matcher m = KEY.matcher(Files.readString(f));
                while (m.find()) {
                    keys.put(m.group(1), f.toString());
                }
            }
        }
        return keys;
    }

    @Test
    void every_key_in_the_source_has_a_text() throws IOException {
        Map<String, String> keys = keysInSource();
        assertThat(keys).hasSizeGreaterThan(60).containsKey("drawing.range.positive");
        Words words = Words.english();
        keys.forEach((key, file) -> {
            if (key.endsWith(".")) {
                assertThat(words.all().keySet()).as(key + " in " + file).anyMatch(k -> k.startsWith(key));
            } else {
                assertThat(words.pattern(key)).as(key + " in " + file).isPresent();
            }
        });
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void every_kind_has_a_term_of_the_trade(Kind kind) {
        assertThat(Words.english().pattern(kind.term().key())).isPresent();
    }

    @Test
    void every_text_of_this_room_is_used() throws IOException {
        Map<String, String> keys = keysInSource();
        assertThat(Words.english().all().keySet())
                .filteredOn(k -> k.startsWith("drawing.") && !k.startsWith("drawing.kind."))
                .allMatch(keys::containsKey);
    }

    @Test
    void every_file_of_texts_belongs_to_a_room_and_its_keys_start_with_the_rooms_name() throws IOException {
        try (Stream<Path> files = Files.list(WORDS)) {
            for (Path file : files.toList()) {
                String room = file.getFileName().toString().replace(".properties", "");
                List<String> keys = Files.readAllLines(file).stream()
                        .filter(l -> !l.isBlank() && !l.startsWith("#"))
                        .map(l -> l.replaceAll("\\s*=.*", ""))
                        .toList();
                assertThat(keys).as(room).isNotEmpty().doesNotHaveDuplicates();
                assertThat(keys).as(room).allMatch(k -> k.startsWith(room + "."));
                assertThat(Words.english().all().keySet()).as("loaded: " + room).containsAll(keys);
            }
        }
    }

    @Test
    void arguments_of_every_type_are_put_in_their_places() {
        Message inner = Message.of("drawing.kind.fuse");
        assertThat(Words.english().text(Message.of("drawing.edit.insert", inner, "FC1", "W1")))
                .isEqualTo("Insert fuse FC1 in W1");
        assertThat(Words.english()
                        .text(Message.of(
                                "drawing.flaw.no-terminal",
                                "E1",
                                new Quantity(2.5, Unit.AMPERE),
                                List.of("1", inner, 3))))
                .isEqualTo("E1 has no terminal 2.5 A: its terminals are 1, fuse, 3");
        assertThat(Words.english().text("drawing.kind.fuse")).isEqualTo("fuse");
    }

    @Test
    void a_missing_text_and_a_missing_argument_hide_nothing() {
        assertThat(Words.english().text(Message.of("drawing.no-such-key", "a", 2)))
                .isEqualTo("drawing.no-such-key (a, 2)");
        assertThat(Words.english().text(Message.of("drawing.refuse.joined", "a")))
                .isEqualTo("a and {1} are joined already");
    }

    @Test
    void what_comes_from_outside_is_cut_and_made_visible() {
        assertThat(Message.quote("a\nb\u0000c")).isEqualTo("a\uFFFDb\uFFFDc");
        assertThat(Message.quote("x".repeat(100))).isEqualTo("x".repeat(60) + "…");
    }
}
