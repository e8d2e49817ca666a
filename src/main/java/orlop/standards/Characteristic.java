package orlop.standards;

import java.util.OptionalDouble;

/**
 * One time-current point that a standard fixes for a device family.
 *
 * @param kind what it says
 * @param inMinA least rated current it holds for, A, included
 * @param inMaxA greatest rated current it holds for, A, included; infinite where it holds for all
 * @param multiple the current as a multiple of the rated current (of the setting for {@code mccb}, of the rated residual
 *     current for {@code rcd}); none where only a current is given
 * @param currentA the current itself, A, where the standard prints it
 * @param tMinS must not have operated before this time, s
 * @param tMaxS must have operated by this time, s
 * @param i2tA2s let-through of the kinds that speak of it, A²s
 * @param confidence how sure a figure from memory is
 * @param provenance how firm it is
 * @param source the standard
 * @param note what limits it; may be empty
 */
public record Characteristic(
        Kind kind,
        double inMinA,
        double inMaxA,
        OptionalDouble multiple,
        OptionalDouble currentA,
        OptionalDouble tMinS,
        OptionalDouble tMaxS,
        OptionalDouble i2tA2s,
        Confidence confidence,
        Provenance provenance,
        String source,
        String note) {
    /** What a point says. */
    public enum Kind {
        /** Conventional: carries this current for tMinS without operating. */
        HOLD,
        /** Conventional: operates at this current within tMaxS; the current is I2. */
        OPERATE,
        /** A gate of the time-current band: not before tMinS, by tMaxS. */
        GATE,
        /** Least I²t that melts it. */
        I2T_MELTING_MIN,
        /** Greatest I²t it lets through until it has operated. */
        I2T_OPERATING_MAX,
        /** Greatest I²t an energy-limiting breaker lets through. */
        I2T_LET_THROUGH,
        /** Typical opening time, no limit of a standard. */
        TYPICAL_CLEARING
    }

    /** How sure a remembered figure is. */
    public enum Confidence {
        HIGH,
        MEDIUM,
        LOW
    }

    /** Refuses a point that says nothing, a backward range or a blank source. */
    public Characteristic {
        boolean empty = tMinS.isEmpty() && tMaxS.isEmpty() && i2tA2s.isEmpty();
        if (empty || !(inMinA <= inMaxA) || source.isBlank()) {
            throw new IllegalArgumentException("no time and no I²t, a backward range or no source: " + kind + " "
                    + inMinA + " to " + inMaxA + " A, " + source);
        }
        if ((kind == Kind.HOLD || kind == Kind.OPERATE) && multiple.isEmpty()) {
            throw new IllegalArgumentException("a conventional current needs its multiple: " + source);
        }
    }

    /** Whether it holds for a rated current. */
    public boolean holdsFor(double inA) {
        return inA >= inMinA && inA <= inMaxA;
    }
}
