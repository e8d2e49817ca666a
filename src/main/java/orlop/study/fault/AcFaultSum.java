package orlop.study.fault;

import java.util.List;

/**
 * What a fault current of alternating current comes of.
 *
 * @param volts behind the impedance, line to neutral, the voltage factor included
 * @param ohm resistance of the loop, of three-phase faults of one line
 * @param reactanceOhm reactance of the same
 * @param faultOhm resistance of the fault itself
 * @param limitA what inverters there give at most, 0 for none
 * @param alone whether nothing but such inverters feeds the place
 * @param way the source and what lies between it and the place, where these make up the whole impedance; else empty
 */
public record AcFaultSum(
        double volts, double ohm, double reactanceOhm, double faultOhm, double limitA, boolean alone, List<Piece> way) {
    /**
     * A piece of the way.
     *
     * @param item the source, the cable or the device
     * @param ohm its resistance, there and back where the fault is not between lines
     * @param reactanceOhm its reactance
     */
    public record Piece(String item, double ohm, double reactanceOhm) {}

    public AcFaultSum {
        way = List.copyOf(way);
    }
}
