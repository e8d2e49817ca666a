package orlop.standards;

/** How a conductor is stranded, IEC 60228. */
public enum ConductorClass {
    /** Stranded, for fixed installation. */
    CLASS_2,
    /** Flexible, fine-stranded: the usual one afloat. */
    CLASS_5
}
