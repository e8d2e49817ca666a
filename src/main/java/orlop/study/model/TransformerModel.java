package orlop.study.model;

import orlop.study.linear.Complex;

/**
 * A transformer, as seen from its second winding: of three phases, one of them in star.
 *
 * @param ratio nominal voltage of its second system over that of its first
 * @param z short-circuit impedance
 * @param faultFactor K_T of IEC 60909-0, by which it counts in faults
 * @param noLoadW taken with nothing connected, of all phases
 * @param separate whether it has two windings
 */
public record TransformerModel(double ratio, Complex z, double faultFactor, double noLoadW, boolean separate) {}
