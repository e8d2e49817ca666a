package orlop.drawing;

/** The groups of the locker, by the letter codes of IEC 81346-2. */
public enum Group implements Named {
    SOURCES("G"),
    CONVERSION("T"),
    DISTRIBUTION("W"),
    PROTECTION("F"),
    SWITCHING("Q"),
    LOADS("E M"),
    EARTH_AND_METERS("X");

    private final String letters;

    Group(String letters) {
        this.letters = letters;
    }

    /** The letter codes. */
    public String letters() {
        return letters;
    }
}
