package orlop.standards;

import java.util.Locale;

/** Whether the conductors of a circuit are cables of their own or cores in one sheath. */
public enum Construction {
    SINGLE_CORE,
    MULTICORE;

    static Construction parse(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }
}
