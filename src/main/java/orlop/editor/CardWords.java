package orlop.editor;

import java.util.Locale;

/** Words of enums that have none of their own. */
final class CardWords {
    private CardWords() {}

    static String word(Enum<?> e) {
        return e.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
