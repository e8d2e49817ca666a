package orlop.drawing;

/** Whether a switching device is open or closed. */
public enum Position implements Named {
    OPEN,
    CLOSED
}
