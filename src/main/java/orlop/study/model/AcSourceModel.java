package orlop.study.model;

import orlop.study.linear.Complex;

/**
 * A source of alternating current, one phase of it.
 *
 * @param service what it is in service; an impedance of 0 holds its voltage
 * @param strongest what drives the highest fault current
 * @param weakest what drives the lowest fault current
 * @param shore whether it stands for the shore
 */
public record AcSourceModel(Thevenin service, Thevenin strongest, Thevenin weakest, boolean shore) {
    /**
     * An electromotive force behind an impedance.
     *
     * @param emf phase to neutral, r.m.s.
     * @param z ohms
     */
    public record Thevenin(Complex emf, Complex z) {}
}
