package orlop.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import orlop.drawing.Words;

class StoreWordsTest {
    /** Keys that stand alone: their cure is said elsewhere or they are a part of another text. */
    private static boolean alone(String key) {
        return key.equals("store.more") || key.startsWith("store.type.") || key.endsWith(".cure");
    }

    private static Set<String> keysInSource() throws IOException {
        Set<String> keys = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/orlop/store"))) {
            for (Path f : files.filter(p -> p.toString().endsWith(".java")).toList()) {
                String source = Files.readString(f);
                Matcher m = Pattern.compile("\"(store\\.[a-z0-9.-]+)\"").matcher(source);
                while (m.find()) {
                    keys.add(m.group(1));
                }
                Matcher types = Pattern.compile("wrong\\(\"([a-z]+)\"").matcher(source);
                while (types.find()) {
                    keys.add("store.type." + types.group(1));
                }
            }
        }
        keys.remove("store.type.");
        return keys;
    }

    @Test
    void every_problem_has_a_text_and_a_cure() throws IOException {
        Set<String> keys = keysInSource();
        assertThat(keys).hasSizeGreaterThan(40);
        for (String key : keys) {
            assertThat(Words.english().pattern(key)).as(key).isPresent();
            if (!alone(key)) {
                assertThat(Words.english().pattern(key + ".cure"))
                        .as(key + ".cure")
                        .isPresent();
            }
        }
    }

    @Test
    void no_text_is_left_over() throws IOException {
        Set<String> keys = keysInSource();
        List<String> texts = Words.english().all().keySet().stream()
                .filter(k -> k.startsWith("store."))
                .map(k -> k.equals("store.range.cure") ? k : k.replaceAll("\\.cure$", ""))
                .toList();
        assertThat(keys).containsAll(texts);
    }
}
