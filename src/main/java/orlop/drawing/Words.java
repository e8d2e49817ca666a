package orlop.drawing;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Collectors;

/**
 * The texts of one language: one file a room, {@code orlop/words/ROOM.properties}, UTF-8.
 *
 * <p>In a text {@code {0}} stands for the first argument. There is no other syntax: an apostrophe is an apostrophe.
 */
public final class Words {
    private static final List<String> ROOMS = List.of(
            "drawing",
            "standards",
            "network",
            "study",
            "findings",
            "symbols",
            "layout",
            "scene",
            "render",
            "store",
            "desk",
            "binder",
            "editor",
            "cli");
    private static final Words ENGLISH = load();

    private final Map<String, String> texts;

    private Words(Map<String, String> texts) {
        this.texts = texts;
    }

    /** The English texts. */
    public static Words english() {
        return ENGLISH;
    }

    /** The message as one text; a key without a text is shown as the key itself, so that nothing is lost. */
    public String text(Message message) {
        String pattern = texts.get(message.key());
        if (pattern == null) {
            return message.key()
                    + message.arguments().stream().map(this::argument).collect(Collectors.joining(", ", " (", ")"));
        }
        return fill(pattern, message.arguments());
    }

    /** The text of a key that takes no arguments. */
    public String text(String key) {
        return text(Message.of(key));
    }

    /** Whether there is a text for this key, and which. */
    public Optional<String> pattern(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    /** Every key that has a text, by room. */
    public Map<String, String> all() {
        return texts;
    }

    private String fill(String pattern, List<Object> arguments) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < pattern.length(); i++) {
            char c = pattern.charAt(i);
            boolean place = c == '{' && i + 2 < pattern.length() && pattern.charAt(i + 2) == '}';
            int n = place ? pattern.charAt(i + 1) - '0' : -1;
            if (n >= 0 && n < arguments.size()) {
                out.append(argument(arguments.get(n)));
                i += 2;
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }

    private String argument(Object a) {
        if (a instanceof Quantity q) {
            return q.text();
        }
        if (a instanceof Message m) {
            return text(m);
        }
        if (a instanceof List<?> l) {
            return l.stream().map(this::argument).collect(Collectors.joining(", "));
        }
        return Objects.toString(a);
    }

    private static Words load() {
        Map<String, String> all = new LinkedHashMap<>();
        for (String room : ROOMS) {
            try (var in = Words.class.getResourceAsStream("/orlop/words/" + room + ".properties")) {
                if (in == null) {
                    continue; // a room that says nothing needs no file; a test compares rooms with files
                }
                Properties p = new Properties();
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
                p.load(reader);
                p.stringPropertyNames().stream().sorted().forEach(k -> all.put(k, p.getProperty(k)));
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read the texts of room " + room, e);
            }
        }
        return new Words(Map.copyOf(all));
    }
}
