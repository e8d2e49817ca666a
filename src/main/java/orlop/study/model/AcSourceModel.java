package orlop.study.model;

import orlop.study.linear.Complex;

/**
 * A source of alternating current, one phase of it.
 *
 * @param service what it is in service; an impedance of 0 holds its voltage
 * @param strongest what drives the highest fault current
 * @param weakest what drives the lowest fault current
 * @param shore whether it stands for the shore
 * @param oneLineShare of its impedance, what a fault of one line meets at most: (2 Z1 + Z0) / 3 over Z1
 * @param holding how it behaves in a fault that lasts
 * @param heldA what it still gives in a fault that lasts, where it holds a current
 */
public record AcSourceModel(
        Thevenin service,
        Thevenin strongest,
        Thevenin weakest,
        boolean shore,
        double oneLineShare,
        Holding holding,
        double heldA) {
    /** What becomes of a fault current that lasts. */
    public enum Holding {
        /** It stays: the source is a network. */
        NETWORK,
        /** It falls to a current that the excitation holds. */
        HELD,
        /** It dies away. */
        COLLAPSES,
        UNKNOWN
    }

    /** A network: its fault current stays. */
    static AcSourceModel network(Thevenin service, Thevenin strongest, Thevenin weakest, boolean shore) {
        return new AcSourceModel(service, strongest, weakest, shore, 1, Holding.NETWORK, Double.NaN);
    }

    /**
     * An electromotive force behind an impedance.
     *
     * @param emf phase to neutral, r.m.s.
     * @param z ohms
     */
    public record Thevenin(Complex emf, Complex z) {}
}
