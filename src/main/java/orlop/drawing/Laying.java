package orlop.drawing;

/** Where a cable lies. */
public enum Laying implements Named {
    FREE_AIR,
    CONDUIT,
    BUNCHED,
    SHEATHED
}
