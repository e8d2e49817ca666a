package orlop.drawing;

/** What flows in an electrical system. */
public enum Nature implements Named {
    /** Two-wire direct current. */
    DC,
    /** Single-phase alternating current of a source of its own. */
    AC1,
    /** Three-phase alternating current without neutral. */
    AC3,
    /** Three-phase alternating current with neutral; a circuit from L1 and N is a phase set of this same system. */
    AC3N,
    /** Direct current of photovoltaic strings. */
    PV;

    /** Whether voltages and currents are direct. */
    public boolean isDc() {
        return this == DC || this == PV;
    }

    /** Whether there are three phases. */
    public boolean isThreePhase() {
        return this == AC3 || this == AC3N;
    }
}
