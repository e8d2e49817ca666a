package orlop.drawing;

/** The kind of a battery. */
public enum Chemistry implements Named {
    FLOODED_LEAD,
    AGM,
    GEL,
    LITHIUM_IRON_PHOSPHATE,
    UNKNOWN
}
