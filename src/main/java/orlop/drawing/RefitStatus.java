package orlop.drawing;

/** Whether an item is aboard, to come, or to go. */
public enum RefitStatus implements Named {
    EXISTING,
    NEW,
    TO_BE_REMOVED
}
