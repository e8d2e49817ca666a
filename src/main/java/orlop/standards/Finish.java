package orlop.standards;

/** Whether the strands are coated. */
public enum Finish {
    PLAIN,
    TINNED
}
