package orlop.drawing;

/** How far an item has come. {@link #NOT_TRACED} never passes as clean. */
public enum Stage implements Named {
    PLANNED,
    INSTALLED,
    TESTED,
    ENERGISED,
    /** It is aboard, but nobody has followed where it goes. */
    NOT_TRACED
}
