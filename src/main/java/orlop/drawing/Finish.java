package orlop.drawing;

/** Whether the strands of a conductor are tinned. */
public enum Finish implements Named {
    PLAIN,
    TINNED
}
