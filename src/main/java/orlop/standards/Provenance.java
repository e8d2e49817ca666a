package orlop.standards;

import java.util.Locale;

/** Where a figure comes from, from the firmest to the weakest. */
public enum Provenance {
    /** The digits were read in the standard, in a law, or in a page that reproduces it. */
    SEEN,
    /** Calculated from other figures by a named formula. */
    DERIVED,
    /** Done so in the trade; no source. */
    COMMON_PRACTICE,
    /** Remembered from a named standard; to be checked against it. */
    MEMORY,
    /** An assumption, to be replaced by data of the very thing. */
    ENGINEERING_ESTIMATE;

    /** The weaker of this and {@code other}: what a figure that rests on both can claim. */
    public Provenance weaker(Provenance other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /**
     * Reads the word that tables use, e.g. {@code common practice}.
     *
     * @throws IllegalArgumentException if the word is none of the five
     */
    static Provenance parse(String word) {
        for (Provenance p : values()) {
            if (p.name().toLowerCase(Locale.ROOT).replace('_', ' ').equals(word)) {
                return p;
            }
        }
        throw new IllegalArgumentException("provenance \"" + word + "\" is none of seen, derived, common practice,"
                + " memory, engineering estimate");
    }
}
