package orlop.drawing;

/** How a system stands to the hull, as intended; what is drawn may differ. */
public enum Earthing implements Named {
    /** No pole is connected to the hull. */
    INSULATED,
    /** The negative of a DC system is connected to the hull at one place. */
    NEGATIVE_BONDED,
    /** The neutral is connected to the protective conductor at its source. */
    NEUTRAL_BONDED,
    /** Not stated. */
    UNKNOWN
}
