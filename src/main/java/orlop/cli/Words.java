package orlop.cli;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of this room, {@code words/cli.properties}. */
final class Words {
    static final String BUNDLE = "orlop.words.cli";

    private Words() {}

    /**
     * A text with its arguments filled in.
     *
     * @throws java.util.MissingResourceException if there is no such key: a bug
     */
    static String text(String key, Object... arguments) {
        String pattern = ResourceBundle.getBundle(BUNDLE, Locale.ROOT, Words.class.getClassLoader())
                .getString(key);
        // A quote means something to MessageFormat; in our texts it is always an apostrophe.
        return new MessageFormat(pattern.replace("'", "''"), Locale.ROOT).format(arguments);
    }
}
