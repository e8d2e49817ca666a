package orlop.study.flow;

/** What stands between two nodes of a circuit. {@code v} is the voltage from node a to node b. */
public enum Part {
    /** {@code i = first · v}: first is a conductance. */
    RESISTOR,
    /** Electromotive force {@code first} behind {@code second} ohms, 0 or more; current both ways. */
    EMF,
    /** Gives {@code first} amperes into node a. */
    CURRENT,
    /** Gives {@code min(third, max(0, (first − v) / second))}; second may be 0: then it holds first within its limit. */
    LIMITED,
    /** Gives {@code min(third, first / v)}. */
    POWER_SOURCE,
    /** Takes {@code max(0, (v − first) / second)} from a to b; second may be 0. */
    DIODE,
    /** Takes {@code first · v}. */
    LOAD_CONDUCTANCE,
    /** Takes {@code first} amperes. */
    LOAD_CURRENT,
    /** Takes {@code first / v}. */
    LOAD_POWER;

    /** Whether it switches between states. */
    public boolean switches() {
        return this == LIMITED || this == DIODE;
    }
}
