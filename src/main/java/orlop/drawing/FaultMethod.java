package orlop.drawing;

/** How prospective fault currents are calculated. */
public enum FaultMethod implements Named {
    /** With the voltage and resistance factors of IEC 61660-1 and IEC 60909-0. */
    IEC,
    /** Electromotive force over impedance and nothing else: for comparison with general network solvers. */
    PLAIN
}
