package orlop.editor;

import java.util.Locale;
import java.util.Map;
import javax.swing.JComponent;
import orlop.drawing.Message;
import orlop.drawing.Words;

/** The texts of the window, by key. */
final class Texts {
    /** The languages in which there are texts, by their codes. A further one is a further line here. */
    private static final Map<String, Words> LANGUAGES = Map.of("en", Words.english());

    private static volatile Words spoken = Words.english();

    private Texts() {}

    /**
     * From now on the texts are in this language, those of Swing's own boxes too: a box for files in the language of the
     * machine would be the only thing in it. A window that is open shows it in what it makes from then on.
     *
     * @param language its code; {@code system} for that of the machine, which is English where there is no other
     */
    static void speak(String language) {
        String code = language.equals("system") ? Locale.getDefault().getLanguage() : language;
        String known = LANGUAGES.containsKey(code) ? code : "en";
        spoken = LANGUAGES.getOrDefault(known, Words.english());
        // the texts of Swing that belong to no language are the English ones; for English itself Java would take the
        // machine's
        JComponent.setDefaultLocale(known.equals("en") ? Locale.ROOT : Locale.forLanguageTag(known));
    }

    static Words words() {
        return spoken;
    }

    static String of(String key, Object... arguments) {
        return spoken.text(Message.of(key, arguments));
    }

    static String of(Message message) {
        return spoken.text(message);
    }

    /** The text with a capital at its start, for titles; the name of a file is left as it is. */
    static String title(Message message) {
        String s = of(message);
        boolean file = message.arguments().stream()
                .anyMatch(a -> a instanceof String name && name.indexOf('.') >= 0 && s.startsWith(name));
        return s.isEmpty() || file ? s : s.substring(0, 1).toUpperCase(Locale.ROOT) + s.substring(1);
    }

    /** Text that may hold anything, made safe to stand in the HTML of a label. */
    static String html(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
