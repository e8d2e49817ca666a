package orlop.study.fault;

/**
 * What a fault current of alternating current comes of.
 *
 * @param volts behind the impedance, line to neutral, the voltage factor included
 * @param ohm resistance of the loop, of three-phase faults of one line
 * @param reactanceOhm reactance of the same
 * @param faultOhm resistance of the fault itself
 * @param limitA what inverters there give at most, 0 for none
 * @param alone whether nothing but such inverters feeds the place
 */
public record AcFaultSum(
        double volts, double ohm, double reactanceOhm, double faultOhm, double limitA, boolean alone) {}
