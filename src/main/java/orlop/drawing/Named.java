package orlop.drawing;

import java.util.Locale;

/** A choice that stands in the file under a fixed word: by default the constant's name in lower case with hyphens. */
public interface Named {
    String name();

    /** The word in the file. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
