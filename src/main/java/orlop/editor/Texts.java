package orlop.editor;

import orlop.drawing.Message;
import orlop.drawing.Words;

/** The texts of the window, by key. */
final class Texts {
    private static final Words WORDS = Words.english();

    private Texts() {}

    static Words words() {
        return WORDS;
    }

    static String of(String key, Object... arguments) {
        return WORDS.text(Message.of(key, arguments));
    }

    static String of(Message message) {
        return WORDS.text(message);
    }

    /** The text with a capital at its start, for titles. */
    static String title(Message message) {
        String s = of(message);
        return s.isEmpty() ? s : s.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + s.substring(1);
    }

    /** Text that may hold anything, made safe to stand in the HTML of a label. */
    static String html(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
