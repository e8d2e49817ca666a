package orlop.study.working;

/** The figures of a cable or component that can show how they came about. */
public enum Figure {
    CURRENT("current"),
    AMPACITY("ampacity"),
    CONDUCTOR("conductor"),
    DROP("drop"),
    DROP_FROM_SOURCE("drop-from-source"),
    DROP_TO_LOAD("drop-to-load"),
    FAULT_NEAR("fault-near"),
    FAULT_NEAR_LEAST("fault-near-least"),
    FAULT_FAR("fault-far"),
    FAULT_FAR_LEAST("fault-far-least"),
    LEAST_AREA("least-area"),
    LOSS("loss"),
    PROTECTED_BY("protected-by");

    private final String word;

    Figure(String word) {
        this.word = word;
    }

    /** Its word in keys of messages. */
    public String word() {
        return word;
    }
}
