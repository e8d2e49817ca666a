package orlop.standards;

/** How a cable lies, as far as its cooling goes. */
public enum Laying {
    /** Air all round: on cleats or a perforated tray, cables in a single layer. */
    FREE_AIR,
    /** Fixed to a surface, cables in a single layer. */
    ON_SURFACE,
    /** In a conduit or trunking. */
    CONDUIT,
    /** In a bunch (a loom) with other circuits. */
    BUNCHED,
    /** In a conduit or by itself inside thermal insulation, touching the lining. */
    IN_INSULATION
}
