package orlop.study;

import org.jspecify.annotations.Nullable;
import orlop.network.Connection;
import orlop.study.fault.AcFaults;
import orlop.study.fault.Faults;
import orlop.study.model.Operation;

/**
 * The fault currents of one condition.
 *
 * @param ac those of its alternating systems; null where they are not looked at
 */
record FaultsOfOne(Operation operation, Faults dc, @Nullable AcFaults ac) {

    /** Highest fault current through a connection, at its ends where that is not determined; NaN where none is known. */
    double worstA(int connection) {
        Connection c = operation.network().connections().get(connection);
        boolean alternating = operation.isAc(c.a());
        if (alternating && ac == null) {
            return Double.NaN;
        }
        double through = alternating && ac != null ? ac.throughA(connection) : dc.throughA(connection);
        return Double.isFinite(through) ? through : Math.max(atA(c.a(), alternating), atA(c.b(), alternating));
    }

    private double atA(int pin, boolean alternating) {
        int node = operation.assembly().node(pin);
        double amps = alternating && ac != null ? ac.maxA(node) : dc.maxA(node);
        return Double.isFinite(amps) ? amps : 0;
    }
}
