package orlop.editor;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import orlop.drawing.Named;

/** The labels of particulars and of the choices in them, by the names that stand in the file. */
final class FieldTexts {
    private FieldTexts() {}

    static String label(String field) {
        return Texts.of("editor.field." + field);
    }

    /** What a particular means, in a line at the pointer; null where its label says it all. */
    static @Nullable String meaning(String field) {
        return Texts.words().pattern("editor.meaning." + field).orElse(null);
    }

    /** The word of a choice, by its type: {@code editor.choice.chemistry.lead-acid}. */
    static String choice(Named value) {
        return Texts.of("editor.choice." + type(value) + "." + value.word());
    }

    static String type(Named value) {
        return ((Enum<?>) value)
                .getDeclaringClass()
                .getSimpleName()
                .replaceAll("([a-z])([A-Z])", "$1-$2")
                .toLowerCase(Locale.ROOT);
    }
}
