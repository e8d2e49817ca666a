package orlop.study.model;

import orlop.study.linear.Complex;

/**
 * The least impedance that a flow can tell from none. Voltages are known to some 2e-16 of themselves, so that a current
 * through 10 nΩ a volt of the system is known to some 1e-8 A; through less it would be rounding. A smaller impedance
 * counts as that least one, which loses 0.01 % of the voltage at ten thousand times the current that a conductor of
 * any vessel carries; one of 0 stays 0 and joins its ends to one point. Fault currents take what is stated.
 */
final class Resolvable {
    private static final double OHM_PER_V = 1e-8;

    private Resolvable() {}

    /**
     * @param ohm 0 or more
     * @param nominalV of the system, 0 or more; less than 1 V counts as 1 V
     */
    static double ohm(double ohm, double nominalV) {
        return ohm == 0 ? 0 : Math.max(ohm, least(nominalV));
    }

    /** As {@link #ohm(double, double)}, by magnitude; the angle stays. */
    static Complex ohm(Complex z, double nominalV) {
        double magnitude = z.magnitude();
        double least = least(nominalV);
        if (magnitude == 0 || magnitude >= least) {
            return z;
        }
        return magnitude > 1e-300 ? z.times(least / magnitude) : new Complex(least, 0);
    }

    /** As {@link #ohm(Complex, double)} of a conductor of its own beside others: none at all counts as the least too. */
    static Complex conductor(Complex z, double nominalV) {
        return z.magnitude() > 0 ? ohm(z, nominalV) : new Complex(least(nominalV), 0);
    }

    private static double least(double nominalV) {
        return OHM_PER_V * Math.max(1, nominalV);
    }
}
