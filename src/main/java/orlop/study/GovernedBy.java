package orlop.study;

/** What asked for a cable's least area. */
public enum GovernedBy {
    /** The current that it carries, under its correction factors. */
    AMPACITY,
    /** The rating of the device that guards it. */
    DEVICE,
    /** The voltage drop to a load behind it. */
    DROP,
    /** The least area for mechanical strength. */
    MECHANICAL,
    /** The heat of a fault until a device opens. */
    ADIABATIC,
    /** No area of the tables would do. */
    NOTHING_FITS
}
