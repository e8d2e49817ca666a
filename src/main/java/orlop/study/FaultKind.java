package orlop.study;

/** What touches in a fault. */
public enum FaultKind {
    /** Positive and negative. */
    DC("dc"),
    /** All three lines. */
    THREE_PHASE("3ph"),
    /** Two lines. */
    TWO_PHASE("2ph"),
    /** A line and the neutral. */
    LINE_NEUTRAL("ln"),
    /** A line and the protective conductor. */
    LINE_EARTH("le");

    private final String word;

    FaultKind(String word) {
        this.word = word;
    }

    /** The word in files. */
    public String word() {
        return word;
    }
}
